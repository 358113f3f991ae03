//! Files of scenarios and collections in and out: by button, or dropped on the page.

use std::cell::RefCell;
use std::rc::Rc;

use bevy::prelude::*;
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Blob, BlobPropertyBag, DragEvent, File, HtmlAnchorElement, HtmlInputElement, Url};

use crate::describe::Sentence;
use crate::page::panels::PageCommandSent;
use crate::page::wake::wake;
use crate::page::{dom, language};
use crate::panel::PageCommand;
use crate::say;
use crate::scenario::collection::LARGEST_BYTES;
use crate::scenario::reading::text_of;
use crate::session::Session;
use crate::stage::current_session::CurrentSession;
use crate::words::text;

const INPUT: &str = "scenario-file";

/// What has been read, or why not; taken by the app in its next frame.
type Inbox = Rc<RefCell<Vec<Result<String, String>>>>;

/// The browser's side of opening a file. Lives as long as the page.
struct Doorway {
    inbox: Inbox,
    input: HtmlInputElement,
}

pub fn plugin(app: &mut App) {
    if let Some(doorway) = Doorway::build() {
        app.insert_non_send(doorway);
    }
    app.add_systems(PreUpdate, (grant, take_in))
        .add_systems(Last, name_input.run_if(language::changed));
}

impl Doorway {
    fn build() -> Option<Self> {
        let inbox = Inbox::default();
        let document = dom::document()?;
        let input: HtmlInputElement = document.create_element("input").ok()?.dyn_into().ok()?;
        input.set_type("file");
        input.set_accept(".json,application/json");
        input.set_id(INPUT);
        input.set_class_name("unseen");
        input
            .set_attribute("aria-label", text("page-open-file"))
            .ok()?;
        document.body()?.append_child(&input).ok()?;

        let (chosen, to) = (input.clone(), Rc::clone(&inbox));
        let change = Closure::<dyn FnMut()>::new(move || {
            if let Some(file) = chosen.files().and_then(|files| files.get(0)) {
                read(&file, Rc::clone(&to));
            }
            // The same file can be chosen again.
            chosen.set_value("");
        });
        input.set_onchange(Some(change.as_ref().unchecked_ref()));
        change.forget();

        let over = Closure::<dyn FnMut(DragEvent)>::new(|event: DragEvent| event.prevent_default());
        let to = Rc::clone(&inbox);
        let drop = Closure::<dyn FnMut(DragEvent)>::new(move |event: DragEvent| {
            event.prevent_default();
            let files = event.data_transfer().and_then(|transfer| transfer.files());
            if let Some(file) = files.and_then(|files| files.get(0)) {
                read(&file, Rc::clone(&to));
            }
        });
        let listen = |name: &str, closure: &Closure<dyn FnMut(DragEvent)>| {
            document
                .add_event_listener_with_callback(name, closure.as_ref().unchecked_ref())
                .ok()
        };
        listen("dragover", &over)?;
        listen("drop", &drop)?;
        over.forget();
        drop.forget();
        Some(Self { inbox, input })
    }
}

fn name_input() {
    dom::describe(INPUT, text("page-open-file"));
}

/// Reads a file into the inbox. One that is far too large is not read at all.
fn read(file: &File, inbox: Inbox) {
    if file.size() > LARGEST_BYTES as f64 {
        inbox
            .borrow_mut()
            .push(Err(text("page-file-too-large").to_owned()));
        wake();
        return;
    }
    let (good, bad) = (Rc::clone(&inbox), inbox);
    let done = Closure::once(move |bytes: JsValue| {
        let bytes = js_sys::Uint8Array::new(&bytes).to_vec();
        good.borrow_mut()
            .push(text_of(bytes).map_err(|why| why.sentence()));
        wake();
    });
    let failed = Closure::once(move |_: JsValue| {
        bad.borrow_mut()
            .push(Err(text("page-file-unreadable").to_owned()));
        wake();
    });
    drop(file.array_buffer().then2(&done, &failed));
    done.forget();
    failed.forget();
}

/// Does what the bar asked for.
fn grant(
    mut commands: MessageReader<PageCommandSent>,
    mut session: ResMut<CurrentSession>,
    doorway: Option<NonSend<Doorway>>,
) {
    for PageCommandSent(command) in commands.read() {
        match command {
            PageCommand::Open => {
                if let Some(doorway) = &doorway {
                    doorway.input.click();
                }
            }
            PageCommand::Link => {}
            PageCommand::Save => {
                let scenario = session.scenario();
                let (name, text) = (scenario.file_name(), scenario.to_file());
                offer(&mut session, &name, &text);
            }
            PageCommand::SaveAll => {
                let text = session.kept_file();
                offer(&mut session, "kept-jumps.aloft.json", &text);
            }
        }
    }
}

fn offer(session: &mut Session, name: &str, content: &str) {
    if save(name, content).is_none() {
        session.say(text("page-not-saved"));
    }
}

fn take_in(mut session: ResMut<CurrentSession>, doorway: Option<NonSend<Doorway>>) {
    let Some(doorway) = doorway else {
        return;
    };
    if doorway.inbox.borrow().is_empty() {
        return;
    }
    for read in doorway.inbox.borrow_mut().drain(..) {
        match read {
            Ok(text) => session.open_text(&text),
            Err(why) => session.say(say!("page-not-opened", why = why)),
        }
    }
}

/// Offers text as a download.
fn save(name: &str, text: &str) -> Option<()> {
    let parts = js_sys::Array::of1(&text.into());
    let options = BlobPropertyBag::new();
    options.set_type("application/json");
    let blob = Blob::new_with_str_sequence_and_options(&parts, &options).ok()?;
    let address = Url::create_object_url_with_blob(&blob).ok()?;
    let link: HtmlAnchorElement = dom::document()?.create_element("a").ok()?.dyn_into().ok()?;
    link.set_href(&address);
    link.set_download(name);
    link.click();
    Url::revoke_object_url(&address).ok()
}
