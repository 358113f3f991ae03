//! Makes the still picture of the jump into a PNG file, and sends or saves it.

use std::cell::RefCell;

use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{
    Blob, CanvasRenderingContext2d, File, FilePropertyBag, HtmlCanvasElement, HtmlImageElement,
};

use crate::documents::Document;
use crate::page::wake::wake;
use crate::page::{documents, dom, files, share_sheet};
use crate::picture::{HEIGHT_PX, WIDTH_PX};
use crate::session::Session;
use crate::words::text;

/// A file that is made in the browser's own time, or that it could not be.
type Made = Option<File>;

thread_local! {
    /// Pictures that are made, and those that the share sheet has refused; handled in the app's next frame.
    static MADE: RefCell<Vec<(Made, Next)>> = const { RefCell::new(Vec::new()) };
}

/// What is to be done with a picture that is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Next {
    Send,
    Save,
}

fn push(made: Made, next: Next) {
    MADE.with_borrow_mut(|all| all.push((made, next)));
    wake();
}

/// Makes a picture of the present jump, to be sent or saved.
pub fn make(session: &Session, next: Next) {
    let name = session
        .scenario()
        .file_name()
        .replace(".aloft.json", ".png");
    documents::make(Document::Picture, session, move |made| {
        let started = made.ok().and_then(|svg| start(&svg, name, next));
        if started.is_none() {
            push(None, next);
        }
    });
}

/// Starts drawing the picture; none if the browser cannot.
fn start(svg: &str, name: String, next: Next) -> Option<()> {
    let image = HtmlImageElement::new().ok()?;
    let drawn = image.clone();
    let loaded = Closure::once(move |_: JsValue| {
        if draw(&drawn, name, next).is_none() {
            push(None, next);
        }
    });
    let failed = Closure::once(move |_: JsValue| push(None, next));
    image.set_onload(Some(loaded.as_ref().unchecked_ref()));
    image.set_onerror(Some(failed.as_ref().unchecked_ref()));
    // An address that holds the picture itself: one of a blob would bar the canvas from being read in some
    // browsers.
    let encoded = String::from(js_sys::encode_uri_component(svg));
    image.set_src(&format!("data:image/svg+xml;charset=utf-8,{encoded}"));
    loaded.forget();
    failed.forget();
    Some(())
}

/// Draws the loaded picture on a canvas of its own and makes a PNG file of it.
fn draw(image: &HtmlImageElement, name: String, next: Next) -> Option<()> {
    let canvas: HtmlCanvasElement = dom::document()?
        .create_element("canvas")
        .ok()?
        .dyn_into()
        .ok()?;
    canvas.set_width(WIDTH_PX as u32);
    canvas.set_height(HEIGHT_PX as u32);
    let context: CanvasRenderingContext2d = canvas.get_context("2d").ok()??.dyn_into().ok()?;
    context
        .draw_image_with_html_image_element(image, 0.0, 0.0)
        .ok()?;
    let made = Closure::once(move |blob: JsValue| {
        let file = blob
            .dyn_into::<Blob>()
            .ok()
            .and_then(|blob| file(&blob, &name));
        push(file, next);
    });
    canvas.to_blob(made.as_ref().unchecked_ref()).ok()?;
    made.forget();
    Some(())
}

fn file(blob: &Blob, name: &str) -> Option<File> {
    let options = FilePropertyBag::new();
    options.set_type("image/png");
    File::new_with_blob_sequence_and_options(&js_sys::Array::of1(blob), name, &options).ok()
}

/// Saves the pictures that are made, or opens the device's sheet with them; what that refuses is saved.
pub fn take_results(session: &mut Session) {
    for (made, next) in MADE.take() {
        let Some(file) = made else {
            session.say(text("page-no-picture"));
            continue;
        };
        if next == Next::Send {
            let title = session.scenario().name.clone();
            let refused = file.clone();
            share_sheet::send_file(&title, &file, move || push(Some(refused), Next::Save));
        } else if files::save_blob(&file.name(), &file).is_none() {
            session.say(text("page-not-saved"));
        }
    }
}
