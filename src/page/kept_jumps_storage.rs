//! Stores the kept jumps in the browser's storage, which all open pages of Turns Aloft share.

use crate::describe::Sentence;
use std::cell::Cell;
use std::sync::Arc;

use bevy::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::Storage;

use crate::page::dom;
use crate::page::visit_storage::storage;
use crate::page::wake::wake;
use crate::scenario::collection::Collection;
use crate::scenario::collection::kept::Unreadable;
use crate::session::Session;
use crate::{say, words};

const NAME: &str = "turns-aloft/kept-jumps";

/// Unreadable text is moved to this name with a number appended.
const UNREAD: &str = "turns-aloft/kept-jumps-unread";
const MOST_UNREAD: u32 = 9;

thread_local! {
    /// Another page has changed the storage.
    static CHANGED: Cell<bool> = const { Cell::new(false) };
}

#[derive(Resource, Default)]
pub struct KeptJumpsStorage {
    /// The text last read or written.
    text: Option<String>,
    /// The jumps in the storage; none if it has them in an older format, so that they are written
    /// again.
    stored: Option<Arc<Collection>>,
    /// Why nothing may be written, if the storage has a text that must not be overwritten.
    closed: Option<String>,
    /// A notice that has not been shown yet.
    pending_notice: Option<String>,
}

/// Restores the jumps kept in earlier visits.
pub fn restore(session: &mut Session) -> KeptJumpsStorage {
    let mut kept_jumps = KeptJumpsStorage {
        stored: Some(Arc::clone(session.library().collection())),
        ..KeptJumpsStorage::default()
    };
    if let Some(storage) = storage() {
        kept_jumps.read(&storage, session);
    }
    kept_jumps
}

impl KeptJumpsStorage {
    /// Reads the stored text if it has changed. Unreadable text is moved to another name, never
    /// overwritten.
    fn read(&mut self, storage: &Storage, session: &mut Session) {
        let Some(text) = storage.get_item(NAME).ok().flatten() else {
            return;
        };
        if self.text.as_ref() == Some(&text) {
            return;
        }
        match session.restore_kept_jumps(&text) {
            Ok(is_older) => {
                self.closed = None;
                self.stored = (!is_older).then(|| Arc::clone(session.library().collection()));
            }
            Err(why @ Unreadable::Newer(_)) => {
                let why = why.sentence();
                self.pending_notice = Some(say!("page-not-opened", why = why.as_str()));
                self.closed = Some(say!("page-not-kept", why = why));
            }
            Err(why) if move_unread(storage, &text) => {
                self.pending_notice = Some(say!("page-kept-jumps-aside", why = why.sentence()));
            }
            Err(why) => {
                let why = why.sentence();
                self.pending_notice = Some(say!("page-not-opened", why = why.as_str()));
                self.closed = Some(say!("page-not-kept-no-room", why = why));
            }
        }
        self.text = Some(text);
    }

    /// Shows the pending notice. Called after everything else has been opened, which would replace
    /// the notice.
    pub fn show_notice(&mut self, session: &mut Session) {
        if let Some(notice) = self.pending_notice.take() {
            session.say(notice);
        }
        session.report_earlier_body();
    }

    fn write(&mut self, text: String) -> Result<(), String> {
        if let Some(why) = &self.closed {
            return Err(why.clone());
        }
        let written = storage().is_some_and(|storage| storage.set_item(NAME, &text).is_ok());
        if !written {
            return Err(words::text("page-keeps-no-more").to_owned());
        }
        self.text = Some(text);
        Ok(())
    }
}

/// Moves unreadable text to a free name. Returns whether there was one, and room in the storage.
fn move_unread(storage: &Storage, text: &str) -> bool {
    let free = (1..=MOST_UNREAD)
        .map(|number| format!("{UNREAD}-{number}"))
        .find(|name| matches!(storage.get_item(name), Ok(None)));
    // Removed first, because there may be no room for both.
    let Some(name) = free.filter(|_| storage.remove_item(NAME).is_ok()) else {
        return false;
    };
    if storage.set_item(&name, text).is_ok() {
        return true;
    }
    storage.set_item(NAME, text).ok();
    false
}

/// Hears of changes that other pages make.
pub fn listen() {
    let changed = Closure::<dyn FnMut()>::new(move || {
        CHANGED.set(true);
        wake();
    });
    if let Some(window) = dom::window() {
        window.set_onstorage(Some(changed.as_ref().unchecked_ref()));
    }
    changed.forget();
}

/// Reads the kept jumps again after another page has changed them.
pub fn read_changes(session: &mut Session, kept_jumps: &mut KeptJumpsStorage) {
    if CHANGED.take()
        && let Some(storage) = storage()
    {
        kept_jumps.read(&storage, session);
    }
}

/// Stores every change of the kept jumps at once.
pub fn store(session: &mut Session, kept_jumps: &mut KeptJumpsStorage) {
    kept_jumps.show_notice(session);
    let kept = session.library().collection();
    let is_stored = |it: &Arc<Collection>| Arc::ptr_eq(it, kept) || it == kept;
    if kept_jumps.stored.as_ref().is_some_and(is_stored) {
        return;
    }
    kept_jumps.stored = Some(Arc::clone(kept));
    if let Err(why) = kept_jumps.write(session.kept_jumps()) {
        session.say(why);
    }
}
