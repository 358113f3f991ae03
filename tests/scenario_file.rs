//! The saved form: what is written is read back, and what is wrong is said in one sentence.

#[path = "support/space.rs"]
mod space;

use proptest::prelude::*;
use serde_json::{Value, json};

use turns_aloft::describe::Sentence;
use turns_aloft::scenario::file::{LARGEST_BYTES, Unreadable, VERSION};
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::{Scenario, starts};

fn good() -> Scenario {
    starts::all()[0].scenario.clone()
}

/// A good file with one thing changed.
fn changed(change: impl FnOnce(&mut Value)) -> String {
    let mut value: Value = serde_json::from_str(&good().to_file()).expect("a file is JSON");
    change(&mut value);
    value.to_string()
}

/// What is said of a file: one line, never empty.
#[track_caller]
fn said(text: &str) -> String {
    let why = match Scenario::from_file(text) {
        Ok(_) => panic!("it was opened"),
        Err(why) => why.sentence(),
    };
    assert!(!why.trim().is_empty() && !why.contains('\n'), "{why:?}");
    why
}

#[track_caller]
fn assert_says(text: &str, words: &[&str]) {
    let why = said(text);
    for word in words {
        assert!(why.contains(word), "{why:?} does not say {word:?}");
    }
}

proptest! {
    #![proptest_config(space::cases(512))]

    /// Every admissible scenario, to the last bit of every number.
    #[test]
    fn what_is_written_is_read_back(
        scenario in space::scenario(),
        name in ".{0,40}",
        note in "\\PC{0,200}",
    ) {
        let scenario = Scenario { name, note, ..scenario };
        let read = Scenario::from_file(&scenario.to_file());
        prop_assert_eq!(read.as_ref(), Ok(&scenario));
        let file_name = scenario.file_name();
        prop_assert!(file_name.ends_with(".aloft.json") && file_name.len() > 11);
        let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || "-.".contains(c);
        prop_assert!(file_name.chars().all(plain), "{}", file_name);
    }

    /// No text at all makes it panic, and hardly any opens.
    #[test]
    fn any_text_is_answered(text in "\\PC{0,300}") {
        if let Err(why) = Scenario::from_file(&text) {
            prop_assert!(!why.sentence().contains('\n'));
        }
    }

    /// Nor does a good file with a stretch of it replaced. If it still opens it still flies.
    #[test]
    fn a_damaged_file_is_answered(
        from in any::<prop::sample::Index>(),
        length in 0..12_usize,
        instead in "[-0-9a-z\"{}:,.eE\\[\\] ]{0,6}",
    ) {
        let text = good().to_file();
        let from = from.index(text.len());
        let to = (from + length).min(text.len());
        prop_assume!(text.is_char_boundary(from) && text.is_char_boundary(to));
        let damaged = format!("{}{instead}{}", &text[..from], &text[to..]);
        match Scenario::from_file(&damaged) {
            Ok(scenario) => {
                prop_assert_eq!(scenario.check(), Ok(()));
                prop_assert!(scenario.fly().turns.is_finite());
            }
            Err(why) => prop_assert!(!why.sentence().contains('\n')),
        }
    }

    /// Any JSON in place of any entry: opened only if it is admissible.
    #[test]
    fn any_entry_may_be_anything(
        entry in any::<prop::sample::Index>(),
        value in prop_oneof![
            Just(Value::Null),
            any::<bool>().prop_map(Value::from),
            any::<f64>().prop_map(Value::from),
            any::<i64>().prop_map(Value::from),
            "\\PC{0,12}".prop_map(Value::from),
            Just(json!([])),
            Just(json!({"a": 1})),
        ],
    ) {
        let text = changed(|file| {
            let entries = file["scenario"].as_object_mut().expect("an object");
            let key = entries.keys().nth(entry.index(entries.len())).expect("a key").clone();
            entries.insert(key, value);
        });
        match Scenario::from_file(&text) {
            Ok(scenario) => prop_assert_eq!(scenario.check(), Ok(())),
            Err(why) => prop_assert!(!why.sentence().contains('\n')),
        }
    }
}

