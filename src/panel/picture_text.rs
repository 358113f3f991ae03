//! What is written on the 3D picture: that a landing is only shown, and how far the hands of the
//! stick figure are from the axis.

use egui::{Align2, Context, CornerRadius, LayerId, Painter, Pos2, Rect, Ui, pos2, vec2};

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

/// Says under the jumper that the landing is not computed, while it is shown.
pub fn landing(ui: &Ui, session: &Session, stage: Rect) {
    if session.playhead_s() <= session.flight().touchdown_s || session.notice().is_some() {
        return;
    }
    let painter = ui.painter().with_clip_rect(stage);
    let line = text("panel-landing-shown");
    let room = stage.width() - 2.0 * WIDE_GAP;
    let letters = style::fitting_text(&painter, line, SIZE, room).max(13.0);
    let galley = painter.layout(line.to_owned(), style::text(letters), WEAK_TEXT.get(), room);
    let size = galley.size();
    let at = pos2(
        stage.center().x - 0.5 * size.x,
        stage.bottom() - GAP - size.y,
    );
    ground(&painter, Rect::from_min_size(at, size));
    painter.galley(at, galley, WEAK_TEXT.get());
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
fn ground(painter: &Painter, rect: Rect) {
    let patch = rect.expand2(vec2(5.0, 1.0));
    painter.rect_filled(
        patch,
        CornerRadius::same(5),
        CARD.get().gamma_multiply(0.82),
    );
}
