//! `aloft marks` and `aloft steps`, run as a user runs them.

#[path = "support/aloft.rs"]
mod command;

use command::aloft;
use serde_json::{Value, json};

use turns_aloft::analysis::goal::Goal;
use turns_aloft::analysis::lever::Season;
use turns_aloft::analysis::limits::Limits;
use turns_aloft::analysis::steps::ranked;
use turns_aloft::analysis::weights::{Weights, WeightsNeeded};
use turns_aloft::describe::report::goal::{CombinationReport, SingleReport};
use turns_aloft::describe::report::steps::GainReport;
use turns_aloft::describe::report::weights::{WeightsNeededReport, WeightsReport};
use turns_aloft::scenario::starts;

#[track_caller]
fn report(arguments: &[&str]) -> Value {
    let output = aloft(arguments);
    let parse_error = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{arguments:?}: {parse_error}");
    serde_json::from_slice(&output.stdout).expect("it prints JSON")
}

#[track_caller]
fn refused(arguments: &[&str], says: &str) {
    let output = aloft(arguments);
    assert_eq!(output.status.code(), Some(2), "{arguments:?}");
    assert_eq!(output.stdout, b"", "{arguments:?}");
    assert_eq!(
        String::from_utf8_lossy(&output.stderr),
        format!("aloft: {says}\n")
    );
}

fn lever<'a>(report: &'a Value, list: &str, key: &str) -> &'a Value {
    let levers = report[list].as_array().expect("a list");
    levers
        .iter()
        .find(|lever| lever["key"] == key)
        .unwrap_or_else(|| panic!("{key} is in the list"))
}

#[test]
fn the_same_answers_as_the_analysis() {
    for start in starts::all() {
        let scenario = &start.scenario;
        let now = scenario.fly();
        let (limits, season) = (Limits::default(), Season::default());
        let goal = Goal::new(scenario, &now, now.turns.floor() + 1.0, &limits, &season);
        let singles = goal.singles();
        let joint = goal.combination(&singles);
        let printed = report(&["reach", start.name, "--turns", &goal.goal_turns.to_string()]);
        assert_eq!(printed["turns"], json!(now.turns));
        assert_eq!(printed["target_turns"], json!(goal.goal_turns));
        assert_eq!(printed["hands_keep"], json!(scenario.hands_keep));
        assert_eq!(
            printed["levers"],
            json!(singles.iter().map(SingleReport::new).collect::<Vec<_>>()),
            "{}",
            start.name
        );
        assert_eq!(
            printed["joint"],
            json!(joint.as_ref().map(CombinationReport::new)),
            "{}",
            start.name
        );
        assert_eq!(
            printed["weights"],
            json!(WeightsNeededReport::new(&WeightsNeeded::new(&goal)))
        );

        let printed = report(&["steps", start.name]);
        assert_eq!(
            printed["steps"],
            json!(
                ranked(scenario, &now)
                    .iter()
                    .map(GainReport::new)
                    .collect::<Vec<_>>()
            )
        );
        assert_eq!(
            printed["weights"],
            json!(WeightsReport::new(
                &Weights::more(scenario, &now).expect("more can be set")
            ))
        );
    }
}

/// Weights stand by themselves, under all three assumptions, with what has been observed and the
/// cautions; they cannot be limited or counted in seasons like a lever.
#[test]
fn weights_are_no_lever() {
    for (command, list) in [("reach", "levers"), ("steps", "steps")] {
        let printed = report(&[command, "five-turn-attempt"]);
        let listed = printed[list].as_array().expect("a list");
        assert!(listed.iter().all(|lever| lever["key"] != "hand_mass_kg"));
        let weights = &printed["weights"];
        let kept: Vec<&Value> = weights["outcomes"]
            .as_array()
            .expect("a list")
            .iter()
            .map(|outcome| &outcome["hands_keep"])
            .collect();
        assert_eq!(kept, ["rate", "energy", "angular_momentum"]);
        let said = weights.to_string();
        for known in [
            "13.6 %",
            "12.1 %",
            "People do not.",
            "forbid them in competition",
            "coach",
        ] {
            assert!(said.contains(known), "{known}");
        }
    }
    // No more than 2.5 kg can be set.
    let full = report(&["steps", "four-turns", "--set", "hand_mass_kg=2.5"]);
    assert_eq!(full["weights"], Value::Null);
    for setting in ["hand_mass_kg=0:0.2", "hand_mass_kg=0.2"] {
        let option = if setting.contains(':') {
            "--limit"
        } else {
            "--season"
        };
        refused(
            &["reach", "four-turns", option, setting],
            "hand_mass_kg is no lever; they are jump_height_m, takeoff_rate_rad_s, arm_tuck, leg_tuck, close_delay_s, close_time_s, open_lead_s",
        );
    }
}