/// The starting points' own files are in the written form.
#[test]
fn starting_points_are_written_as_they_are_read() {
    for start in starts::all() {
        let read = Scenario::from_file(&start.scenario.to_file());
        assert_eq!(read.as_ref(), Ok(&start.scenario));
    }
}

/// Each number just outside either limit: refused by name, value and range.
#[test]
fn a_value_out_of_range_is_named_with_its_range() {
    for key in Parameter::ALL {
        for (value, said) in [
            (key.least() - 0.1, &*(key.least() - 0.1).to_string()),
            (key.most() + 0.1, &*(key.most() + 0.1).to_string()),
            (-1e300, " = -1e300 "),
            (1e300, " = 1e300 "),
        ] {
            let text = changed(|file| file["scenario"][key.key()] = json!(value));
            let (least, most) = (key.least().to_string(), key.most().to_string());
            assert_says(&text, &[key.key(), said, &least, &most]);
        }
        for value in [key.least(), key.most()] {
            let text = changed(|file| file["scenario"][key.key()] = json!(value));
            let read = Scenario::from_file(&text).expect("limits are admissible");
            assert_eq!(key.get(&read), value);
        }
    }
}

/// A number that JSON does not have, or a double does not.
#[test]
fn numbers_that_are_none_are_refused() {
    let text = good().to_file();
    for instead in [
        "NaN",
        "Infinity",
        "-Infinity",
        "1e999",
        "-1e999",
        "0x10",
        "1,5",
        "+1",
    ] {
        let broken = text.replacen("\"lean_rad\": 0.0", &format!("\"lean_rad\": {instead}"), 1);
        assert_ne!(broken, text);
        said(&broken);
    }
    for key in Parameter::ALL {
        for instead in [json!(null), json!("0.3"), json!([0.3]), json!(true)] {
            let shown = format!("{} = {instead} is not a number", key.key());
            let broken = changed(|file| file["scenario"][key.key()] = instead);
            let (least, most) = (key.least().to_string(), key.most().to_string());
            assert_says(&broken, &[&shown, &least, &most]);
        }
    }
}

/// A byte-order mark before the text is passed over (RFC 8259, section 8.1).
#[test]
fn a_byte_order_mark_is_passed_over() {
    let text = good().to_file();
    assert_eq!(Scenario::from_file(&format!("\u{feff}{text}")), Ok(good()));
    // One, and only there.
    said(&format!("\u{feff}\u{feff}{text}"));
    said(&format!("{text}\u{feff}"));
}

/// Which of two was meant nobody can say (RFC 8259, section 4).
#[test]
fn an_entry_that_stands_twice_is_named() {
    let text = good().to_file();
    let twice = |line: &str, again: &str| {
        let double = text.replacen(line, &format!("{again}{line}"), 1);
        assert_ne!(double, text);
        double
    };
    for (name, line, again) in [
        ("arm_tuck", "\"arm_tuck\"", "\"arm_tuck\": 0.5, "),
        ("name", "\"note\"", "\"name\": \"Monday\", "),
        ("ground", "\"ground\"", "\"ground\": \"ice\", "),
        (
            "turns_aloft_scenario",
            "\"scenario\"",
            "\"turns_aloft_scenario\": 2, ",
        ),
        ("scenario", "\"scenario\"", "\"scenario\": {}, "),
        // The same name, written otherwise.
        ("arm_tuck", "\"arm_tuck\"", "\"arm\\u005ftuck\": 0.5, "),
    ] {
        let double = twice(line, again);
        assert_says(&double, &[&format!("duplicate field `{name}`"), "broken"]);
        assert!(matches!(
            Scenario::from_file(&double),
            Err(Unreadable::Broken(_))
        ));
    }
    // The same name in two places is none.
    assert_eq!(Scenario::from_file(&text), Ok(good()));
}

