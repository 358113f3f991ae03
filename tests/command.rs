//! The command beside the page, run as a user runs it.

#[path = "support/aloft.rs"]
mod command;

use std::collections::BTreeMap;
use std::f64::consts::{PI, TAU};
use std::fs;
use std::io::{Read as _, Write as _};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use command::aloft;
use glam::{DMat3, DQuat, DVec3};
use serde_json::Value;

use turns_aloft::scenario::file::LARGEST_BYTES;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::starts;

/// What it printed, when it went well.
#[track_caller]
fn printed(arguments: &[&str]) -> String {
    let output = aloft(arguments);
    let parse_error = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{arguments:?}: {parse_error}");
    assert_eq!(parse_error, "");
    String::from_utf8(output.stdout).expect("it prints text")
}

#[track_caller]
fn report(arguments: &[&str]) -> Value {
    serde_json::from_str(&printed(arguments)).expect("it prints JSON")
}

/// What it said, when it refused: one line on the error stream, nothing else, status 2.
#[track_caller]
fn refused(arguments: &[&str]) -> String {
    let output = aloft(arguments);
    assert_eq!(output.status.code(), Some(2), "{arguments:?}");
    assert_eq!(output.stdout, b"", "{arguments:?}");
    let said = String::from_utf8(output.stderr).expect("it says text");
    assert!(said.ends_with('\n'), "{said:?}");
    assert_eq!(said.lines().count(), 1, "{said:?}");
    said
}

/// A path for this test alone.
fn scratch(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR"));
    let path = folder.join(format!("{}-{name}", std::process::id()));
    if path.exists() {
        fs::remove_file(&path).expect("an old file goes");
    }
    path
}

fn text(path: &Path) -> &str {
    path.to_str().expect("a plain path")
}

fn number(report: &Value, key: &str) -> f64 {
    report[key]
        .as_f64()
        .unwrap_or_else(|| panic!("{key} is a number, not {}", report[key]))
}

#[test]
fn starts_lists_every_starting_point() {
    let list = printed(&["starts"]);
    assert_eq!(list.lines().count(), starts::all().len());
    for (line, start) in list.lines().zip(starts::all()) {
        assert!(
            line.starts_with(start.name) && line.contains("invented"),
            "{line}"
        );
    }
    assert!(refused(&["starts", "no-such"]).contains("no-such"));
}

/// Printed as a file and flown from it, a starting point is the same jump to the last digit.
#[test]
fn a_starting_point_flies_the_same_by_name_and_by_file() {
    for start in starts::all() {
        let path = scratch(&format!("{}.json", start.name));
        fs::write(&path, printed(&["starts", start.name])).expect("a file is written");
        assert_eq!(
            printed(&["fly", text(&path)]),
            printed(&["fly", start.name]),
            "{}",
            start.name
        );
        fs::remove_file(&path).expect("the file goes");
    }
}

#[test]
fn fly_prints_every_readout() {
    for start in starts::all() {
        let report = report(&["fly", start.name]);
        for key in [
            "air_turns",
            "turns",
            "hang_time_s",
            "jump_height_m",
            "takeoff_rate_rad_s",
            "peak_rate_rad_s",
            "mean_rate_rad_s",
            "touchdown_rate_rad_s",
            "inertia_takeoff_kg_m2",
            "inertia_least_kg_m2",
            "tilt_peak_rad",
            "tilt_touchdown_rad",
            "closing_work_j",
            "opening_work_j",
            "energy_touchdown_j",
            "hand_force_peak_n",
            "grip_force_peak_n",
            "shoulder_torque_closing_peak_n_m",
            "shoulder_torque_opening_peak_n_m",
            "elbow_torque_closing_peak_n_m",
            "elbow_torque_opening_peak_n_m",
            "hip_torque_closing_peak_n_m",
            "hip_torque_opening_peak_n_m",
            "knee_torque_closing_peak_n_m",
            "knee_torque_opening_peak_n_m",
            "spine_torque_closing_peak_n_m",
            "spine_torque_opening_peak_n_m",
            "joint_power_peak_w",
            "joint_power_least_w",
            "turns_owed",
            "shortfall_deg",
            "landing_facing_deg",
            "landing_angular_momentum_kg_m2_s",
        ] {
            assert!(number(&report, key).is_finite(), "{key}");
        }
        assert_eq!(
            report["angular_momentum_kg_m2_s"].as_array().map(Vec::len),
            Some(3)
        );
        for key in ["landing_load_bw", "landing_torque_n_m"] {
            assert_eq!(report[key].as_array().map(Vec::len), Some(2), "{key}");
        }
        assert!(report["over_rotated_deg"].is_null(), "{}", start.name);
        let call = &report["call"];
        let on_ice = start.scenario.jump.is_called();
        assert_eq!(call.is_string(), on_ice, "{call}");
    }
    // A free jump owes nothing, and says so by nothing.
    let free = report(&["fly", "senior-triple", "--set", "jump=free"]);
    for key in [
        "turns_owed",
        "shortfall_deg",
        "over_rotated_deg",
        "landing_facing_deg",
        "call",
    ] {
        assert!(free[key].is_null(), "{key}");
    }
}

