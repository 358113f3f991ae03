//! What is right is worked out by flights.

use serde_json::{Value, json};

use turns_aloft::lesson::truth::meaning;
use turns_aloft::lesson::{Flights, Lesson, Meaning, Truth, Unanswerable};
use turns_aloft::scenario::starts;

use crate::{one_step, opened, step};

fn asked(answer: Value) -> Lesson {
    let mut step = step();
    step["answer"] = answer;
    opened(&one_step(&step))
}

fn truth(answer: Value) -> Result<Truth, Unanswerable> {
    let lesson = asked(answer);
    lesson.steps[0].truth(&Flights::of(&lesson.steps[0]))
}

#[test]
fn a_number_is_that_of_the_flight() {
    let triple = &starts::named("senior-triple").expect("a start").scenario;
    let flown = triple.fly();
    let turns = truth(json!({ "kind": "number", "of": "turns" }));
    assert_eq!(turns, Ok(Truth::Number(flown.turns)));
    let mut higher = triple.clone();
    higher.jump_height_m = 0.5;
    let turns = truth(json!({ "kind": "number", "of": "higher.turns" }));
    assert_eq!(turns, Ok(Truth::Number(higher.fly().turns)));
}

#[test]
fn a_curve_is_that_of_the_chart() {
    let flown = starts::named("senior-triple")
        .expect("a start")
        .scenario
        .fly();
    let Ok(Truth::Curve(points)) = truth(json!({ "kind": "curve", "of": "rate" })) else {
        panic!("a curve");
    };
    assert_eq!(points.len(), flown.flight.samples.len());
    for ([t_s, rate], sample) in points.iter().zip(&flown.flight.samples) {
        assert_eq!((*t_s, *rate), (sample.t_s, sample.spin_rad_s));
    }
}

#[test]
fn the_best_variant_is_right() {
    let options = json!([
        { "text": "as it is", "variant": "setup" },
        { "text": "higher", "variant": "higher" },
    ]);
    let right = |found_by: &str| {
        let answer = json!({ "kind": "choice", found_by: "turns", "options": options });
        match truth(answer) {
            Ok(Truth::Choice { right, values }) => (right, values.len()),
            other => panic!("{other:?}"),
        }
    };
    assert_eq!(right("most_of"), (1, 2));
    assert_eq!(right("least_of"), (0, 2));
    // A tenth of a gram more on the feet turns no otherwise.
    let tie = truth(json!({
        "kind": "choice",
        "most_of": "turns",
        "options": [{ "text": "a", "variant": "setup" }, { "text": "b", "variant": "same" }],
    }));
    assert!(matches!(tie, Err(Unanswerable::Tie(_))), "{tie:?}");
}

#[test]
fn what_rises_falls_or_stays_is_found() {
    assert_eq!(meaning(1.0, 1.02), Meaning::Rises);
    assert_eq!(meaning(1.0, 0.98), Meaning::Falls);
    assert_eq!(meaning(-1.0, -1.005), Meaning::Stays);
    assert_eq!(meaning(0.0, 0.0), Meaning::Stays);
    let options = json!([{ "text": "up", "is": "rises" }, { "text": "same", "is": "stays" }]);
    let comes = |from: &str, to: &str| {
        truth(json!({ "kind": "choice", "from": from, "to": to, "options": options }))
    };
    let right = |found: Result<Truth, Unanswerable>| match found {
        Ok(Truth::Choice { right, .. }) => right,
        other => panic!("{other:?}"),
    };
    assert_eq!(right(comes("takeoff_rate_rad_s", "peak_rate_rad_s")), 0);
    let momentum = ["takeoff", "touchdown"].map(|at| format!("angular_momentum_{at}_kg_m2_s"));
    assert_eq!(right(comes(&momentum[0], &momentum[1])), 1);
    assert_eq!(
        comes("higher.turns", "turns"),
        Err(Unanswerable::NotAmongOptions(Meaning::Falls))
    );
}

#[test]
fn the_nearest_value_is_right() {
    let nearest = |values: [f64; 2]| {
        let options = values.map(|value| json!({ "text": "it", "value": value }));
        truth(json!({ "kind": "choice", "of": "turns_owed", "options": options }))
    };
    let right = |found| match found {
        Ok(Truth::Choice { right, values }) => (right, values),
        other => panic!("{other:?}"),
    };
    assert_eq!(right(nearest([2.0, 3.1])), (1, vec![3.0]));
    assert_eq!(nearest([2.0, 4.0]), Err(Unanswerable::Tie([0, 1])));
}

#[test]
fn opinions_and_words_have_no_right_answer() {
    let options = json!([{ "text": "yes" }, { "text": "no" }]);
    let open = json!({ "kind": "choice", "open": true, "options": options });
    assert_eq!(truth(open), Ok(Truth::Open));
    assert_eq!(truth(json!({ "kind": "words" })), Ok(Truth::Open));
}
