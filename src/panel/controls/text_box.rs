//! A text in a box: a click turns it into a text field.

use egui::{CornerRadius, CursorIcon, Sense, Stroke, StrokeKind, Ui, vec2};

use crate::controls::interact::{id, interact};
use crate::controls::text_field::{Edit, Edited, edit_in};
use crate::controls::{accessibility, touch_targets};
use crate::style::{self, ACCENT, CARD, LINE, TEXT, TOUCH_SIZE, WEAK_TEXT};

/// The text that is being edited; at most one at a time.
#[derive(Debug, Default)]
pub struct TextEdit {
    open: Option<(String, Edit)>,
}

/// Distance of the text from the sides of its box.
const EDGE: f32 = 10.0;

/// A text as a box shows it.
pub struct TextBox<'a> {
    pub name: &'a str,
    pub accessible_name: &'a str,
    /// The text to be edited.
    pub text: &'a str,
    /// Shown while there is none.
    pub placeholder: &'a str,
}

impl TextBox<'_> {
    /// Shows it in a row of its own, as high as the text; returns what has been typed instead.
    pub fn show(&self, ui: &mut Ui, state: &mut TextEdit) -> Option<String> {
        let (shown, colour) = if self.text.is_empty() {
            (self.placeholder, WEAK_TEXT.get())
        } else {
            (self.text, TEXT.get())
        };
        let width = ui.available_width();
        let room = width - 2.0 * EDGE;
        let galley = (ui.painter()).layout(shown.to_owned(), style::text(17.0), colour, room);
        let height = (galley.size().y + 2.0 * EDGE).max(TOUCH_SIZE);
        let (rect, _) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
        if let Some((_, edit)) = state.open.as_mut().filter(|(open, _)| open == self.name) {
            touch_targets::note(self.name, rect);
            let id = id(self.name).with("edit");
            let margin = vec2(EDGE, 0.5 * (height - 24.0));
            let (_, edited) = edit_in(ui, id, rect, style::text(17.0), margin, edit);
            if edited != Edited::NotYet {
                state.open = None;
            }
            return match edited {
                Edited::To(text) => Some(text),
                Edited::NotYet | Edited::Cancelled => None,
            };
        }
        let response = interact(ui, self.name, rect, Sense::click());
        let response = response.on_hover_cursor(CursorIcon::Text);
        let edge = if response.hovered() { ACCENT } else { LINE };
        ui.painter().rect(
            rect,
            CornerRadius::same(8),
            CARD.get(),
            Stroke::new(1.0, edge.get()),
            StrokeKind::Inside,
        );
        let at = rect.left_center() + vec2(EDGE, -0.5 * galley.size().y);
        ui.painter().galley(at, galley, colour);
        accessibility::text_field(ui, &response, self.accessible_name, shown);
        if response.clicked() {
            let edit = Edit::of(self.text.to_owned());
            state.open = Some((self.name.to_owned(), edit));
        }
        accessibility::text_set(ui, &response)
    }
}
