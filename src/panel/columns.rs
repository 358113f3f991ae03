//! A column of the page: what stays in sight at its top, and what scrolls below.

use egui::{Rect, ScrollArea, Sense, Ui, UiBuilder, pos2, vec2};

use crate::controls::scrolling;
use crate::style::{BACKGROUND, GAP, TOUCH_SIZE, WIDE_GAP};

/// A column that scrolls.
pub fn column(ui: &mut Ui, name: &str, rect: Rect, add: impl FnOnce(&mut Ui)) {
    ui.painter().rect_filled(rect, 0.0, BACKGROUND.get());
    let inside = rect.shrink2(vec2(WIDE_GAP - 2.0, 0.0));
    let mut child = ui.new_child(UiBuilder::new().max_rect(inside).id_salt(name));
    let area = ScrollArea::vertical()
        .id_salt(name)
        .auto_shrink(false)
        .scroll_bar_visibility(egui::scroll_area::ScrollBarVisibility::AlwaysHidden);
    scrolling(&mut child, area, |ui| {
        add(ui);
        ui.add_space(WIDE_GAP);
    });
}

/// The header of a column, which does not scroll; returns the area below it.
pub fn header(ui: &mut Ui, rect: Rect, add: impl FnOnce(&mut Ui)) -> Rect {
    ui.painter().rect_filled(rect, 0.0, BACKGROUND.get());
    let inside = rect.shrink2(vec2(WIDE_GAP - 2.0, 0.0));
    let mut child = ui.new_child(UiBuilder::new().max_rect(inside).id_salt("header"));
    add(&mut child);
    let below = (child.min_rect().bottom() + GAP).min(rect.bottom());
    Rect::from_min_max(pos2(rect.left(), below), rect.max)
}

/// Two halves of a row.
pub fn halves(ui: &mut Ui) -> [Rect; 2] {
    let size = vec2(ui.available_width(), TOUCH_SIZE);
    let (row, _) = ui.allocate_exact_size(size, Sense::hover());
    let (left, right) = row.split_left_right_at_x(row.center().x);
    [
        left.with_max_x(left.right() - 0.5 * GAP),
        right.with_min_x(right.left() + 0.5 * GAP),
    ]
}
