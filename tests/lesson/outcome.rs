//! A prediction beside what happened, and a table of all of them.

use std::f64::consts::TAU;

use serde_json::json;

use turns_aloft::describe::outcome::{Outcome, at, table};
use turns_aloft::lesson::{Flights, Lesson, Prediction, Progress, Record, Stage};
use turns_aloft::scenario::starts;
use turns_aloft::scenario::units::Units;
use turns_aloft::words::{Language, set_language};

use crate::{one_step, opened, step};

fn asked(answer: serde_json::Value) -> Lesson {
    let mut step = step();
    step["answer"] = answer;
    opened(&one_step(&step))
}

fn outcome(lesson: &Lesson, prediction: Prediction) -> Outcome {
    let record = Record {
        prediction: Some(prediction),
        ..Record::default()
    };
    let step = &lesson.steps[0];
    let outcome = Outcome::of(step, &record, &Flights::of(step), &Units::default());
    outcome.expect("it has been predicted")
}

#[test]
fn a_number_is_off_by_a_share_of_what_happened() {
    let lesson = asked(json!({ "kind": "number", "of": "peak_rate_rad_s" }));
    let flown = starts::named("senior-triple")
        .expect("a start")
        .scenario
        .fly();
    let peak_rad_s = flown.readout.peak_rate_rad_s;
    let found = outcome(&lesson, Prediction::Number(1.25 * peak_rad_s));
    let off = found.off_percent.expect("a number");
    assert!((off - 25.0).abs() < 1e-9, "{off}");
    let rpm = format!("{:.0} rpm", peak_rad_s * 60.0 / TAU);
    assert_eq!(found.happened, Some(rpm));
    assert_eq!(found.right, None);
}

#[test]
fn a_choice_is_right_or_not() {
    let options = json!([{ "text": "up", "is": "rises" }, { "text": "same", "is": "stays" }]);
    let lesson = asked(json!({
        "kind": "choice", "from": "takeoff_rate_rad_s", "to": "peak_rate_rad_s", "options": options,
    }));
    let wrong = outcome(&lesson, Prediction::Choice(1));
    assert_eq!(
        (wrong.predicted.as_str(), wrong.right),
        ("same", Some(false))
    );
    assert_eq!(wrong.happened.as_deref(), Some("up"));
    assert_eq!(outcome(&lesson, Prediction::Choice(0)).right, Some(true));
}

#[test]
fn a_curve_is_told_at_the_same_times() {
    let lesson = asked(json!({ "kind": "curve", "of": "rate" }));
    let drawn = vec![[0.0, TAU], [0.5, 2.0 * TAU]];
    let found = outcome(&lesson, Prediction::Curve(drawn));
    let happened = found.happened.as_deref().expect("a curve was flown");
    assert!(found.predicted.starts_with("0.00 s: 60 rpm; "), "{found:?}");
    assert!(found.predicted.ends_with("0.50 s: 120 rpm"));
    let times = |text: &str| -> Vec<String> {
        text.split("; ")
            .map(|it| it.split(':').next().expect("a time").to_owned())
            .collect()
    };
    assert_eq!(times(&found.predicted), times(happened));
    assert_eq!(at(&[[0.0, 1.0], [2.0, 3.0]], 0.5), 1.5);
    assert_eq!(at(&[[0.0, 1.0], [2.0, 3.0]], 9.0), 3.0);
}

/// A cell of the first row, as a spreadsheet reads it.
fn cells(text: &str, separator: u8) -> Vec<String> {
    let sign = if separator == b',' { "point" } else { "komma" };
    assert!(
        text.lines()
            .next()
            .is_some_and(|first| first.contains(sign))
    );
    let text = text
        .strip_prefix('\u{feff}')
        .expect("it says that it is UTF-8");
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(separator)
        .from_reader(text.as_bytes());
    assert_eq!(reader.headers().expect("a heading").len(), 9);
    let row = reader
        .records()
        .next()
        .expect("a row")
        .expect("as many cells");
    row.iter().map(str::to_owned).collect()
}

#[test]
fn the_table_has_numbers_as_the_language_writes_them_and_gives_nothing_away() {
    let lesson = asked(json!({ "kind": "number", "of": "turns" }));
    let mut progress = Progress::new(&lesson);
    progress.predict(Some(Prediction::Number(2.5)));
    progress.give_reason("=1+1; \"so\"");
    progress.go_on(&lesson);
    for (language, separator, written) in [
        (Language::English, b',', "2.5"),
        (Language::German, b';', "2,5"),
    ] {
        set_language(language);
        let row = cells(&table(&lesson, &progress, &Units::default()), separator);
        assert_eq!(row[0], "1");
        assert_eq!(row[2], written);
        // No formula, whatever somebody types.
        assert_eq!(row[4], "'=1+1; \"so\"");
        assert_eq!(row[5], "", "not explained yet");
    }
    set_language(Language::English);
    progress.go_on(&lesson);
    progress.observe("Two lines\nof it");
    progress.go_on(&lesson);
    assert_eq!(progress.stage(), Stage::Explain);
    let row = cells(&table(&lesson, &progress, &Units::default()), b',');
    assert_eq!(
        (row[5].as_str(), row[8].as_str()),
        ("2.94 turns", "Two lines\nof it")
    );
    let off: f64 = row[6].parse().expect("a number");
    assert!((off + 14.98).abs() < 0.01, "{off}");
}
