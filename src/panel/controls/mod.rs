//! The controls: one constructor for each kind.
//!
//! A constructor takes a control's name, which identifies it in every language (egui's id, and the
//! name of its touch target), and its accessible name, which is in the language spoken. It makes
//! the area that reacts to touch, at least [`TOUCH_SIZE`] on a side, notes it as a touch target,
//! and describes the control to AccessKit. Controls with a common look are drawn here, others by
//! the caller.

mod accessibility;
mod areas;
mod button;
mod choice;
mod fold;
mod menu;
mod number_field;
mod slider;
mod stepper;
mod text_field;
pub mod touch_targets;

use egui::{Id, Rect, Response, Sense, Ui};

pub use crate::controls::areas::EXPLANATION_MARK_RADIUS;
pub use crate::controls::areas::{
    button_area, explanation_area, explanation_mark, pan_area, toggle_area,
};
pub use crate::controls::button::Button;
pub use crate::controls::choice::choice;
pub use crate::controls::fold::fold;
pub use crate::controls::menu::menu_item;
pub use crate::controls::number_field::{NumberEdit, number_field};
pub use crate::controls::slider::{Scale, point_slider, slider};
pub use crate::controls::stepper::{StepperRow, stepper};
pub use crate::controls::text_field::{Edit, Edited, text_field};

use crate::style::TOUCH_SIZE;

/// The id of a control. It does not depend on the parent `Ui`, so that a control keeps the keyboard
/// focus while others around it appear or disappear.
fn id(name: &str) -> Id {
    Id::new(("control", name))
}

/// Makes a control react in `rect`, enlarged to [`TOUCH_SIZE`] on each side if it is smaller.
fn interact(ui: &Ui, name: &str, rect: Rect, sense: Sense) -> Response {
    let rect = Rect::from_center_size(
        rect.center(),
        rect.size().max(egui::Vec2::splat(TOUCH_SIZE)),
    );
    touch_targets::note(name, rect);
    ui.interact(rect, id(name), sense)
}
