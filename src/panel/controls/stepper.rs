//! A stepper: label, minus button, value, plus button.

use egui::{Align2, Color32, Painter, Rect, Sense, Ui, pos2, vec2};

use crate::controls::button::Button;
use crate::controls::touch_targets;
use crate::style::{self, GAP, TEXT, TOUCH_SIZE, WEAK_TEXT};
use turns_aloft_words::say;

pub struct StepperRow<'a> {
    /// The names of the buttons are "+:" and "−:" followed by this.
    pub name: &'a str,
    pub label: &'a str,
    /// A second line, smaller.
    pub note: &'a str,
    pub value: &'a str,
    /// Name of the value's touch target, for scripts that read the value off the screen.
    pub value_name: Option<&'a str>,
}

const VALUE: f32 = 96.0;

/// Shows a row; returns 1 or -1 if a button was clicked.
pub fn stepper(ui: &mut Ui, row: &StepperRow<'_>) -> Option<f64> {
    let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), TOUCH_SIZE), Sense::hover());
    let button =
        |left: f32| Rect::from_min_size(pos2(left, rect.top()), vec2(TOUCH_SIZE, TOUCH_SIZE));
    let more = button(rect.right() - TOUCH_SIZE);
    let less = button(more.left() - VALUE - TOUCH_SIZE);
    let value = Rect::from_min_max(less.right_top(), more.left_bottom());
    if let Some(name) = row.value_name {
        touch_targets::note(name, value);
    }

    let room = less.left() - rect.left() - GAP;
    let label = style::bold(style::fitting(ui.painter(), row.label, 16.0, room));
    let note = style::text(style::fitting(ui.painter(), row.note, 14.5, room));
    let left = rect.left_center();
    let painter = ui.painter();
    let up = if row.note.is_empty() { 0.0 } else { 10.0 };
    let lines = [
        (row.label, label, TEXT.get(), -up),
        (row.note, note, WEAK_TEXT.get(), 11.0),
    ];
    for (text, font, colour, y) in lines {
        painter.text(left + vec2(0.0, y), Align2::LEFT_CENTER, text, font, colour);
    }
    let size = style::fitting(ui.painter(), row.value, 17.0, VALUE - 2.0 * GAP);
    painter.text(
        value.center(),
        Align2::CENTER_CENTER,
        row.value,
        style::bold(size),
        TEXT.get(),
    );
    let mut steps = None;
    let accessible_names = [
        say!("panel-step-less", what = row.label, value = row.value),
        say!("panel-step-more", what = row.label, value = row.value),
    ];
    let buttons = [("−", less, -1.0), ("+", more, 1.0)];
    for ((sign, own, step), accessible_name) in buttons.into_iter().zip(&accessible_names) {
        let draw = |painter: &Painter, rect: Rect, colour: Color32| {
            let font = style::bold(24.0);
            painter.text(rect.center(), Align2::CENTER_CENTER, sign, font, colour);
        };
        let name = format!("{sign}:{}", row.name);
        if Button::drawn(&name, accessible_name, draw)
            .show(ui, own)
            .clicked()
        {
            steps = Some(step);
        }
    }
    steps
}
