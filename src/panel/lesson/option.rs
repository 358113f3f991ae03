//! A button with as much text as an option of an answer takes.

use egui::{Response, Sense, Ui, vec2};

use crate::controls::Button;
use crate::style::{self, GAP, TEXT, TOUCH_SIZE};

/// Distance of the text from the sides.
const EDGE: f32 = 12.0;

pub fn show(ui: &mut Ui, name: &str, label: &str, chosen: bool) -> Response {
    let width = ui.available_width();
    let room = width - 2.0 * EDGE;
    let font = style::text(17.0);
    let galley = (ui.painter()).layout(label.to_owned(), font.clone(), TEXT.get(), room);
    let height = (galley.size().y + 2.0 * EDGE).max(TOUCH_SIZE);
    let (rect, _) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
    ui.add_space(GAP - ui.spacing().item_spacing.y);
    let text = label.to_owned();
    let button = Button::drawn(name, label, move |painter, rect, colour| {
        let galley = painter.layout(text, font, colour, room);
        let at = rect.left_center() + vec2(EDGE, -0.5 * galley.size().y);
        painter.galley(at, galley, colour);
    });
    button.chosen(chosen).show(ui, rect)
}