/// Every key changes the jump, and several at once do what the file with those values does.
#[test]
fn every_key_can_be_set() {
    let before = printed(&["fly", "crooked-takeoff"]);
    for setting in [
        "stature_m=1.7",
        "body_mass_kg=60",
        "takeoff_rate_rad_s=9.5",
        "arm_tuck=0.5",
        "leg_tuck=0.4",
        "hand_mass_kg=0.3",
        "jump_height_m=0.3",
        "close_delay_s=0.1",
        "close_time_s=0.3",
        "open_lead_s=0.15",
        "open_time_s=0.1",
        "lean_rad=0.05",
        "arm_lag_s=0.02",
        "pre_rotation_turns=0.1",
        "boot_mass_kg=0.5",
        "takeoff_openness=0.9",
        "arm_asymmetry=0.6",
        "jump=axel",
        "jump_turns=2",
        "table=male",
        "ground=floor",
        "turning=clockwise",
    ] {
        let after = printed(&["fly", "crooked-takeoff", "--set", setting]);
        assert_ne!(after, before, "{setting}");
    }
    let keep = |keep: &str| {
        let keep = format!("hands_keep={keep}");
        printed(&["fly", "weighted-hands", "--set", &keep])
    };
    assert_ne!(keep("rate"), keep("energy"));

    let mut scenario = starts::named("senior-triple")
        .expect("a start")
        .scenario
        .clone();
    scenario.jump_height_m = 0.5;
    scenario.arm_tuck = 0.25;
    let path = scratch("set.json");
    fs::write(&path, scenario.to_file()).expect("a file is written");
    let both = ["--set", "jump_height_m=0.5", "--set", "arm_tuck=0.25"];
    let set = printed(&[&["fly", "senior-triple"], &both[..]].concat());
    assert_eq!(set, printed(&["fly", text(&path)]));
    assert_eq!(number(&report(&["fly", text(&path)]), "jump_height_m"), 0.5);
    fs::remove_file(&path).expect("the file goes");
}

#[test]
fn what_is_wrong_is_said_in_one_line_and_nothing_is_written() {
    let motion = scratch("refused.csv");
    let fly = |more: &[&str]| {
        let all = [&["fly", "senior-triple", "--motion", text(&motion)], more].concat();
        let said = refused(&all);
        assert!(!motion.exists(), "{more:?} wrote a motion file");
        said
    };
    for (setting, words) in [
        ("jump_height_m=9", ["jump_height_m", "9", "0.1", "2.5"]),
        ("arm_tuck=-0.01", ["arm_tuck", "-0.01", "0", "1"]),
        ("stature_m=NaN", ["stature_m", "NaN", "1", "2.1"]),
        ("stature_m=1e999", ["stature_m", "1e999", "1", "2.1"]),
        ("body_mass_kg=heavy", ["body_mass_kg", "heavy", "15", "130"]),
        ("jump_turns=6", ["jump_turns", "6", "1", "5"]),
        ("jump=cartwheel", ["jump", "cartwheel", "toe_loop", "axel"]),
        (
            "height=0.4",
            ["height", "0.4", "jump_height_m", "stature_m"],
        ),
        ("jump_height_m", ["jump_height_m", "KEY=VALUE", "--set", ""]),
    ] {
        let said = fly(&["--set", setting]);
        for word in words {
            assert!(said.contains(word), "{said:?} does not say {word:?}");
        }
    }
    assert!(fly(&["--set", "jump_turns=2.5"]).contains("jump_turns = 2.5"));
    assert!(fly(&["--set", "arm_tuck=a\nb"]).contains("arm_tuck = a b"));
    fly(&["--set", "arm_tuck\n1"]);
    let long = format!("note={}", "n".repeat(LARGEST_BYTES));
    assert!(fly(&["--set", &long]).contains("too long"));
    for step in ["0", "-0.001", "NaN", "2", "often", "1e-9"] {
        assert!(fly(&["--step", step]).contains(step));
    }
    // It is the motion table's.
    let said = refused(&["fly", "senior-triple", "--step", "0.01"]);
    assert!(
        said.contains("--step") && said.contains("--motion"),
        "{said}"
    );
    // A good setting before a bad one does not save it.
    fly(&["--set", "arm_tuck=0.5", "--set", "leg_tuck=5"]);
}

