//! What a stop-watch and a pair of eyes say of an attempt.

use egui::{Rect, RichText, Sense, Ui, pos2, vec2};

use crate::controls::{NumberEdit, NumberText, StepperRow, choice, number_field, stepper};
use crate::number::VALUE_WIDTH;
use crate::style::{self, GAP, TOUCH_SIZE};
use crate::text::{card, small};
use turns_aloft_attempt::Measured;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_session::Session;
use turns_aloft_words::{decimal, say, text};

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
        let size = vec2(ui.available_width(), TOUCH_SIZE);
        let (row, _) = ui.allocate_exact_size(size, Sense::hover());
        ui.painter().text(
            row.left_center(),
            egui::Align2::LEFT_CENTER,
            text("reading-hang-time-s"),
            style::text(17.0),
            style::TEXT.get(),
        );
        let unit = session.units().of(Kind::Time);
        let shown = NumberText {
            value: unit.set_text(watch.hang_time_s),
            number: unit.set_number(watch.hang_time_s),
            sign: unit.sign(),
        };
        let field = Rect::from_min_max(pos2(row.right() - VALUE_WIDTH, row.top()), row.max);
        let accessible_name = || say!("panel-typed", what = text("reading-hang-time-s"));
        let name = "value:watch";
        if let Some(typed) = number_field(ui, numbers, name, field, accessible_name, shown) {
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
