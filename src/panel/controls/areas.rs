//! Controls that the caller draws: the area that reacts to touch, described to AccessKit.

use egui::{Align2, CursorIcon, Painter, Pos2, Rect, Response, Sense, Stroke, Ui};

use crate::controls::accessibility;
use crate::controls::interact::{id, interact};
use crate::style::{self, ACCENT, ON_ACCENT};

/// A button drawn by the caller.
pub fn button_area(ui: &Ui, name: &str, rect: Rect, accessible_name: &str) -> Response {
    button_area_if(ui, name, rect, accessible_name, true)
}

/// A button that cannot be clicked unless it is `enabled`.
pub(super) fn button_area_if(
    ui: &Ui,
    name: &str,
    rect: Rect,
    accessible_name: &str,
    enabled: bool,
) -> Response {
    let sense = if enabled {
        Sense::click()
    } else {
        Sense::hover()
    };
    let response = interact(ui, name, rect, sense);
    accessibility::button(&response, enabled, accessible_name);
    response
}

/// A button that is on or off, drawn by the caller.
pub fn toggle_area(ui: &Ui, name: &str, rect: Rect, accessible_name: &str, on: bool) -> Response {
    let response = interact(ui, name, rect, Sense::click());
    accessibility::toggle(&response, accessible_name, on);
    response
}

/// A button, drawn by the caller, that shows an explanation while it is `open`: `what` it explains,
/// and the explanation.
pub fn explanation_area(
    ui: &Ui,
    name: &str,
    rect: Rect,
    open: bool,
    what: impl Fn() -> String,
    about: impl FnOnce() -> String,
) -> Response {
    let response = interact(ui, name, rect, Sense::click()).on_hover_cursor(CursorIcon::Help);
    accessibility::explanation(ui, &response, open, what, about);
    response
}

/// An area to move something about in. For AccessKit what is moved has sliders ([`point_slider`](crate::controls::slider::point_slider)).
pub fn pan_area(ui: &Ui, name: &str, rect: Rect) -> Response {
    interact(ui, name, rect, Sense::click_and_drag()).on_hover_cursor(CursorIcon::Crosshair)
}

/// The picture while a finger anywhere on it does something. It is no touch target of its own: what lies on it
/// goes first, and a control beside it does the same.
pub fn picture_area(ui: &Ui, name: &str, rect: Rect) -> Response {
    ui.interact(rect, id(name), Sense::click_and_drag())
}

pub const EXPLANATION_MARK_RADIUS: f32 = 9.0;

/// Draws the question mark of a control with an explanation; filled while the explanation is open.
pub fn explanation_mark(painter: &Painter, at: Pos2, open: bool) {
    let colour = if open {
        painter.circle_filled(at, EXPLANATION_MARK_RADIUS, ACCENT.get());
        ON_ACCENT.get()
    } else {
        let stroke = Stroke::new(1.5, ACCENT.get());
        painter.circle_stroke(at, EXPLANATION_MARK_RADIUS, stroke);
        ACCENT.get()
    };
    painter.text(at, Align2::CENTER_CENTER, "?", style::bold(14.0), colour);
}
