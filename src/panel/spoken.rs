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

/// The value that a slider has been set to from outside the canvas, in the unit of its scale. To be
/// asked before the slider is told of: what is told is to be what came of it, or the next step from
/// outside would start from the value before.
pub fn set_to(ui: &Ui, response: &Response) -> Option<f64> {
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
