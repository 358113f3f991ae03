//! The device's own sheet for sharing (W3C Web Share API), where it has one.

use js_sys::{Array, Reflect};
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{File, Navigator, ShareData};

use crate::page::dom;

/// What the sheet rejects a call with when the user closes it.
const CLOSED_BY_USER: &str = "AbortError";

/// Whether there is one. Browsers offer it in secure contexts only, most of them on tablets and telephones.
pub fn is_there() -> bool {
    navigator().is_some_and(|navigator| has(&navigator, "share"))
}

/// Opens the sheet with a link. If the device refuses, `refused` is called; not if the user closes it.
pub fn send_link(title: &str, link: &str, refused: impl FnOnce() + 'static) {
    let data = ShareData::new();
    data.set_title(title);
    data.set_url(link);
    send(&data, refused);
}

/// Opens the sheet with a file, the same way.
pub fn send_file(title: &str, file: &File, refused: impl FnOnce() + 'static) {
    let data = ShareData::new();
    data.set_title(title);
    data.set_files(&Array::of1(file));
    // A device may have a sheet that takes no files.
    let takes_it = navigator().is_some_and(|navigator| {
        has(&navigator, "canShare") && navigator.can_share_with_data(&data)
    });
    if takes_it {
        send(&data, refused);
    } else {
        refused();
    }
}

fn send(data: &ShareData, refused: impl FnOnce() + 'static) {
    let Some(navigator) = navigator() else {
        return;
    };
    let done = Closure::once(|_: JsValue| {});
    let failed = Closure::once(move |why: JsValue| {
        let name = Reflect::get(&why, &"name".into()).ok();
        if name.and_then(|name| name.as_string()).as_deref() != Some(CLOSED_BY_USER) {
            refused();
        }
    });
    drop(navigator.share_with_data(data).then2(&done, &failed));
    done.forget();
    failed.forget();
}

fn navigator() -> Option<Navigator> {
    Some(dom::window()?.navigator())
}

fn has(navigator: &Navigator, name: &str) -> bool {
    Reflect::get(navigator, &name.into())
        .is_ok_and(|member| member.is_instance_of::<js_sys::Function>())
}
