//! Fetches the lessons that come with the page: each is a file beside it.

use std::cell::RefCell;

use js_sys::futures::{JsFuture, spawn_local};
use wasm_bindgen::JsCast;
use web_sys::Response;

use crate::lesson::names::NAMES;
use crate::page::dom;
use crate::page::wake::wake;
use crate::session::Session;
use crate::words::text;

thread_local! {
    /// What has been fetched, or could not be; handled by the app in its next frame.
    static FETCHED: RefCell<Vec<Option<String>>> = const { RefCell::new(Vec::new()) };
}

/// Fetches the lesson at a place among [`NAMES`].
pub fn fetch(place: usize) {
    let Some(name) = NAMES.get(place) else {
        return;
    };
    let address = format!("lessons/{name}.lesson.json");
    spawn_local(async move {
        let fetched = fetched(address).await;
        FETCHED.with_borrow_mut(|all| all.push(fetched));
        wake();
    });
}

/// Opens what has been fetched, or says that it could not be.
pub fn take_results(session: &mut Session) {
    for fetched in FETCHED.take() {
        match fetched {
            Some(file) => session.open_text(&file),
            None => session.say(text("lesson-not-fetched")),
        }
    }
}

async fn fetched(address: String) -> Option<String> {
    let fetched = JsFuture::from(dom::window()?.fetch_with_str(&address)).await;
    let response: Response = fetched.ok()?.dyn_into().ok()?;
    if !response.ok() {
        return None;
    }
    let read = JsFuture::from(response.text().ok()?).await.ok()?;
    read.as_string()
}
