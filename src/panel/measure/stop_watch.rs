//! What a stop-watch and a pair of eyes say of an attempt.

use egui::{RichText, Ui};

use crate::controls::{NumberEdit, NumberText, StepperRow, choice, stepper};
use crate::number_row;
use crate::style::{self, GAP};
use crate::text::{card, small};
use turns_aloft_attempt::Measured;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_session::Session;
use turns_aloft_words::{decimal, text};

/// What one touch makes the half-width larger or smaller by, s.
const HALF_WIDTH_STEP_S: f64 = 0.01;

/// How far past the heading owed a landing may be said to face, in quarter turns; the name of each.
const LANDINGS: [(f64, &str, &str); 5] = [
    (-2.0, "half short", "measure-half-short"),
    (-1.0, "quarter short", "measure-quarter-short"),
    (0.0, "as owed", "measure-as-owed"),
    (1.0, "quarter far", "measure-quarter-far"),
    (2.0, "half far", "measure-half-far"),
];

pub fn show(ui: &mut Ui, session: &mut Session, numbers: &mut NumberEdit) {
    let Some(Measured::StopWatch(watch)) = session.measuring().map(|it| it.measured().clone())
    else {
        return;
    };
    card(ui, |ui| {
        ui.label(RichText::new(text("measure-watch")).font(style::bold(20.0)));
        let unit = session.units().of(Kind::Time);
        let shown = NumberText {
            value: unit.set_text(watch.hang_time_s),
            number: unit.set_number(watch.hang_time_s),
            sign: unit.sign(),
        };
        let label = text("reading-hang-time-s");
        if let Some(typed) = number_row::show(ui, numbers, "value:watch", label, shown) {
            session.set_typed_watch(&typed);
        }
        let value = format!("± {}", unit.set_text(watch.half_width_s));
        let row = StepperRow {
            name: "watch half-width",
            label: text("measure-watch-half-width"),
            note: "",
            value: &value,
            value_name: None,
        };
        if let Some(steps) = stepper(ui, &row) {
            session.step_watch_half_width(steps * HALF_WIDTH_STEP_S);
        }
        small(ui, text("measure-watch-about"));
        ui.add_space(GAP);
        let owed = session.jump().owed.map(|owed| owed.turns);
        if let Some(owed) = owed {
            ui.label(RichText::new(text("measure-landed")).font(style::bold(17.0)));
            let present = watch.turns_counted.map(|turns| 4.0 * (turns - owed));
            let options =
                LANDINGS.map(|(quarters, name, label)| (Some(quarters), name, text(label)));
            if let Some(Some(quarters)) = choice(ui, "landed", present, &options) {
                session.set_stop_watch(|watch| watch.turns_counted = Some(owed + 0.25 * quarters));
            }
        }
        ui.add_space(GAP);
        let counted = watch.turns_counted.map_or_else(
            || text("measure-not-counted").to_owned(),
            |it| decimal(it, 2),
        );
        let row = StepperRow {
            name: "turns counted",
            label: text("measure-counted"),
            note: text("measure-counted-about"),
            value: &counted,
            value_name: None,
        };
        if let Some(steps) = stepper(ui, &row) {
            session.step_turns_counted(steps);
        }
    });
}
