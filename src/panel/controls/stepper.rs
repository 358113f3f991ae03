//! A stepper: label, minus button, value, plus button.

use egui::{Align2, Color32, Painter, Rect, Sense, Ui, pos2, vec2};

use crate::controls::button::Button;
use crate::controls::touch_targets;
use crate::fitted::{Fitted, fitted};
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

/// Least width of label and note beside the buttons; where there is less they stand above.
const LEAST_BESIDE: f32 = 130.0;

/// Shows a row; returns 1 or -1 if a button was clicked.
pub fn stepper(ui: &mut Ui, row: &StepperRow<'_>) -> Option<f64> {
    let width = ui.available_width();
    let beside = width - VALUE - 2.0 * TOUCH_SIZE - GAP;
    let is_beside = beside >= LEAST_BESIDE;
    let room = if is_beside { beside } else { width };
    let painter = ui.painter();
    let (label, note) = (style::bold(16.0), style::text(14.5));
    let left = Align2::LEFT_TOP;
    let lines = [
        fitted(painter, left, row.label, label, TEXT.get(), room),
        fitted(painter, left, row.note, note, WEAK_TEXT.get(), room),
    ];
    let lines = &lines[..if row.note.is_empty() { 1 } else { 2 }];
    let high: f32 = lines.iter().map(Fitted::height).sum();
    let height = if is_beside {
        high.max(TOUCH_SIZE)
    } else {
        high + TOUCH_SIZE
    };
    let (rect, _) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
    let mut y = if is_beside {
        rect.center().y - 0.5 * high
    } else {
        rect.top()
    };
    for line in lines {
        y = line
            .clone()
            .draw(ui.painter(), pos2(rect.left(), y))
            .bottom();
    }

    let middle = if is_beside {
        rect.center().y
    } else {
        rect.bottom() - 0.5 * TOUCH_SIZE
    };
    let top = middle - 0.5 * TOUCH_SIZE;
    let button = |left: f32| Rect::from_min_size(pos2(left, top), vec2(TOUCH_SIZE, TOUCH_SIZE));
    let more = button(rect.right() - TOUCH_SIZE);
    let less = button(more.left() - VALUE - TOUCH_SIZE);
    let value = Rect::from_min_max(less.right_top(), more.left_bottom());
    if let Some(name) = row.value_name {
        touch_targets::note(name, value);
    }
    let painter = ui.painter();
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
