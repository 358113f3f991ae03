//! A number field: shows a number with its unit; a click turns it into a text field.

use egui::{Align2, CornerRadius, CursorIcon, Rect, Sense, Stroke, StrokeKind, Ui, vec2};

use crate::controls::interact::{id, interact};
use crate::controls::text_field::{Edit, Edited, edit_in};
use crate::controls::{accessibility, touch_targets};
use crate::style::{self, ACCENT, CARD, LINE, TEXT};

/// The number field that is being edited; at most one at a time.
#[derive(Debug, Default)]
pub struct NumberEdit {
    open: Option<(String, Edit)>,
}

/// The field is drawn this much less high than its touch target, at the top.
const LOWER: f32 = 8.0;

/// Shows `value`, a number with its unit. After a click it can be edited, starting from `number`,
/// the same without the unit. Returns the text typed.
pub fn number_field(
    ui: &mut Ui,
    state: &mut NumberEdit,
    name: &str,
    rect: Rect,
    accessible_name: impl Fn() -> String,
    [value, number]: [String; 2],
) -> Option<String> {
    let shown = Rect::from_min_max(rect.min + vec2(0.0, LOWER), rect.max);
    if let Some((_, edit)) = state.open.as_mut().filter(|(open, _)| open == name) {
        touch_targets::note(name, rect);
        let id = id(name).with("edit");
        let (_, edited) = edit_in(ui, id, shown, style::bold(17.0), vec2(10.0, 6.0), edit);
        if edited != Edited::NotYet {
            state.open = None;
        }
        return match edited {
            Edited::To(text) => Some(text),
            Edited::NotYet | Edited::Cancelled => None,
        };
    }
    let response = interact(ui, name, rect, Sense::click()).on_hover_cursor(CursorIcon::Text);
    let stroke = if response.hovered() {
        ACCENT.get()
    } else {
        LINE.get()
    };
    ui.painter().rect(
        shown,
        CornerRadius::same(8),
        CARD.get(),
        Stroke::new(1.0, stroke),
        StrokeKind::Inside,
    );
    ui.painter().text(
        shown.right_center() - vec2(10.0, 0.0),
        Align2::RIGHT_CENTER,
        &value,
        style::bold(17.0),
        TEXT.get(),
    );
    accessibility::number_field(ui, &response, accessible_name, &value);
    if response.clicked() {
        state.open = Some((name.to_owned(), Edit::of(number)));
    }
    let set = accessibility::text_set(ui, &response);
    if set.is_some() {
        // The next frame describes the new value to AccessKit.
        ui.ctx().request_repaint();
    }
    set
}
