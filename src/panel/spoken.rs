//! What the widgets are called, and what they say, for those who cannot see or touch the canvas.
//!
//! The panels tell AccessKit through egui; `page/controls.rs` makes real elements of the page out
//! of what is told here.

use bevy_egui::egui::accesskit::{Action, ActionData};
use bevy_egui::egui::{Response, Ui, WidgetInfo, WidgetType};

/// A button.
pub fn button(response: &Response, label: &str) {
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Button, true, label));
}

/// A button that stays down, or is one of several.
pub fn toggle(response: &Response, label: &str, on: bool) {
    response.widget_info(|| WidgetInfo::selected(WidgetType::Button, true, on, label));
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

/// A slider; returns the value that has been set from outside the canvas, in the scale's unit.
pub fn slider(ui: &Ui, response: &Response, label: &str, scale: &Scale) -> Option<f64> {
    response.widget_info(|| WidgetInfo::slider(true, scale.value, label));
    ui.ctx().accesskit_node_builder(response.id, |node| {
        node.set_min_numeric_value(scale.least);
        node.set_max_numeric_value(scale.most);
        node.set_numeric_value_step(scale.step);
        node.set_value(scale.text.clone());
        node.add_action(Action::SetValue);
    });
    ui.input(|input| {
        input
            .accesskit_action_requests(response.id, Action::SetValue)
            .filter_map(|request| match request.data {
                Some(ActionData::NumericValue(value)) => Some(value),
                _ => None,
            })
            .last()
    })
}
