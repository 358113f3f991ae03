//! A jump that was led by hand, through every command that takes a jump; and a try at so many turns.

#[path = "support/aloft.rs"]
mod command;
#[path = "support/printed.rs"]
mod printed;

use std::fs;
use std::path::PathBuf;

use serde_json::{Value, json};

use command::aloft;
use printed::printed;
use turns_aloft::scenario::link::to_fragment;
use turns_aloft::scenario::{Scenario, starts};

/// A starting point's file with knots in it.
fn led_file(name: &str) -> (PathBuf, Scenario) {
    let start = starts::named("senior-triple").expect("a start");
    let mut file: Value = serde_json::from_str(&start.scenario.to_file()).expect("JSON");
    file["turns_aloft_scenario"] = json!(3);
    file["scenario"]["led"] = json!([
        {"time_s": 0.03, "arms": 0.9, "legs": 1},
        {"time_s": 0.3, "arms": 0.6, "legs": 1},
        {"time_s": 0.36, "arms": 1, "legs": 1},
        {"time_s": 0.46, "arms": 0, "legs": 0},
    ]);
    let path = std::env::temp_dir().join(format!("led-{}-{name}.aloft.json", std::process::id()));
    fs::write(&path, file.to_string()).expect("a file");
    let scenario = Scenario::from_file(&file.to_string()).expect("it opens");
    (path, scenario)
}

fn refused(arguments: &[&str]) -> String {
    let output = aloft(arguments);
    assert_eq!(output.status.code(), Some(2), "{arguments:?}");
    String::from_utf8(output.stderr).expect("text")
}

fn json_of(arguments: &[&str]) -> Value {
    serde_json::from_str(&printed(arguments)).expect("JSON")
}

#[test]
fn every_command_takes_a_led_jump() {
    let (path, scenario) = led_file("all");
    let file = path.to_str().expect("a path");
    let jump = scenario.fly();
    let flown = json_of(&["fly", file, "--uncertainty"]);
    assert_eq!(flown["turns"], json!(jump.turns));
    assert!(flown["turns_low"].as_f64() < flown["turns"].as_f64());
    assert!(
        flown["turns_change_with_close_time"]
            .as_f64()
            .is_some_and(|change| change != 0.0)
    );
    // Where the turns went: they add up, and the hand that let go on the way has closed late.
    let budget = json_of(&["budget", file]);
    let of = |key: &str| budget[key].as_f64().expect("turns");
    let lost: f64 = ["closing", "tightness", "opening", "tilt"]
        .map(|cause| of(&format!("lost_by_{cause}_turns")))
        .iter()
        .sum();
    assert!((of("ideal_turns") - lost - of("air_turns")).abs() < 1e-9);
    assert!(of("lost_by_closing_turns") > 0.02);
    // What has no part is told as such, and is not set.
    let asked: [(&[&str], &str, &str); 2] = [
        (&["steps", file], "steps", "flown"),
        (&["goal", file, "--turns", "4"], "levers", "verdict"),
    ];
    for (command, list, entry) in asked {
        let answer = json_of(command);
        for lever in answer[list].as_array().expect("a list") {
            let key = lever["key"].as_str().expect("a key");
            let no_part = ["arm_tuck", "leg_tuck", "close_delay_s", "open_lead_s"].contains(&key);
            assert_eq!(lever[entry] == "no_part", no_part, "{command:?} {lever}");
        }
    }
    let why = refused(&["fly", file, "--set", "arm_tuck=0.5"]);
    assert!(
        why.contains("arm_tuck") && why.contains("led = none"),
        "{why}"
    );
    let map = [
        "map",
        file,
        "--x",
        "arm_tuck:0:1:2",
        "--y",
        "jump_height_m:0.3:0.5:2",
    ];
    assert!(refused(&map).contains("arm_tuck has no part"));
    let start = json_of(&["fly", "senior-triple"]);
    let as_planned = json_of(&["fly", file, "--set", "led=none"]);
    assert_eq!(as_planned["turns"], start["turns"]);
    // Compared with what was planned, the hand is the one difference.
    let compared = json_of(&["compare", "senior-triple", file]);
    let differences = compared["differences"].as_array().expect("a list");
    assert_eq!(differences.len(), 1);
    assert_eq!(differences[0]["key"], "led");
    let change = jump.turns - start["turns"].as_f64().expect("turns");
    let told = differences[0]["turns"].as_f64().expect("turns");
    assert!((told - change).abs() < 1e-12);
    // A link holds it whole.
    let link = printed(&["link", file]);
    assert_eq!(
        link.trim_end(),
        format!("#{}", to_fragment(&scenario, None))
    );
    let again = json_of(&["fly", link.trim_end()]);
    assert_eq!(again["turns"], json!(jump.turns));
    assert!(printed(&["picture", file, "--address", "https://example.org/"]).contains("<svg"));
    fs::remove_file(&path).expect("it was there");
}

#[test]
fn a_try_is_told() {
    let five = json_of(&["try", "five-turn-attempt"]);
    assert_eq!((&five["jump"], &five["full"]), (&json!("5T"), &json!(true)));
    let passed = five["limits_passed"].as_array().expect("a list");
    assert!(passed.iter().any(|limit| limit["key"] == "peak_rate_rad_s"));
    assert!(passed.iter().all(|limit| limit["source"].is_string()));
    assert_eq!(five["cautions"].as_array().map(Vec::len), Some(3));
    let two = json_of(&["try", "half-a-turn-short", "--turns", "2"]);
    assert_eq!(two["full"], json!(false));
    for turns in ["1", "6", "2.5", "x"] {
        let why = refused(&["try", "four-turns", "--turns", turns]);
        assert!(why.contains(turns) && why.contains("2 to 5"), "{why}");
    }
}
