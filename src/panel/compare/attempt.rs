//! The buttons that choose a reference attempt.

use std::sync::Arc;

use egui::text::LayoutJob;
use egui::{Align2, Color32, FontId, Galley, Painter, Rect, Response, Sense, Ui, pos2, vec2};

use crate::controls::Button;
use crate::fitted::fitted;
use crate::style::{self, GAP, ON_ACCENT, TEXT, TOUCH_SIZE, WARNING, WEAK_TEXT};
use turns_aloft_session::Session;
use turns_aloft_session::compare::Which;
use turns_aloft_words::{say, text};

/// Distance of the letters from the sides of a button.
const EDGE: f32 = 12.0;

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
    let usual = if chosen { ON_ACCENT.get() } else { TEXT.get() };
    let second = if chosen { usual } else { WEAK_TEXT.get() };
    let warning = if chosen { usual } else { WARNING.get() };
    let width = ui.available_width();
    let painter = ui.painter();
    let outcome = painter.layout_no_wrap(outcome.to_owned(), style::bold(16.0), second);
    let room = width - 2.0 * EDGE - outcome.size().x - GAP;
    let name = in_lines(painter, room, name, style::text(16.0), usual);
    let note = if is_beyond { beyond } else { "" };
    let (left, small) = (Align2::LEFT_TOP, style::text(14.0));
    let note = fitted(painter, left, note, small, warning, room);
    let foot = if is_beyond { note.height() } else { 0.0 };
    let high = name.size().y + foot;
    let rect = allocate(ui, TOUCH_SIZE.max(high + GAP));
    let draw = |painter: &Painter, rect: Rect, _| {
        let at = rect.right_center() - vec2(EDGE + outcome.size().x, 0.5 * outcome.size().y);
        painter.galley(at, outcome, second);
        let at = rect.left_center() + vec2(EDGE, -0.5 * high);
        let below = at + vec2(0.0, name.size().y);
        painter.galley(at, name, usual);
        if is_beyond {
            note.draw(painter, below);
        }
    };
    Button::drawn(target, &said, draw)
        .toggle(chosen)
        .show(ui, rect)
}

/// Writes a text in the middle of `room`'s height.
pub fn elided(painter: &Painter, room: Rect, text: &str, font: FontId, colour: Color32) {
    let galley = in_lines(painter, room.width(), text, font, colour);
    let at = pos2(room.left(), room.center().y - 0.5 * galley.size().y);
    painter.galley(at, galley, colour);
}

/// A text in one line, smaller if it is long, or in two; what is longer still, as a name of the user's
/// own may be, ends with an ellipsis.
fn in_lines(
    painter: &Painter,
    room: f32,
    text: &str,
    font: FontId,
    colour: Color32,
) -> Arc<Galley> {
    let size = style::fitting_in(painter, text, font.clone(), room);
    let font = FontId { size, ..font };
    let mut job = LayoutJob::simple(text.to_owned(), font, colour, room);
    job.wrap.max_rows = 2;
    painter.layout_job(job)
}

pub fn allocate(ui: &mut Ui, height: f32) -> Rect {
    ui.allocate_exact_size(vec2(ui.available_width(), height), Sense::hover())
        .0
}
