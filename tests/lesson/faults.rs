//! What is wrong with a lesson's file is said in one sentence.

use serde_json::{Value, json};

use turns_aloft::describe::Sentence;
use turns_aloft::lesson::Lesson;
use turns_aloft::words::{Language, set_language};

use crate::{one_step, opened, step};

/// What is said of it, in English; in German it is one line as well, and another one.
#[track_caller]
fn said(text: &str) -> String {
    let why = Lesson::open_file(text).expect_err("it is wrong");
    let [english, german] = Language::ALL.map(|language| {
        set_language(language);
        let said = why.sentence();
        assert_eq!(said.lines().count(), 1, "{said}");
        assert!(said.chars().count() <= 400, "{said}");
        said
    });
    assert_ne!(english, german);
    english
}

/// What is said of a lesson whose one step has another entry here; none takes it away.
#[track_caller]
fn said_of_step(key: &str, entry: Value) -> String {
    let mut step = step();
    match entry {
        Value::Null => drop(step.as_object_mut().expect("an object").remove(key)),
        entry => step[key] = entry,
    }
    said(&one_step(&step).to_string())
}

#[track_caller]
fn said_of_lesson(key: &str, entry: Value) -> String {
    let mut lesson = one_step(&step());
    lesson[key] = entry;
    said(&lesson.to_string())
}

#[track_caller]
fn has(said: &str, parts: &[&str]) {
    for part in parts {
        assert!(said.contains(part), "{part}: {said}");
    }
}

#[test]
fn the_step_that_is_changed_is_in_order() {
    let lesson = opened(&one_step(&step()));
    assert_eq!(lesson.steps.len(), 1);
    assert!(Lesson::is_in(&lesson.to_file()));
}

