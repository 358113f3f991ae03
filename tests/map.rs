//! The turn map is nothing but single flights, in whatever order and pieces it is made.

#[path = "support/aloft.rs"]
mod command;
#[path = "support/space.rs"]
mod space;

use std::f64::consts::TAU;

use command::aloft;
use proptest::prelude::*;

use turns_aloft::analysis::map::{Axis, TurnMap, depends_on};
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::seen::Stand;
use turns_aloft::scenario::{Scenario, starts};

fn axis(key: &str, nodes: usize) -> Axis {
    let key = Parameter::named(key).expect("a key");
    Axis::new(key, key.least(), key.most(), nodes).expect("an axis over the whole range")
}

/// The turns of this jump with both numbers set, by a flight of its own.
fn alone(scenario: &Scenario, map: &TurnMap, i: usize, j: usize) -> f64 {
    let mut scenario = scenario.clone();
    for (axis, node) in [(map.x(), i), (map.y(), j)] {
        axis.parameter()
            .set(&mut scenario, axis.value(node))
            .expect("a value of the range");
    }
    scenario.fly().turns
}

proptest! {
    #![proptest_config(space::cases(24))]

    /// Any two numbers of any jump: every node is the flight that stands there, to rounding, however
    /// many nodes are flown at a time.
    #[test]
    fn nodes_are_single_flights(
        scenario in space::scenario(),
        keys in prop::sample::subsequence(Parameter::ALL.map(Parameter::key).to_vec(), 2),
        nodes in (2..6_usize, 2..6_usize),
        piece in 1..9_usize,
    ) {
        let (x, y) = (axis(keys[0], nodes.0), axis(keys[1], nodes.1));
        let mut map = TurnMap::new(&scenario, x, y).expect("two different numbers");
        while !map.is_done() {
            prop_assert!((1..=piece).contains(&map.refine(piece)));
        }
        prop_assert_eq!(map.refine(piece), 0);
        for j in 0..nodes.1 {
            for i in 0..nodes.0 {
                let (turns, alone) = (map.turns(i, j), alone(&scenario, &map, i, j));
                let turns = turns.expect("all flown");
                prop_assert!((turns - alone).abs() < 1e-11, "{turns} {alone}");
            }
        }
    }
}

/// A coarse map first: of 33 x 33 nodes the first nine are the corners, the middles of the sides and
/// the centre, the next sixteen those half-way between.
#[test]
fn coarse_first() {
    let scenario = &starts::all()[0].scenario;
    let (x, y) = (axis("takeoff_rate_rad_s", 33), axis("jump_height_m", 33));
    let mut map = TurnMap::new(scenario, x, y).expect("two different numbers");
    let flown = |map: &TurnMap| {
        let all = (0..33).flat_map(|j| (0..33).map(move |i| (i, j)));
        all.filter(|&(i, j)| map.turns(i, j).is_some())
            .collect::<Vec<_>>()
    };
    assert_eq!(flown(&map), []);
    map.refine(9);
    assert!(flown(&map).iter().all(|(i, j)| i % 16 == 0 && j % 16 == 0));
    map.refine(16);
    assert_eq!(flown(&map).len(), 25);
    assert!(flown(&map).iter().all(|(i, j)| i % 8 == 0 && j % 8 == 0));
    map.complete();
    assert_eq!(flown(&map).len(), 33 * 33);
}

/// An arm and leg tuck of nothing and no opening: a rigid body that leaves the ice on its principal
/// axis, so it turns by rate times hang time, 2 sqrt(2 h / g) (closed form).
fn rigid() -> Scenario {
    let mut rigid = starts::all()[0].scenario.clone();
    (rigid.arm_tuck, rigid.leg_tuck, rigid.open_lead_s) = (0.0, 0.0, 0.0);
    (rigid.lean_rad, rigid.pre_rotation_turns) = (0.0, 0.0);
    rigid
}

fn hang_time_s(height_m: f64) -> f64 {
    2.0 * (2.0 * height_m / 9.806_65).sqrt()
}

/// Over rate and what is turned on the ice the lines of whole turns of a rigid body are straight:
/// rate = 2 pi (k - on the ice) / hang time.
#[test]
fn lines_of_a_rigid_body_are_straight() {
    let scenario = rigid();
    let x = Axis::new(Parameter::TakeoffRate, 2.0, 24.0, 9).expect("an axis");
    let y = axis("pre_rotation_turns", 6);
    let mut map = TurnMap::new(&scenario, x, y).expect("two different numbers");
    map.complete();
    let lines = map.turns_so_far().expect("all flown").whole_lines();
    let hang_s = hang_time_s(scenario.jump_height_m);
    let most = 24.0 * hang_s / TAU + 1.0;
    assert_eq!(lines.len(), most.floor() as usize);
    for line in lines {
        for &[u, v] in &line.points {
            let expected = (line.level - y.at(v)) * TAU / hang_s;
            // The flight's own error of 1e-5 turns is less than this.
            assert!((x.at(u) - expected).abs() < 2e-4, "{}", line.level);
        }
    }
}

