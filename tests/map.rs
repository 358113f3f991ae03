//! The turn map is nothing but single flights, in whatever order and pieces it is made.

#[path = "support/aloft.rs"]
mod command;
#[path = "support/space.rs"]
mod space;

use command::aloft;
use proptest::prelude::*;
use turns_aloft::analysis::map::{Axis, TurnMap};
use turns_aloft::scenario::keys::{self, KEYS};
use turns_aloft::scenario::{Scenario, starts};

fn axis(key: &str, nodes: usize) -> Axis {
    let key = keys::key(key).expect("a key");
    Axis::new(key.key, key.least, key.most, nodes).expect("an axis over the whole range")
}

/// The turns of this jump with both numbers set, by a flight of its own.
fn alone(scenario: &Scenario, map: &TurnMap, i: usize, j: usize) -> f64 {
    let mut scenario = scenario.clone();
    for (axis, node) in [(map.x(), i), (map.y(), j)] {
        axis.key()
            .set(&mut scenario, axis.value(node))
            .expect("a value of the range");
    }
    scenario.fly().turns
}

proptest! {
    #![proptest_config(space::cases(24))]

    /// Any two numbers of any jump: every node is the flight that stands there, to the last bit,
    /// however many nodes are flown at a time.
    #[test]
    fn nodes_are_single_flights(
        scenario in space::scenario(),
        keys in prop::sample::subsequence(KEYS.iter().map(|key| key.key).collect::<Vec<_>>(), 2),
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
                prop_assert_eq!(map.turns(i, j), Some(alone(&scenario, &map, i, j)));
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
        assert_eq!(turns, scenario.fly().turns);
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