#[test]
fn something_else_is_no_lesson() {
    has(&said("{"), &["not a lesson", "line 1 column 1"]);
    has(&said("[]"), &["not a lesson"]);
    has(&said(&" ".repeat(400_000)), &["too large"]);
    let newer = said_of_lesson("turns_aloft_lesson", json!(2));
    has(&newer, &["version 2", "up to version 1"]);
    let whole = one_step(&step()).to_string();
    let twice = whole.replacen('{', r#"{"minutes":10,"#, 1);
    has(&said(&twice), &["duplicate field `minutes`"]);
}

#[test]
fn the_lesson_itself() {
    has(
        &said_of_lesson("colour", json!(1)),
        &["unknown field `colour`"],
    );
    has(
        &said_of_lesson("minutes", json!(20)),
        &["10 minutes", "the lesson 20"],
    );
    has(
        &said_of_lesson("minutes", json!(0)),
        &["minutes = 0", "1 to 240"],
    );
    has(
        &said_of_lesson("steps", json!([])),
        &["too few entries in `steps`"],
    );
    let many: Vec<Value> = vec![step(); 21];
    has(
        &said_of_lesson("steps", json!(many)),
        &["too many entries in `steps`: 20"],
    );
    has(
        &said_of_lesson("title", json!("")),
        &["`title` says nothing"],
    );
    has(
        &said_of_lesson("title", json!({})),
        &["`title` says nothing"],
    );
    has(
        &said_of_lesson("title", json!({ "fr": "Un" })),
        &["\"fr\"", "`en`"],
    );
    has(
        &said_of_lesson("pictures", json!(1)),
        &["pictures", "`true`"],
    );
}

#[test]
fn a_step_has_to_have_an_answer() {
    let none = said_of_step("answer", Value::Null);
    has(&none, &["step 1", "missing field `answer`"]);
    has(
        &said_of_step("answer", json!({})),
        &["missing field `kind`"],
    );
    let kind = said_of_step("answer", json!({ "kind": "drawing" }));
    has(&kind, &["drawing", "`number`", "`words`"]);
    let without = said_of_step("answer", json!({ "kind": "number" }));
    has(&without, &["missing field `of`"]);
    let too_much = said_of_step("answer", json!({ "kind": "words", "of": "turns" }));
    has(&too_much, &["unknown field `of`"]);
}

#[test]
fn a_text_of_100_kb_is_refused() {
    let long = "a".repeat(100_000);
    let of_step = said_of_step("explanation", json!(long));
    has(&of_step, &["step 1", "`explanation` is too long", "2000"]);
    let line_break = said_of_step("question", json!("One\ntwo"));
    has(&line_break, &["`question`", "line break"]);
}

#[test]
fn what_is_set_up() {
    let jump = |jump: Value| said_of_step("setup", json!({ "jump": jump }));
    has(
        &jump(json!({ "start": "nobody" })),
        &["\"nobody\"", "`half-a-turn-short`"],
    );
    let high = jump(json!({ "start": "senior-triple", "set": { "jump_height_m": 9 } }));
    has(&high, &["jump_height_m = 9 is out of range"]);
    let unknown = jump(json!({ "start": "senior-triple", "set": { "wings": 2 } }));
    has(&unknown, &["wings"]);
    let list = jump(json!({ "start": "senior-triple", "set": { "arm_tuck": [] } }));
    has(&list, &["`arm_tuck`", "neither a number nor a word"]);
    let whole = jump(json!({ "turns_aloft_scenario": 2, "scenario": {} }));
    has(&whole, &["missing field"]);
    let both = json!({ "jump": {}, "turntable": {} });
    has(
        &said_of_step("setup", both),
        &["exactly one of", "`worked_example`"],
    );
    let turntable = |of: Value| said_of_step("setup", json!({ "turntable": of }));
    has(
        &turntable(json!({ "set": { "stand": "sofa" } })),
        &["sofa", "`chair`"],
    );
    let row = |t: f64, out: f64| json!({ "time_s": t, "hand_distance_m": out });
    let far = turntable(json!({ "programme": [row(0.0, 0.5), row(1.0, 1.9)] }));
    has(&far, &["Line 2", "reaches"]);
    let order = turntable(json!({ "programme": [row(1.0, 0.5), row(0.5, 0.5)] }));
    has(&order, &["line 2 is not later"]);
    let example = json!({ "worked_example": {
        "source": "A book", "rate_rad_s": 1, "inertia": [{ "time_s": 0, "inertia_kg_m2": 1 }],
    } });
    has(&said_of_step("setup", example), &["two times of `inertia`"]);
}

#[test]
fn variants_and_what_is_free() {
    let variants = |of: Value| said_of_step("variants", of);
    has(&variants(json!({ "a.b": {} })), &["\"a.b\" is no name"]);
    has(
        &variants(json!({ "high": { "jump_height_m": 9 } })),
        &["out of range"],
    );
    has(&variants(json!([])), &["`variants` is no object"]);
    let free = |of: Value| said_of_step("free", of);
    has(&free(json!(["wings"])), &["\"wings\"", "`jump`"]);
    has(&free(json!(["push"])), &["\"push\""]);
    has(
        &free(json!(["arm_tuck", "arm_tuck"])),
        &["`arm_tuck` is free twice"],
    );
    // Nothing is free, and nothing varies, where nothing is flown.
    let mut bare = step();
    let entries = bare.as_object_mut().expect("an object");
    entries.remove("setup");
    entries.remove("variants");
    entries["answer"] = json!({ "kind": "words" });
    entries["explanation"] = json!("So it is.");
    has(
        &said(&one_step(&bare).to_string()),
        &["`free` needs something to be flown"],
    );
}

#[test]
fn quantities_and_curves() {
    let number = |of: &str| said_of_step("answer", json!({ "kind": "number", "of": of }));
    has(&number("speed"), &["\"speed\"", "`turns`"]);
    has(&number("lower.turns"), &["no variant", "\"lower\""]);
    has(&number("muscle_work_j"), &["no `muscle_work_j`"]);
    let curve = said_of_step("answer", json!({ "kind": "curve", "of": "speed" }));
    has(&curve, &["\"speed\" is no curve", "`rate`"]);
    let text = |text: &str| said_of_step("explanation", json!(text));
    has(&text("It is {speed}."), &["`explanation`", "\"speed\""]);
    has(&text("It is {turns"), &["a brace in `explanation`"]);
    has(&text("It is turns}"), &["a brace in `explanation`"]);
    // Led by hand, nothing is known beforehand.
    let mut by_hand = step();
    by_hand["setup"] = json!({ "turntable": {} });
    by_hand["variants"] = json!({});
    by_hand["free"] = json!(["arms"]);
    by_hand["explanation"] = json!("So it is.");
    let said = said(&one_step(&by_hand).to_string());
    has(&said, &["no `turns` that could be known before"]);
}

#[test]
fn choices() {
    let choice = |of: Value| {
        let mut answer = of;
        answer["kind"] = json!("choice");
        said_of_step("answer", answer)
    };
    let two = json!([{ "text": "a", "variant": "setup" }, { "text": "b", "variant": "higher" }]);
    has(
        &choice(json!({ "options": two })),
        &["exactly one of", "`most_of`"],
    );
    let both = json!({ "most_of": "turns", "least_of": "turns", "options": two });
    has(&choice(both), &["exactly one of"]);
    let one = json!({ "most_of": "turns", "options": [two[0]] });
    has(&choice(one), &["too few entries in `options`: 2"]);
    let same = json!({ "most_of": "turns", "options": [two[0], two[0]] });
    has(&choice(same), &["option 2 stands for the same"]);
    let unknown =
        json!({ "most_of": "turns", "options": [two[0], { "text": "c", "variant": "lower" }] });
    has(&choice(unknown), &["\"lower\""]);
    let is = json!({ "from": "turns", "to": "higher.turns", "options": [
        { "text": "a", "is": "rises" }, { "text": "b", "is": "jumps" },
    ] });
    has(&choice(is), &["is = jumps", "`stays`"]);
    let without_to = json!({ "from": "turns", "options": two });
    has(&choice(without_to), &["missing field `to`"]);
}
