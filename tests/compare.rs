//! The differences between two attempts add up to the difference of their turns.

#[path = "support/aloft.rs"]
mod command;
#[path = "support/space.rs"]
mod space;

use command::aloft;
use proptest::prelude::*;
use turns_aloft::analysis::compare::Comparison;
use turns_aloft::scenario::{Scenario, starts};

fn start(name: &str) -> &'static Scenario {
    &starts::named(name).expect("a starting point").scenario
}

proptest! {
    #![proptest_config(space::cases(64))]

    /// Any two jumps: one after the other all differences lead from the turns of the first to the
    /// turns of the second, each a flight of its own.
    #[test]
    fn differences_add_up(first in space::scenario(), second in space::scenario()) {
        let compared = Comparison::new(&first, &second);
        prop_assert_eq!(compared.turns, [first.fly().turns, second.fly().turns]);
        let sum: f64 = compared.differences.iter().map(|difference| difference.turns).sum();
        prop_assert!((compared.turns[1] - compared.turns[0] - sum).abs() < 1e-9);
        let back = Comparison::new(&second, &first);
        prop_assert_eq!(back.differences.len(), compared.differences.len());
        let sum_back: f64 = back.differences.iter().map(|difference| difference.turns).sum();
        prop_assert!((sum + sum_back).abs() < 1e-9);
    }

    /// A jump does not differ from itself, whatever it is called.
    #[test]
    fn nothing_differs_from_itself(scenario in space::scenario()) {
        let other = Scenario { name: "Another name".to_owned(), ..scenario.clone() };
        prop_assert_eq!(Comparison::new(&scenario, &other).differences, []);
    }
}

/// A single difference is worth what the two flights differ by, and is told with both values.
#[test]
fn one_difference() {
    let first = start("half-a-turn-short");
    let second = Scenario {
        arm_tuck: 0.93,
        ..first.clone()
    };
    let compared = Comparison::new(first, &second);
    let [difference] = &compared.differences[..] else {
        panic!("one input differs: {compared:?}");
    };
    assert_eq!(difference.key, "arm_tuck");
    assert_eq!(
        (&difference.from, &difference.to),
        (&0.6.into(), &0.93.into())
    );
    assert_eq!(difference.turns, second.fly().turns - first.fly().turns);
    assert!(difference.turns > 0.2);
}

/// What the rule asks for does not turn anybody: another name is worth nothing.
#[test]
fn a_jumps_name_is_worth_nothing() {
    let first = start("senior-triple");
    let second = Scenario {
        jump_turns: 4,
        ..first.clone()
    };
    let compared = Comparison::new(first, &second);
    assert_eq!(compared.differences.len(), 1);
    assert_eq!(compared.differences[0].key, "jump_turns");
    assert_eq!(compared.differences[0].turns, 0.0);
}

#[test]
fn the_command_prints_it() {
    let printed = aloft(&["compare", "half-a-turn-short", "four-turns"]);
    assert!(printed.status.success());
    let printed: serde_json::Value = serde_json::from_slice(&printed.stdout).expect("JSON");
    let expected = Comparison::new(start("half-a-turn-short"), start("four-turns"));
    assert_eq!(printed, serde_json::to_value(expected).expect("JSON"));
    let refused = aloft(&["compare", "half-a-turn-short", "no-such-jump"]);
    assert_eq!(refused.status.code(), Some(2));
    assert_eq!(String::from_utf8_lossy(&refused.stderr).lines().count(), 1);
}