/// Every entry is needed, and no other is known: each is named.
#[test]
fn missing_and_unknown_entries_are_named() {
    let entries: Vec<String> = serde_json::to_value(good())
        .expect("a scenario is JSON")
        .as_object()
        .expect("an object")
        .keys()
        .cloned()
        .collect();
    assert!(entries.len() > Parameter::COUNT);
    for entry in entries {
        let text = changed(|file| {
            file["scenario"]
                .as_object_mut()
                .expect("an object")
                .remove(&entry);
        });
        assert_says(&text, &[&entry, "missing"]);
    }
    let text = changed(|file| file["scenario"]["wind_m_s"] = json!(1.0));
    assert_says(&text, &["wind_m_s", "unknown"]);
    let text = changed(|file| file["comment"] = json!("mine"));
    assert_says(&text, &["comment", "unknown"]);
    let text = changed(|file| {
        file.as_object_mut().expect("an object").remove("scenario");
    });
    assert_says(&text, &["scenario", "missing"]);
}

/// A file of a later version is not guessed at.
#[test]
fn a_newer_version_is_said_to_be_newer() {
    let newer = VERSION + 1;
    let text = changed(|file| file["turns_aloft_scenario"] = json!(newer));
    assert_eq!(Scenario::from_file(&text), Err(Unreadable::Newer(newer)));
    assert_says(&text, &[&newer.to_string(), &VERSION.to_string(), "update"]);
    // Whatever else is new in it.
    let text = changed(|file| {
        file["turns_aloft_scenario"] = json!(newer);
        file["scenario"] = json!([1, 2, 3]);
    });
    assert_eq!(Scenario::from_file(&text), Err(Unreadable::Newer(newer)));
    for version in [json!(0), json!(-1), json!(1.5), json!("1"), json!(null)] {
        let text = changed(|file| file["turns_aloft_scenario"] = version);
        assert_eq!(Scenario::from_file(&text), Err(Unreadable::NotAScenario));
        said(&text);
    }
}

#[test]
fn what_is_no_scenario_is_said_to_be_none() {
    for text in ["", "   \n", "hello", "{", "[", "{\"a\":", "\u{feff}", "nul"] {
        assert_says(text, &["not a scenario"]);
    }
    for text in [
        "{}",
        "\u{feff}{}",
        "[]",
        "[1,2]",
        "null",
        "3",
        "\"x\"",
        "{\"scenario\":{}}",
    ] {
        assert_says(text, &["not a Turns Aloft scenario"]);
    }
    // Deeper than any parser should follow.
    said(&"[".repeat(50_000));
}

/// A megabyte is refused unread; so is the first byte too many, of a file that is good but for it.
#[test]
fn what_is_too_large_is_refused() {
    let megabyte = format!("{}{}", good().to_file(), " ".repeat(1_000_000));
    assert_eq!(Scenario::from_file(&megabyte), Err(Unreadable::TooLarge));
    assert_says(&megabyte, &["too large"]);
    let text = good().to_file();
    let largest = format!("{text}{}", " ".repeat(LARGEST_BYTES - text.len()));
    assert!(Scenario::from_file(&largest).is_ok());
    assert_eq!(
        Scenario::from_file(&format!("{largest} ")),
        Err(Unreadable::TooLarge)
    );
}

/// The longest note that is opened leaves room for the longest numbers.
#[test]
fn what_was_opened_can_be_saved_whatever_its_numbers_become() {
    let compact = |note: &str| changed(|file| file["scenario"]["note"] = json!(note));
    let mut note = "n".repeat(LARGEST_BYTES - compact("").len());
    assert_eq!(
        Scenario::from_file(&compact(&note)),
        Err(Unreadable::TooLarge)
    );
    while Scenario::from_file(&compact(&note)).is_err() {
        note.pop();
    }
    let mut opened = Scenario::from_file(&compact(&note)).expect("it was opened");
    for key in Parameter::ALL {
        let long = (key.least() + (key.most() - key.least()) / 3.0).next_up();
        key.set(&mut opened, long).expect("inside its range");
    }
    assert_eq!(Scenario::from_file(&opened.to_file()), Ok(opened));
}