/// The same over rate and height, where they are hyperbolas in the root of the height: as near as the
/// chords of 31 nodes come.
#[test]
fn lines_of_a_rigid_body_over_height() {
    let scenario = rigid();
    let x = Axis::new(Parameter::TakeoffRate, 2.0, 24.0, 31).expect("an axis");
    let y = Axis::new(Parameter::JumpHeight, 0.2, 0.6, 31).expect("an axis");
    let mut map = TurnMap::new(&scenario, x, y).expect("two different numbers");
    map.complete();
    let lines = map.turns_so_far().expect("all flown").whole_lines();
    assert!(!lines.is_empty());
    for line in lines {
        for &[u, v] in &line.points {
            let turns = x.at(u) * hang_time_s(y.at(v)) / TAU;
            assert!((turns - line.level).abs() < 1e-3, "{}", line.level);
        }
    }
}

/// Before all is flown there is a picture already: exact where something is flown, and between the
/// nodes no further off than the coarse map's own cells bend.
#[test]
fn a_picture_at_every_stage() {
    let scenario = starts::named("four-turns")
        .expect("a start")
        .scenario
        .clone();
    let x = Axis::new(Parameter::TakeoffRate, 5.0, 15.0, 61).expect("an axis");
    let y = Axis::new(Parameter::JumpHeight, 0.2, 0.6, 61).expect("an axis");
    let mut done = TurnMap::new(&scenario, x, y).expect("two different numbers");
    done.complete();
    let exact = done.turns_so_far().expect("all flown");
    let mut map = TurnMap::new(&scenario, x, y).expect("two different numbers");
    assert!(map.turns_so_far().is_none());
    // 5 x 5 coarsest nodes: every sixteenth, and the last.
    map.refine(24);
    assert!(map.turns_so_far().is_none());
    map.refine(1);
    let mut worst = f64::INFINITY;
    while !map.is_done() {
        let field = map.turns_so_far().expect("the coarsest are flown");
        let mut off: f64 = 0.0;
        for j in 0..61 {
            for i in 0..61 {
                if let Some(turns) = map.turns(i, j) {
                    assert_eq!(field.node(i, j), turns);
                }
                off = off.max((field.node(i, j) - exact.node(i, j)).abs());
            }
        }
        assert!(off <= worst && off < 0.05, "{off} after {worst}");
        worst = off;
        map.refine(300);
    }
    assert_eq!(map.turns_so_far(), Some(exact));
}

/// A node is inside the outline if and only if both numbers are within the marks of the jump flown
/// there, and so are its height and the rate at which it left the ice.
#[test]
fn the_outline_is_that_of_the_marks() {
    let scenario = starts::named("four-turns")
        .expect("a start")
        .scenario
        .clone();
    for keys in [
        ["takeoff_rate_rad_s", "jump_height_m"],
        ["hand_mass_kg", "close_time_s"],
        ["arm_tuck", "leg_tuck"],
        ["stature_m", "takeoff_rate_rad_s"],
    ] {
        let mut map = TurnMap::new(&scenario, axis(keys[0], 9), axis(keys[1], 9)).expect("two");
        map.complete();
        let (mut inside, mut outside) = (0, 0);
        for j in 0..9 {
            for i in 0..9 {
                let mut then = scenario.clone();
                for (axis, node) in [(map.x(), i), (map.y(), j)] {
                    axis.parameter()
                        .set(&mut then, axis.value(node))
                        .expect("in its range");
                }
                let jump = then.fly();
                let within = Parameter::ALL.into_iter().all(|key| {
                    let always = ["takeoff_rate_rad_s", "jump_height_m"];
                    let counts = keys.contains(&key.key()) || always.contains(&key.key());
                    let marks = then.marks(key, &jump).filter(|_| counts);
                    marks.is_none_or(|marks| {
                        let value = match key.key() {
                            "takeoff_rate_rad_s" => jump.readout.takeoff_rate_rad_s,
                            _ => key.get(&then),
                        };
                        marks.stand(value) != Stand::Beyond
                    })
                });
                let margin = map.seen_margin(i, j).expect("all flown");
                assert_eq!(margin >= 0.0, within, "{keys:?} {i} {j}: {margin}");
                (inside, outside) = if within {
                    (inside + 1, outside)
                } else {
                    (inside, outside + 1)
                };
            }
        }
        assert!(
            inside > 0 && outside > 0 || keys[0] == "arm_tuck",
            "{keys:?}"
        );
    }
}

