//! The form of a lesson that somebody makes: the whole, or one of its steps.

mod answer;
mod give;
mod step;
mod whole;
mod written;

use egui::{RichText, Ui};

use crate::command::PageCommand;
use crate::lesson::Edits;
use crate::style::{self, GAP};
use crate::text::{small, warned};
use turns_aloft_session::Session;
use turns_aloft_session::lesson_draft::{LessonDraft, fault, place};
use turns_aloft_words::text;

pub use crate::lesson_draft::give::Given;

/// The form; what needs the browser is returned.
pub fn show(
    ui: &mut Ui,
    session: &mut Session,
    draft: &LessonDraft,
    edits: &mut Edits,
    given: &Given,
) -> Option<PageCommand> {
    match draft.step() {
        Some(step) => {
            step::show(ui, session, draft, step, edits);
            None
        }
        None => whole::show(ui, session, draft, edits, given),
    }
}

/// What stays in sight above it: what is shown, and what is still missing or wrong in that.
pub fn header(ui: &mut Ui, draft: &LessonDraft) {
    ui.add_space(GAP);
    small(ui, text("draft"));
    ui.label(RichText::new(place(draft)).font(style::bold(20.0)));
    let found = match draft.at() {
        Some(at) => draft.fault_of(at).cloned(),
        None => draft.own_fault(),
    };
    match found {
        Some(found) => warned(ui, &fault(&found)),
        None => small(ui, text("draft-kept")),
    }
    ui.add_space(GAP);
}
