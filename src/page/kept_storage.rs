//! The kept jumps in the browser's own storage, which all pages of Turns Aloft share.

use std::cell::Cell;
use std::sync::Arc;

use bevy::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::Storage;

use crate::describe::Sentence;
use crate::page::dom;
use crate::page::kept::storage;
use crate::page::wake::wake;
use crate::say;
use crate::scenario::collection::Collection;
use crate::scenario::collection::kept::Unreadable;
use crate::session::Session;
use crate::stage::current_session::CurrentSession;
use crate::words;

const NAME: &str = "turns-aloft/kept-jumps";

/// Where what cannot be read is put, with a number behind it.
const ASIDE: &str = "turns-aloft/kept-jumps-unread";
const MOST_ASIDE: u32 = 9;

thread_local! {
    /// Another page has changed something in the storage.
    static CHANGED: Cell<bool> = const { Cell::new(false) };
}

#[derive(Resource, Default)]
pub struct KeptStorage {
    /// As last read or written.
    text: Option<String>,
    /// The jumps that are in the storage, as far as they can be; none where it has them in an older form.
    kept: Option<Arc<Collection>>,
    /// Why nothing may be written: what stands there belongs to somebody else.
    closed: Option<String>,
    /// Still to be said.
    news: Option<String>,
}

pub fn plugin(app: &mut App) {
    listen();
    app.add_systems(PreUpdate, follow).add_systems(Last, keep);
}

/// Takes up the jumps kept by earlier visits.
pub fn restore(session: &mut Session) -> KeptStorage {
    let mut kept_storage = KeptStorage {
        kept: Some(Arc::clone(session.library().collection())),
        ..KeptStorage::default()
    };
    if let Some(storage) = storage() {
        kept_storage.read(&storage, session);
    }
    kept_storage
}

impl KeptStorage {
    /// Reads what stands in the storage if it is not known yet. What cannot be read is put aside,
    /// never written over.
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
                self.kept = (!is_older).then(|| Arc::clone(session.library().collection()));
            }
            Err(why @ Unreadable::Newer(_)) => {
                let why = why.sentence();
                self.news = Some(say!("page-not-opened", why = why.as_str()));
                self.closed = Some(say!("page-not-kept", why = why));
            }
            Err(why) if put_aside(storage, &text) => {
                self.news = Some(say!("page-kept-jumps-aside", why = why.sentence()));
            }
            Err(why) => {
                let why = why.sentence();
                self.news = Some(say!("page-not-opened", why = why.as_str()));
                self.closed = Some(say!("page-not-kept-no-room", why = why));
            }
        }
        self.text = Some(text);
    }

    /// Says what there is to say of what was read; after all else has been opened, lest that be the
    /// last word.
    pub fn tell(&mut self, session: &mut Session) {
        if let Some(news) = self.news.take() {
            session.say(news);
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

/// Moves what cannot be read to a name that is free; whether there was one, and room.
fn put_aside(storage: &Storage, text: &str) -> bool {
    let free = (1..=MOST_ASIDE)
        .map(|number| format!("{ASIDE}-{number}"))
        .find(|name| matches!(storage.get_item(name), Ok(None)));
    // Taken away first: both together may have no room.
    let Some(name) = free.filter(|_| storage.remove_item(NAME).is_ok()) else {
        return false;
    };
    if storage.set_item(&name, text).is_ok() {
        return true;
    }
    storage.set_item(NAME, text).ok();
    false
}

fn listen() {
    let changed = Closure::<dyn FnMut()>::new(move || {
        CHANGED.set(true);
        wake();
    });
    if let Some(window) = dom::window() {
        window.set_onstorage(Some(changed.as_ref().unchecked_ref()));
    }
    changed.forget();
}

/// Follows what another page does to the kept jumps.
fn follow(mut session: ResMut<CurrentSession>, mut kept_storage: ResMut<KeptStorage>) {
    if CHANGED.take()
        && let Some(storage) = storage()
    {
        kept_storage.read(&storage, &mut session);
    }
}

/// Keeps every change of the kept jumps at once.
fn keep(mut session: ResMut<CurrentSession>, mut kept_storage: ResMut<KeptStorage>) {
    kept_storage.tell(&mut session);
    let kept = session.library().collection();
    let is_kept = |it: &Arc<Collection>| Arc::ptr_eq(it, kept) || it == kept;
    if kept_storage.kept.as_ref().is_some_and(is_kept) {
        return;
    }
    kept_storage.kept = Some(Arc::clone(kept));
    if let Err(why) = kept_storage.write(session.kept_jumps()) {
        session.say(why);
    }
}
