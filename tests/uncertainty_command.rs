//! The range on the command line.

#[path = "support/aloft.rs"]
mod command;

use std::process::Output;

use command::aloft;
use serde_json::{Value, json};

use turns_aloft::analysis::uncertainty::{UncertainInput, Uncertainty};
use turns_aloft::scenario::starts;

fn fly(arguments: &[&str]) -> Output {
    aloft(&[&["fly"], arguments].concat())
}

#[track_caller]
fn report(arguments: &[&str]) -> Value {
    let output = fly(arguments);
    let parse_error = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{arguments:?}: {parse_error}");
    serde_json::from_slice(&output.stdout).expect("it prints JSON")
}

fn number(report: &Value, key: &str) -> f64 {
    report[key]
        .as_f64()
        .unwrap_or_else(|| panic!("{key} is a number, not {}", report[key]))
}

/// Nothing of the plain report changes; the range stands around the turns, and its half is the root
/// of the squares of the four changes.
#[test]
fn the_range_is_added_to_the_report() {
    for start in starts::all() {
        let plain = report(&[start.name]);
        let ranged = report(&[start.name, "--range"]);
        for (key, value) in plain.as_object().expect("an object") {
            assert_eq!(value, &ranged[key], "{}: {key}", start.name);
        }
        assert!(plain.get("turns_low").is_none());
        let turns = number(&ranged, "turns");
        let [low, high] = ["turns_low", "turns_high"].map(|key| number(&ranged, key));
        assert!(low < turns && turns < high, "{}", start.name);
        let squares: f64 = ["jump_height", "takeoff_rate", "close_time", "inertia_ratio"]
            .map(|input| number(&ranged, &format!("turns_change_with_{input}")).powi(2))
            .iter()
            .sum();
        assert!((0.5 * (high - low) - squares.sqrt()).abs() < 1e-12);
        if plain["call"].is_null() {
            assert!(ranged["calls_possible"].is_null(), "{}", start.name);
        } else {
            let possible = ranged["calls_possible"].as_array().expect("a list");
            assert!(possible.contains(&plain["call"]), "{}", start.name);
        }
    }
}

/// The usual half-widths, as `scenario/uncertainty.rs` gives reasons for them; the one of the body is
/// held to bodies from outside in `tests/ensemble.rs`.
#[test]
fn the_usual_half_widths_are_printed() {
    for name in ["child-single", "senior-triple", "four-turns"] {
        let ranged = report(&[name, "--range"]);
        assert_eq!(ranged["half_width_jump_height_m"], json!(0.02));
        assert_eq!(ranged["half_width_takeoff_rate_rad_s"], json!(0.5));
        assert_eq!(ranged["half_width_close_time_s"], json!(1.0 / 60.0));
        let scenario = &starts::named(name).expect("it is there").scenario;
        let usual = Uncertainty::usual(scenario).get(UncertainInput::InertiaRatio);
        assert_eq!(ranged["half_width_inertia_ratio_share"], json!(usual));
    }
    let key = "half_width_inertia_ratio_share";
    let [grown, shorter] = ["1.58", "1.54"].map(|stature| {
        let stature = format!("stature_m={stature}");
        number(
            &report(&["senior-triple", "--set", &stature, "--range"]),
            key,
        )
    });
    assert!((shorter / grown - 1.5).abs() < 1e-12, "{shorter} {grown}");
}

#[test]
fn a_half_width_of_ones_own_replaces_the_usual_one() {
    let usual = report(&["four-turns", "--range"]);
    let own = report(&[
        "four-turns",
        "--half-width",
        "jump_height_m=0.06",
        "inertia_ratio_share=0",
    ]);
    assert_eq!(own["half_width_jump_height_m"], json!(0.06));
    assert_eq!(
        own["half_width_close_time_s"],
        usual["half_width_close_time_s"]
    );
    assert_eq!(own["turns_change_with_inertia_ratio"], json!(0.0));
    let [narrow, wide] =
        [&usual, &own].map(|report| number(report, "turns_change_with_jump_height"));
    // Three times the half-width; the turns bend over it by little.
    assert!((wide / narrow - 3.0).abs() < 0.1, "{wide} {narrow}");

    let none = report(&[
        "four-turns",
        "--half-width",
        "jump_height_m=0",
        "takeoff_rate_rad_s=0",
        "close_time_s=0",
        "inertia_ratio_share=0",
    ]);
    for key in ["turns_low", "turns_high"] {
        assert_eq!(none[key], none["turns"]);
    }
    assert_eq!(none["calls_possible"], json!([none["call"]]));
}

/// One line that names key, value and what is admissible; status 2.
#[test]
fn a_bad_half_width_is_refused() {
    for (setting, says) in [
        (
            "jump_height_m=3",
            "half-width of jump_height_m = 3 is out of range: it goes from 0 to 0.25 m",
        ),
        (
            "takeoff_rate_rad_s=-1",
            "half-width of takeoff_rate_rad_s = -1 is out of range: it goes from 0 to 5 rad/s",
        ),
        (
            "close_time_s=NaN",
            "half-width of close_time_s = NaN is not a number: it goes from 0 to 0.2 s",
        ),
        (
            "inertia_ratio_share=much",
            "half-width of inertia_ratio_share = much is not a number: it goes from 0 to 0.5",
        ),
        (
            "arm_tuck=0.1",
            "half-width of arm_tuck = 0.1: no such half-width; they are jump_height_m, takeoff_rate_rad_s, close_time_s, inertia_ratio_share, hang_time_s",
        ),
        (
            "inertia_ratio_share",
            "--half-width inertia_ratio_share: write KEY=VALUE",
        ),
    ] {
        let output = fly(&["four-turns", "--half-width", setting]);
        assert_eq!(output.status.code(), Some(2), "{setting}");
        assert_eq!(output.stdout, b"", "{setting}");
        assert_eq!(
            String::from_utf8_lossy(&output.stderr),
            format!("aloft: {says}\n")
        );
    }
}
