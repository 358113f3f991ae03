//! What a pupil predicted in a step and what happened, side by side, in words; and all of a lesson as a table.

use crate::quantity::{figure_text, filled, unit, value_text};
use crate::spreadsheet::{Cell, Spreadsheet};
use crate::unit::UnitText;
use crate::{Label, curve};
use turns_aloft_lesson::answer::OfCurve;
use turns_aloft_lesson::{
    Answer, Flights, Lesson, Prediction, Progress, Record, Setup, Stage, Step, Truth,
};
use turns_aloft_scenario::curve::Curve;
use turns_aloft_scenario::units::{Unit, Units};
use turns_aloft_turntable::RunCurve;
use turns_aloft_words::{decimal, say, text};

/// A step's prediction beside what happened.
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome {
    pub predicted: String,
    /// None where nothing is right or wrong.
    pub happened: Option<String>,
    /// Of a choice, whether it was the right option.
    pub right: Option<bool>,
    /// Of a number, by how much of what happened the prediction was more, in percent.
    pub off_percent: Option<f64>,
}

impl Outcome {
    /// Of a step that has been predicted; none before, and where its truth cannot be found.
    pub fn of(step: &Step, record: &Record, flights: &Flights, units: &Units) -> Option<Self> {
        let prediction = record.prediction.as_ref()?;
        let truth = step.truth(flights).ok()?;
        let said = |place: usize| option(step, place, flights, units);
        Some(match (prediction, &truth, &step.answer) {
            (Prediction::Number(value), Truth::Number(flown), Answer::Number(figure)) => Self {
                predicted: value_text(figure.quantity, *value, units),
                happened: figure_text(figure, flights, units),
                right: None,
                off_percent: Some(100.0 * (value - flown) / flown.abs())
                    .filter(|it| it.is_finite()),
            },
            (Prediction::Choice(place), Truth::Choice { right, .. }, _) => Self {
                predicted: said(*place),
                happened: Some(said(*right)),
                right: Some(place == right),
                off_percent: None,
            },
            (Prediction::Curve(points), Truth::Curve(flown), Answer::Curve(of)) => {
                let unit = curve_unit(of, step, units)?;
                let times_s = spread(points);
                Self {
                    predicted: values(points, &times_s, unit),
                    happened: Some(values(flown, &times_s, unit)),
                    right: None,
                    off_percent: None,
                }
            }
            _ => Self {
                predicted: match prediction {
                    Prediction::Words(words) => words.clone(),
                    Prediction::Choice(place) => said(*place),
                    Prediction::Number(_) | Prediction::Curve(_) => String::new(),
                },
                happened: None,
                right: None,
                off_percent: None,
            },
        })
    }
}

/// The text of an option, with its figures.
pub fn option(step: &Step, place: usize, flights: &Flights, units: &Units) -> String {
    let Answer::Choice(choice) = &step.answer else {
        return String::new();
    };
    let texts = choice.texts();
    texts
        .get(place)
        .map_or_else(String::new, |it| filled(it.text(), step, flights, units))
}

/// The unit in which a curve of a step is shown, and drawn.
pub fn curve_unit(of: &OfCurve, step: &Step, units: &Units) -> Option<Unit> {
    match step.setup.as_ref()? {
        Setup::Jump(_) => Curve::named(&of.curve).map(|it| curve::unit(it, units)),
        Setup::Turntable(_) | Setup::WorkedExample(_) => {
            RunCurve::named(&of.curve).map(|it| curve::run_unit(it, units))
        }
    }
}

/// What a curve of a step is called.
pub fn curve_label(of: &OfCurve) -> &'static str {
    Curve::named(&of.curve).map_or("", Label::label)
}

/// Times at which a curve is told of: enough to draw it again by hand. Our choice.
const TOLD: usize = 8;

/// Even times from the first point to the last one.
fn spread(points: &[[f64; 2]]) -> Vec<f64> {
    let (Some([from_s, _]), Some([to_s, _])) = (points.first(), points.last()) else {
        return Vec::new();
    };
    let part = |i: usize| i as f64 / (TOLD - 1) as f64;
    (0..TOLD)
        .map(|i| from_s + part(i) * (to_s - from_s))
        .collect()
}

/// The values of a curve at some times: "0.10 s: 124 rpm".
fn values(points: &[[f64; 2]], times_s: &[f64], unit: Unit) -> String {
    let told = times_s.iter().map(|&t_s| {
        let value = unit.text(at(points, t_s));
        say!("lesson-at-time", time = decimal(t_s, 2), value = value)
    });
    told.collect::<Vec<_>>().join("; ")
}

/// In proportion between two points; held at the ends.
pub fn at(points: &[[f64; 2]], t_s: f64) -> f64 {
    let later = points.partition_point(|[time_s, _]| *time_s < t_s);
    match (
        later.checked_sub(1).and_then(|i| points.get(i)),
        points.get(later),
    ) {
        (Some([from_s, from]), Some([to_s, to])) => {
            from + (to - from) * (t_s - from_s) / (to_s - from_s)
        }
        (Some([_, value]), None) | (None, Some([_, value])) => *value,
        (None, None) => 0.0,
    }
}

/// What a pupil has predicted and observed, step by step, for a spreadsheet. What happened stands only where it
/// has been explained: a table gives no answer away.
pub fn table(lesson: &Lesson, progress: &Progress, units: &Units) -> String {
    let heading = [
        text("lesson-table-step"),
        text("lesson-table-question"),
        text("lesson-table-prediction-number"),
        text("lesson-table-unit"),
        text("lesson-table-reason"),
        text("lesson-table-happened"),
        text("lesson-table-off"),
        text("lesson-table-right"),
        text("lesson-table-observation"),
    ];
    let mut table = Spreadsheet::with_heading(heading);
    for (i, (step, record)) in lesson.steps.iter().zip(progress.records()).enumerate() {
        let flights = Flights::of(step);
        let question = filled(step.question.text(), step, &flights, units);
        let outcome = Outcome::of(step, record, &flights, units);
        let known = outcome.as_ref().filter(|_| record.stage == Stage::Explain);
        let happened = known.and_then(|it| it.happened.as_deref()).unwrap_or("");
        let right = match known.and_then(|it| it.right) {
            Some(true) => text("lesson-table-yes"),
            Some(false) => text("lesson-table-no"),
            None => "",
        };
        let number = match (&record.prediction, &step.answer) {
            (Some(Prediction::Number(value)), Answer::Number(figure)) => {
                Some((*value, unit(figure.quantity, units)))
            }
            _ => None,
        };
        let predicted = outcome.as_ref().map_or("", |it| &it.predicted);
        let off = known.and_then(|it| it.off_percent);
        table.cells([
            Cell::Number(i as f64 + 1.0, None),
            Cell::Text(&question),
            number.map_or(Cell::Text(predicted), |(value, unit)| {
                Cell::Number(value, unit)
            }),
            Cell::Text(number.and_then(|(_, unit)| unit).map_or("", |it| it.sign())),
            Cell::Text(&record.reason),
            Cell::Text(happened),
            off.map_or(Cell::Text(""), |off| Cell::Number(off, None)),
            Cell::Text(right),
            Cell::Text(&record.observation),
        ]);
    }
    table.into_csv()
}
