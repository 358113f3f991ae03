//! What can be saved as a file.

use crate::session::Session;
use turns_aloft_analysis::map::TurnMap;
use turns_aloft_describe::Label;
use turns_aloft_describe::curve::{run_unit, unit};
use turns_aloft_describe::outcome::table as answers_table;
use turns_aloft_describe::spreadsheet::{Spreadsheet, heading};
use turns_aloft_describe::unit::{SECONDS, TURNS};
use turns_aloft_scenario::curve::Curve;
use turns_aloft_turntable::{Run, RunCurve};
use turns_aloft_words::text;

/// Time between rows of a flight's table, s: a flight has some sixty. Our choice.
const ROW_S: f64 = 0.01;

/// What can be saved as a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Saved {
    Jump,
    /// All kept jumps.
    KeptJumps,
    /// The attempt at hand: its marks, and no film.
    Attempt,
    /// What was answered in the lesson in sight, for a spreadsheet.
    AnswersTable,
    /// The flight over time, for a spreadsheet.
    FlightTable,
    /// The run on the turntable over time, for a spreadsheet.
    RunTable,
    /// The map, as far as it has been flown, for a spreadsheet.
    MapTable,
}

impl Session {
    /// The file: its name, and its text. None where there is nothing to save.
    pub fn file_of(&self, saved: Saved) -> Option<[String; 2]> {
        match saved {
            Saved::Jump => Some(self.file()),
            Saved::KeptJumps => Some(["kept-jumps.aloft.json".to_owned(), self.kept_file()]),
            Saved::Attempt => self.attempt_file(),
            Saved::AnswersTable => {
                let lesson = self.lesson()?;
                let table = answers_table(lesson.lesson(), lesson.progress(), self.units());
                Some(["answers.csv".to_owned(), table])
            }
            Saved::FlightTable => {
                let name = self.written().file_name().replace(".aloft.json", ".csv");
                Some([name, self.flight_table()])
            }
            Saved::RunTable => {
                let table = self.run_table(self.turntable()?.run());
                Some(["turntable.csv".to_owned(), table])
            }
            Saved::MapTable => {
                let table = self.map_table(&self.made()?.map);
                Some(["turn-map.csv".to_owned(), table])
            }
        }
    }

    /// Says how a file was written, where somebody has to know.
    pub fn say_saved(&mut self, saved: Saved) {
        match saved {
            Saved::AnswersTable | Saved::FlightTable | Saved::RunTable | Saved::MapTable => {
                self.say(text("table-saved"));
            }
            Saved::Jump | Saved::KeptJumps | Saved::Attempt => {}
        }
    }

    fn flight_table(&self) -> String {
        let units = Curve::ALL.map(|curve| unit(curve, self.units()));
        let mut columns = vec![heading(text("table-time"), SECONDS)];
        let of_curves = Curve::ALL.iter().zip(units);
        columns.extend(of_curves.map(|(curve, unit)| heading(curve.label(), unit)));
        let mut table = Spreadsheet::with_heading(columns.iter().map(String::as_str));
        let (scenario, jump) = (self.scenario(), self.jump());
        let end_s = jump.flight.touchdown_s;
        let even = (0..)
            .map(|row| f64::from(row) * ROW_S)
            .take_while(|&t_s| t_s < end_s);
        for t_s in even.chain([end_s]) {
            let mut row = vec![(t_s, SECONDS)];
            let values = Curve::ALL.map(|curve| curve.value(scenario, jump, t_s));
            row.extend(values.into_iter().zip(units));
            table.numbers(&row);
        }
        table.into_csv()
    }

    fn run_table(&self, run: &Run) -> String {
        let units = RunCurve::ALL.map(|curve| run_unit(curve, self.units()));
        let mut columns = vec![
            heading(text("table-time"), SECONDS),
            heading(Curve::Turns.label(), TURNS),
        ];
        let of_curves = RunCurve::ALL.iter().zip(units);
        columns.extend(of_curves.map(|(curve, unit)| heading(curve.label(), unit)));
        let mut table = Spreadsheet::with_heading(columns.iter().map(String::as_str));
        for sample in &run.samples {
            let mut row = vec![(sample.t_s, SECONDS), (sample.turns(), TURNS)];
            let values = RunCurve::ALL.map(|curve| curve.value(sample));
            row.extend(values.into_iter().zip(units));
            table.numbers(&row);
        }
        table.into_csv()
    }

    fn map_table(&self, map: &TurnMap) -> String {
        let sides = map.axes();
        let units = sides.map(|side| self.units().of(side.parameter().kind()));
        let labels = [0, 1].map(|i| heading(sides[i].parameter().label(), units[i]));
        let turns = heading(text("table-turns-at-landing"), TURNS);
        let heads = labels.iter().chain([&turns]).map(String::as_str);
        let mut table = Spreadsheet::with_heading(heads);
        for j in 0..sides[1].nodes() {
            for i in 0..sides[0].nodes() {
                if let Some(turns) = map.turns(i, j) {
                    let [across, up] = [sides[0].value(i), sides[1].value(j)];
                    table.numbers(&[(across, units[0]), (up, units[1]), (turns, TURNS)]);
                }
            }
        }
        table.into_csv()
    }
}
