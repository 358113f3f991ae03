//! A guess at what the angular momentum will do, for who likes to; nothing waits for it.

use egui::Ui;

use crate::controls::{Button, choice};
use crate::style::GAP;
use crate::text::{card, small};
use turns_aloft_session::Session;
use turns_aloft_session::turntable::{Tendency, prediction, tendency};
use turns_aloft_words::text;

pub fn show(ui: &mut Ui, session: &mut Session) {
    let Some(on_turntable) = session.turntable() else {
        return;
    };
    let said = (on_turntable.prediction())
        .map(|it| (prediction(on_turntable, it), it.outcome().is_some()));
    card(ui, |ui| {
        let Some((said, is_told)) = said else {
            ui.label(text("turntable-predict"));
            let options = [
                (Tendency::Falls, "falls"),
                (Tendency::Stays, "stays"),
                (Tendency::Rises, "rises"),
            ]
            .map(|(of, name)| (Some(of), name, tendency(of)));
            if let Some(expected) = choice(ui, "predict", None, &options) {
                session.predict_momentum(expected);
            }
            return;
        };
        if is_told {
            ui.label(said);
        } else {
            small(ui, &said);
        }
        ui.add_space(GAP);
        let again = Button::labelled("predict again", text("turntable-predict-again"));
        if again.show_in_row(ui).clicked() {
            session.predict_momentum(None);
        }
    });
}