/// What is proposed does it when given to `fly`.
#[test]
fn a_proposal_can_be_set_and_flown() {
    let answer = report(&["reach", "half-a-turn-short"]);
    assert_eq!(answer["target_turns"], json!(2.0));
    let height = lever(&answer, "levers", "jump_height_m");
    let setting = format!("jump_height_m={}", height["proposal"]["value"]);
    let flown = report(&["fly", "half-a-turn-short", "--set", &setting]);
    assert_eq!(flown["turns"], height["proposal"]["turns"]);
    assert!((flown["turns"].as_f64().expect("turns") - 2.0).abs() < 1e-3);

    let changes = answer["joint"]["changes"].as_array().expect("a list");
    let settings: Vec<String> = changes
        .iter()
        .map(|change| {
            format!(
                "{}={}",
                change["key"].as_str().expect("a key"),
                change["value"]
            )
        })
        .collect();
    let mut arguments = vec!["fly", "half-a-turn-short", "--set"];
    arguments.extend(settings.iter().map(String::as_str));
    assert_eq!(report(&arguments)["turns"], answer["joint"]["turns"]);
}

#[test]
fn settings_limits_and_seasons_are_heard() {
    let higher = report(&["reach", "half-a-turn-short", "--set", "jump_height_m=0.6"]);
    let height = lever(&higher, "levers", "jump_height_m");
    assert_eq!(height["verdict"], "already_reached");
    assert_eq!(height["proposal"]["change"], json!(0.0));

    let own = report(&[
        "reach",
        "half-a-turn-short",
        "--limit",
        "jump_height_m=0.2:0.3",
        "--season",
        "leg_tuck=0",
        "close_time_s=0.1",
    ]);
    let height = lever(&own, "levers", "jump_height_m");
    // What girls have been seen to do ends at 38.7 cm.
    assert_eq!(height["verdict"], "beyond_measured");
    assert_eq!(height["proposal"]["beyond_seen"], json!(["jump_height_m"]));
    assert_eq!(lever(&own, "levers", "arm_tuck")["verdict"], "cannot_alone");
    let mixed: Vec<&Value> = own["joint"]["changes"]
        .as_array()
        .expect("a list")
        .iter()
        .map(|change| &change["key"])
        .collect();
    assert!(mixed.contains(&&json!("close_time_s")) && !mixed.contains(&&json!("leg_tuck")));

    let faster = report(&[
        "steps",
        "half-a-turn-short",
        "--set",
        "takeoff_rate_rad_s=12",
    ]);
    assert_eq!(lever(&faster, "steps", "leg_tuck")["flown"], "forward");
    assert!(faster["turns"].as_f64().expect("turns") > 1.6);
}

/// One line that names the value and what is admissible; status 2.
#[test]
fn bad_questions_are_refused() {
    for bad in ["0.4", "12", "-1", "NaN", "inf", "many"] {
        refused(
            &["reach", "four-turns", "--turns", bad],
            &format!("turns = {bad} is out of range: it goes from 0.5 to 10 turns"),
        );
    }
    refused(
        &["reach", "four-turns", "--set", "jump=free"],
        "a free jump owes no turns: say how many with --turns, from 0.5 to 10",
    );
    report(&[
        "reach",
        "four-turns",
        "--turns",
        "4.5",
        "--set",
        "jump=free",
    ]);
    for (option, setting, says) in [
        (
            "--limit",
            "jump_height_m=0.3",
            "--limit jump_height_m=0.3: write KEY=FROM:TO",
        ),
        (
            "--limit",
            "jump_height_m=0.5:0.2",
            "limits of jump_height_m = 0.5:0.2 are out of range: the lower, then the higher, from 0.1 to 2.5 m",
        ),
        (
            "--limit",
            "lean_rad=0:0.1",
            "lean_rad is no lever; they are jump_height_m, takeoff_rate_rad_s, arm_tuck, leg_tuck, close_delay_s, close_time_s, open_lead_s",
        ),
        (
            "--season",
            "jump_height_m=x",
            "--season jump_height_m=x: x is not a number",
        ),
        (
            "--season",
            "jump_height_m=3",
            "season of jump_height_m = 3 is out of range: it goes from 0 to 2.4 m",
        ),
        ("--season", "arm_tuck", "--season arm_tuck: write KEY=VALUE"),
    ] {
        refused(&["reach", "four-turns", option, setting], says);
    }
    assert_eq!(aloft(&["steps", "no-such"]).status.code(), Some(2));
}
