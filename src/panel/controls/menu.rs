//! A menu that a button opens, and its items.

use egui::{Popup, Response, RichText, Ui, vec2};

use crate::controls::interact::id;
use crate::controls::touch_targets;
use crate::style::{self, TOUCH_SIZE};

/// The menu of a button, which AccessKit gets to know as its.
pub fn menu(button: &Response) -> Popup<'_> {
    let popup = Popup::menu(button);
    let (id, is_open) = (popup.get_id(), popup.is_open());
    button.ctx.accesskit_node_builder(button.id, |node| {
        node.set_expanded(is_open);
        if is_open {
            node.push_controlled(id.accesskit_id());
        }
    });
    popup
}

/// Shows an item; the `chosen` one has a frame and bold text.
pub fn menu_item(ui: &mut Ui, name: &str, label: &str, width: f32, chosen: bool) -> Response {
    let text = RichText::new(label);
    let text = if chosen {
        text.font(style::bold(16.0))
    } else {
        text
    };
    // egui's own button, because a click on it closes the menu.
    let button = egui::Button::new(text).frame(chosen).wrap();
    let item = ui.push_id(id(name), |ui| ui.add_sized(vec2(width, TOUCH_SIZE), button));
    touch_targets::note(name, item.inner.rect);
    // Also where it is not a pointer that clicks.
    if item.inner.clicked() {
        ui.close();
    }
    item.inner
}
