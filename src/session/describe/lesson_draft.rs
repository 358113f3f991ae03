//! The draft of a lesson in words: what is missing or wrong in it, and its lines of text.

use std::borrow::Cow;

use crate::describe::reading::{Group, Reading, line};
use crate::session::Session;
use crate::state::lesson_draft::{DraftFault, LessonDraft};
use turns_aloft_describe::Sentence;
use turns_aloft_lesson::fault::Wrong;
use turns_aloft_words::{say, text};

/// What is missing or wrong, in one sentence.
pub fn fault(fault: &DraftFault) -> String {
    let missing = match fault {
        DraftFault::Wrong(Wrong::NoText(key)) => match *key {
            "title" => text("draft-no-title"),
            "for_whom" => text("draft-for-nobody"),
            "question" => text("draft-no-question"),
            "text" => text("draft-no-option"),
            "observe" => text("draft-nothing-to-observe"),
            "explanation" => text("draft-no-explanation"),
            _ => text("draft-no-plan"),
        },
        DraftFault::NothingChanged => text("draft-nothing-changed"),
        DraftFault::Wrong(why) => return say!("draft-wrong", why = why.sentence()),
        DraftFault::Unanswerable(why) => return say!("draft-wrong", why = why.sentence()),
    };
    missing.to_owned()
}

/// "Step 2 of 3", or what the whole is called.
pub fn place(draft: &LessonDraft) -> String {
    let title = draft.lesson().title.text();
    match draft.at() {
        Some(at) => say!(
            "lesson-place",
            place = at + 1,
            steps = draft.lesson().steps.len()
        ),
        None if title.is_empty() => text("draft-title-none").to_owned(),
        None => title.to_owned(),
    }
}

pub(crate) fn lines(session: &Session) -> Vec<Reading> {
    let Some(draft) = session.lesson_draft() else {
        return Vec::new();
    };
    let line = |quantity: &'static str, label: &'static str, said: String| {
        let (quantity, label) = (Cow::Borrowed(quantity), Cow::Borrowed(label));
        line(Group::Answer, quantity, label, said, String::new())
    };
    let mut lines = vec![line("lesson draft", text("draft"), place(draft))];
    let found = match draft.at() {
        Some(at) => draft.fault_of(at).cloned(),
        None => draft.own_fault(),
    };
    if let Some(found) = found {
        lines.push(line(
            "lesson draft:fault",
            text("draft-missing"),
            fault(&found),
        ));
    }
    lines
}
