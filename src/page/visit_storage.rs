//! Stores the visit (present jump, undo steps, settings) in the browser's storage, from which a
//! reload restores it.

use web_sys::Storage;

use crate::page::{address, dom};
use crate::session::{Session, VisitState};
use crate::words;

const NAME: &str = "turns-aloft/session";

/// The browser's local storage; none where it is blocked.
pub fn storage() -> Option<Storage> {
    dom::window()?.local_storage().ok()?
}

/// Restores the last visit, if one is stored.
pub fn restore(session: &mut Session) {
    if let Some(text) = storage().and_then(|storage| storage.get_item(NAME).ok()?) {
        session.restore(&text);
    }
}

/// What was stored last, and whether it has been said that nothing can be.
#[derive(Default)]
pub struct StoredVisit {
    last: Option<VisitState>,
    warned: bool,
}

/// Stores the session after a change, but not while a control is dragged.
pub fn store(session: &mut Session, stored: &mut StoredVisit) {
    let StoredVisit { last, warned } = stored;
    if session.is_dragging() {
        return;
    }
    let state = Some(session.visit_state());
    if *last == state {
        return;
    }
    let text = session.keep();
    let is_stored = storage().is_some_and(|storage| storage.set_item(NAME, &text).is_ok());
    // Without storage the address holds the jump, for as long as this page is open.
    if !is_stored {
        address::store_document(session);
    }
    // A visitor who has changed nothing has nothing to lose.
    if !is_stored && last.is_some() && !*warned {
        *warned = true;
        session.say(words::text("page-keeps-nothing"));
    }
    *last = state;
}
