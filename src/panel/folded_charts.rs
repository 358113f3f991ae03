//! The charts as a section of a column.

use egui::{Sense, Ui, vec2};

use crate::charts;
use crate::controls::fold;
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// The charts, where they are not below the picture.
pub fn folded_charts(ui: &mut Ui, session: &mut Session, height: f32) {
    let title = text("panel-charts");
    fold(ui, "Charts over the flight", title, true, |ui| {
        let size = vec2(ui.available_width(), height);
        let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
        charts::show(ui, session, rect);
    });
}
