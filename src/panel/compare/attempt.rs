//! The buttons that choose a reference attempt.

use egui::text::LayoutJob;
use egui::{Align2, Color32, FontId, Painter, Rect, Response, Sense, Ui, pos2, vec2};

use crate::beyond::in_row;
use crate::controls::Button;
use crate::style::{self, GAP, WARNING, WEAK_TEXT};
use turns_aloft_session::Session;
use turns_aloft_session::compare::Which;
use turns_aloft_words::{say, text};

/// Compares with an attempt, or stops comparing with it.
pub fn toggle_reference(session: &mut Session, which: Which, chosen: bool) {
    if chosen {
        session.clear_reference();
    } else {
        session.set_reference(which);
    }
}

/// A button that chooses a reference attempt: its name, its result, and whether that is beyond what
/// has been seen.
pub fn attempt_button(
    ui: &mut Ui,
    target: &str,
    name: &str,
    outcome: &str,
    is_beyond: bool,
    chosen: bool,
) -> Response {
    let said = if outcome.is_empty() {
        say!("panel-compare-with-one", name = name)
    } else {
        say!("panel-compare-with-result", name = name, result = outcome)
    };
    let beyond = text("beyond-seen-in-short");
    let said = if is_beyond {
        format!("{said}, {beyond}")
    } else {
        said
    };
    let draw = |painter: &Painter, rect: Rect, colour: Color32| {
        let second = if chosen { colour } else { WEAK_TEXT.get() };
        let right = painter.text(
            rect.right_center() - vec2(12.0, 0.0),
            Align2::RIGHT_CENTER,
            outcome,
            style::bold(16.0),
            second,
        );
        let room = Rect::from_min_max(
            rect.min + vec2(12.0, 0.0),
            pos2(right.left() - GAP, rect.bottom()),
        );
        if is_beyond {
            let (upper, lower) = room.split_top_bottom_at_y(rect.top() + 24.0);
            elided(painter, upper, name, style::text(16.0), colour);
            let warning = if chosen { colour } else { WARNING.get() };
            in_row(painter, beyond, lower, warning);
        } else {
            elided(painter, room, name, style::text(16.0), colour);
        }
    };
    Button::drawn(target, &said, draw)
        .toggle(chosen)
        .show_in_row(ui)
}

/// Writes one line; if it is too long, it ends with an ellipsis.
pub fn elided(painter: &Painter, room: Rect, text: &str, font: FontId, colour: Color32) {
    elided_after(1, painter, room, text, font, colour);
}

/// Writes at most `rows` lines; what is longer ends with an ellipsis.
pub fn elided_after(
    rows: usize,
    painter: &Painter,
    room: Rect,
    text: &str,
    font: FontId,
    colour: Color32,
) {
    let mut job = LayoutJob::simple(text.to_owned(), font, colour, room.width());
    job.wrap.max_rows = rows;
    job.wrap.break_anywhere = rows == 1;
    let galley = painter.layout_job(job);
    let at = pos2(room.left(), room.center().y - 0.5 * galley.size().y);
    painter.galley(at, galley, colour);
}

pub fn allocate(ui: &mut Ui, height: f32) -> Rect {
    ui.allocate_exact_size(vec2(ui.available_width(), height), Sense::hover())
        .0
}
