//! `aloft lesson`: a lesson in, its answer sheet out.

#[path = "support/aloft.rs"]
mod command;
#[path = "support/printed.rs"]
mod printed;
#[path = "support/refused.rs"]
mod refused;

use std::fs;
use std::path::Path;

use printed::printed;
use refused::refused;
use serde_json::Value;

use turns_aloft::lesson::names::NAMES;

fn sheet(name: &str) -> Value {
    serde_json::from_str(&printed(&["lesson", name])).expect("it prints JSON")
}

/// A readout of a flight, as the command prints it.
fn flown(arguments: &[&str], key: &str) -> f64 {
    let text = printed(&[&["fly"], arguments].concat());
    let flight: Value = serde_json::from_str(&text).expect("it prints JSON");
    flight[key]
        .as_f64()
        .unwrap_or_else(|| panic!("{key}: {text}"))
}

#[test]
fn those_that_come_along_are_listed_and_have_answers() {
    let list = printed(&["lesson", "--list"]);
    for (line, name) in list.lines().zip(NAMES) {
        assert!(line.starts_with(name) && line.contains(" min; "), "{line}");
        let sheet = sheet(name);
        let steps = sheet["steps"].as_array().expect("steps");
        assert!(steps.len() >= 4, "{name}");
        for step in steps {
            let kind = step["answer"]["kind"].as_str().expect("a kind");
            match kind {
                "number" => assert!(step["answer"]["value"].is_f64(), "{step}"),
                "choice" => {
                    let options = step["answer"]["options"].as_array().expect("options").len();
                    let right = step["answer"]["right"].as_u64().expect("a place");
                    assert!((1..=options as u64).contains(&right), "{step}");
                }
                "curve" => assert!(step["answer"]["points"][1][1].is_f64(), "{step}"),
                _ => assert!(["open", "words"].contains(&kind), "{step}"),
            }
        }
    }
    assert_eq!(list.lines().count(), NAMES.len());
}

/// Every figure of the jumps is the one that `aloft fly` prints.
#[test]
fn figures_are_those_of_the_flights() {
    let sheet = sheet("higher-or-tighter");
    let start = "half-a-turn-short";
    let season = ["jump_height_m=0.31", "arm_tuck=0.7", "leg_tuck=0.8"];
    let highest = vec![start, "--set", "jump_height_m=0.387"];
    let together = [
        &[start, "--set", "takeoff_rate_rad_s=12.347197551196597"][..],
        &season,
    ]
    .concat();
    let sets = [
        ("", vec![start]),
        ("highest.", highest),
        ("together.", together),
        ("heavier.", vec![start, "--set", "body_mass_kg=51.7"]),
        (
            "tightest.",
            vec![start, "--set", "arm_tuck=1", "leg_tuck=1"],
        ),
    ];
    let keys = [
        "turns",
        "hang_time_s",
        "air_turns",
        "peak_rate_rad_s",
        "jump_height_m",
    ];
    let mut compared = 0;
    for (variant, arguments) in &sets {
        for key in keys {
            let name = format!("{variant}{key}");
            let expected = flown(arguments, key);
            for step in sheet["steps"].as_array().expect("steps") {
                if let Some(value) = step["figures"][&name].as_f64() {
                    assert_eq!(value, expected, "{name}");
                    compared += 1;
                }
            }
        }
    }
    assert!(compared >= 15, "{compared}");
}

#[test]
fn what_is_wrong_is_said_in_one_line() {
    let unknown = refused(&["lesson", "no-such-lesson"]);
    assert!(unknown.contains("what-stays-the-same") && unknown.contains("no such file"));
    let path = Path::new(env!("CARGO_TARGET_TMPDIR")).join(format!("{}.json", std::process::id()));
    let file = path.to_str().expect("a plain path");
    let said = |text: &[u8]| {
        fs::write(&path, text).expect("a file is written");
        refused(&["lesson", file])
    };
    assert!(said(b"{}").contains("not a lesson"));
    assert!(said(b"\xff\xfe{\0}\0").contains("UTF-16"));
    assert!(said(&vec![b' '; 400_000]).contains("too large"));
    // In order as such, but neither option is right.
    let tie = br#"{
        "turns_aloft_lesson": 1, "title": "A", "for_whom": "B", "minutes": 1,
        "plan": { "parts": [{ "minutes": 1, "doing": "C" }] },
        "steps": [{
            "title": "D", "question": "E?", "explanation": "F",
            "setup": { "jump": { "start": "senior-triple" } },
            "variants": { "same": { "boot_mass_kg": 1 } },
            "answer": { "kind": "choice", "most_of": "turns", "options": [
                { "text": "1", "variant": "setup" }, { "text": "2", "variant": "same" }
            ] }
        }]
    }"#;
    let tie = said(tie);
    assert!(
        tie.contains("step 1") && tie.contains("neither is right"),
        "{tie}"
    );
    fs::remove_file(&path).expect("the file is there");
}

#[test]
fn sheets_are_printed_in_either_language() {
    let english = printed(&["sheet", "pupil", "arms-in"]);
    let german = printed(&["sheet", "pupil", "arms-in", "--language", "de"]);
    assert!(english.contains("<html lang=\"en\">") && english.contains("Arms in!"));
    assert!(german.contains("<html lang=\"de\">") && german.contains("Arme ran!"));
    let coach = printed(&["sheet", "coach", "senior-triple", "--set", "arm_tuck=0.5"]);
    let turns = flown(&["senior-triple", "--set", "arm_tuck=0.5"], "turns");
    assert!(coach.contains(&format!("{turns:.2}")), "{turns}");
    let french = refused(&["sheet", "plan", "arms-in", "--language", "fr"]);
    assert!(french.contains("en, de"), "{french}");
    let unknown = refused(&["sheet", "answers", "no-such-lesson", "--language", "de"]);
    assert!(unknown.contains("is no lesson"), "{unknown}");
    let none = refused(&["sheet", "results", "arms-in", "no-such-file"]);
    assert!(none.contains("cannot be read"), "{none}");
}
