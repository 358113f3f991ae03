//! The id of a control, and the area that reacts to touch.

use egui::{Id, Rect, Response, Sense, Ui, Vec2};

use crate::controls::{anchor, touch_targets};
use crate::style::TOUCH_SIZE;

/// The id of a control. It does not depend on the parent `Ui`, so that a control keeps the keyboard
/// focus while others around it appear or disappear.
pub fn id(name: &str) -> Id {
    Id::new(("control", name))
}

/// Makes a control react in `rect`, enlarged to [`TOUCH_SIZE`] on each side if it is smaller.
pub fn interact(ui: &Ui, name: &str, rect: Rect, sense: Sense) -> Response {
    let rect = Rect::from_center_size(rect.center(), rect.size().max(Vec2::splat(TOUCH_SIZE)));
    touch_targets::note(name, rect);
    let response = ui.interact(rect, id(name), sense);
    anchor::note(ui, &response);
    response
}
