use bevy_egui::egui::Ui;

use crate::session::Session;

pub fn show(ui: &mut Ui, session: &mut Session) {
    let _ = (ui, session);
}
