//! The card with an explanation, over the panels beside what it explains: nothing moves for it, and it
//! is in sight.

use egui::scroll_area::ScrollBarVisibility;
use egui::{Align2, Area, Frame, Id, Key, Order, Rect, ScrollArea, Ui, pos2};

use crate::controls::swipe::scrolling;
use crate::style::GAP;

/// Greatest width: a line of more letters is hard to read.
const WIDEST: f32 = 430.0;

/// Shows the explanation of `name` below or above `beside`; returns whether a click somewhere, or
/// Escape, closes it.
pub fn explained(ui: &Ui, name: &str, beside: Rect, add: impl FnOnce(&mut Ui)) -> bool {
    let ctx = ui.ctx();
    let id = Id::new(("explained", name));
    // Waits there while what it explains is scrolled out of sight.
    if !ui.is_rect_visible(beside) {
        return false;
    }
    let screen = ctx.viewport_rect().shrink(GAP);
    let frame = Frame::popup(ui.style());
    let margin = frame.total_margin().sum();
    let width = beside.width().clamp(0.5 * WIDEST, WIDEST) - margin.x;
    let left = beside.left().min(screen.right() - width - margin.x);
    let [above, below] = [
        beside.top() - screen.top(),
        screen.bottom() - beside.bottom(),
    ];
    let known: Option<f32> = ctx.data(|data| data.get_temp(id));
    let is_below = known.is_some_and(|height| height + GAP <= below) || below >= above;
    let (pivot, edge, room) = if is_below {
        (Align2::LEFT_TOP, beside.bottom() + GAP, below)
    } else {
        (Align2::LEFT_BOTTOM, beside.top() - GAP, above)
    };
    let was_open = ctx.read_response(id).is_some();
    let area = Area::new(id)
        .order(Order::Foreground)
        .pivot(pivot)
        .fixed_pos(pos2(left, edge))
        .sizing_pass(known.is_none());
    let card = area.show(ctx, |ui| {
        frame.show(ui, |ui| {
            ui.set_width(width);
            let column = ScrollArea::vertical()
                .max_height(room - GAP - margin.y)
                .min_scrolled_height(room - GAP - margin.y)
                .scroll_bar_visibility(ScrollBarVisibility::AlwaysHidden);
            scrolling(ui, column, add);
        });
    });
    let height = card.response.rect.height();
    ctx.data_mut(|data| data.insert_temp(id, height));
    let closes =
        |input: &egui::InputState| input.pointer.any_click() || input.key_pressed(Key::Escape);
    was_open && ctx.input(closes)
}