#[test]
fn files_that_cannot_be_flown_are_named() {
    let good = printed(&["starts", "four-turns"]);
    let cases: [(&str, Vec<u8>); 6] = [
        ("empty.json", Vec::new()),
        ("words.json", b"not JSON\nat all\n".to_vec()),
        ("binary.json", vec![0xff, 0xfe, 0x00, 0x81]),
        ("array.json", b"[1, 2, 3]".to_vec()),
        ("large.json", vec![b' '; 1_000_000]),
        (
            "range.json",
            good.replace("\"jump_height_m\": 0.48", "\"jump_height_m\": 46.0")
                .into_bytes(),
        ),
    ];
    let motion = scratch("unflown.csv");
    for (name, bytes) in cases {
        assert_ne!(bytes, good.as_bytes());
        let path = scratch(name);
        fs::write(&path, bytes).expect("a file is written");
        let said = refused(&["fly", text(&path), "--motion", text(&motion)]);
        assert!(said.contains(name), "{said}");
        fs::remove_file(&path).expect("the file goes");
    }
    let missing = scratch("missing.json");
    let said = refused(&["fly", text(&missing), "--motion", text(&motion)]);
    assert!(
        said.contains("missing.json") && said.contains("no such file"),
        "{said}"
    );
    let folder = env!("CARGO_TARGET_TMPDIR");
    refused(&["fly", folder, "--motion", text(&motion)]);
    assert!(!motion.exists());
    // A motion file that cannot be written is a fault too, and no readout pretends otherwise.
    refused(&["fly", "four-turns", "--motion", folder]);
}

/// Every subcommand, with arguments that give an answer.
const ANSWERS: [&[&str]; 13] = [
    &["starts"],
    &["starts", "four-turns"],
    &["fly", "four-turns"],
    &["fly", "four-turns", "--range"],
    &["export", "four-turns"],
    &[
        "map",
        "four-turns",
        "--x",
        "arm_tuck:0:1:2",
        "--y",
        "leg_tuck:0:1:2",
    ],
    &["budget", "four-turns"],
    &["compare", "four-turns", "trampoline"],
    &["link", "four-turns"],
    &["reach", "four-turns", "--turns", "1"],
    &["steps", "four-turns"],
    &["--help"],
    &["--version"],
];

/// `/dev/full` is full, as its manual page says: what is written fails for want of room.
#[cfg(target_os = "linux")]
#[test]
fn an_answer_that_cannot_be_written_is_a_fault() {
    let full = || fs::File::create("/dev/full").expect("there is one");
    let run = |arguments: &[&str]| {
        let mut command = Command::new(env!("CARGO_BIN_EXE_aloft"));
        command.args(arguments);
        command
    };
    for arguments in ANSWERS {
        let output = run(arguments).stdout(full()).output().expect("it runs");
        let said = String::from_utf8(output.stderr).expect("it says text");
        assert_eq!(output.status.code(), Some(2), "{arguments:?}: {said}");
        assert!(said.contains("cannot be written"), "{arguments:?}: {said}");
        assert_eq!(said.lines().count(), 1, "{said:?}");
    }
    let said = refused(&["fly", "four-turns", "--motion", "/dev/full"]);
    assert!(said.contains("/dev/full cannot be written"), "{said}");
    // Where not even that can be said.
    let status = run(&["fly", "no-such"]).stderr(full()).status();
    assert_eq!(status.expect("it runs").code(), Some(2));
}

