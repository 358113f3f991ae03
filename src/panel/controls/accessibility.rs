//! Describes the controls to AccessKit, through egui, for people who cannot see or touch the
//! canvas.
//!
//! `page/controls.rs` makes an element of the page for each control described here.

use egui::accesskit::{Action, ActionData, Role};
use egui::{Response, Ui, WidgetInfo, WidgetType};

use crate::controls::scale::Scale;
use turns_aloft_words::say;

pub fn button(response: &Response, enabled: bool, label: &str) {
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Button, enabled, label));
}

/// A toggle button, or one of several to choose from.
pub fn toggle(response: &Response, label: &str, on: bool) {
    response.widget_info(|| WidgetInfo::selected(WidgetType::Button, true, on, label));
}

/// Says more of a control than its name.
pub fn describe(ui: &Ui, response: &Response, about: &str) {
    ui.ctx().accesskit_node_builder(response.id, |node| {
        node.set_description(about);
    });
}

/// A button that explains something in a sentence or two. The closures build name and explanation;
/// they are called only in frames in which AccessKit is on, because there are many of them.
pub fn explanation(
    ui: &Ui,
    response: &Response,
    open: bool,
    what: impl Fn() -> String,
    about: impl FnOnce() -> String,
) {
    response.widget_info(|| {
        let label = say!("panel-meaning", what = what());
        WidgetInfo::selected(WidgetType::Button, true, open, label)
    });
    ui.ctx().accesskit_node_builder(response.id, |node| {
        node.set_description(about());
    });
}

pub fn text_field(ui: &Ui, response: &Response, label: &str, value: &str) {
    field(ui, response, Role::TextInput, || label.to_owned(), value);
}

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

/// The text that AccessKit has put into a field in this frame.
pub fn text_set(ui: &Ui, response: &Response) -> Option<String> {
    value_set(ui, response, |data| match data {
        ActionData::Value(text) => Some(text.into()),
        _ => None,
    })
}

/// The value that AccessKit has set a slider to in this frame, in the unit of its scale. Call it
/// before describing the slider: the description must have the new value, otherwise the next step
/// by keyboard starts from the old one.
pub fn number_set(ui: &Ui, response: &Response) -> Option<f64> {
    value_set(ui, response, |data| match data {
        ActionData::NumericValue(value) => Some(value),
        _ => None,
    })
}

fn value_set<T>(ui: &Ui, response: &Response, of: fn(ActionData) -> Option<T>) -> Option<T> {
    ui.input(|input| {
        input
            .accesskit_action_requests(response.id, Action::SetValue)
            .filter_map(|request| of(request.data.clone()?))
            .last()
    })
}

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
