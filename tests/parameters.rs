//! The table of numbers is the only place that has to know a number: a new one needs its row, its
//! field and its words.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

use turns_aloft::analysis::lever::Lever;
use turns_aloft::analysis::uncertainty::UncertainInput;
use turns_aloft::scenario::input::{Choice, Text};
use turns_aloft::scenario::parameter::Parameter;

/// The source of everything above the mechanics, by path below `src`.
fn sources() -> BTreeMap<String, String> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut folders = vec![root.clone()];
    let mut found = BTreeMap::new();
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(&folder).expect("a folder of sources") {
            let path = entry.expect("an entry of a folder").path();
            let below = path.strip_prefix(&root).expect("it is below");
            let name = below.to_string_lossy().into_owned();
            if path.is_dir() {
                if name != "physics" {
                    folders.push(path);
                }
            } else if name.ends_with(".rs") {
                found.insert(name, fs::read_to_string(&path).expect("a source file"));
            }
        }
    }
    found
}

/// The numbers that a text of source code names: by their keys, as fields or in quotation marks, or
/// as values of the enum. Comments do not count.
fn named(source: &str) -> BTreeSet<Parameter> {
    let code = source.lines().filter_map(|line| line.split("//").next());
    let words = code.flat_map(|line| line.split(|c: char| !c.is_alphanumeric() && c != '_'));
    let words: Vec<&str> = words.filter(|word| !word.is_empty()).collect();
    let by_key = words.iter().filter_map(|word| Parameter::named(word));
    let by_value = words
        .windows(2)
        .filter(|pair| pair[0] == "Parameter")
        .filter_map(|pair| {
            let mut all = Parameter::ALL.into_iter();
            all.find(|parameter| format!("{parameter:?}") == pair[1])
        });
    by_key.chain(by_value).collect()
}

/// The table, and the field itself.
const HOME: [&str; 2] = ["scenario/parameter.rs", "scenario/scenario.rs"];

/// Where numbers go into the mechanics. A new one that turns a body is named here.
const MECHANICS: &str = "scenario/fly.rs";

/// Where else a number is named, because that very number is meant and no other could be.
fn meant() -> BTreeMap<&'static str, BTreeSet<Parameter>> {
    use Parameter::*;
    let all: &[(&str, &[Parameter])] = &[
        // Whose jump it is and what it comes to, and how thick the limbs of a small body are drawn.
        (
            "picture/card.rs",
            &[Stature, BodyMass, TakeoffRate, JumpHeight],
        ),
        ("picture/figure.rs", &[Stature]),
        ("picture/strip.rs", &[PreRotation]),
        ("figure/forms.rs", &[Stature, BodyMass]),
        // What is asked first of a jump that has been begun.
        (
            "panel/begun_jump.rs",
            &[Stature, BodyMass, JumpHeight, ArmTuck, LegTuck],
        ),
        // What is removed from a flight to see what it cost, and what a change calls for.
        (
            "analysis/budget.rs",
            &[ArmTuck, LegTuck, Lean, PreRotation, ArmAsymmetry, ArmLag],
        ),
        ("analysis/caution.rs", &[HandMass, JumpHeight, OpenLead]),
        ("analysis/weights.rs", &[HandMass]),
        // What a hang time sets.
        ("analysis/hang_time.rs", &[JumpHeight]),
        // The rate as flown, which heavier hands may keep from being the one that was set.
        ("analysis/judge.rs", &[TakeoffRate]),
        ("analysis/seen.rs", &[TakeoffRate]),
        // When a hand has begun to close and to open.
        ("analysis/turn_try.rs", &[CloseDelay, OpenLead]),
        ("scenario/marks.rs", &[TakeoffRate]),
        // Torque for each kilogram of the body.
        ("analysis/effort_marks.rs", &[BodyMass]),
        ("scenario/strength.rs", &[BodyMass]),
        ("scenario/beyond.rs", &[TakeoffRate, JumpHeight, BodyMass]),
        // Who is jumping, and with what.
        ("scenario/jumper.rs", &[Stature]),
        (
            "analysis/uncertainty.rs",
            &[HandMass, Stature, BodyMass, BootMass],
        ),
        // What a hang time sets, what an attempt's turns follow from, and how far arms and legs came in.
        ("fit/candidate.rs", &[JumpHeight]),
        ("fit/conditional.rs", &[TakeoffRate]),
        ("fit/scan.rs", &[TakeoffRate, ArmTuck, LegTuck]),
        // Turns in all, the ones on the ice included.
        ("fit/likelihood.rs", &[PreRotation]),
        ("fit/problem.rs", &[PreRotation]),
        ("fit/sample.rs", &[PreRotation]),
        ("analysis/map.rs", &[PreRotation]),
        ("scenario/curve.rs", &[PreRotation]),
        ("describe/report/flight.rs", &[PreRotation]),
        ("describe/report/budget.rs", &[PreRotation]),
        ("describe/rounded_budget.rs", &[PreRotation]),
        // What is flown, as other means compute it again.
        ("scenario/export.rs", &[HandMass, CloseTime, OpenTime]),
        // What stands beside the hands' mass, the rate and the height alone.
        ("panel/panels.rs", &[HandMass, JumpHeight]),
        ("describe/report/weights.rs", &[HandMass]),
        ("session/answers/hand_weights.rs", &[HandMass]),
        ("session/operations/weights.rs", &[HandMass]),
        ("describe/weights.rs", &[HandMass]),
        ("session/state/goal_settings.rs", &[HandMass]),
        // What the map begins with, and what it always marks.
        (
            "session/state/levers.rs",
            &[TakeoffRate, HandMass, JumpHeight],
        ),
        // Readouts of the flight that are called as what they came of.
        ("session/describe/flight.rs", &[TakeoffRate, JumpHeight]),
        (
            "sheet/coach.rs",
            &[TakeoffRate, JumpHeight, Stature, BodyMass],
        ),
        // How much room a picture of it takes.
        ("sheet/pictured.rs", &[JumpHeight, Stature]),
        ("panel/lesson/picture.rs", &[Stature]),
        ("lesson/quantity.rs", &[TakeoffRate, JumpHeight]),
        ("session/describe/loads.rs", &[HandMass]),
        ("session/describe/weights.rs", &[TakeoffRate, HandMass]),
        ("session/describe/result.rs", &[PreRotation]),
        // A figure that is closed over a film as far as the jumper in it.
        (
            "session/operations/film_overlay.rs",
            &[ArmTuck, LegTuck, ArmAsymmetry, ArmLag],
        ),
        // Who turns on a turntable.
        (
            "turntable/setup.rs",
            &[Stature, BodyMass, HandMass, BootMass],
        ),
        // What the picture is as large as.
        ("stage/axis.rs", &[Stature]),
        ("stage/shown_turntable.rs", &[Stature]),
        // What marks in a film are as far off as.
        ("overlay/camera.rs", &[Stature]),
        ("overlay/fall.rs", &[Stature]),
        ("overlay/upright.rs", &[Stature]),
        ("stage/camera.rs", &[JumpHeight, Stature]),
        ("stage/sticks.rs", &[Stature]),
    ];
    all.iter()
        .map(|&(file, numbers)| (file, numbers.iter().copied().collect()))
        .collect()
}

