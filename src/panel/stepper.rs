//! A number that goes up and down by steps: what it is, less, the value, more.

use egui::{Align2, Rect, Sense, Ui, pos2, vec2};

use super::style::{self, INK, NEAR, SLATE, TOUCH};
use super::{accessibility, transport};
use crate::say;

/// What stands in a row.
pub struct Row<'a> {
    /// Behind "+:" and "−:" the buttons' names.
    pub name: &'a str,
    pub label: &'a str,
    /// A second line, smaller.
    pub note: &'a str,
    pub value: &'a str,
}

const VALUE: f32 = 96.0;

/// Shows a row; the step that was asked for, and where the value stands.
pub fn show(ui: &mut Ui, row: &Row<'_>) -> (Option<f64>, Rect) {
    let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), TOUCH), Sense::hover());
    let button = |left: f32| Rect::from_min_size(pos2(left, rect.top()), vec2(TOUCH, TOUCH));
    let more = button(rect.right() - TOUCH);
    let less = button(more.left() - VALUE - TOUCH);
    let value = Rect::from_min_max(less.right_top(), more.left_bottom());

    let room = less.left() - rect.left() - NEAR;
    let label = style::bold(style::fitting(ui, row.label, 16.0, room));
    let note = style::text(style::fitting(ui, row.note, 14.5, room));
    let left = rect.left_center();
    let painter = ui.painter();
    let up = if row.note.is_empty() { 0.0 } else { 10.0 };
    let lines = [
        (row.label, label, INK.get(), -up),
        (row.note, note, SLATE.get(), 11.0),
    ];
    for (text, font, ink, y) in lines {
        painter.text(left + vec2(0.0, y), Align2::LEFT_CENTER, text, font, ink);
    }
    let size = style::fitting(ui, row.value, 17.0, VALUE - 2.0 * NEAR);
    painter.text(
        value.center(),
        Align2::CENTER_CENTER,
        row.value,
        style::bold(size),
        INK.get(),
    );
    let mut steps = None;
    let said = [
        say!("panel-step-less", what = row.label, value = row.value),
        say!("panel-step-more", what = row.label, value = row.value),
    ];
    for ((sign, own, step), said) in [("−", less, -1.0), ("+", more, 1.0)].into_iter().zip(said) {
        let response = transport::button(ui, &format!("{sign}:{}", row.name), own, false);
        accessibility::button(&response, &said);
        ui.painter().text(
            own.center(),
            Align2::CENTER_CENTER,
            sign,
            style::bold(24.0),
            INK.get(),
        );
        if response.clicked() {
            steps = Some(step);
        }
    }
    (steps, value)
}
