//! Beside the turns of a jump: in which respects it is beyond what has been seen.

use egui::{
    Align2, Color32, CornerRadius, Id, Painter, Rect, RichText, ScrollArea, Sense, Ui, pos2, vec2,
};

use super::controls::{EXPLANATION_MARK_RADIUS, explanation_area, explanation_mark};
use super::style::{self, APART, NEAR, SNOW, TOUCH, VERMILION};
use super::text::small;
use crate::scenario::beyond::Respect;
use crate::session::{Session, beyond};

/// The most of the screen's height that the meaning takes; what is longer scrolls.
const MEANING: f32 = 0.2;

const STEADY: &str = "height of beyond seen";

/// What it leaves free below it where it does not scroll with the rest: the bar of the turns, and the
/// beginning of what scrolls.
const BELOW: f32 = 3.0 * TOUCH;

/// Under the answer: what is beyond, and touched, how far people have been seen to go. Nothing where
/// nothing is.
pub fn under_turns(ui: &mut Ui, session: &Session) {
    let respects = session.beyond_seen();
    let units = &session.units;
    let width = ui.available_width();
    let Some(said) = beyond::short(respects, units) else {
        let height = steady_height(ui, session, STEADY, 0.0);
        if height > 0.0 {
            ui.allocate_exact_size(vec2(width, height), Sense::hover());
        }
        return;
    };
    let id = Id::new("beyond seen");
    let open = ui
        .data(|data| data.get_temp::<bool>(id))
        .unwrap_or_default();
    let room = width - 2.0 * APART - 2.0 * EXPLANATION_MARK_RADIUS - NEAR;
    let text = ui
        .painter()
        .layout(said.clone(), style::bold(17.0), VERMILION.get(), room);
    let height = steady_height(ui, session, STEADY, TOUCH.max(text.size().y + NEAR));
    if height == 0.0 {
        return;
    }
    let (rect, _) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
    let meaning = || beyond::meaning(respects, units);
    let response = explanation_area(ui, "beyond seen", rect, open, || said.clone(), meaning);
    let painter = &ui.painter().with_clip_rect(rect.intersect(ui.clip_rect()));
    painter.rect_filled(rect, CornerRadius::same(style::ROUND), SNOW.get());
    let middle = rect.center().y;
    let at = pos2(rect.left() + APART, middle - 0.5 * text.size().y);
    painter.galley(at, text, VERMILION.get());
    let mark = pos2(rect.right() - APART - EXPLANATION_MARK_RADIUS, middle);
    explanation_mark(painter, mark, open);
    if response.clicked() {
        ui.data_mut(|data| data.insert_temp(id, !open));
    }
    if open {
        let most = MEANING * ui.ctx().viewport_rect().height();
        let most = most.min(ui.available_height() - BELOW).max(TOUCH);
        ScrollArea::vertical()
            .id_salt(id)
            .max_height(most)
            .min_scrolled_height(most)
            .show(ui, |ui| small(ui, &meaning()));
    }
}

/// The height to take: the one wanted, but while a control is held the one of before. Whatever comes and
/// goes above it, what a finger holds stays under it.
pub fn steady_height(ui: &Ui, session: &Session, name: &str, goal: f32) -> f32 {
    let id = Id::new(name);
    let before = ui.data(|data| data.get_temp::<f32>(id));
    match before {
        Some(before) if session.is_dragging() => before,
        _ => {
            ui.data_mut(|data| data.insert_temp(id, goal));
            goal
        }
    }
}

/// On a card or under a name: what is beyond, in as many lines as it takes; nothing where nothing is.
pub fn line(ui: &mut Ui, session: &Session, respects: &[Respect]) {
    if let Some(said) = beyond::short(respects, &session.units) {
        ui.label(RichText::new(said).size(15.0).color(VERMILION.get()));
    }
}

/// The same with how far people have been seen to go.
pub fn lines(ui: &mut Ui, session: &Session, respects: &[Respect]) {
    line(ui, session, respects);
    if !respects.is_empty() {
        small(ui, &beyond::meaning(respects, &session.units));
    }
}

/// Under what is written in a row that is touched: that it is beyond, in one line as small as it has
/// to be.
pub fn in_row(painter: &Painter, said: &str, room: Rect, ink: Color32) {
    let size = style::fitting_text(painter, said, 14.0, room.width());
    painter.text(
        room.left_center(),
        Align2::LEFT_CENTER,
        said,
        style::text(size),
        ink,
    );
}
