//! `aloft turntable`: a programme of hand and leg positions in, the run out.

#[path = "support/aloft.rs"]
mod command;
#[path = "support/printed.rs"]
mod printed;
#[path = "support/refused.rs"]
mod refused;

use std::fs;
use std::path::{Path, PathBuf};

use printed::printed;
use refused::refused;
use serde_json::Value;

/// A file of this test alone, taken away in the end.
struct Scratch(PathBuf);

impl Scratch {
    fn new(name: &str, text: impl AsRef<[u8]>) -> Self {
        let folder = Path::new(env!("CARGO_TARGET_TMPDIR"));
        let path = folder.join(format!("{}-{name}", std::process::id()));
        fs::write(&path, text).expect("a file is written");
        Self(path)
    }

    fn path(&self) -> &str {
        self.0.to_str().expect("a plain path")
    }
}

impl Drop for Scratch {
    fn drop(&mut self) {
        // Whether it could be taken away is no matter of the test.
        let _ = fs::remove_file(&self.0);
    }
}

/// A column of what was printed.
fn column(csv: &str, name: &str) -> Vec<f64> {
    let mut reader = csv::Reader::from_reader(csv.as_bytes());
    let header = reader.headers().expect("names").clone();
    let at = header
        .iter()
        .position(|one| one == name)
        .expect("the column");
    let rows = reader.records().map(|row| row.expect("a row"));
    rows.map(|row| row[at].parse().expect("a number")).collect()
}

#[test]
fn the_example_is_run() {
    let example = Scratch::new("example.csv", printed(&["turntable", "--example"]));
    let free = [
        "--set",
        "rate_rad_s=2",
        "friction_torque_n_m=0",
        "friction_viscous_n_m_s=0",
    ];
    let run = printed(&[&["turntable", example.path()][..], &free].concat());
    let [times, rates, momenta] =
        ["time_s", "rate_rad_s", "angular_momentum_kg_m2_s"].map(|name| column(&run, name));
    assert_eq!((times.len(), times[0], times[300]), (301, 0.0, 6.0));
    assert_eq!(rates[0], 2.0);
    assert!((rates[300] - 2.0).abs() < 1e-9 && rates[150] > 4.0);
    assert!(momenta.iter().all(|momentum| *momentum == momenta[0]));
    // Heavier friction, lower momentum.
    let rough = printed(&[
        "turntable",
        example.path(),
        "--set",
        "rate_rad_s=2",
        "friction_torque_n_m=0.5",
    ]);
    let end = column(&rough, "angular_momentum_kg_m2_s")[300];
    let heat = column(&rough, "friction_heat_j")[300];
    assert!(end < momenta[0] - 3.0 && heat > 1.0);
}

/// What somebody stands on brings its bearing along, but not over what is said of the bearing, in whatever order.
#[test]
fn a_stand_brings_its_bearing_along() {
    let example = Scratch::new("stand.csv", printed(&["turntable", "--example"]));
    let inertia = |settings: &[&str]| {
        let run = printed(
            &[
                &["turntable", example.path(), "--step", "60", "--set"][..],
                settings,
            ]
            .concat(),
        );
        column(&run, "moment_of_inertia_kg_m2")[0]
    };
    let chair = inertia(&["stand=chair"]);
    assert!((inertia(&["stand=chair", "bearing_inertia_kg_m2=1.5"]) - chair - 1.0).abs() < 1e-9);
    assert!((inertia(&["bearing_inertia_kg_m2=1.5", "stand=chair"]) - chair - 1.0).abs() < 1e-9);
    assert!((inertia(&["stand=platform", "stand=chair"]) - chair).abs() < 1e-12);
    assert!(inertia(&["stand=ice"]) < inertia(&["stand=platform"]));
}

