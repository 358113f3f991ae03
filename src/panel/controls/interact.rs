//! What every control has: its identity, and the area that reacts.

use egui::{Id, Rect, Response, Sense, Ui, Vec2};

use crate::controls::touch_targets;
use crate::style::TOUCH_SIZE;

/// The same wherever the control stands: a control keeps its identity, and with it the keyboard's focus,
/// while others come and go around it.
pub fn id(name: &str) -> Id {
    Id::new(("control", name))
}

/// Lets the control of that name react in `rect`, or in a larger one where that is too small to touch.
pub fn interact(ui: &Ui, name: &str, rect: Rect, sense: Sense) -> Response {
    let rect = Rect::from_center_size(rect.center(), rect.size().max(Vec2::splat(TOUCH_SIZE)));
    touch_targets::note(name, rect);
    ui.interact(rect, id(name), sense)
}
