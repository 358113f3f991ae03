//! Has the QR code made that opens the lesson that is made.

use std::cell::RefCell;
use std::sync::Arc;

use crate::documents::Document;
use crate::lesson::Lesson;
use crate::page::documents;
use crate::page::wake::wake;
use crate::panel::Given;
use crate::session::Session;

/// What was made of a lesson, or why nothing was.
struct Made {
    lesson: Arc<Lesson>,
    rows: Result<String, String>,
}

thread_local! {
    /// Handled by the app in its next frame.
    static MADE: RefCell<Option<Made>> = const { RefCell::new(None) };
}

pub fn make(session: &Session) {
    let Some(draft) = session.lesson_draft() else {
        return;
    };
    let lesson = Arc::clone(draft.version());
    documents::make(Document::LessonCode, session, move |rows| {
        MADE.replace(Some(Made { lesson, rows }));
        wake();
    });
}

/// Gives what was made to the panels, or says why nothing was.
pub fn take_made(session: &mut Session, given: &mut Given) {
    let Some(Made { lesson, rows }) = MADE.take() else {
        return;
    };
    match rows {
        Ok(rows) => given.take_code(lesson, &rows),
        Err(why) => session.say(why),
    }
}
