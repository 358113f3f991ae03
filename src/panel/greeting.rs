//! A hint for newcomers, until they have done what it says or put it away.

use egui::{Rect, Stroke, Ui};

use crate::strip::Strip;
use crate::style::LINE;
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// Shows it at the foot of the stage; returns its area.
pub fn show(ui: &Ui, session: &mut Session, stage: Rect, others: &[Rect]) -> Option<Rect> {
    // Whoever begins a jump, or is in a lesson, knows what to do next.
    if !session.shows_greeting() || session.document().is_begun() || session.lesson().is_some() {
        return None;
    }
    let strip = Strip {
        name: "greeting",
        accessible_name: text("panel-greeting-away"),
        sentence: text("panel-greeting"),
        button: None,
        frame: Stroke::new(1.0, LINE.get()),
    };
    let (rect, touched) = strip.show(ui, stage, others);
    if touched.is_some() {
        session.dismiss_greeting();
    }
    Some(rect)
}
