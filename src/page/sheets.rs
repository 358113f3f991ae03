//! Opens a sheet of paper in a tab of its own, which the browser prints; where it opens none, saves it as a file.

use web_sys::{Blob, BlobPropertyBag, Url};

use crate::describe::Sentence;
use crate::page::{address, dom, files};
use crate::panel::Sheet;
use crate::picture::Picture;
use crate::session::Session;
use crate::words::text;
use crate::{say, sheet};

pub fn open(session: &mut Session, of: Sheet) {
    let html = match html(session, of) {
        Some(Ok(html)) => html,
        Some(Err(why)) => {
            session.say(say!("page-no-answers", why = why));
            return;
        }
        None => return,
    };
    let Some(blob) = blob(&html) else {
        session.say(text("page-not-saved"));
        return;
    };
    if in_tab(&blob).is_some() {
        session.say(text("page-sheet-open"));
    } else if files::save_blob(NAME, &blob).is_some() {
        session.say(text("page-sheet-saved"));
    } else {
        session.say(text("page-not-saved"));
    }
}

const NAME: &str = "sheet.html";

/// None where there is nothing that the sheet would be of.
fn html(session: &Session, of: Sheet) -> Option<Result<String, String>> {
    let page = address::of_page();
    let (units, page) = (session.units(), page.as_deref());
    if of == Sheet::Coach {
        return Some(Ok(sheet::coach(&Picture {
            scenario: session.scenario(),
            jump: session.jump(),
            units,
            tried: None,
            address: page,
        })));
    }
    let played = session.lesson()?;
    let lesson = played.lesson();
    Some(match of {
        Sheet::Pupil => Ok(sheet::pupil(lesson, units, page)),
        Sheet::Answers => sheet::answers(lesson, units, page).map_err(|why| why.sentence()),
        Sheet::Plan => Ok(sheet::plan(lesson, page)),
        Sheet::Results | Sheet::Coach => Ok(sheet::results(lesson, played.progress(), units)),
    })
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
