//! `aloft measure`: an attempt file in, what its marks say out.

#[path = "support/aloft.rs"]
mod command;
#[path = "support/printed.rs"]
mod printed;
#[path = "support/refused.rs"]
mod refused;

use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};

use printed::printed;
use refused::refused;
use serde_json::Value;

use turns_aloft::attempt::Attempt;
use turns_aloft::scenario::{Scenario, starts};

fn report(arguments: &[&str]) -> Value {
    serde_json::from_str(&printed(arguments)).expect("it prints JSON")
}

fn scratch(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR"));
    folder.join(format!("{}-{name}", std::process::id()))
}

fn text(path: &Path) -> &str {
    path.to_str().expect("a plain path")
}

/// The example's flight was drawn from a jump with 1.196 turns in the air, in 0.504 s, whose largest loss was
/// not getting tight.
const SO: [(&str, f64); 3] = [
    ("air_turns", 1.196),
    ("hang_time_s", 0.504),
    ("lost_by_tightness_turns", 0.858),
];

#[test]
fn the_example_is_measured() {
    let path = scratch("example.attempt.json");
    fs::write(&path, printed(&["measure", "--example"])).expect("a file is written");
    let measured = report(&["measure", text(&path)]);
    fs::remove_file(&path).expect("the file goes");
    for (key, so) in SO {
        let found = &measured["found"][key];
        let ends = ["low", "high"].map(|end| found[end].as_f64().expect("a number"));
        assert!((ends[0]..=ends[1]).contains(&so), "{key}: {found}");
        let half_width = found["half_width"].as_f64().expect("a number");
        assert!((half_width - 0.5 * (ends[1] - ends[0])).abs() < 1e-12);
    }
    assert!(measured["largest_loss_chances"]["tightness"].as_f64() > Some(0.5));
    // Each with each, and with itself wholly.
    let of = measured["correlations"]["of"].as_array().expect("keys");
    let coefficients = measured["correlations"]["coefficients"].as_array();
    let rows = coefficients.expect("rows");
    assert_eq!(rows.len(), of.len());
    for (i, row) in rows.iter().enumerate() {
        let itself = row[i].as_f64();
        assert!(itself.is_none_or(|it| it == 1.0), "{}: {itself:?}", of[i]);
    }
    // The likeliest jump is a scenario file.
    let jump = Scenario::from_file(&measured["scenario"].to_string()).expect("it is one");
    assert!(jump.note.contains("Invented"));
    let cautions = measured["cautions"].to_string();
    for word in ["consent", "estimate", "device", "verdict"] {
        assert!(cautions.contains(word), "{word}");
    }
}

#[test]
fn the_example_is_an_attempt_file() {
    let opened = Attempt::open_file(&printed(&["measure", "--example"])).expect("it is one");
    assert_eq!(opened.read.to_file(), printed(&["measure", "--example"]));
}

#[test]
fn what_is_wrong_is_said_in_one_line() {
    assert!(refused(&["measure", "no-such-file"]).contains("cannot be read"));
    let path = scratch("broken.attempt.json");
    for (written, word) in [
        ("", "not an attempt"),
        ("{\"turns_aloft_attempt\": 9}", "version 9"),
        ("{\"turns_aloft_attempt\": 1}", "jump"),
    ] {
        fs::write(&path, written).expect("a file is written");
        let said = refused(&["measure", text(&path)]);
        assert!(said.contains(word), "{said}");
    }
    let disorder = printed(&["measure", "--example"]).replace("1.5167", "9.0");
    fs::write(&path, disorder).expect("a file is written");
    assert!(refused(&["measure", text(&path)]).contains("wrong order"));
    fs::remove_file(&path).expect("the file goes");
}

/// A trace that a sensor would have of the senior triple: its flight's rates, with rest before it and the
/// turning on the ice around it.
#[test]
fn a_trace_is_measured() {
    let triple = &starts::named("senior-triple").expect("a start").scenario;
    let jump = triple.fly();
    let hang_s = jump.readout.hang_time_s;
    let mut rows =
        "time (s),gyroscope x (rad/s),gyroscope y (rad/s),gyroscope z (rad/s)\n".to_owned();
    for i in 0..1_000 {
        let t_s = f64::from(i) / 200.0;
        let flown_s = t_s - 3.0;
        let at = |t_s: f64| jump.flight.at(t_s).spin_rad_s;
        let rate_rad_s = if flown_s < -0.5 {
            0.0
        } else if flown_s < 0.0 {
            at(0.0) * (1.0 + 2.0 * flown_s)
        } else if flown_s > hang_s {
            at(hang_s) * libm::exp(-6.0 * (flown_s - hang_s))
        } else {
            at(flown_s)
        };
        // A reading is never quite the one before.
        let noise = 1e-3 * libm::sin(f64::from(i) * 1.7);
        writeln!(rows, "{t_s},{noise},{rate_rad_s},{noise}").expect("a text takes it");
    }
    let path = scratch("trace.csv");
    fs::write(&path, rows).expect("a file is written");
    let measured = report(&["measure", text(&path), "--jump", "senior-triple"]);
    fs::remove_file(&path).expect("the file goes");
    assert_eq!(measured["measured_by"], "sensor");
    assert!(!measured["remarks"].as_array().expect("remarks").is_empty());
    // Without an accelerometer take-off and landing are a guess, and so are the turns between them.
    let turns = &measured["found"]["air_turns"];
    let [low, high] = ["low", "high"].map(|end| turns[end].as_f64().expect("a number"));
    assert!((low..=high).contains(&jump.readout.air_turns), "{turns}");
}
