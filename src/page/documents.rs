//! Has documents made: by a module of their own, which `web/documents.js` fetches when it is first asked for.

use js_sys::futures::{JsFuture, spawn_local};
use js_sys::{Function, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};

use crate::documents::{Document, Request};
use crate::page::{address, dom};
use crate::session::Session;
use crate::words::{language, text};

/// Makes a document of what is at hand, in the browser's own time; `then` gets its text, or one sentence.
pub fn make(
    document: Document,
    session: &Session,
    then: impl FnOnce(Result<String, String>) + 'static,
) {
    let request = Request {
        document,
        language: language().tag().to_owned(),
        units: *session.units(),
        address: address::of_page(),
        jump: session.scenario().to_file(),
        is_try: session.turn_try().is_some(),
        lesson: session.lesson().map(|lesson| lesson.files()),
    };
    let request = request.to_text();
    spawn_local(async move {
        then(made(request).await);
    });
}

async fn made(request: String) -> Result<String, String> {
    let unmade = || text("page-no-documents").to_owned();
    let made = async || {
        let shared = Reflect::get(dom::window()?.as_ref(), &"turnsAloft".into()).ok()?;
        let make = Reflect::get(&shared, &"makeDocument".into()).ok()?;
        let make: Function = make.dyn_into().ok()?;
        let made = make.call2(&JsValue::NULL, &request.into(), &language().tag().into());
        Some(JsFuture::from(made.ok()?.dyn_into::<Promise>().ok()?).await)
    };
    match made().await {
        Some(Ok(made)) => made.as_string().ok_or_else(unmade),
        // What is wrong with the request is a sentence; what is wrong with fetching is none.
        Some(Err(why)) => Err(why.as_string().unwrap_or_else(unmade)),
        None => Err(unmade()),
    }
}
