//! A choice of one out of a few options: buttons side by side, wrapped if they do not fit.

use egui::{FontSelection, Rect, Sense, Ui, WidgetText, pos2, vec2};

use crate::controls::button::Button;
use crate::style::{self, GAP, TOUCH_SIZE};

/// Shows the `options`: value, name of its button, and label. Returns the one that was clicked
/// unless it is the present one.
pub fn choice<T: Copy + PartialEq>(
    ui: &mut Ui,
    name: &str,
    present: T,
    options: &[(T, &str, &str)],
) -> Option<T> {
    let width = ui.available_width();
    let needed = options
        .iter()
        .map(|(_, _, label)| text_width(ui, label))
        .fold(0.0, f32::max)
        + 20.0;
    let across = ((width + GAP) / (needed + GAP))
        .floor()
        .clamp(1.0, options.len() as f32) as usize;
    // Rows as even as possible: five options, if four fit in a row, make rows of three and two.
    let rows = options.len().div_ceil(across);
    let across = options.len().div_ceil(rows);
    choice_across(ui, name, present, options, across)
}

/// The same with so many `across`.
pub fn choice_across<T: Copy + PartialEq>(
    ui: &mut Ui,
    name: &str,
    present: T,
    options: &[(T, &str, &str)],
    across: usize,
) -> Option<T> {
    let width = ui.available_width();
    let own_width = (width - GAP * (across - 1) as f32) / across as f32;
    let mut chosen = None;
    for row in options.chunks(across) {
        let (rect, _) = ui.allocate_exact_size(vec2(width, TOUCH_SIZE), Sense::hover());
        for (i, &(option, own_name, label)) in row.iter().enumerate() {
            let left = rect.left() + (own_width + GAP) * i as f32;
            let own = Rect::from_min_size(pos2(left, rect.top()), vec2(own_width, TOUCH_SIZE));
            let target = format!("{name}:{own_name}");
            let button = Button::labelled(&target, label).chosen(option == present);
            if button.show(ui, own).clicked() && option != present {
                chosen = Some(option);
            }
        }
    }
    chosen
}

fn text_width(ui: &Ui, label: &str) -> f32 {
    WidgetText::from(label)
        .into_galley(
            ui,
            None,
            f32::INFINITY,
            FontSelection::FontId(style::text(16.0)),
        )
        .size()
        .x
}