/// Words and whole numbers: what stands there and what could.
#[test]
fn wrong_words_are_named_with_the_right_ones() {
    for (key, right) in [
        ("jump", "toe_loop"),
        ("table", "female"),
        ("ground", "trampoline"),
        ("turning", "anticlockwise"),
        ("hands_keep", "angular_momentum"),
    ] {
        let text = changed(|file| file["scenario"][key] = json!("sideways"));
        assert_says(&text, &[&format!("{key} = sideways"), right]);
        for other in [
            json!(null),
            json!(1.5),
            json!([right]),
            json!({right: null}),
        ] {
            let shown = format!("{key} = {other}");
            let text = changed(|file| file["scenario"][key] = other);
            assert_says(&text, &[&shown, right]);
        }
        // However long, it leaves room for the right ones.
        let text = changed(|file| file["scenario"][key] = json!("sideways".repeat(1000)));
        assert_says(&text, &[key, right]);
        assert!(said(&text).len() < 300);
    }
    for turns in [json!(0), json!(6)] {
        let text = changed(|file| file["scenario"]["jump_turns"] = turns.clone());
        assert_says(&text, &["jump_turns", &turns.to_string(), "1", "5"]);
    }
    for turns in [json!(2.5), json!(-1), json!(256), json!("2")] {
        let text = changed(|file| file["scenario"]["jump_turns"] = turns.clone());
        let shown = turns.as_str().map_or(turns.to_string(), str::to_owned);
        assert_says(&text, &[&format!("jump_turns = {shown}"), "1 to 5"]);
    }
    for key in ["name", "note"] {
        let text = changed(|file| file["scenario"][key] = json!(1.5));
        assert_says(&text, &[&format!("{key} = 1.5 is not a text")]);
    }
}

/// `--set` says the same: key, value and what is admissible, and changes nothing.
#[test]
fn settings_are_refused_by_name_value_and_range() {
    let mut scenario = good();
    let mut refused = |key: &str, value: &str| {
        let why = scenario.set(key, value).expect_err("refused").sentence();
        assert!(!why.contains('\n'), "{why:?}");
        assert!(why.contains(key) && why.contains(value), "{why:?}");
        assert_eq!(scenario, good());
        why
    };
    for key in Parameter::ALL {
        for value in ["NaN", "inf", "1e999", "-1e999", "abc", "1,5", ""] {
            let why = refused(key.key(), value);
            assert!(
                why.contains(&key.least().to_string()) && why.contains(&key.most().to_string())
            );
        }
    }
    for turns in ["0", "6", "2.5", "-1", "two"] {
        let why = refused("jump_turns", turns);
        assert!(why.contains("a whole number from 1 to 5"), "{why}");
    }
    for (key, words) in [
        (
            "jump",
            "toe_loop, salchow, loop, flip, lutz, axel, off_ice, free",
        ),
        ("table", "female, male"),
        ("ground", "ice, floor, trampoline"),
        ("turning", "anticlockwise, clockwise"),
        ("hands_keep", "rate, angular_momentum, energy"),
    ] {
        let why = refused(key, "sideways");
        assert!(why.replace('`', "").ends_with(words), "{why}");
    }
    let why = refused("takeoff_rate", "3");
    assert!(why.contains("takeoff_rate_rad_s"), "{why}");
}

