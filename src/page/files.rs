//! Opens and saves files of scenarios and collections: by button, or dropped on the page.

use std::cell::RefCell;
use std::rc::Rc;

use bevy::prelude::*;
use js_sys::futures::{JsFuture, spawn_local};
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Blob, BlobPropertyBag, DragEvent, File, HtmlAnchorElement, HtmlInputElement, Url};

use crate::describe::Sentence;
use crate::page::film::Film;
use crate::page::wake::wake;
use crate::page::{dom, file_input};
use crate::say;
use crate::scenario::collection::LARGEST_BYTES;
use crate::scenario::reading::text_of;
use crate::session::{Saved, Session};
use crate::trace::{Table, TableReader};
use crate::words::text;

const INPUT_ID: &str = "scenario-file";

/// Jumps and attempts, what sensors write, and films.
const ACCEPT: &str = ".json,application/json,.csv,.tsv,.txt,text/csv,text/plain,video/*";

/// A file of columns is read piece by piece of this size.
const PIECE_BYTES: f64 = 1_048_576.0;

/// What has been read of a file.
enum Content {
    Text(String),
    /// Columns of a sensor.
    Table(Box<Table>),
    /// A film, of which nothing has been read.
    Film(File),
}

/// What has been read of files, or error sentences; handled by the app in its next frame.
type Inbox = Rc<RefCell<Vec<Result<Content, String>>>>;

/// The file input and its results; created once per page.
pub struct FileInput {
    inbox: Inbox,
    input: HtmlInputElement,
}

pub fn plugin(app: &mut App) {
    if let Some(file_input) = FileInput::build() {
        app.insert_non_send(file_input);
    }
}

impl FileInput {
    fn build() -> Option<Self> {
        let inbox = Inbox::default();
        let document = dom::document()?;
        let to = Rc::clone(&inbox);
        let input = file_input::add(INPUT_ID, ACCEPT, move |file| read(&file, Rc::clone(&to)))?;
        name_input();

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

    /// Lets the user choose a file.
    pub fn ask(&self) {
        self.input.click();
    }

    /// Opens what has been read.
    pub fn take_results(&self, session: &mut Session, film: Option<&Film>) {
        for read in self.inbox.take() {
            match read {
                Ok(Content::Text(text)) => session.open_text(&text),
                Ok(Content::Table(table)) => session.trace_opened(*table),
                Ok(Content::Film(file)) => {
                    if let Some(film) = film {
                        film.choose(file);
                    }
                }
                Err(why) => session.say(say!("page-not-opened", why = why)),
            }
        }
    }
}

pub fn name_input() {
    dom::describe(INPUT_ID, text("page-open-file"));
}

/// Reads a file into the inbox, as what its name and type say that it is.
fn read(file: &File, inbox: Inbox) {
    let name = file.name().to_lowercase();
    let is_named = |ends: &[&str]| ends.iter().any(|end| name.ends_with(end));
    if file.type_().starts_with("video/") || is_named(&[".mp4", ".mov", ".m4v", ".webm", ".mkv"]) {
        inbox.borrow_mut().push(Ok(Content::Film(file.clone())));
        wake();
    } else if is_named(&[".csv", ".tsv", ".txt"]) {
        let file = file.clone();
        spawn_local(async move {
            let read = read_columns(&file).await;
            inbox.borrow_mut().push(read);
            wake();
        });
    } else {
        read_text(file, inbox);
    }
}

async fn read_columns(file: &File) -> Result<Content, String> {
    let unreadable = || text("page-file-unreadable").to_owned();
    let mut reader = TableReader::new(&file.name());
    let mut at = 0.0;
    while at < file.size() {
        let piece = file
            .slice_with_f64_and_f64(at, at + PIECE_BYTES)
            .map_err(|_| unreadable())?;
        let bytes = JsFuture::from(piece.array_buffer())
            .await
            .map_err(|_| unreadable())?;
        let bytes = js_sys::Uint8Array::new(&bytes).to_vec();
        reader.push(&bytes).map_err(|fault| fault.sentence())?;
        at += PIECE_BYTES;
    }
    let table = reader.finish().map_err(|fault| fault.sentence())?;
    Ok(Content::Table(Box::new(table)))
}

/// Reads a text; a file over the size limit is not read at all.
fn read_text(file: &File, inbox: Inbox) {
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
        good.borrow_mut().push(
            text_of(bytes)
                .map(Content::Text)
                .map_err(|why| why.sentence()),
        );
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

/// Saves something as a file, and says where it can't be.
pub fn save(session: &mut Session, saved: Saved) {
    let Some([name, content]) = session.file_of(saved) else {
        return;
    };
    match download(&name, &content) {
        Some(()) => session.say_saved(saved),
        None => session.say(text("page-not-saved")),
    }
}

/// Starts the download of a text; none if the browser refuses.
fn download(name: &str, text: &str) -> Option<()> {
    let parts = js_sys::Array::of1(&text.into());
    let options = BlobPropertyBag::new();
    options.set_type(if name.ends_with(".csv") {
        "text/csv"
    } else {
        "application/json"
    });
    save_blob(
        name,
        &Blob::new_with_str_sequence_and_options(&parts, &options).ok()?,
    )
}

/// The same of any content.
pub fn save_blob(name: &str, blob: &Blob) -> Option<()> {
    let address = Url::create_object_url_with_blob(blob).ok()?;
    let link: HtmlAnchorElement = dom::document()?.create_element("a").ok()?.dyn_into().ok()?;
    link.set_href(&address);
    link.set_download(name);
    link.click();
    Url::revoke_object_url(&address).ok()
}
