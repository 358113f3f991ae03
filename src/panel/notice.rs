//! The session's notice, at the foot of the picture.

use egui::{Rect, Stroke, Ui};

use crate::strip::Strip;
use crate::style::ACCENT;
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// Shows it, if there is one; returns its area.
pub fn show(ui: &Ui, session: &mut Session, stage: Rect, others: &[Rect]) -> Option<Rect> {
    let sentence = session.notice()?;
    let strip = Strip {
        name: "notice",
        accessible_name: text("panel-dismiss"),
        sentence,
        frame: Stroke::new(2.0, ACCENT.get()),
    };
    let (rect, clicked) = strip.show(ui, stage, others);
    if clicked {
        session.dismiss();
    }
    Some(rect)
}