/// A jump that was led by hand says so by its version; all others are written as ever.
#[test]
fn only_a_led_jump_needs_the_new_version() {
    let version = |scenario: &Scenario| {
        let file: Value = serde_json::from_str(&scenario.to_file()).expect("a file is JSON");
        file["turns_aloft_scenario"].as_u64()
    };
    assert_eq!(version(&good()), Some(2));
    assert!(!good().to_file().contains("led"));
    let knots = json!([
        {"time_s": 0.05, "arms": 1, "legs": 0.9},
        {"time_s": 0.5, "arms": 0, "legs": 0},
    ]);
    let text = changed(|file| {
        file["turns_aloft_scenario"] = json!(3);
        file["scenario"]["led"] = knots;
    });
    let opened = Scenario::open_file(&text).expect("it opens");
    assert!(!opened.earlier_body);
    assert_eq!(version(&opened.read), Some(3));
    assert_eq!(
        opened.read.led.as_ref().map(|led| led.knots().len()),
        Some(2)
    );
    assert_ne!(opened.read.fly().turns, good().fly().turns);
    // Nothing is led where nothing stands.
    let text = changed(|file| file["scenario"]["led"] = Value::Null);
    assert_eq!(Scenario::from_file(&text), Ok(good()));
}

/// Knots that no body can be led by: which, and why.
#[test]
fn wrong_knots_are_named() {
    let with = |led: Value| changed(|file| file["scenario"]["led"] = led);
    let knot = |time_s: f64, arms: f64| json!({"time_s": time_s, "arms": arms, "legs": 0.5});
    assert_says(&with(json!([])), &["led has 0 knots", "1 to 200"]);
    let many: Vec<Value> = (0..201).map(|i| knot(0.001 * f64::from(i), 0.5)).collect();
    assert_says(&with(json!(many)), &["led has 201 knots"]);
    assert_says(
        &with(json!([knot(0.1, 1.5)])),
        &["knot 1", "arms = 1.5", "0 to 1"],
    );
    assert_says(
        &with(json!([knot(-0.1, 1.0)])),
        &["knot 1", "time_s = -0.1", "0 to 2"],
    );
    let back = json!([knot(0.2, 1.0), knot(0.1, 0.0)]);
    assert_says(&with(back), &["knot 2", "time_s = 0.1", "later"]);
    assert_says(&with(json!({})), &["`led` is no list"]);
    assert_says(&with(json!([1.0])), &["`led` is no object"]);
    assert_says(&with(json!([{"time_s": 0.1, "arms": 1}])), &["legs"]);
    let odd = json!([{"time_s": 0.1, "arms": "in", "legs": 1}]);
    assert_says(&with(odd), &["`arms` is no number"]);
    let more = json!([{"time_s": 0.1, "arms": 1, "legs": 1, "head": 1}]);
    assert_says(&with(more), &["unknown field `head`"]);
}

/// What a hand has taken the place of is not set without a word; the hand can be taken away.
#[test]
fn what_has_no_part_is_not_set() {
    let text = changed(|file| {
        file["scenario"]["led"] = json!([{"time_s": 0.05, "arms": 1, "legs": 1}]);
    });
    let mut scenario = Scenario::from_file(&text).expect("it opens");
    for key in Parameter::ALL {
        let value = key.get(&good()).to_string();
        match scenario.set(key.key(), &value) {
            Ok(()) => assert!(scenario.has_part(key), "{key:?}"),
            Err(why) => {
                let why = why.sentence();
                assert!(!scenario.has_part(key), "{why}");
                assert!(
                    why.contains(key.key()) && why.contains("led = none"),
                    "{why}"
                );
            }
        }
    }
    let why = scenario
        .set("led", "0.5")
        .expect_err("knots are no text")
        .sentence();
    assert!(why.contains("led = 0.5") && why.contains("none"), "{why}");
    assert_eq!(scenario.set("led", "none"), Ok(()));
    assert_eq!(scenario, good());
    assert_eq!(scenario.set("arm_tuck", "0.5"), Ok(()));
}
