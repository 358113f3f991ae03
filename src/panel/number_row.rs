//! A number that is typed, with its label to the left.

use egui::{Align2, Rect, Sense, Ui, pos2, vec2};

use crate::controls::{NumberEdit, NumberText, number_field};
use crate::fitted::fitted;
use crate::number::VALUE_WIDTH;
use crate::style::{self, GAP, TEXT, TOUCH_SIZE};
use turns_aloft_words::say;

/// Shows the row. Returns what was typed.
pub fn show(
    ui: &mut Ui,
    numbers: &mut NumberEdit,
    name: &str,
    label: &str,
    shown: NumberText,
) -> Option<String> {
    let width = ui.available_width();
    let room = width - VALUE_WIDTH - GAP;
    let (left, font) = (Align2::LEFT_CENTER, style::text(17.0));
    let written = fitted(ui.painter(), left, label, font, TEXT.get(), room);
    let size = vec2(width, written.height().max(TOUCH_SIZE));
    let (row, _) = ui.allocate_exact_size(size, Sense::hover());
    written.draw(ui.painter(), row.left_center());
    let middle = row.center().y;
    let field = Rect::from_min_max(
        pos2(row.right() - VALUE_WIDTH, middle - 0.5 * TOUCH_SIZE),
        pos2(row.right(), middle + 0.5 * TOUCH_SIZE),
    );
    let accessible_name = || say!("panel-typed", what = label);
    number_field(ui, numbers, name, field, accessible_name, shown)
}
