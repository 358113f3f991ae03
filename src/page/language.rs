//! Which language the page is in: as the browser asks for it, or as the user has chosen.
//!
//! `web/words.js` decides at the start, before there is an app, and tells the root element; later
//! choices are made on the panels and go from here to the root element and into the storage.

use bevy::prelude::*;

use crate::page::dom;
use crate::page::kept::storage;
use crate::words::{self, Language};

/// The storage's name for the choice, a tag; `web/words.js` reads it.
const NAME: &str = "turns-aloft/language";

pub fn plugin(app: &mut App) {
    app.add_systems(Last, keep.run_if(changed));
}

/// Speaks the language that the page has opened in.
pub fn restore() {
    words::set_language(Language::of_tags(dom::language().as_deref()));
}

/// Whether another language is spoken than when this was asked last.
pub fn changed(mut last: Local<Option<Language>>) -> bool {
    let now = words::language();
    last.replace(now).is_some_and(|last| last != now)
}

fn keep() {
    let tag = words::language().tag();
    dom::set_language(tag);
    if let Some(storage) = storage() {
        // Where nothing can be kept the choice holds until the next reload.
        storage.set_item(NAME, tag).ok();
    }
}
