//! The controls: one constructor for each kind.
//!
//! A constructor takes a control's name, which identifies it in every language (egui's id, and the
//! name of its touch target), and its accessible name, which is in the language spoken. It makes
//! the area that reacts to touch, at least [`TOUCH_SIZE`](crate::style::TOUCH_SIZE) on a side,
//! notes it as a touch target, and describes the control to AccessKit. Controls with a common look
//! are drawn here, others by the caller.

mod accessibility;
mod anchor;
mod areas;
mod button;
mod choice;
mod explained;
mod fold;
mod interact;
mod menu;
mod number_field;
mod one_step;
mod scale;
mod slider;
mod stepper;
mod swipe;
mod text_box;
mod text_field;
pub mod touch_targets;

pub use crate::controls::areas::EXPLANATION_MARK_RADIUS;
pub use crate::controls::areas::{
    button_area, explanation_area, explanation_mark, pan_area, picture_area, toggle_area,
};
pub use crate::controls::button::Button;
pub use crate::controls::choice::{choice, choice_across};
pub use crate::controls::explained::explained;
pub use crate::controls::fold::fold;
pub use crate::controls::menu::{menu, menu_item};
pub use crate::controls::number_field::{NumberEdit, NumberText, number_field};
pub use crate::controls::scale::Scale;
pub use crate::controls::slider::{point_slider, slider};
pub use crate::controls::stepper::{StepperRow, stepper};
pub use crate::controls::swipe::scrolling;
pub(crate) use crate::controls::swipe::take_hold;
pub use crate::controls::text_box::{TextBox, TextEdit};
pub use crate::controls::text_field::{Edit, Edited, text_field};
