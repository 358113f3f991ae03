//! The area of a menu that a button of the bar opens.

use egui::scroll_area::ScrollBarVisibility;
use egui::{Response, ScrollArea, Ui};

use crate::controls::scrolling;
use crate::style::WIDE_GAP;

/// Width of a menu: what the smallest screen has room for.
pub const WIDTH: f32 = 254.0;

/// Makes a menu scroll if it is longer than the room between its button and the bottom of the
/// screen.
pub fn as_high_as_fits(ui: &mut Ui, below: &Response, add: impl FnOnce(&mut Ui)) {
    let room = ui.ctx().viewport_rect().bottom() - below.rect.bottom() - 2.0 * WIDE_GAP;
    let area = ScrollArea::vertical()
        .max_height(room)
        // egui's default would make it scroll below a fixed height.
        .min_scrolled_height(room)
        .scroll_bar_visibility(ScrollBarVisibility::AlwaysHidden);
    scrolling(ui, area, add);
}
