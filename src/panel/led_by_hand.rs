//! A jump that was led by hand: the hand has taken the place of some sliders.

use egui::Ui;

use crate::controls::Button;
use crate::style::GAP;
use crate::text::small;
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// Says so in place of those sliders, and takes the hand away.
pub fn show(ui: &mut Ui, session: &mut Session) {
    if session.scenario().led.is_none() {
        return;
    }
    small(ui, text("slow-led"));
    ui.add_space(GAP);
    let planned = Button::labelled("as planned", text("slow-as-planned"));
    if planned.show_in_row(ui).clicked() {
        session.change(|scenario| scenario.led = None);
    }
    ui.add_space(GAP);
}
