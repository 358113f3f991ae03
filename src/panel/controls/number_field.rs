//! A number field: shows a number with its unit; a click turns it into a text field.

use egui::{Align2, CornerRadius, CursorIcon, Rect, Sense, Stroke, StrokeKind, Ui, vec2};

use crate::controls::interact::{id, interact};
use crate::controls::text_field::{Edit, Edited, edit_in};
use crate::controls::{accessibility, touch_targets};
use crate::fitted::fitted;
use crate::style::{self, ACCENT, CARD, LINE, TEXT, WEAK_TEXT};

/// The number field that is being edited; at most one at a time.
#[derive(Debug, Default)]
pub struct NumberEdit {
    open: Option<(String, Edit)>,
}

/// Distance of the letters from the sides.
const EDGE: f32 = 7.0;

/// The field is drawn this much less high than its touch target, at the top.
const LOWER: f32 = 8.0;

/// What a number field shows.
pub struct NumberText {
    /// The number with its unit.
    pub value: String,
    /// The number alone, with which editing begins.
    pub number: String,
    /// The unit, in sight while the number is edited.
    pub sign: &'static str,
}

/// Shows a number with its unit. After a click it can be edited. Returns the text typed.
pub fn number_field(
    ui: &mut Ui,
    state: &mut NumberEdit,
    name: &str,
    rect: Rect,
    accessible_name: impl Fn() -> String,
    text: NumberText,
) -> Option<String> {
    let shown = Rect::from_min_max(rect.min + vec2(0.0, LOWER), rect.max);
    if let Some((_, edit)) = state.open.as_mut().filter(|(open, _)| open == name) {
        touch_targets::note(name, rect);
        let id = id(name).with("edit");
        let field = beside_unit(ui, shown, edit.text(), text.sign);
        let (_, edited) = edit_in(ui, id, field, style::bold(17.0), vec2(10.0, 6.0), edit);
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
    let font = style::bold(17.0);
    let room = shown.width() - 2.0 * EDGE;
    let written = fitted(
        ui.painter(),
        Align2::RIGHT_CENTER,
        &text.value,
        font,
        TEXT.get(),
        room,
    );
    written.draw(ui.painter(), shown.right_center() - vec2(EDGE, 0.0));
    accessibility::number_field(ui, &response, accessible_name, &text.value);
    if response.clicked() {
        state.open = Some((name.to_owned(), Edit::of(text.number)));
    }
    let set = accessibility::text_set(ui, &response);
    if set.is_some() {
        // The next frame describes the new value to AccessKit.
        ui.ctx().request_repaint();
    }
    set
}

/// Writes the unit at the right of a field that is being edited, unless another one has been typed; returns
/// the room that is left.
fn beside_unit(ui: &Ui, field: Rect, typed: &str, sign: &str) -> Rect {
    let has_own = typed.contains(|c: char| c.is_alphabetic() || "%°\"″".contains(c));
    if has_own || sign.is_empty() {
        return field;
    }
    let written = ui.painter().text(
        field.right_center(),
        Align2::RIGHT_CENTER,
        sign,
        style::text(UNIT),
        WEAK_TEXT.get(),
    );
    field.with_max_x(written.left() - 4.0)
}

/// Font size of the unit beside a number that is being edited.
const UNIT: f32 = 15.0;
