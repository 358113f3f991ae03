//! What survives a reload: the present jump and the units, in the browser's own storage.

use bevy::prelude::*;
use web_sys::Storage;

use crate::page::{address, dom};
use crate::session::{Session, VisitState};
use crate::stage::current_session::CurrentSession;
use crate::words;

const NAME: &str = "turns-aloft/session";

pub fn plugin(app: &mut App) {
    app.add_systems(Last, keep.after(address::withdraw));
}

/// The browser's storage, where it is allowed.
pub fn storage() -> Option<Storage> {
    dom::window()?.local_storage().ok()?
}

/// Takes up what the last visit left, if it left anything.
pub fn restore(session: &mut Session) {
    if let Some(text) = storage().and_then(|storage| storage.get_item(NAME).ok()?) {
        session.restore(&text);
    }
}

/// Keeps the session once it has come to rest after a change.
fn keep(
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
    let kept = storage().is_some_and(|storage| storage.set_item(NAME, &text).is_ok());
    // Where nothing can be kept the address does, for as long as this page is open.
    if !kept {
        address::hold(&session);
    }
    // A visitor who has changed nothing has nothing to lose.
    if !kept && last.is_some() && !*warned {
        *warned = true;
        session.say(words::text("page-keeps-nothing"));
    }
    *last = state;
}