/// The outline of a grown man's heights seen is where their mark is, and where the body turns as fast as
/// has been seen: 440 rpm at its peak.
#[test]
fn the_outline_runs_along_the_marks() {
    let scenario = starts::named("four-turns")
        .expect("a start")
        .scenario
        .clone();
    let x = Axis::new(Parameter::JumpHeight, 0.1, 0.7, 31).expect("an axis");
    let y = Axis::new(Parameter::TakeoffRate, 2.0, 25.0, 31).expect("an axis");
    let mut map = TurnMap::new(&scenario, x, y).expect("two different numbers");
    map.complete();
    let outline = map.seen_so_far().expect("all flown").lines(0.0);
    assert_eq!(outline.len(), 1, "across and down");
    let (mut high, mut fast) = (0, 0);
    for &[u, v] in &outline[0].points {
        let (height_m, rate_rad_s) = (x.at(u), y.at(v));
        let mut then = scenario.clone();
        (then.jump_height_m, then.takeoff_rate_rad_s) = (height_m, rate_rad_s);
        let peak_rpm = then.fly().readout.peak_rate_rad_s * 60.0 / TAU;
        // A cell's corner is cut off where two marks meet: at most half a cell, 0.01 m and 7 rpm.
        let near = |value: f64, mark: f64, by: f64| (value - mark).abs() < by;
        high += usize::from(near(height_m, 0.6, 1e-9));
        fast += usize::from(near(peak_rpm, 440.0, 0.1));
        assert!(near(height_m, 0.6, 0.011) || near(peak_rpm, 440.0, 8.0));
    }
    assert!(high > 5 && fast > 5, "{high} {fast}");
}

/// A map stays that of its jump while the point in it is dragged, and is another's as soon as
/// anything else differs.
#[test]
fn what_a_map_depends_on() {
    let scenario = starts::named("four-turns")
        .expect("a start")
        .scenario
        .clone();
    let axes = [axis("takeoff_rate_rad_s", 5), axis("arm_tuck", 5)];
    let has_the_same = |other: &Scenario| depends_on(other, &axes) == depends_on(&scenario, &axes);
    let mut dragged = scenario.clone();
    (dragged.takeoff_rate_rad_s, dragged.arm_tuck) = (7.7, 0.33);
    dragged.name = "renamed".to_owned();
    assert!(has_the_same(&dragged));
    for key in Parameter::ALL {
        let mut other = dragged.clone();
        let middle = 0.5 * (key.least() + key.most());
        key.set(&mut other, middle + 0.01 * (key.most() - key.least()))
            .expect("in its range");
        let on_axis = axes.iter().any(|axis| axis.parameter() == key);
        assert_eq!(has_the_same(&other), on_axis, "{}", key.key());
    }
    for (word, text) in [
        ("turning", "clockwise"),
        ("ground", "floor"),
        ("hands_keep", "energy"),
    ] {
        let mut other = dragged.clone();
        other.set(word, text).expect("a word");
        assert_eq!(has_the_same(&other), other == dragged, "{word}");
    }
}

/// The command prints the same numbers, one row a pair.
#[test]
fn the_command_prints_it() {
    let printed = aloft(&[
        "map",
        "four-turns",
        "--x",
        "jump_height_m:0.3:0.6:4",
        "--y",
        "arm_tuck:0.5:1:3",
    ]);
    assert!(printed.status.success());
    let mut rows = csv::Reader::from_reader(&printed.stdout[..]);
    assert_eq!(
        rows.headers().expect("a first row"),
        vec!["jump_height_m", "arm_tuck", "turns"]
    );
    let rows: Vec<[f64; 3]> = rows
        .deserialize()
        .map(|row| row.expect("three numbers"))
        .collect();
    assert_eq!(rows.len(), 12);
    for [height_m, arm_tuck, turns] in rows {
        let mut scenario = starts::named("four-turns")
            .expect("a start")
            .scenario
            .clone();
        (scenario.jump_height_m, scenario.arm_tuck) = (height_m, arm_tuck);
        assert!((turns - scenario.fly().turns).abs() < 1e-11);
    }
}

/// What cannot be is said in one line with what is admissible, and exit status 2.
#[test]
fn bad_axes_are_refused() {
    let good = "jump_height_m:0.3:0.6:4";
    for (bad, says) in [
        ("jump_height_m:0.3:0.6", "write KEY:FROM:TO:N"),
        ("jump_height:0.3:0.6:4", "no such number"),
        (
            "arm_tuck:0:2:4",
            "arm_tuck = 2 is out of range: it goes from 0 to 1",
        ),
        ("arm_tuck:0:one:4", "one is not a number"),
        ("arm_tuck:0:NaN:4", "NaN is not a number"),
        ("arm_tuck:0.5:0.5:4", "give two different values"),
        (
            "arm_tuck:0:1:1",
            "1 nodes of arm_tuck are out of range: they go from 2 to 201",
        ),
        ("arm_tuck:0:1:-3", "-3 is not a whole number"),
        ("jump_height_m:0.2:0.3:4", "give two different numbers"),
    ] {
        let refused = aloft(&["map", "four-turns", "--x", good, "--y", bad]);
        assert_eq!(refused.status.code(), Some(2), "{bad}");
        let why = String::from_utf8_lossy(&refused.stderr);
        assert_eq!(why.lines().count(), 1, "{why}");
        assert!(why.contains(says), "{why}");
    }
}
