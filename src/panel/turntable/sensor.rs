//! A sensor on a real chair: this device's own, or a file, laid over the rate.

use egui::{RichText, Ui};

use crate::command::PageCommand;
use crate::controls::Button;
use crate::style::{self, GAP};
use crate::text::small;
use turns_aloft_session::Session;
use turns_aloft_session::turntable::{measured, measured_about};
use turns_aloft_words::text;

/// What needs the browser is returned.
pub fn show(ui: &mut Ui, session: &mut Session) -> Option<PageCommand> {
    small(ui, text("turntable-sensor-about"));
    let of = session.turntable()?.measured();
    let said = of.map(|of| (measured(session, of), measured_about(of), of.is_empty()));
    if let Some((said, about, is_empty)) = said {
        ui.label(RichText::new(said).font(style::bold(18.0)));
        if !is_empty {
            small(ui, about);
        }
    }
    if session.is_recording_sensor() {
        if button(ui, "stop sensor", text("turntable-stop-sensor")) {
            session.stop_sensor();
        }
        return None;
    }
    if session.turntable()?.measured().is_some() {
        small(ui, text("turntable-as-measured-about"));
        if button(ui, "turn as measured", text("turntable-turn-as-measured")) {
            session.turn_as_measured();
        }
        if button(ui, "drop measured", text("turntable-drop-measured")) {
            session.drop_measured_rate();
        }
    }
    if button(ui, "use sensor", text("turntable-use-sensor")) {
        return Some(PageCommand::UseSensor);
    }
    button(ui, "lay file", text("turntable-lay-file")).then_some(PageCommand::Open)
}

fn button(ui: &mut Ui, name: &str, label: &str) -> bool {
    ui.add_space(GAP);
    Button::labelled(name, label).show_in_row(ui).clicked()
}
