//! Stores the visit (present jump, undo steps, settings) in the browser's storage, from which a
//! reload restores it.

use bevy::prelude::*;
use web_sys::Storage;

use crate::page::{address, dom};
use crate::session::{Session, VisitState};
use crate::stage::current_session::CurrentSession;
use crate::words;

const NAME: &str = "turns-aloft/session";

pub fn plugin(app: &mut App) {
    app.add_systems(Last, store.after(address::remove_stale_link));
}

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

/// Stores the session after a change, but not while a control is dragged.
fn store(
    mut session: ResMut<CurrentSession>,
    mut last: Local<Option<VisitState>>,
    mut warned: Local<bool>,
) {
    if session.is_dragging() {
        return;
    }
    let state = Some(session.visit_state());
    if *last == state {
        return;
    }
    let text = session.keep();
    let stored = storage().is_some_and(|storage| storage.set_item(NAME, &text).is_ok());
    // Without storage the address holds the jump, for as long as this page is open.
    if !stored {
        address::store_document(&session);
    }
    // A visitor who has changed nothing has nothing to lose.
    if !stored && last.is_some() && !*warned {
        *warned = true;
        session.say(words::text("page-keeps-nothing"));
    }
    *last = state;
}
