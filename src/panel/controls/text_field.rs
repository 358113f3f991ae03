//! A text field.

use egui::text::{CCursor, CCursorRange};
use egui::text_edit::TextEditState;
use egui::{FontId, Id, Key, Rect, Response, TextEdit, Ui, UiBuilder, Vec2, vec2};

use crate::controls::interact::id;
use crate::controls::{accessibility, touch_targets};
use crate::style;

/// A text that is being edited.
#[derive(Debug, Default)]
pub struct Edit {
    text: String,
    /// The field has not been shown yet and has to request the keyboard focus.
    is_new: bool,
}

impl Edit {
    pub fn of(text: String) -> Self {
        Self { text, is_new: true }
    }

    pub fn text(&self) -> &str {
        &self.text
    }
}

/// The result of one frame of editing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Edited {
    /// Still being edited.
    NotYet,
    /// The field has lost the focus, or Enter was pressed.
    To(String),
    /// Escape was pressed.
    Cancelled,
}

/// Shows a text field.
pub fn text_field(
    ui: &mut Ui,
    name: &str,
    rect: Rect,
    accessible_name: &str,
    edit: &mut Edit,
) -> Edited {
    let font = style::text(17.0);
    touch_targets::note(name, rect);
    let (field, edited) = edit_in(ui, id(name), rect, font, vec2(10.0, 10.0), edit);
    accessibility::text_field(ui, &field, accessible_name, edit.text());
    match accessibility::text_set(ui, &field) {
        Some(text) => Edited::To(text),
        None => edited,
    }
}

/// Shows egui's text field. At first the whole text is selected, so that typing replaces it.
pub(super) fn edit_in(
    ui: &mut Ui,
    id: Id,
    rect: Rect,
    font: FontId,
    margin: Vec2,
    edit: &mut Edit,
) -> (Response, Edited) {
    if std::mem::take(&mut edit.is_new) {
        let all = CCursorRange::two(CCursor::new(0), CCursor::new(edit.text.chars().count()));
        let mut state = TextEditState::default();
        state.cursor.set_char_range(Some(all));
        state.store(ui.ctx(), id);
        ui.memory_mut(|memory| memory.request_focus(id));
    }
    // In a child `Ui`, so that the field does not move what is below it.
    let field = ui.new_child(UiBuilder::new().max_rect(rect)).add_sized(
        rect.size(),
        TextEdit::singleline(&mut edit.text)
            .id(id)
            .font(font)
            .margin(margin),
    );
    let edited = if !field.lost_focus() {
        Edited::NotYet
    } else if ui.input(|input| input.key_pressed(Key::Escape)) {
        Edited::Cancelled
    } else {
        Edited::To(edit.text.clone())
    };
    (field, edited)
}