/// What a run loses is what the friction was set to: read off its rows, held still, with either kind and with both.
#[test]
fn the_friction_is_found_from_readings() {
    let still = Scratch::new("still.csv", "time_s,hand_distance_m\n0,0.6\n9,0.6\n");
    for (torque, viscous, readings) in [(0.2, 0.0, 2), (0.15, 0.04, 3)] {
        let (torque_set, viscous_set) = (
            format!("friction_torque_n_m={torque}"),
            format!("friction_viscous_n_m_s={viscous}"),
        );
        let set = ["--set", "rate_rad_s=3", &torque_set, &viscous_set];
        let run = printed(&[&["turntable", still.path(), "--step", "3"][..], &set].concat());
        let rates = column(&run, "rate_rad_s");
        let slowed: Vec<String> = (0..readings)
            .map(|i| format!("{}={}", 3 * i, rates[i]))
            .collect();
        let mut arguments = vec!["turntable", still.path(), "--slowed"];
        arguments.extend(slowed.iter().map(String::as_str));
        let found = printed(&arguments);
        for (line, set) in found.lines().zip([&torque_set, &viscous_set]) {
            let [(key, value), (set_key, set_value)] =
                [line, set].map(|it| it.split_once('=').expect("KEY=VALUE"));
            let [value, set_value] =
                [value, set_value].map(|it| it.parse::<f64>().expect("a number"));
            assert_eq!(key, set_key);
            assert!((value - set_value).abs() < 1e-6, "{line} {set}");
        }
        // As --set takes it.
        let again: Vec<&str> = found.lines().collect();
        printed(&[&["turntable", still.path(), "--set"][..], &again].concat());
    }
    let slowed = |readings: &[&str]| {
        refused(&[&["turntable", still.path(), "--slowed"][..], readings].concat())
    };
    assert!(slowed(&["0=2", "5=3"]).contains("lower"));
    assert!(slowed(&["5=3", "5=2"]).contains("later"));
    assert!(slowed(&["0=3", "5=0"]).contains("stopped"));
    assert!(slowed(&["0=3", "5=fast"]).contains("TIME=RATE"));
    assert!(slowed(&["0=3", "5=2", "10=0.5"]).contains("at the end"));
}

#[test]
fn a_run_can_be_computed_again() {
    let example = Scratch::new("export.csv", printed(&["turntable", "--example"]));
    let text = printed(&["turntable", example.path(), "--export", "--step", "1"]);
    let export: Value = serde_json::from_str(&text).expect("it prints JSON");
    assert_eq!(export["samples"].as_array().map(Vec::len), Some(7));
    assert_eq!(export["segments"].as_array().map(Vec::len), Some(16));
    let postures = export["measured"]["rotations"]
        .as_array()
        .expect("postures");
    assert_eq!(
        Some(postures.len()),
        export["measured"]["times_s"].as_array().map(Vec::len)
    );
}

#[test]
fn what_is_wrong_is_said_in_one_line() {
    assert!(refused(&["turntable", "no-such-file"]).contains("cannot be read"));
    let example = Scratch::new("good.csv", printed(&["turntable", "--example"]));
    let set = |setting: &str| refused(&["turntable", example.path(), "--set", setting]);
    assert!(set("stature_m=9").contains("from 1 to 2.1"));
    assert!(set("stature_m=tall").contains("not a number"));
    assert!(set("stand=sofa").contains("`chair`"));
    assert!(set("height=1").contains("hips_forward_m"));
    assert!(set("stature_m").contains("KEY=VALUE"));
    let step = refused(&["turntable", example.path(), "--step", "0"]);
    assert!(step.contains("from 0.001 to 60 s"), "{step}");
    let long = Scratch::new("long.csv", "time_s,hand_distance_m\n0,0.5\n3600,0.5\n");
    let rows = refused(&["turntable", long.path(), "--step", "0.001"]);
    assert!(
        rows.contains("200000 rows") && rows.contains("0.018 s"),
        "{rows}"
    );
    for (text, word) in [
        (&b""[..], "is empty"),
        (b"\xff\xfet\x00", "UTF-8"),
        (b"time_s\n0\n1\n", "hand_distance_m"),
        (b"time_s,hand_distance_m\n0,0.5\n1,far\n", "Line 3"),
        (b"time_s,hand_distance_m\n0,0.5\n1,3\n", "reaches"),
        (
            b"time_s,hand_distance_m,legs\n0,0.5,0\n1,0.5,1\n",
            "stands on both",
        ),
        (
            b"time_s,hand_distance_m\n0,0.7\n0.1,0.3\n",
            "take more time",
        ),
    ] {
        let broken = Scratch::new("broken.csv", text);
        let said = refused(&["turntable", broken.path()]);
        assert!(said.contains(word) && said.contains("broken.csv"), "{said}");
    }
}
