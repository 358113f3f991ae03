//! What is written on the 3D picture: that a landing is only shown, and how far the hands of the
//! stick figure are from the axis.

use egui::{Align2, Context, CornerRadius, LayerId, Painter, Pos2, Rect, Ui, vec2};

use crate::strip::between;
use crate::style::{self, CARD, GAP, TEXT, WEAK_TEXT, WIDE_GAP};
use turns_aloft_describe::unit::UnitText;
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// A hand's distance from the axis, and where hand and axis are on the screen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HandDistance {
    pub distance_m: f64,
    pub at: Pos2,
    pub axis_at: Pos2,
}

const SIZE: f32 = 15.0;
/// Between a number and its hand.
const BESIDE: f32 = 12.0;

/// Says under the jumper that the landing is not computed, while it is shown: at the foot of the picture or
/// on the `strip` there, between the `others` on the picture. Returns its place, which is kept free all the
/// time, so that the figure does not move.
pub fn landing(
    ui: &Ui,
    session: &Session,
    stage: Rect,
    strip: Option<Rect>,
    others: &[Rect],
) -> Rect {
    let painter = ui.painter().with_clip_rect(stage);
    let foot = strip.map_or(stage.bottom(), |strip| strip.top()) - GAP;
    let room = stage.shrink2(vec2(WIDE_GAP, GAP)).with_max_y(foot);
    let placed = |room: Rect| {
        let line = text("panel-landing-shown");
        let least = style::least_size(ui.ctx());
        let size = style::fitting_text(&painter, line, SIZE, room.width()).max(least);
        let font = style::text(size);
        let galley = painter.layout(line.to_owned(), font, WEAK_TEXT.get(), room.width());
        (
            Align2::CENTER_BOTTOM.align_size_within_rect(galley.size(), room),
            galley,
        )
    };
    let (one_line, _) = placed(room);
    let narrow = between(room, others, one_line.top());
    // Where it takes several lines it may meet more of the others.
    let (several_lines, _) = placed(narrow);
    let (place, galley) = placed(between(room, others, several_lines.top()));
    if is_landing_shown(session) {
        ground(&painter, place);
        painter.galley(place.min, galley, WEAK_TEXT.get());
    }
    place
}

fn is_landing_shown(session: &Session) -> bool {
    let is_led = session.slow_flight().is_some_and(|it| it.led().is_some());
    !is_led && session.playhead_s() > session.pictured().flight.touchdown_s
}

/// Writes the hands' distances from the axis in the user's unit, each on the far side of its hand.
pub fn hand_distances(ctx: &Context, session: &Session, stage: Rect, hands: &[HandDistance]) {
    let painter = ctx
        .layer_painter(LayerId::background())
        .with_clip_rect(stage);
    let unit = session.units().length.unit();
    let mut written: Vec<Rect> = Vec::new();
    for hand in hands {
        let number = unit.text(hand.distance_m);
        let galley = painter.layout_no_wrap(number, style::bold(SIZE), TEXT.get());
        let size = galley.size();
        let outwards = if hand.at.x < hand.axis_at.x {
            -1.0
        } else {
            1.0
        };
        let middle = hand.at + vec2(outwards * (BESIDE + 0.5 * size.x), 0.0);
        let mut rect = Align2::CENTER_CENTER.anchor_size(middle, size);
        // Hands that are close together have their numbers one under the other.
        for other in &written {
            if rect.expand(GAP).intersects(*other) {
                rect = rect.translate(vec2(0.0, other.bottom() + GAP - rect.top()));
            }
        }
        ground(&painter, rect);
        painter.galley(rect.min, galley, TEXT.get());
        written.push(rect);
    }
}

/// A patch under text, for contrast to whatever is drawn there.
pub fn ground(painter: &Painter, rect: Rect) {
    let patch = rect.expand2(vec2(5.0, 1.0));
    painter.rect_filled(
        patch,
        CornerRadius::same(5),
        CARD.get().gamma_multiply(0.82),
    );
}