#[test]
fn no_other_place_names_a_number() {
    let mut found = BTreeMap::new();
    let sources = sources();
    assert!(sources.len() > 100, "{}", sources.len());
    for (file, source) in &sources {
        let numbers = named(source);
        if !numbers.is_empty() && !HOME.contains(&file.as_str()) && file != MECHANICS {
            found.insert(file.as_str(), numbers);
        }
    }
    let meant = meant();
    let files: BTreeSet<&str> = found.keys().chain(meant.keys()).copied().collect();
    for file in files {
        assert_eq!(found.get(file), meant.get(file), "{file}");
    }
}

/// The check sees a key, a field and a value of the enum, and no comment.
#[test]
fn a_name_is_seen() {
    let seen = |code: &str| named(code).into_iter().collect::<Vec<_>>();
    assert_eq!(seen("set(\"arm_tuck\", 1.0)"), [Parameter::ArmTuck]);
    assert_eq!(seen("scenario.lean_rad"), [Parameter::Lean]);
    assert_eq!(seen("Parameter::OpenTime.get(jump)"), [Parameter::OpenTime]);
    assert_eq!(seen("// of lean_rad"), []);
    assert_eq!(seen("closing_arm_tuck"), []);
}

/// Every key is another, and so is every bit of a link.
#[test]
fn no_two_inputs_share_a_key_or_a_bit() {
    let numbers = Parameter::ALL.map(Parameter::key).into_iter();
    let keys: Vec<&str> = numbers
        .chain(Choice::ALL.map(Choice::key))
        .chain(Text::ALL.map(Text::key))
        .collect();
    assert_eq!(keys.iter().collect::<BTreeSet<_>>().len(), keys.len());
    let bits: BTreeSet<u32> = Parameter::ALL.map(|it| it.row().link_bit).into();
    assert_eq!(bits.len(), Parameter::COUNT);
    for parameter in Parameter::ALL {
        assert_eq!(Parameter::named(parameter.key()), Some(parameter));
        assert!(parameter.least() < parameter.most());
    }
    assert_eq!(Parameter::named("wind_m_s"), None);
}

/// Levers and uncertain inputs stand in the order that their rows ask for.
#[test]
fn levers_and_uncertain_inputs_are_those_of_the_table() {
    let of_table = |parameter: &Parameter| Lever::of(*parameter).is_some();
    let levers = Parameter::ALL.iter().filter(|it| of_table(it)).count();
    assert_eq!(levers, Lever::COUNT);
    let order = |lever: Lever| lever.parameter().row().lever.map(|row| row.order);
    assert!(Lever::ALL.map(order).is_sorted());
    assert_eq!(
        UncertainInput::ALL.map(UncertainInput::key),
        [
            "jump_height_m",
            "takeoff_rate_rad_s",
            "close_time_s",
            "inertia_ratio_share"
        ]
    );
}
