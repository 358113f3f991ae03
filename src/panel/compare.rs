//! Compare: the difference to another attempt, and the attempts to choose from.

mod kept;
mod table;

use egui::text::LayoutJob;
use egui::{Align2, Color32, FontId, Painter, Rect, Response, RichText, Sense, Ui, pos2, vec2};
use turns_aloft_describe::Label;

use crate::bar::PageCommand;
use crate::beyond::{self, in_row};
use crate::cautions;
pub use crate::compare::kept::KeptJumps;
use crate::controls::{Button, fold};
use crate::folded_charts;
use crate::style::{self, GAP, TOUCH_SIZE, WARNING, WEAK_TEXT, WIDE_GAP};
use crate::text::{card, heading, small};
use turns_aloft_scenario::starts;
use turns_aloft_session::Session;
use turns_aloft_session::compare::{Which, describe};
use turns_aloft_words::say;
use turns_aloft_words::text;

/// Shows the answer; `charts`: whether the charts are shown here. Returns a command for the page.
pub fn show(
    ui: &mut Ui,
    session: &mut Session,
    kept_jumps: &mut KeptJumps,
    charts: bool,
) -> Option<PageCommand> {
    difference(ui, session);
    if charts && session.reference().is_some() {
        ui.add_space(WIDE_GAP);
        folded_charts(ui, session, 270.0);
    }
    heading(ui, text("panel-compare-with"));
    fixed_references(ui, session);
    heading(ui, text("panel-kept-jumps"));
    let command = kept::show(ui, session, kept_jumps);
    ui.add_space(WIDE_GAP);
    fold(ui, "Starting points", text("panel-starts"), false, |ui| {
        starting_points(ui, session);
    });
    cautions::show(ui);
    command
}

/// The difference, once there is an attempt to compare with.
fn difference(ui: &mut Ui, session: &Session) {
    if session.reference().is_none() {
        card(ui, |ui| {
            ui.label(RichText::new(text("panel-compare-none")).font(style::bold(18.0)));
            small(ui, text("panel-compare-how"));
        });
        return;
    }
    let Some(compared) = session.compared() else {
        return;
    };
    card(ui, |ui| {
        let sentence = compared.sentence().replace(" %", "\u{a0}%");
        ui.label(RichText::new(sentence).font(style::bold(18.0)));
        if compared.parts.is_empty() {
            beyond::line(ui, session, session.beyond_seen());
            return;
        }
        ui.add_space(GAP);
        table::show(ui, session, compared);
        small(ui, describe::ORDER.text());
    });
}

/// The references that can always be chosen: none, and the jump as opened.
fn fixed_references(ui: &mut Ui, session: &mut Session) {
    let which = session.reference().map(|reference| reference.which.clone());
    let row = allocate(ui, TOUCH_SIZE);
    let (left, as_opened) = row.split_left_right_at_x(row.left() + 0.36 * row.width());
    let none_rect = Rect::from_min_max(left.min, pos2(left.right() - GAP, left.bottom()));
    let none = which.is_none();
    let label = text("panel-reference-nothing");
    let button = Button::labelled("reference:none", label).chosen(none);
    if button.show(ui, none_rect).clicked() && !none {
        session.clear_reference();
    }
    let chosen = which == Some(Which::AsOpened);
    let label = text("panel-reference-as-opened");
    let button = Button::labelled("reference:as opened", label).chosen(chosen);
    if button.show(ui, as_opened).clicked() && !chosen {
        session.set_reference(Which::AsOpened);
    }
    if which == Some(Which::Linked)
        && let Some(reference) = session.reference()
    {
        small(
            ui,
            &say!("panel-reference-linked", name = reference.name.as_str()),
        );
    }
}

fn starting_points(ui: &mut Ui, session: &mut Session) {
    let present = session.reference().map(|reference| reference.which.clone());
    for start in starts::all() {
        let which = Which::Start(start.name.to_owned());
        let chosen = present.as_ref() == Some(&which);
        let name = format!("reference:{}", start.name);
        if attempt_button(ui, &name, start.label(), "", false, chosen).clicked() {
            toggle_reference(session, which, chosen);
        }
    }
    ui.add_space(GAP);
}

/// Compares with an attempt, or stops comparing with it.
fn toggle_reference(session: &mut Session, which: Which, chosen: bool) {
    if chosen {
        session.clear_reference();
    } else {
        session.set_reference(which);
    }
}

/// A button that chooses a reference attempt: its name, its result, and whether that is beyond what
/// has been seen.
fn attempt_button(
    ui: &mut Ui,
    target: &str,
    name: &str,
    came_to: &str,
    is_beyond: bool,
    chosen: bool,
) -> Response {
    let said = if came_to.is_empty() {
        say!("panel-compare-with-one", name = name)
    } else {
        say!("panel-compare-with-result", name = name, result = came_to)
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
            came_to,
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
fn elided(painter: &Painter, room: Rect, text: &str, font: FontId, colour: Color32) {
    elided_after(1, painter, room, text, font, colour);
}

/// Writes at most `rows` lines; what is longer ends with an ellipsis.
fn elided_after(
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

fn allocate(ui: &mut Ui, height: f32) -> Rect {
    ui.allocate_exact_size(vec2(ui.available_width(), height), Sense::hover())
        .0
}
