//! Sliders: the area that reacts to touch, drawn by the caller, and the values set by AccessKit.

use egui::{CursorIcon, Rect, Response, Sense, Ui};
use turns_aloft_describe::unit::UnitText;

use crate::controls::{accessibility, id, interact, touch_targets};
use turns_aloft_scenario::units::Unit;

/// A slider's value, its ends and the smallest step by keyboard, all in the unit shown, and the
/// value as text.
#[derive(Debug, Clone)]
pub struct Scale {
    pub value: f64,
    pub least: f64,
    pub most: f64,
    pub step: f64,
    pub text: String,
}

impl Scale {
    /// The scale of a value between two ends, given in SI, in the unit shown.
    pub fn of(unit: &Unit, [least, most]: [f64; 2], value: f64) -> Self {
        Self {
            value: unit.from_si(value),
            least: unit.from_si(least),
            most: unit.from_si(most),
            step: 10.0_f64.powi(-(unit.decimals as i32)),
            text: unit.text(value),
        }
    }
}

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
