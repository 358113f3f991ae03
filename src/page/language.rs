//! The language of the page: as the user has chosen, which is stored, or as the browser asks for.
//!
//! `web/words.js` sets the root element's `lang` before the app starts. Later choices are made on
//! the panels; this module passes them to the root element and the storage.

use std::cell::Cell;

use js_sys::futures::{JsFuture, spawn_local};
use js_sys::{Function, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};

use crate::page::dom;
use crate::page::visit_storage::storage;
use crate::page::wake::wake;
use crate::session::Session;
use crate::words::{self, Language};

/// Name of the choice, a language tag, in the storage; `web/words.js` reads it.
const NAME: &str = "turns-aloft/language";

thread_local! {
    /// The texts of another language have come; the app shows them in its next frame.
    static CAME: Cell<bool> = const { Cell::new(false) };
}

/// Has the texts of a language, which `web/words.js` fetches. None if they can't be had.
pub async fn load(language: Language) -> Option<()> {
    if words::has(language) {
        return Some(());
    }
    let shared = Reflect::get(dom::window()?.as_ref(), &"turnsAloft".into()).ok()?;
    let fetch: Function = Reflect::get(&shared, &"texts".into())
        .ok()?
        .dyn_into()
        .ok()?;
    let fetched = fetch.call1(&JsValue::NULL, &language.tag().into()).ok()?;
    let fetched = JsFuture::from(fetched.dyn_into::<Promise>().ok()?).await;
    words::provide(language, &fetched.ok()?.as_string()?).ok()
}

/// Whether the texts of another language have come since the last call, or can't be had, which is said: all
/// is drawn again.
pub fn take_texts(session: &mut Session) -> bool {
    if !CAME.take() {
        return false;
    }
    let is_there = words::has(words::language());
    if !is_there && let Some(other) = Language::ALL.into_iter().find(|it| words::has(*it)) {
        words::set_language(other);
    }
    session.retranslate();
    if !is_there {
        session.say(words::text("page-no-texts"));
    }
    true
}

/// Sets the language in which the page has opened.
pub fn restore() {
    words::set_language(Language::of_tags(dom::language().as_deref()));
}

/// Whether there is another language since the last call, or the texts of the present one are there now.
pub fn has_changed(last: &mut Option<(Language, bool)>) -> bool {
    let language = words::language();
    let now = (language, words::has(language));
    last.replace(now).is_some_and(|last| last != now)
}

/// Passes the language on to the page and the storage once its texts are there; has those fetched before.
pub fn store() {
    let language = words::language();
    if !words::has(language) {
        spawn_local(async move {
            load(language).await;
            CAME.set(true);
            wake();
        });
        return;
    }
    let tag = language.tag();
    dom::set_language(tag);
    if let Some(storage) = storage() {
        // Without storage the choice holds until the next reload.
        storage.set_item(NAME, tag).ok();
    }
}
