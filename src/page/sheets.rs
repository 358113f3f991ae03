//! Opens a sheet of paper in a tab of its own, which the browser prints; where it opens none, saves it as a file.

use std::cell::RefCell;

use web_sys::{Blob, BlobPropertyBag, Url};

use crate::documents::Document;
use crate::page::wake::wake;
use crate::page::{documents, dom, files};
use crate::panel::Sheet;
use crate::session::Session;
use crate::words::text;

thread_local! {
    /// What is to be said, in the app's next frame.
    static SAID: RefCell<Option<String>> = const { RefCell::new(None) };
}

const NAME: &str = "sheet.html";

pub fn open(session: &Session, sheet: Sheet) {
    let document = match sheet {
        Sheet::Pupil => Document::Pupil,
        Sheet::Answers => Document::Answers,
        Sheet::Plan => Document::Plan,
        Sheet::Results => Document::Results,
        Sheet::Coach => Document::Coach,
    };
    documents::make(document, session, |made| {
        let said = made.map_or_else(|why| why, |html| show(&html).to_owned());
        SAID.replace(Some(said));
        wake();
    });
}

/// Says what became of the sheet asked for last.
pub fn take_said(session: &mut Session) {
    if let Some(said) = SAID.take() {
        session.say(said);
    }
}

/// Returns what is to be said of it.
fn show(html: &str) -> &'static str {
    let Some(blob) = blob(html) else {
        return text("page-not-saved");
    };
    if in_tab(&blob).is_some() {
        text("page-sheet-open")
    } else if files::save_blob(NAME, &blob).is_some() {
        text("page-sheet-saved")
    } else {
        text("page-not-saved")
    }
}

fn blob(html: &str) -> Option<Blob> {
    let options = BlobPropertyBag::new();
    options.set_type("text/html;charset=utf-8");
    let parts = js_sys::Array::of1(&html.into());
    Blob::new_with_str_sequence_and_options(&parts, &options).ok()
}

/// None where the browser opens no tab. The address holds for as long as this page is open.
fn in_tab(blob: &Blob) -> Option<()> {
    let address = Url::create_object_url_with_blob(blob).ok()?;
    let opened = dom::window()?.open_with_url_and_target(&address, "_blank");
    opened.ok()?.map(drop)
}
