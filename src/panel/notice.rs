//! The session's notice, at the foot of the picture; what it tells of may be brought back there.

use egui::{Rect, Stroke, Ui};

use crate::strip::{Strip, Touched};
use crate::style::ACCENT;
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// Shows it, if there is one; returns its area.
pub fn show(ui: &Ui, session: &mut Session, stage: Rect, others: &[Rect]) -> Option<Rect> {
    let brings_back = session.notice_brings_back();
    let sentence = session.notice()?;
    let strip = Strip {
        name: "notice",
        accessible_name: text("panel-dismiss"),
        sentence,
        button: brings_back.then(|| ["bring back", text("panel-bring-back")]),
        frame: Stroke::new(2.0, ACCENT.get()),
    };
    let (rect, touched) = strip.show(ui, stage, others);
    match touched {
        Some(Touched::Sentence) => session.dismiss(),
        Some(Touched::Button) => session.undo(),
        None => (),
    }
    Some(rect)
}
