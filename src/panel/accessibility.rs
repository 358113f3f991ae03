//! What the widgets are called, and what they say, for those who cannot see or touch the canvas.
//!
//! The panels tell AccessKit through egui; `page/controls.rs` makes real elements of the page out
//! of what is told here.

use egui::accesskit::{Action, ActionData, Role};
use egui::{Response, Ui, WidgetInfo, WidgetType};

use crate::say;
use crate::scenario::units::Unit;

/// A button.
pub fn button(response: &Response, label: &str) {
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Button, true, label));
}

/// A button that cannot be pressed at times.
pub fn button_if(response: &Response, enabled: bool, label: &str) {
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Button, enabled, label));
}

/// A button that stays down, or is one of several.
pub fn toggle(response: &Response, label: &str, on: bool) {
    response.widget_info(|| WidgetInfo::selected(WidgetType::Button, true, on, label));
}

/// A button that tells what something means, in a sentence or two. Put into words only where they
/// are asked for: there are many, and in most frames of a flight nobody does.
pub fn meaning(
    ui: &Ui,
    response: &Response,
    open: bool,
    what: impl Fn() -> String,
    about: impl FnOnce() -> String,
) {
    response.widget_info(|| {
        let said = say!("panel-meaning", what = what());
        WidgetInfo::selected(WidgetType::Button, true, open, said)
    });
    ui.ctx().accesskit_node_builder(response.id, |node| {
        node.set_description(about());
    });
}

/// A field to type a name into.
pub fn name_field(ui: &Ui, response: &Response, label: &str, value: &str) {
    field(ui, response, Role::TextInput, || label.to_owned(), value);
}

/// A field to type a number into.
pub fn number_field(ui: &Ui, response: &Response, label: impl Fn() -> String, value: &str) {
    field(ui, response, Role::NumberInput, label, value);
}

fn field(ui: &Ui, response: &Response, role: Role, label: impl Fn() -> String, value: &str) {
    response.widget_info(|| WidgetInfo::labeled(WidgetType::TextEdit, true, label()));
    ui.ctx().accesskit_node_builder(response.id, |node| {
        node.set_role(role);
        node.set_value(value);
        node.add_action(Action::SetValue);
    });
}

/// What has been typed into a field from outside the canvas.
pub fn typed_into(ui: &Ui, response: &Response) -> Option<String> {
    asked_for(ui, response, |data| match data {
        ActionData::Value(text) => Some(text.into()),
        _ => None,
    })
}

/// A slider's value, its ends, and the smallest step of the keyboard, all in one unit; and the
/// value in words.
#[derive(Debug, Clone)]
pub struct Scale {
    pub value: f64,
    pub least: f64,
    pub most: f64,
    pub step: f64,
    pub text: String,
}

impl Scale {
    /// Of a value between two ends, all in SI, in the unit shown.
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

/// The value that a slider has been set to from outside the canvas, in the unit of its scale. To be
/// asked before the slider is told of: what is told is to be what came of it, or the next step from
/// outside would start from the value before.
pub fn set_to(ui: &Ui, response: &Response) -> Option<f64> {
    asked_for(ui, response, |data| match data {
        ActionData::NumericValue(value) => Some(value),
        _ => None,
    })
}

/// The last value that a widget has been given from outside.
fn asked_for<T>(ui: &Ui, response: &Response, of: fn(ActionData) -> Option<T>) -> Option<T> {
    ui.input(|input| {
        input
            .accesskit_action_requests(response.id, Action::SetValue)
            .filter_map(|request| of(request.data.clone()?))
            .last()
    })
}

/// A slider.
pub fn slider(ui: &Ui, response: &Response, label: &str, scale: &Scale) {
    response.widget_info(|| WidgetInfo::slider(true, scale.value, label));
    ui.ctx().accesskit_node_builder(response.id, |node| {
        node.set_min_numeric_value(scale.least);
        node.set_max_numeric_value(scale.most);
        node.set_numeric_value_step(scale.step);
        node.set_value(scale.text.clone());
        node.add_action(Action::SetValue);
    });
}
