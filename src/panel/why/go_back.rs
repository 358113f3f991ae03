//! The button that undoes what was tried, at the end of a row.

use egui::{Rect, Ui, pos2, vec2};

use crate::controls::Button;
use crate::style::{GAP, TOUCH_SIZE};
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// Width of the button that undoes a change that was tried, with a gap before it.
pub const WIDTH: f32 = 88.0 + GAP;

/// Splits a row for a button at its right end.
pub fn split(row: Rect) -> [Rect; 2] {
    let (rest, back) = row.split_left_right_at_x(row.right() - WIDTH);
    let corner = pos2(back.left() + GAP, back.top());
    [
        rest,
        Rect::from_min_size(corner, vec2(WIDTH - GAP, TOUCH_SIZE)),
    ]
}

/// The button that undoes one change that was tried, if there is one.
pub fn go_back(ui: &Ui, session: &mut Session, name: &str, rect: Rect) {
    if session.tried() == 0 {
        return;
    }
    let button = Button::labelled(name, text("panel-go-back"));
    if button.show(ui, rect).clicked() {
        session.go_back();
    }
}
