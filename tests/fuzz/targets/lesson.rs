//! A lesson's file, or what a pupil has answered to a lesson.

#![no_main]

use std::sync::LazyLock;

use libfuzzer_sys::{Corpus, fuzz_target};
use turns_aloft::describe::quantity::filled;
use turns_aloft::lesson::{Flights, Lesson, Progress, Said, Setup, Step, Truth};
use turns_aloft::scenario::units::Units;
use turns_aloft_fuzz::said;

/// Runs on turntables that are asked for, s, so that a lesson takes no longer than a second.
const LONGEST_RUNS_S: f64 = 20.0;

/// The lesson that answers are read for.
static LESSON: LazyLock<Lesson> = LazyLock::new(|| {
    let text = include_str!("../../../assets/lessons/what-stays-the-same.lesson.json");
    Lesson::open_file(text).expect("a lesson of ours")
});

fuzz_target!(|data: &[u8]| -> Corpus {
    let Ok(text) = std::str::from_utf8(data) else {
        return Corpus::Reject;
    };
    match Progress::open_file(text, &LESSON) {
        Ok(progress) => answered(&progress),
        Err(why) => said(&why),
    }
    match Lesson::open_file(text) {
        Ok(lesson) => good(&lesson),
        Err(why) => said(&why),
    }
    Corpus::Keep
});

/// Nothing has been flown before it was predicted, and it is read back.
fn answered(progress: &Progress) {
    for (record, step) in progress.records().iter().zip(&LESSON.steps) {
        assert!(record.stage == Default::default() || record.is_predicted(step));
    }
    let again = Progress::open_file(&progress.to_file(&LESSON), &LESSON);
    assert_eq!(again.as_ref(), Ok(progress));
}

/// What was let in is read back, can be asked, and has no number that is none.
fn good(lesson: &Lesson) {
    let again = Lesson::open_file(&lesson.to_file()).expect("a file is read back");
    assert!(again == *lesson);
    let begun = Progress::new(lesson);
    assert_eq!(
        Progress::open_file(&begun.to_file(lesson), lesson).as_ref(),
        Ok(&begun)
    );
    let mut left_s = LONGEST_RUNS_S;
    for step in &lesson.steps {
        left_s -= runs_s(step);
        if left_s > 0.0 {
            asked(step);
        }
    }
}

/// How long the runs on a turntable last that a step asks for, s.
fn runs_s(step: &Step) -> f64 {
    let Some(Setup::Turntable(on)) = &step.setup else {
        return 0.0;
    };
    let last = on.programme.as_ref().and_then(|it| it.rows.last());
    last.map_or(0.0, |row| row.t_s * (1 + step.variants.len()) as f64)
}

fn asked(step: &Step) {
    let flights = Flights::of(step);
    match step.truth(&flights) {
        Ok(Truth::Number(value)) => assert!(value.is_finite()),
        Ok(Truth::Choice { values, .. }) => assert!(values.iter().all(|it| it.is_finite())),
        Ok(Truth::Curve(points)) => assert!(points.as_flattened().iter().all(|it| it.is_finite())),
        Ok(Truth::Open) => {}
        Err(why) => said(&why),
    }
    for text in [&step.question, &step.explanation].map(Said::text) {
        let text = filled(text, step, &flights, &Units::default());
        assert!(!text.contains(['{', '}']), "{text}");
    }
}
