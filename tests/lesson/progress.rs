//! What a pupil has answered: predict, fly, observe, explain, in that order, and nothing lost.

use serde_json::{Value, json};

use turns_aloft::describe::Sentence;
use turns_aloft::lesson::progress_file::Unreadable;
use turns_aloft::lesson::{Lesson, Prediction, Progress, Stage};

use crate::{one_step, opened, step};

/// The step that asks for a number and a reason, then one that asks for words and flies nothing.
fn lesson() -> Lesson {
    let mut lesson = one_step(&step());
    let words = json!({
        "title": "In words",
        "question": "Why?",
        "answer": { "kind": "words" },
        "explanation": "So it is.",
    });
    let steps = lesson["steps"].as_array_mut().expect("steps");
    steps.push(words);
    opened(&lesson)
}

fn predicted(lesson: &Lesson) -> Progress {
    let mut progress = Progress::new(lesson);
    progress.predict(Some(Prediction::Number(2.5)));
    progress.give_reason("It looks like that.");
    progress
}

#[test]
fn nothing_is_flown_before_it_has_been_predicted() {
    let lesson = lesson();
    let mut progress = Progress::new(&lesson);
    let stays = |progress: &mut Progress| {
        progress.go_on(&lesson);
        assert_eq!(progress.stage(), Stage::Predict);
        assert!(!progress.may_fly());
    };
    stays(&mut progress);
    // A number that is none, an answer of another kind, a prediction without the reason.
    progress.predict(Some(Prediction::Number(f64::NAN)));
    progress.give_reason("Because.");
    stays(&mut progress);
    progress.predict(Some(Prediction::Choice(0)));
    stays(&mut progress);
    progress.predict(Some(Prediction::Number(2.0)));
    progress.give_reason("  ");
    stays(&mut progress);
    progress.observe("Seen before it was flown.");
    assert_eq!(progress.record().observation, "");
    progress.give_reason("Because.");
    progress.go_on(&lesson);
    assert_eq!(progress.stage(), Stage::Fly);
    assert!(progress.may_fly());
}

#[test]
fn each_stage_comes_after_the_one_before() {
    let lesson = lesson();
    let mut progress = predicted(&lesson);
    progress.go_on(&lesson);
    // What was predicted stays from then on.
    progress.predict(Some(Prediction::Number(3.0)));
    progress.give_reason("Another one.");
    assert_eq!(progress.record().prediction, Some(Prediction::Number(2.5)));
    assert_eq!(progress.record().reason, "It looks like that.");
    progress.go_on(&lesson);
    assert_eq!(progress.stage(), Stage::Observe);
    assert!(!progress.can_go_on(&lesson));
    progress.observe("Nearly three.");
    progress.go_on(&lesson);
    assert_eq!(progress.stage(), Stage::Explain);
    assert!(progress.is_reached(1) && !progress.is_done());
    progress.go_on(&lesson);
    assert_eq!((progress.at(), progress.stage()), (1, Stage::Predict));
    // Nothing is flown there: it is explained at once, and it is the last one.
    progress.predict(Some(Prediction::Words("So.".to_owned())));
    progress.go_on(&lesson);
    assert_eq!(progress.stage(), Stage::Explain);
    assert!(progress.is_done() && !progress.can_go_on(&lesson));
    progress.go_on(&lesson);
    assert_eq!(progress.at(), 1);
}

#[test]
fn going_back_loses_nothing() {
    let lesson = lesson();
    let mut progress = predicted(&lesson);
    progress.show(1);
    assert_eq!(progress.at(), 0);
    progress.go_back();
    assert_eq!(progress.at(), 0);
    for _ in 0..2 {
        progress.go_on(&lesson);
    }
    progress.observe("Nearly three.");
    for _ in 0..2 {
        progress.go_on(&lesson);
    }
    let before = progress.records().to_vec();
    progress.go_back();
    assert_eq!((progress.at(), progress.stage()), (0, Stage::Explain));
    assert_eq!(progress.records(), before);
    progress.show(1);
    assert_eq!(progress.at(), 1);
}

#[test]
fn a_curve_goes_on_in_time() {
    let mut curve = step();
    curve["answer"] = json!({ "kind": "curve", "of": "rate" });
    let lesson = opened(&one_step(&curve));
    let fits = |points: &[[f64; 2]]| {
        let mut progress = Progress::new(&lesson);
        progress.give_reason("Drawn.");
        progress.predict(Some(Prediction::Curve(points.to_vec())));
        progress.can_go_on(&lesson)
    };
    assert!(fits(&[[0.0, 1.0], [0.5, 2.0]]));
    assert!(!fits(&[[0.0, 1.0]]));
    assert!(!fits(&[[0.5, 1.0], [0.5, 2.0]]));
    assert!(!fits(&[[0.0, 1.0], [0.5, f64::INFINITY]]));
    let many: Vec<[f64; 2]> = (0..201).map(|i| [f64::from(i), 0.0]).collect();
    assert!(!fits(&many));
}

#[test]
fn it_is_read_back_to_the_last_bit() {
    let lesson = lesson();
    let mut progress = predicted(&lesson);
    progress.set_who("Two of us");
    progress.go_on(&lesson);
    progress.go_on(&lesson);
    progress.observe("One\nline and another; \"quoted\", and so on.");
    let text = progress.to_file(&lesson);
    assert!(Progress::is_in(&text) && !Lesson::is_in(&text));
    assert_eq!(Progress::open_file(&text, &lesson), Ok(progress));
    let begun = Progress::new(&lesson);
    assert_eq!(
        Progress::open_file(&begun.to_file(&lesson), &lesson),
        Ok(begun)
    );
}

#[test]
fn answers_that_are_wrong_are_refused() {
    let lesson = lesson();
    let mut progress = predicted(&lesson);
    progress.go_on(&lesson);
    let whole: Value = serde_json::from_str(&progress.to_file(&lesson)).expect("JSON");
    let opened = |file: &Value| Progress::open_file(&file.to_string(), &lesson);
    assert!(opened(&whole).is_ok());
    let said = |change: &dyn Fn(&mut Value)| {
        let mut file = whole.clone();
        change(&mut file);
        opened(&file).expect_err("it is wrong").sentence()
    };
    let other = said(&|file| file["lesson"] = json!("Another"));
    assert!(other.contains("another lesson"), "{other}");
    // Shown before the step in front of it has been explained.
    let early = opened(&{
        let mut file = whole.clone();
        file["at"] = json!(1);
        file
    });
    assert_eq!(early, Err(Unreadable::OtherLesson));
    let reason = said(&|file| file["steps"][0]["reason"] = json!("a".repeat(100_000)));
    assert!(reason.contains("`reason` is too long"), "{reason}");
    let word = said(&|file| file["steps"][0]["prediction"] = json!("three"));
    assert!(
        word.contains("step 1") && word.contains("not") | word.contains("none"),
        "{word}"
    );
    let missing = said(&|file| file["steps"][0]["prediction"] = Value::Null);
    assert!(missing.contains("prediction is none"), "{missing}");
    let stage = said(&|file| file["steps"][0]["stage"] = json!("done"));
    assert!(stage.contains("stage = done"), "{stage}");
    assert!(said(&|file| file["turns_aloft_answers"] = json!(9)).contains("version 9"));
    assert_eq!(
        Progress::open_file("[]", &lesson),
        Err(Unreadable::NotAnswers)
    );
}
