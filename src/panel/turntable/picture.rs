//! One finger on the picture: over the upper body it leads the hands, by how far it is from the axis; a quick
//! swipe below the hips pushes. Beside the figure it turns the picture, as everywhere.

use egui::{Align2, Id, Pos2, Rect, Response, Ui, vec2};

use crate::controls::pan_area;
use crate::fitted::fitted;
use crate::layout;
use crate::notice;
use crate::picture_text;
use crate::style::{self, GAP, TOUCH_SIZE, WEAK_TEXT, WIDE_GAP};
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// Where the picture has the axis of a turntable.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AxisOnPicture {
    /// At the height of the hips, points.
    pub hips: Pos2,
    /// The size of a metre there, points.
    pub points_per_m: f32,
}

/// Beyond the hands, m: so far out a finger still leads them.
const BEYOND_M: f32 = 0.12;

/// A swipe that takes longer is no flick, s.
const FLICK_S: f64 = 0.6;

/// Nor is one over less, points.
const FLICK: f32 = 24.0;

/// How far from the axis a flick takes hold, m: about the edge of a seat (our choice).
const HOLD_M: f32 = 0.3;

/// A swipe since it began.
#[derive(Debug, Clone, Copy, Default)]
struct Swipe {
    since_s: f64,
    from: Pos2,
    to: Pos2,
}

/// What lies on the picture and reacts there. Returns the part of it where the figure is.
pub fn show(
    ui: &Ui,
    session: &mut Session,
    stage: Rect,
    views: Rect,
    axis: Option<AxisOnPicture>,
) -> Rect {
    let mut over = vec![views];
    over.extend(notice::show(ui, session, stage, &over));
    let foot = over[1..].first().map_or(stage.bottom(), |it| it.top()) - GAP;
    let painter = ui.painter().with_clip_rect(stage);
    let room = stage.width() - 2.0 * WIDE_GAP;
    let (middle, font) = (Align2::CENTER_BOTTOM, style::text(15.0));
    let hint = text("turntable-hint");
    let hint = fitted(&painter, middle, hint, font, WEAK_TEXT.get(), room);
    let at = stage.center_bottom() - vec2(0.0, stage.bottom() - foot);
    picture_text::ground(&painter, hint.area(at));
    over.push(hint.draw(&painter, at));
    let figure = layout::figure_area(stage, &over);
    if let Some(axis) = axis {
        hold(ui, session, figure, &axis);
    }
    figure
}

fn hold(ui: &Ui, session: &mut Session, figure: Rect, axis: &AxisOnPicture) {
    let Some([_, farthest_m]) = session.turntable().map(|it| it.reach_m()) else {
        return;
    };
    let out = (farthest_m as f32 + BEYOND_M) * axis.points_per_m;
    let across = axis.hips.x - out..=axis.hips.x + out;
    let area = Rect::from_x_y_ranges(across, figure.y_range()).intersect(figure);
    if area.width() < TOUCH_SIZE || area.height() < 2.0 * TOUCH_SIZE {
        return;
    }
    let hips = (axis.hips.y).clamp(area.top() + TOUCH_SIZE, area.bottom() - TOUCH_SIZE);
    let (upper, lower) = area.split_top_bottom_at_y(hips);
    let hands = pan_area(ui, "picture hands", upper);
    // Two fingers look closer.
    let one_finger = ui.input(|input| input.multi_touch().is_none());
    if hands.is_pointer_button_down_on()
        && one_finger
        && let Some(at) = hands.interact_pointer_pos()
    {
        let distance_m = f64::from((at.x - axis.hips.x).abs() / axis.points_per_m);
        session.lead_turntable(|position| position.hand_distance_m = distance_m);
    }
    let push = pan_area(ui, "picture push", lower);
    if let Some(swipe) = ended(ui, &push)
        && one_finger
    {
        let way = swipe.to.x - swipe.from.x;
        let took_s = ui.input(|input| input.time) - swipe.since_s;
        if took_s <= FLICK_S && way.abs() >= FLICK {
            // What the finger takes hold of is in front, and moves with it.
            let speed_m_s = f64::from(way / axis.points_per_m) / took_s.max(1e-2);
            session.flick_turntable(speed_m_s / f64::from(HOLD_M));
        }
    }
}

/// The swipe that has just ended.
fn ended(ui: &Ui, response: &Response) -> Option<Swipe> {
    let id = Id::new("swipe that pushes");
    let now_s = ui.input(|input| input.time);
    if let Some(at) = response.interact_pointer_pos()
        && response.is_pointer_button_down_on()
    {
        ui.data_mut(|data| {
            let swipe = data.get_temp_mut_or(
                id,
                Swipe {
                    since_s: now_s,
                    from: at,
                    to: at,
                },
            );
            swipe.to = at;
        });
        return None;
    }
    ui.data_mut(|data| data.remove_temp::<Swipe>(id))
}