/// A reader that stops early, such as `head`, is no fault.
#[test]
fn nobody_has_to_read_the_answer() {
    let motion: &[&str] = &["fly", "four-turns", "--motion", "/dev/stdout"];
    for arguments in ANSWERS.into_iter().chain(cfg!(unix).then_some(motion)) {
        let mut child = Command::new(env!("CARGO_BIN_EXE_aloft"))
            .args(arguments)
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .expect("it runs");
        drop(child.stdout.take());
        let output = child.wait_with_output().expect("it ends");
        let said = String::from_utf8_lossy(&output.stderr);
        assert_eq!(
            (output.status.code(), &*said),
            (Some(0), ""),
            "{arguments:?}"
        );
    }
}

/// What never ends is read to the first byte too many.
#[cfg(unix)]
#[test]
fn a_file_without_an_end_is_refused() {
    let said = refused(&["fly", "/dev/zero"]);
    assert!(said.contains("too large"), "{said}");
    // The other end of a pipe stays open: more could come.
    let mut child = Command::new(env!("CARGO_BIN_EXE_aloft"))
        .args(["fly", "/dev/stdin"])
        .stdin(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("it runs");
    let mut endless = child.stdin.take().expect("a pipe");
    endless
        .write_all(&[b' '; LARGEST_BYTES + 1])
        .expect("so much is read");
    let mut said = String::new();
    let mut from = child.stderr.take().expect("a pipe");
    from.read_to_string(&mut said).expect("it says text");
    assert!(said.contains("too large"), "{said}");
    assert_eq!(child.wait().expect("it ends").code(), Some(2));
    drop(endless);
}

/// Some editors put a byte-order mark before a text, some write UTF-16.
#[test]
fn files_from_other_editors() {
    let good = printed(&["starts", "four-turns"]);
    let path = scratch("editor.json");
    fs::write(&path, format!("\u{feff}{good}")).expect("a file is written");
    assert_eq!(
        printed(&["fly", text(&path)]),
        printed(&["fly", "four-turns"])
    );
    let with_mark: Vec<u16> = "\u{feff}"
        .encode_utf16()
        .chain(good.encode_utf16())
        .collect();
    for units in [&with_mark[..], &with_mark[1..]] {
        for order in [u16::to_le_bytes, u16::to_be_bytes] {
            let bytes: Vec<u8> = units.iter().copied().flat_map(order).collect();
            fs::write(&path, bytes).expect("a file is written");
            let said = refused(&["fly", text(&path)]);
            assert!(said.contains("UTF-16; save it in UTF-8"), "{said}");
        }
    }
    let mut latin = good.replace("An invented", "Ein erfundener").into_bytes();
    let place = latin.iter().position(|&byte| byte == b'f').expect("an f");
    latin[place] = 0xfc;
    fs::write(&path, latin).expect("a file is written");
    assert!(refused(&["fly", text(&path)]).contains("not text in UTF-8"));
    fs::remove_file(&path).expect("the file goes");
}

/// As with most commands; the help says so.
#[test]
fn of_a_key_given_twice_the_last_value_counts() {
    let twice = ["fly", "four-turns", "--set", "arm_tuck=0.1", "arm_tuck=0.5"];
    assert_eq!(
        printed(&twice),
        printed(&["fly", "four-turns", "--set", "arm_tuck=0.5"])
    );
    for option in ["fly", "reach"] {
        assert!(printed(&[option, "--help"]).contains("given twice the last"));
    }
}

/// The scenario is not lost to its own motion table.
#[test]
fn the_motion_table_is_not_written_over_the_scenario() {
    let path = scratch("both.json");
    let good = printed(&["starts", "four-turns"]);
    fs::write(&path, &good).expect("a file is written");
    let said = refused(&["fly", text(&path), "--motion", text(&path)]);
    assert!(said.contains("the scenario itself"), "{said}");
    assert_eq!(fs::read_to_string(&path).expect("it is there"), good);
    fs::remove_file(&path).expect("the file goes");
}

/// Every number of an answer, with its name.
fn numbers(name: &str, value: &Value, found: &mut Vec<(String, f64)>) {
    match value {
        Value::Number(number) => found.push((name.to_owned(), number.as_f64().expect("a number"))),
        Value::Array(values) => values.iter().for_each(|value| numbers(name, value, found)),
        Value::Object(values) => values
            .iter()
            .for_each(|(name, value)| numbers(name, value, found)),
        _ => {}
    }
}

/// A number that is nothing but rounding is 0. `export` and the motion table are left out: they have
/// the very numbers that were flown, to the last bit.
#[test]
fn what_is_nothing_is_printed_as_0() {
    let changes: [&[&str]; 6] = [
        &["turning=clockwise"],
        &["lean_rad=0", "arm_asymmetry=0"],
        &["arm_tuck=0", "leg_tuck=0"],
        &["arm_tuck=0", "leg_tuck=0", "takeoff_openness=0"],
        &["takeoff_openness=0", "arm_tuck=1", "leg_tuck=1"],
        &[
            "close_delay_s=0",
            "open_lead_s=0",
            "hand_mass_kg=0",
            "boot_mass_kg=0",
        ],
    ];
    let mut found = Vec::new();
    for start in starts::all() {
        for set in changes {
            for asked in [
                &["fly", start.name, "--range"][..],
                &["budget", start.name],
                &["steps", start.name],
            ] {
                let all = [asked, &["--set"], set].concat();
                numbers(&all.join(" "), &report(&all), &mut found);
            }
        }
        for other in starts::all() {
            let asked = ["compare", start.name, other.name];
            numbers(&asked.join(" "), &report(&asked), &mut found);
        }
    }
    // The smallest of them that is a result is a gain of 1e-8 turns.
    for (name, number) in &found {
        assert!(*number == 0.0 || number.abs() > 1e-9, "{name}: {number:e}");
        assert!(number.to_bits() != (-0.0_f64).to_bits(), "{name}: -0.0");
    }
    assert!(
        found
            .iter()
            .any(|(name, number)| name == "turns" && *number == 0.0)
    );
    assert!(found.iter().any(
        |(name, number)| name == "tilt_takeoff_rad" && *number > Parameter::Lean.most() / 10.0
    ));
}

/// One row of the motion table.
struct Row {
    mass_kg: f64,
    at: DVec3,
    turn: DQuat,
    moments: DVec3,
}

/// All rows of one time, by segment.
type Frame = (f64, BTreeMap<String, Row>);

fn frames(path: &Path) -> Vec<Frame> {
    let mut reader = csv::Reader::from_path(path).expect("a table");
    let header: Vec<String> = reader
        .headers()
        .expect("a header")
        .iter()
        .map(str::to_owned)
        .collect();
    assert_eq!(
        header.join(","),
        "time_s,segment,mass_kg,x_m,y_m,z_m,qw,qx,qy,qz,ix_kg_m2,iy_kg_m2,iz_kg_m2"
    );
    let mut frames: Vec<Frame> = Vec::new();
    for record in reader.records() {
        let record = record.expect("a whole row");
        let n = |i: usize| -> f64 { record[i].parse().expect("a number") };
        let row = Row {
            mass_kg: n(2),
            at: DVec3::new(n(3), n(4), n(5)),
            turn: DQuat::from_xyzw(n(7), n(8), n(9), n(6)),
            moments: DVec3::new(n(10), n(11), n(12)),
        };
        if frames.last().is_none_or(|(t_s, _)| *t_s != n(0)) {
            frames.push((n(0), BTreeMap::new()));
        }
        let (_, rows) = frames.last_mut().expect("one was pushed");
        assert!(rows.insert(record[1].to_owned(), row).is_none());
    }
    frames
}

fn cm((_, rows): &Frame) -> DVec3 {
    let mass: f64 = rows.values().map(|row| row.mass_kg).sum();
    rows.values().map(|row| row.at * row.mass_kg).sum::<DVec3>() / mass
}

/// Angular velocity between two attitudes, world axes: 2 q' q*, for small turns.
fn rate(before: DQuat, after: DQuat, span_s: f64) -> DVec3 {
    let turned = after * before.conjugate();
    let turned = if turned.w < 0.0 { -turned } else { turned };
    let vector = DVec3::new(turned.x, turned.y, turned.z);
    let half = libm::atan2(vector.length(), turned.w);
    vector * (2.0 * half / vector.length().max(1e-300) / span_s)
}

/// Angular momentum about the CM at the middle one of three frames.
fn angular_momentum(frames: &[Frame]) -> DVec3 {
    let [before, now, after] = frames else {
        panic!("three frames")
    };
    let span_s = after.0 - before.0;
    let centre = cm(now);
    let drift = (cm(after) - cm(before)) / span_s;
    now.1
        .iter()
        .map(|(segment, row)| {
            let (old, new) = (&before.1[segment], &after.1[segment]);
            let velocity = (new.at - old.at) / span_s - drift;
            let axes = DMat3::from_quat(row.turn);
            let inertia = axes * DMat3::from_diagonal(row.moments) * axes.transpose();
            inertia * rate(old.turn, new.turn, span_s)
                + (row.at - centre).cross(velocity) * row.mass_kg
        })
        .sum()
}

/// From the rows alone: mass, the CM's parabola, angular momentum and turns, against what was
/// printed.
fn recompute(arguments: &[&str], name: &str) {
    let path = scratch(name);
    let report = report(&[arguments, &["--motion", text(&path)]].concat());
    let frames = frames(&path);
    fs::remove_file(&path).expect("the file goes");

    let last_s = frames.last().expect("a last time").0;
    assert_eq!(frames[0].0, 0.0);
    assert_eq!(last_s, number(&report, "hang_time_s"));
    let names: Vec<&String> = frames[0].1.keys().collect();
    assert!(names.len() >= 16);
    for (_, rows) in &frames {
        assert!(rows.keys().eq(names.iter().copied()));
    }
    for pair in frames.windows(2) {
        let step_s = pair[1].0 - pair[0].0;
        assert!(step_s > 0.0 && step_s < 1e-3 + 1e-12, "{step_s}");
    }

    // Mass: sums of printed numbers, rounding only.
    let mass: f64 = frames[0].1.values().map(|row| row.mass_kg).sum();
    assert!((mass / number(&report, "flying_mass_kg") - 1.0).abs() < 1e-12);

    // The CM goes straight up and down under standard gravity, by the height printed: rounding.
    let height_m = number(&report, "jump_height_m");
    let speed_m_s = (2.0 * 9.806_65 * height_m).sqrt();
    let start = cm(&frames[0]);
    for frame in &frames {
        let rise_m = speed_m_s * frame.0 - 0.5 * 9.806_65 * frame.0 * frame.0;
        let off = cm(frame) - start - DVec3::Y * rise_m;
        assert!(off.length() < 1e-11, "{off} at {}", frame.0);
    }

    // Angular momentum by central differences over 2 ms. A circle of w = 50 rad/s is cut short by
    // (w dt)^2 / 6 = 4e-4, and the limbs' own motion adds about as much again.
    let h = &report["angular_momentum_kg_m2_s"];
    let h = DVec3::from_array([0, 1, 2].map(|i| h[i].as_f64().expect("a number")));
    let mut most = 0.0_f64;
    // The last step before touch-down is a shorter one.
    for three in frames[..frames.len() - 1].windows(3) {
        most = most.max((angular_momentum(three) - h).length() / h.length());
    }
    assert!(most < 2e-3, "{most:e}");

    // Turns: the pelvis's right-left axis, z, unwrapped. Rounding only.
    let heading = |frame: &Frame| {
        let right = frame.1["lower_trunk"].turn * DVec3::Z;
        libm::atan2(right.x, right.z)
    };
    let turned: f64 = frames
        .windows(2)
        .map(|pair| (heading(&pair[1]) - heading(&pair[0]) + PI).rem_euclid(TAU) - PI)
        .sum();
    let sign = if report["turning"] == "clockwise" {
        -1.0
    } else {
        1.0
    };
    assert!((sign * turned / TAU - number(&report, "air_turns")).abs() < 1e-10);
}

#[test]
fn the_motion_table_says_what_the_readout_says() {
    recompute(&["fly", "four-turns"], "four.csv");
    recompute(&["fly", "crooked-takeoff"], "crooked.csv");
    recompute(&["fly", "weighted-hands"], "weighted.csv");
    recompute(
        &["fly", "senior-triple", "--set", "turning=clockwise"],
        "clockwise.csv",
    );
}

/// `--step` is the time between rows; take-off and touch-down are always there.
#[test]
fn the_step_is_the_users() {
    let path = scratch("step.csv");
    let report = report(&[
        "fly",
        "senior-triple",
        "--motion",
        text(&path),
        "--step",
        "0.05",
    ]);
    let frames = frames(&path);
    fs::remove_file(&path).expect("the file goes");
    let whole = libm::floor(number(&report, "hang_time_s") / 0.05) as usize;
    assert_eq!(frames.len(), whole + 2);
    for (i, frame) in frames[..=whole].iter().enumerate() {
        assert!((frame.0 - 0.05 * i as f64).abs() < 1e-12);
    }
}
