//! Sliders: the area that reacts to touch, drawn by the caller, and the values set by AccessKit.

use egui::{CursorIcon, Rect, Response, Sense, Ui};

use crate::controls::interact::{id, interact};
use crate::controls::scale::Scale;
use crate::controls::{accessibility, touch_targets};

/// A slider that the caller draws and moves by the pointer. `set` receives a value that AccessKit
/// has set, in the unit of `scale`; `scale` is called afterwards.
pub fn slider<S>(
    ui: &Ui,
    name: &str,
    rect: Rect,
    accessible_name: &str,
    state: &mut S,
    set: impl FnOnce(&mut S, f64),
    scale: impl FnOnce(&S) -> Scale,
) -> Response {
    let response = interact(ui, name, rect, Sense::click_and_drag())
        .on_hover_cursor(CursorIcon::ResizeHorizontal);
    describe(ui, &response, accessible_name, state, set, scale);
    response
}

/// A slider for AccessKit only: one coordinate of a point that the pointer moves in a
/// [`crate::controls::pan_area`]. The point is the touch target of all its coordinates.
pub fn point_slider<S>(
    ui: &Ui,
    [point, coordinate]: [&str; 2],
    rect: Rect,
    accessible_name: &str,
    state: &mut S,
    set: impl FnOnce(&mut S, f64),
    scale: impl FnOnce(&S) -> Scale,
) {
    touch_targets::note(point, rect);
    let response = ui.interact(rect, id(point).with(coordinate), Sense::hover());
    describe(ui, &response, accessible_name, state, set, scale);
}

fn describe<S>(
    ui: &Ui,
    response: &Response,
    accessible_name: &str,
    state: &mut S,
    set: impl FnOnce(&mut S, f64),
    scale: impl FnOnce(&S) -> Scale,
) {
    if let Some(value) = accessibility::number_set(ui, response) {
        set(state, value);
    }
    accessibility::slider(ui, response, accessible_name, &scale(state));
}
