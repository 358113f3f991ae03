//! Warnings that the jump is beyond what has been seen in people, and in which respects.

use egui::{CornerRadius, Id, RichText, Sense, Ui, pos2, vec2};

use crate::controls::{EXPLANATION_MARK_RADIUS, explained, explanation_area, explanation_mark};
use crate::style::{self, CARD, GAP, TOUCH_SIZE, WARNING, WIDE_GAP};
use crate::text::small;
use turns_aloft_describe::beyond;
use turns_aloft_scenario::beyond::Respect;
use turns_aloft_session::Session;

const HEIGHT_ID: &str = "height of beyond seen";

/// Below the turns: the respects, if there are any; a click explains what has been seen.
pub fn under_turns(ui: &mut Ui, session: &Session) {
    let respects = session.beyond_seen();
    let units = session.units();
    let width = ui.available_width();
    let Some(said) = beyond::short(respects, units) else {
        let height = steady_height(ui, session, HEIGHT_ID, 0.0);
        if height > 0.0 {
            ui.allocate_exact_size(vec2(width, height), Sense::hover());
        }
        return;
    };
    let id = Id::new("beyond seen");
    let open = ui
        .data(|data| data.get_temp::<bool>(id))
        .unwrap_or_default();
    let room = width - 2.0 * WIDE_GAP - 2.0 * EXPLANATION_MARK_RADIUS - GAP;
    let text = ui
        .painter()
        .layout(said.clone(), style::bold(17.0), WARNING.get(), room);
    let height = steady_height(ui, session, HEIGHT_ID, TOUCH_SIZE.max(text.size().y + GAP));
    if height == 0.0 {
        return;
    }
    let (rect, _) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
    let meaning = || beyond::meaning(respects, units);
    let response = explanation_area(ui, "beyond seen", rect, open, || said.clone(), meaning);
    let painter = &ui.painter().with_clip_rect(rect.intersect(ui.clip_rect()));
    painter.rect_filled(rect, CornerRadius::same(style::CORNER_RADIUS), CARD.get());
    let middle = rect.center().y;
    let at = pos2(rect.left() + WIDE_GAP, middle - 0.5 * text.size().y);
    painter.galley(at, text, WARNING.get());
    let mark = pos2(rect.right() - WIDE_GAP - EXPLANATION_MARK_RADIUS, middle);
    explanation_mark(painter, mark, open);
    if response.clicked() {
        ui.data_mut(|data| data.insert_temp(id, !open));
    }
    if open && explained(ui, "beyond seen", rect, |ui| small(ui, &meaning())) {
        ui.data_mut(|data| data.insert_temp(id, false));
    }
}

/// The height `wanted`, or the previous one while a control is dragged, so that the control stays
/// under the finger.
pub fn steady_height(ui: &Ui, session: &Session, name: &str, wanted: f32) -> f32 {
    let id = Id::new(name);
    let before = ui.data(|data| data.get_temp::<f32>(id));
    match before {
        Some(before) if session.is_dragging() => before,
        _ => {
            ui.data_mut(|data| data.insert_temp(id, wanted));
            wanted
        }
    }
}

/// The respects, on a card or below a name.
pub fn line(ui: &mut Ui, session: &Session, respects: &[Respect]) {
    if let Some(said) = beyond::short(respects, session.units()) {
        ui.label(RichText::new(said).size(15.0).color(WARNING.get()));
    }
}

/// What has been seen in these respects, if there are any.
pub fn meaning(ui: &mut Ui, session: &Session, respects: &[Respect]) {
    if !respects.is_empty() {
        small(ui, &beyond::meaning(respects, session.units()));
    }
}
