//! Access to the elements of the page around the canvas.

use wasm_bindgen::JsCast;
use web_sys::{Document, Element, HtmlCanvasElement, HtmlElement, Window};

/// The attribute with the message that `web/words.js` labels an element with.
const LABEL_MESSAGE: &str = "data-words-label";

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

/// Whether the browser has WebGL 2, which the 3D picture needs. Creates the context on the canvas
/// itself with wgpu's options, so that wgpu later gets this one instead of creating a second.
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

/// Whether the user has set the system to reduced motion.
pub fn prefers_reduced_motion() -> bool {
    window()
        .and_then(|window| {
            window
                .match_media("(prefers-reduced-motion: reduce)")
                .ok()?
        })
        .is_some_and(|query| query.matches())
}

/// Replaces the canvas by the message that there are no graphics, and shows the readout.
pub fn show_no_graphics() {
    if let Some(canvas) = element("stage") {
        canvas.remove();
    }
    if let Some(section) = element("no-graphics") {
        section.remove_attribute("hidden").ok();
        // What scrolls then, and has nothing in it that a keyboard could reach.
        if let Some(main) = section.parent_element() {
            main.set_attribute("tabindex", "0").ok();
        }
    }
    if let Some(readout) = element("readout") {
        readout.set_class_name("");
    }
}

/// Sets the page's notice, which screen readers announce.
pub fn say(sentence: &str) {
    set_text("notice", sentence);
}

/// Sets the text of an element if it differs.
pub fn set_text(id: &str, text: &str) {
    if let Some(element) = element(id)
        && element.text_content().as_deref() != Some(text)
    {
        element.set_text_content(Some(text));
    }
}

/// Sets or removes an attribute without a value.
pub fn mark(id: &str, attribute: &str, on: bool) {
    if let Some(element) = element(id) {
        element.toggle_attribute_with_force(attribute, on).ok();
    }
}

/// Sets an element's accessible name, which `web/words.js` no longer changes from then on.
pub fn describe(id: &str, words: &str) {
    if let Some(element) = element(id) {
        element.remove_attribute(LABEL_MESSAGE).ok();
        element.set_attribute("aria-label", words).ok();
    }
}

fn root() -> Option<HtmlElement> {
    document()?.document_element()?.dyn_into().ok()
}

/// Shows that the app could not start; `web/start.js` does.
pub fn fail(why: &str) {
    let show = || {
        let shared = js_sys::Reflect::get(window()?.as_ref(), &"turnsAloft".into()).ok()?;
        let fail = js_sys::Reflect::get(&shared, &"fail".into()).ok()?;
        let fail: js_sys::Function = fail.dyn_into().ok()?;
        fail.call1(&wasm_bindgen::JsValue::NULL, &why.into()).ok()
    };
    show();
}

/// Marks the page as ready: the first picture has been drawn.
pub fn ready() {
    if let Some(root) = root() {
        root.dataset().set("state", "ready").ok();
    }
}

/// The root element's language tag.
pub fn language() -> Option<String> {
    root().map(|root| root.lang())
}

/// The root element's theme, which `web/theme.js` sets first.
pub fn theme() -> Option<String> {
    root()?.dataset().get("light")
}

/// Sets the root element's theme.
pub fn set_theme(name: &str) {
    if let Some(root) = root() {
        root.dataset().set("light", name).ok();
    }
}

/// Sets the root element's language; `web/words.js` then changes the page's own texts.
pub fn set_language(tag: &str) {
    if let Some(root) = root() {
        root.set_lang(tag);
    }
}
