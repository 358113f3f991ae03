//! The charts as a section of a column.

use egui::Ui;

use crate::charts;
use crate::controls::fold;
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// The charts, where they are not below the picture.
pub fn folded_charts(ui: &mut Ui, session: &mut Session) {
    let title = text("panel-charts");
    fold(ui, "Charts over the flight", title, true, |ui| {
        charts::in_column(ui, session);
    });
}
