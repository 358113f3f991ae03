//! A file input that buttons on the panels open: the page itself shows none.

use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::{File, HtmlInputElement};

use crate::page::dom;

/// Adds one to the page. `chosen` is called with each file that the user chooses, also with the same one again.
pub fn add(
    id: &str,
    accept: &str,
    mut chosen: impl FnMut(File) + 'static,
) -> Option<HtmlInputElement> {
    let document = dom::document()?;
    let input: HtmlInputElement = document.create_element("input").ok()?.dyn_into().ok()?;
    input.set_type("file");
    input.set_accept(accept);
    input.set_id(id);
    input.set_class_name("unseen");
    // The keyboard has the button.
    input.set_tab_index(-1);
    document.body()?.append_child(&input).ok()?;
    let changed = input.clone();
    let change = Closure::<dyn FnMut()>::new(move || {
        if let Some(file) = changed.files().and_then(|files| files.get(0)) {
            chosen(file);
        }
        // Else the same file could not be chosen again.
        changed.set_value("");
    });
    input.set_onchange(Some(change.as_ref().unchecked_ref()));
    change.forget();
    Some(input)
}
