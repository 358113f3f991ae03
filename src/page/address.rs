//! Links: what an address holds behind its `#` is opened, and the present jump, with
//! the one beside it, is put there to be handed on.

use std::cell::RefCell;

use bevy::prelude::*;
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};

use crate::page::dom;
use crate::page::panels::PageCommandSent;
use crate::page::wake::wake;
use crate::panel::PageCommand;
use crate::session::{Document, Session};
use crate::stage::current_session::CurrentSession;
use crate::words::text;

pub fn plugin(app: &mut App) {
    listen();
    app.init_resource::<Offered>()
        .add_systems(PreUpdate, (take_in, grant))
        .add_systems(Last, withdraw);
}

thread_local! {
    /// The address has changed, or a link has been copied: to be looked at by the app.
    static NEWS: RefCell<Vec<News>> = const { RefCell::new(Vec::new()) };
}

enum News {
    NewAddress,
    Copied,
}

/// What the link in the address leads to; none when there is none.
#[derive(Resource, Default)]
pub struct Offered(Option<Document>);

/// Opens what the page's address holds.
pub fn restore(session: &mut Session) {
    let Some(fragment) = fragment() else {
        return;
    };
    session.open_link(&fragment);
    // A reload is to find the jump as it is by then.
    set_fragment(None);
}

/// What stands behind the `#`.
fn fragment() -> Option<String> {
    let hash = dom::window()?.location().hash().ok()?;
    hash.strip_prefix('#')
        .filter(|fragment| !fragment.is_empty())
        .map(str::to_owned)
}

/// Puts a text behind the `#`, or takes it away with the `#`, without another entry in the history.
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

/// Has a reload of the page find the jump in the address.
pub fn hold(session: &Session) {
    set_fragment(Some(&session.link()));
}

fn listen() {
    let changed = Closure::<dyn FnMut()>::new(move || {
        NEWS.with_borrow_mut(|news| news.push(News::NewAddress));
        wake();
    });
    if let Some(window) = dom::window() {
        window.set_onhashchange(Some(changed.as_ref().unchecked_ref()));
    }
    changed.forget();
}

fn take_in(mut session: ResMut<CurrentSession>) {
    for news in NEWS.take() {
        match news {
            News::NewAddress => restore(&mut session),
            News::Copied => session.say(text("page-link-copied")),
        }
    }
}

/// Makes the link that was asked for.
fn grant(
    mut commands: MessageReader<PageCommandSent>,
    mut session: ResMut<CurrentSession>,
    mut offered: ResMut<Offered>,
) {
    for PageCommandSent(command) in commands.read() {
        if *command != PageCommand::Link {
            continue;
        }
        let Some(address) = set_fragment(Some(&session.link())) else {
            session.say(text("page-no-link"));
            continue;
        };
        offered.0 = Some(session.document().clone());
        // A browser may ask the user first whether copying is allowed, and never say what came of it.
        session.say(text("page-link-offered"));
        copy(&address);
    }
}

/// Copies a link where that is allowed; it is told once it has been done.
fn copy(link: &str) {
    let clipboard = dom::window()
        .map(|window| window.navigator())
        // Missing where the page is not served securely.
        .and_then(|navigator| js_sys::Reflect::get(&navigator, &"clipboard".into()).ok())
        .and_then(|clipboard| clipboard.dyn_into::<web_sys::Clipboard>().ok());
    let Some(clipboard) = clipboard else {
        return;
    };
    let copied = Closure::once(move |_: JsValue| {
        NEWS.with_borrow_mut(|news| news.push(News::Copied));
        wake();
    });
    // What the user has been told already holds where it is refused.
    let refused = Closure::once(|_: JsValue| {});
    drop(clipboard.write_text(link).then2(&copied, &refused));
    copied.forget();
    refused.forget();
}

/// Takes the link out of the address once the jump is no longer the one in it.
pub fn withdraw(session: Res<CurrentSession>, mut offered: ResMut<Offered>) {
    let leads_elsewhere = |offered: &Document| offered != session.document();
    if offered.0.as_ref().is_some_and(leads_elsewhere) {
        offered.0 = None;
        set_fragment(None);
    }
}
