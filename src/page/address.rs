//! Links: opens the jump in the address's fragment (after `#`), and writes the present jump and its
//! reference attempt there for sharing.

use std::cell::RefCell;

use bevy::prelude::*;
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};

use crate::page::wake::wake;
use crate::page::{dom, share_sheet};
use crate::session::{Document, Session};
use crate::words::text;

pub fn plugin(app: &mut App) {
    listen();
    app.init_resource::<LinkedDocument>();
}

thread_local! {
    /// Events of the browser, to be handled in the app's next frame.
    static EVENTS: RefCell<Vec<AddressEvent>> = const { RefCell::new(Vec::new()) };
}

enum AddressEvent {
    FragmentChanged,
    Copied,
    /// The share sheet has refused this link.
    SheetRefused(String),
}

fn push(event: AddressEvent) {
    EVENTS.with_borrow_mut(|events| events.push(event));
    wake();
}

/// The document that the link in the address opens; none if the address has no link.
#[derive(Resource, Default)]
pub struct LinkedDocument(Option<Document>);

/// Opens the link in the page's address, if there is one.
pub fn restore(session: &mut Session) {
    let Some(fragment) = fragment() else {
        return;
    };
    session.open_link(&fragment);
    // Removed, so that a reload opens the stored jump with later changes.
    set_fragment(None);
}

/// The address's fragment, if it is not empty.
fn fragment() -> Option<String> {
    let hash = dom::window()?.location().hash().ok()?;
    hash.strip_prefix('#')
        .filter(|fragment| !fragment.is_empty())
        .map(str::to_owned)
}

/// Replaces or removes the address's fragment without an entry in the browser's history. Returns
/// the new address.
fn set_fragment(fragment: Option<&str>) -> Option<String> {
    let window = dom::window()?;
    let location = window.location();
    let mut address = location.pathname().ok()? + &location.search().ok()?;
    if let Some(fragment) = fragment {
        address = format!("{address}#{fragment}");
    }
    window
        .history()
        .ok()?
        .replace_state_with_url(&JsValue::NULL, "", Some(&address))
        .ok()?;
    location.href().ok()
}

/// Whether the page was opened from a file of this device: nobody else can follow a link to it.
fn is_of_file() -> bool {
    let protocol = dom::window().map(|window| window.location().protocol());
    matches!(protocol, Some(Ok(protocol)) if protocol == "file:")
}

/// The page's address, without a fragment; none where nobody else can open it.
pub fn of_page() -> Option<String> {
    let location = dom::window()?.location();
    if is_of_file() {
        return None;
    }
    let path = [
        location.origin().ok()?,
        location.pathname().ok()?,
        location.search().ok()?,
    ];
    Some(path.concat())
}

/// Writes the jump into the address, so that a reload finds it there. Used where the storage fails.
pub fn store_document(session: &Session) {
    set_fragment(Some(&session.link()));
}

fn listen() {
    let changed = Closure::<dyn FnMut()>::new(move || {
        push(AddressEvent::FragmentChanged);
    });
    if let Some(window) = dom::window() {
        window.set_onhashchange(Some(changed.as_ref().unchecked_ref()));
    }
    changed.forget();
}

pub fn take_events(session: &mut Session) {
    for event in EVENTS.take() {
        match event {
            AddressEvent::FragmentChanged => restore(session),
            AddressEvent::Copied => session.say(text("page-link-copied")),
            AddressEvent::SheetRefused(link) => offer(session, &link),
        }
    }
}

/// Puts the present jump into the address, and copies that.
pub fn copy_link(session: &mut Session, linked: &mut LinkedDocument) {
    if let Some(address) = link(session, linked) {
        offer(session, &address);
    }
}

/// Opens the device's sheet for sharing with the address of the present jump.
pub fn send_link(session: &mut Session, linked: &mut LinkedDocument) {
    if let Some(address) = link(session, linked) {
        share_sheet::send_link(&session.scenario().name, &address.clone(), move || {
            push(AddressEvent::SheetRefused(address));
        });
    }
}

/// The address with the present jump; where there is none, that is said.
fn link(session: &mut Session, linked: &mut LinkedDocument) -> Option<String> {
    let address = set_fragment(Some(&session.link()));
    match &address {
        Some(_) => linked.0 = Some(session.document().clone()),
        None => session.say(text("page-no-link")),
    }
    address
}

/// Says that the link stands in the address bar, and copies it.
fn offer(session: &mut Session, link: &str) {
    if is_of_file() {
        session.say(text("page-link-of-file"));
        return;
    }
    // Shown before copying: a browser may ask the user for permission, and never report the result.
    session.say(text("page-link-offered"));
    copy(link);
}

/// Copies a link to the clipboard if that is allowed; on success [`AddressEvent::Copied`] follows.
fn copy(link: &str) {
    let clipboard = dom::window()
        .map(|window| window.navigator())
        // Missing outside secure contexts.
        .and_then(|navigator| js_sys::Reflect::get(&navigator, &"clipboard".into()).ok())
        .and_then(|clipboard| clipboard.dyn_into::<web_sys::Clipboard>().ok());
    let Some(clipboard) = clipboard else {
        return;
    };
    let copied = Closure::once(move |_: JsValue| {
        push(AddressEvent::Copied);
    });
    // If copying is refused, the notice shown before still holds.
    let refused = Closure::once(|_: JsValue| {});
    drop(clipboard.write_text(link).then2(&copied, &refused));
    copied.forget();
    refused.forget();
}

/// Removes the link from the address once the document differs from it.
pub fn remove_stale_link(session: &Session, linked: &mut LinkedDocument) {
    let is_stale = |linked: &Document| linked != session.document();
    if linked.0.as_ref().is_some_and(is_stale) {
        linked.0 = None;
        set_fragment(None);
    }
}
