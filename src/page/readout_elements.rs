//! The readout as HTML elements of the page, for people and programs that cannot see the canvas.

use bevy::prelude::*;
use bevy::window::RequestRedraw;
use web_sys::Element;

use crate::page::{dom, frame_pacing};
use crate::session::readings::{Pace, Reading, picture, readings, summary};
use crate::session::{Moment, Session};
use crate::stage::current_session::CurrentSession;

const SECTION_ID: &str = "readout";

/// The attribute of the section while nothing moves, so that its values belong together and stay; for
/// scripts.
const SETTLED: &str = "data-settled";

pub fn plugin(app: &mut App) {
    app.add_systems(Last, update.after(frame_pacing::poll));
}

/// What is written on the page.
#[derive(Default)]
struct Written {
    pace: Pace,
    lines: Vec<Reading>,
    moment: Option<Moment>,
    settled: bool,
    notice: String,
}

/// Updates the text when the page is at rest (nothing dragged, not playing, the answer shown complete),
/// and now and then while it is not. The notice is updated at once.
fn update(
    session: Res<CurrentSession>,
    time: Res<Time<Real>>,
    mut redraw: MessageWriter<RequestRedraw>,
    mut written: Local<Written>,
) {
    let notice = session.notice().unwrap_or_default();
    if written.notice != notice {
        notice.clone_into(&mut written.notice);
        dom::say(notice);
    }
    let moves = session.moves() || session.is_dragging() || session.is_computing();
    if written.settled && moves {
        written.settle(false);
    }
    let moment = Some(session.moment());
    let is_first = written.lines.is_empty();
    if !written.pace.is_due(time.elapsed(), moves && !is_first) {
        // A finger that lies still on a slider gives no further frames of itself.
        if written.moment != moment {
            redraw.write(RequestRedraw);
        }
        return;
    }
    written.moment = moment;
    let lines = lines(&session);
    if written.lines != lines {
        dom::set_text("result", &summary(&session));
        dom::describe("stage", &picture(&session));
        write_lines(&lines);
        written.lines = lines;
    }
    if !written.settled && !moves {
        written.settle(true);
    }
}

impl Written {
    fn settle(&mut self, settled: bool) {
        self.settled = settled;
        dom::mark(SECTION_ID, SETTLED, settled);
    }
}

/// Writes the readout of a session once, without an app.
pub fn write(session: &Session) {
    write_lines(&lines(session));
    dom::mark(SECTION_ID, SETTLED, true);
}

/// The lines of the readout, and of the answer shown.
fn lines(session: &Session) -> Vec<Reading> {
    let mut lines = readings(session);
    lines.extend(session.answers());
    lines
}

fn write_lines(lines: &[Reading]) {
    let Some(section) = dom::element(SECTION_ID) else {
        return;
    };
    for line in lines {
        if let Some(output) = output(&section, line) {
            if let Some(label) = output.previous_element_sibling() {
                set_text(&label, &label_text(line));
            }
            set_text(&output, &line.text);
        }
    }
    drop_stale(&section, lines);
}

fn label_text(line: &Reading) -> String {
    format!("{}, {}: ", line.group.label(), line.label)
}

fn set_text(element: &Element, text: &str) {
    if element.text_content().as_deref() != Some(text) {
        element.set_text_content(Some(text));
    }
}

/// The output element of a line, after one for its label; created if it does not exist yet.
fn output(section: &Element, line: &Reading) -> Option<Element> {
    let selector = format!("output[data-quantity='{}']", line.quantity);
    if let Ok(Some(output)) = section.query_selector(&selector) {
        return Some(output);
    }
    let document = dom::document()?;
    let row = document.create_element("p").ok()?;
    let label = document.create_element("span").ok()?;
    let output = document.create_element("output").ok()?;
    output.set_attribute("data-quantity", &line.quantity).ok()?;
    // Not announced: a summary of the result is announced instead, as one sentence.
    output.set_attribute("aria-live", "off").ok()?;
    row.append_child(&label).ok()?;
    row.append_child(&output).ok()?;
    section.append_child(&row).ok()?;
    Some(output)
}

/// Removes the elements of lines that no longer exist, such as the shortfall of a free jump.
fn drop_stale(section: &Element, lines: &[Reading]) {
    let rows = section.children();
    for row in (0..rows.length()).rev().filter_map(|i| rows.item(i)) {
        let quantity = row
            .query_selector("output")
            .ok()
            .flatten()
            .and_then(|output| output.get_attribute("data-quantity"));
        if !lines
            .iter()
            .any(|line| quantity.as_deref() == Some(&line.quantity))
        {
            row.remove();
        }
    }
}
