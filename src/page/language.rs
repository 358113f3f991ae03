//! The language of the page: as the user has chosen, which is stored, or as the browser asks for.
//!
//! `web/words.js` sets the root element's `lang` before the app starts. Later choices are made on
//! the panels; this module passes them to the root element and the storage.

use bevy::prelude::*;

use crate::page::dom;
use crate::page::visit_storage::storage;
use crate::words::{self, Language};

/// Name of the choice, a language tag, in the storage; `web/words.js` reads it.
const NAME: &str = "turns-aloft/language";

pub fn plugin(app: &mut App) {
    app.add_systems(Last, store.run_if(changed));
}

/// Sets the language in which the page has opened.
pub fn restore() {
    words::set_language(Language::of_tags(dom::language().as_deref()));
}

/// Whether the language has changed since the last call.
pub fn changed(mut last: Local<Option<Language>>) -> bool {
    let now = words::language();
    last.replace(now).is_some_and(|last| last != now)
}

fn store() {
    let tag = words::language().tag();
    dom::set_language(tag);
    if let Some(storage) = storage() {
        // Without storage the choice holds until the next reload.
        storage.set_item(NAME, tag).ok();
    }
}
