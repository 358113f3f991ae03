//! The few elements of the page that the app touches.

use wasm_bindgen::JsCast;
use web_sys::{Document, Element, HtmlCanvasElement, HtmlElement, Window};

/// Which of the page's own words an element is named by (`web/words.js`).
const OWN_NAME: &str = "data-words-label";

/// Selector of the canvas the app draws on.
pub const CANVAS: &str = "#stage";

pub fn window() -> Option<Window> {
    web_sys::window()
}

pub fn document() -> Option<Document> {
    window()?.document()
}

pub fn element(id: &str) -> Option<Element> {
    document()?.get_element_by_id(id)
}

/// Whether the browser has the WebGL 2 that the picture needs. Asked of the canvas itself in just the
/// way in which wgpu will ask: it is then given what has been made here, and nothing is made twice.
pub fn can_draw() -> bool {
    let canvas = element("stage").and_then(|canvas| canvas.dyn_into::<HtmlCanvasElement>().ok());
    let options = js_sys::Object::new();
    js_sys::Reflect::set(&options, &"antialias".into(), &false.into()).ok();
    canvas.is_some_and(|canvas| {
        matches!(
            canvas.get_context_with_context_options("webgl2", &options),
            Ok(Some(_))
        )
    })
}

/// Whether the user has asked the system for less motion.
pub fn wants_stillness() -> bool {
    window()
        .and_then(|window| {
            window
                .match_media("(prefers-reduced-motion: reduce)")
                .ok()?
        })
        .is_some_and(|query| query.matches())
}

/// Puts the readable page in the picture's place, with the readout in sight.
pub fn show_no_graphics() {
    if let Some(canvas) = element("stage") {
        canvas.remove();
    }
    if let Some(section) = element("no-graphics") {
        section.remove_attribute("hidden").ok();
    }
    if let Some(readout) = element("readout") {
        readout.set_class_name("");
    }
}

/// One sentence in the page's own text, read out by screen readers.
pub fn say(sentence: &str) {
    set_text("notice", sentence);
}

/// Sets the text of an element where it differs.
pub fn set_text(id: &str, text: &str) {
    if let Some(element) = element(id)
        && element.text_content().as_deref() != Some(text)
    {
        element.set_text_content(Some(text));
    }
}

/// What an element shows, in words, from now on the app's.
pub fn describe(id: &str, words: &str) {
    if let Some(element) = element(id) {
        element.remove_attribute(OWN_NAME).ok();
        element.set_attribute("aria-label", words).ok();
    }
}

fn root() -> Option<HtmlElement> {
    document()?.document_element()?.dyn_into().ok()
}

/// Tells the page that the first picture is there.
pub fn ready() {
    if let Some(root) = root() {
        root.dataset().set("state", "ready").ok();
    }
}

/// The tag of the language that the page is in.
pub fn language() -> Option<String> {
    root().map(|root| root.lang())
}

/// Which colours the page has opened in (`web/theme.js`).
pub fn theme() -> Option<String> {
    root()?.dataset().get("light")
}

/// Puts the page's own elements into other colours.
pub fn set_theme(name: &str) {
    if let Some(root) = root() {
        root.dataset().set("light", name).ok();
    }
}

/// Puts the page into another language: its own words follow (`web/words.js`).
pub fn set_language(tag: &str) {
    if let Some(root) = root() {
        root.set_lang(tag);
    }
}
