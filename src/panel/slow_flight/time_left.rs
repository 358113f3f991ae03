//! Under the picture while a jump is led: the turns so far, and how long it still is in the air.

use egui::{Align2, Rect, Ui, pos2};

use crate::fitted::fitted;
use crate::style::{self, ACCENT, CARD, GAP, TEXT, WARNING};
use turns_aloft_scenario::curve::turns_of;
use turns_aloft_session::Session;
use turns_aloft_session::readings::turns_so_far_text;
use turns_aloft_session::slow_flight::lands_in;
use turns_aloft_words::{say, text};

/// With less of the flight left than that it is high time to open, a share of it: who is not open by the
/// landing lands closed. Our own figure, near the planned openings of the starting points.
const HIGH_TIME: f64 = 0.3;

const FIGURES: f32 = 34.0;

/// Draws it into `rect`; whether there is a flight that is led.
pub fn time_left(ui: &Ui, session: &Session, rect: Rect) -> bool {
    let Some((slow, led)) = session.slow_flight().and_then(|it| Some((it, it.led()?))) else {
        return false;
    };
    let turns = turns_of(session.scenario(), led.sample());
    let turns = turns_so_far_text(session.jump(), turns);
    let turns = say!("slow-turns", turns = turns);
    let painter = ui.painter();
    let (above, bar) = rect.split_top_bottom_at_fraction(0.6);
    let room = 0.5 * rect.width() - GAP;
    let font = style::bold(FIGURES);
    let left = fitted(painter, Align2::LEFT_CENTER, &turns, font, TEXT.get(), room);
    left.draw(painter, above.left_center());
    let total_s = led.time_s() + led.landing_in_s();
    let share = if total_s > 0.0 {
        led.landing_in_s() / total_s
    } else {
        0.0
    };
    let colour = if share < HIGH_TIME { WARNING } else { ACCENT };
    let said = if share < HIGH_TIME && led.tucks()[0] > 0.5 {
        text("slow-open-now").to_owned()
    } else {
        lands_in(slow, led)
    };
    let font = style::bold(20.0);
    let right = fitted(painter, Align2::RIGHT_CENTER, &said, font, TEXT.get(), room);
    right.draw(painter, above.right_center());
    painter.rect_filled(bar, 4.0, CARD.get());
    let end = bar.left() + share as f32 * bar.width();
    let left = Rect::from_min_max(bar.min, pos2(end, bar.bottom()));
    painter.rect_filled(left, 4.0, colour.get());
    true
}
