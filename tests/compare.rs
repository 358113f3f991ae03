//! The differences between two attempts add up to the difference of their turns.

#[path = "support/aloft.rs"]
mod command;
#[path = "support/space.rs"]
mod space;

use command::aloft;
use proptest::prelude::*;

use turns_aloft::analysis::compare::Comparison;
use turns_aloft::physics::led_tucks::{Knot, LedTucks};
use turns_aloft::physics::plan::Turning;
use turns_aloft::scenario::jump::JumpName;
use turns_aloft::scenario::{HandsKeep, Scenario, starts};

fn start(name: &str) -> &'static Scenario {
    &starts::named(name).expect("a starting point").scenario
}

proptest! {
    #![proptest_config(space::cases(64))]

    /// Any two jumps: one after the other all differences lead from the turns of the first to the
    /// turns of the second, each a flight of its own.
    #[test]
    fn differences_add_up(first in space::scenario(), second in space::scenario()) {
        // Where no arm closes, when it would is worth nothing, whatever the steps' errors make of it.
        let closes = |jump: &Scenario| jump.arm_tuck > 0.0;
        let most = if closes(&first) && closes(&second) { 1e-9 } else { 1e-5 };
        let compared = Comparison::new(&first, &second);
        prop_assert_eq!(compared.turns, [first.fly().turns, second.fly().turns]);
        let sum: f64 = compared.differences.iter().map(|difference| difference.turns).sum();
        prop_assert!((compared.turns[1] - compared.turns[0] - sum).abs() < most);
        let back = Comparison::new(&second, &first);
        prop_assert_eq!(back.differences.len(), compared.differences.len());
        let sum_back: f64 = back.differences.iter().map(|difference| difference.turns).sum();
        prop_assert!((sum + sum_back).abs() < most);
    }

    /// A jump does not differ from itself, whatever it is called.
    #[test]
    fn nothing_differs_from_itself(scenario in space::scenario()) {
        let other = Scenario { name: "Another name".to_owned(), ..scenario.clone() };
        prop_assert_eq!(Comparison::new(&scenario, &other).differences, []);
    }
}

/// What a hand did is one difference, with all that it has taken the place of; between two jumps that were led, what
/// was planned for neither is none.
#[test]
fn a_hand_is_one_difference() {
    let planned = start("half-a-turn-short");
    let led = |tuck: f64, arm_tuck: f64| {
        let knot = |time_s, tuck| Knot {
            time_s,
            arms: tuck,
            legs: tuck,
        };
        let knots = [knot(0.0, tuck), knot(0.4, 0.0)];
        Scenario {
            led: Some(LedTucks::new(&knots).expect("knots in order")),
            arm_tuck,
            open_lead_s: 0.3,
            ..planned.clone()
        }
    };
    let first = led(1.0, 0.2);
    for [from, to] in [
        [planned, &first],
        [&first, planned],
        [&first, &led(0.5, 0.7)],
    ] {
        let compared = Comparison::new(from, to);
        let keys: Vec<&str> = (compared.differences.iter())
            .map(|it| it.input.key())
            .collect();
        assert_eq!(keys, ["led"]);
        let [before, after] = compared.turns;
        assert!((compared.differences[0].turns - (after - before)).abs() < 1e-12);
        assert_eq!([before, after], [from.fly().turns, to.fly().turns]);
    }
    assert_eq!(Comparison::new(&first, &led(1.0, 0.7)).differences, []);
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
    assert_eq!(difference.input.key(), "arm_tuck");
    assert_eq!(
        (&difference.from, &difference.to),
        (&0.6.into(), &0.93.into())
    );
    assert_eq!(difference.turns, second.fly().turns - first.fly().turns);
    assert!(difference.turns > 0.2);
}

/// Nor do headings, which way somebody turns, or when nothing closes: each is worth nothing at all,
/// not as little as rounding leaves.
#[test]
fn what_turns_nobody_is_worth_nothing() {
    let first = Scenario {
        arm_tuck: 0.0,
        leg_tuck: 0.0,
        hand_mass_kg: 0.0,
        boot_mass_kg: 0.0,
        ..start("crooked-takeoff").clone()
    };
    let second = Scenario {
        jump: JumpName::OffIce,
        turning: Turning::Clockwise,
        hands_keep: HandsKeep::Energy,
        arm_asymmetry: 0.9,
        close_delay_s: 0.3,
        close_time_s: 0.5,
        arm_lag_s: 0.2,
        ..first.clone()
    };
    let compared = Comparison::new(&first, &second);
    assert_eq!(compared.differences.len(), 7);
    assert!(
        compared
            .differences
            .iter()
            .all(|difference| difference.turns == 0.0)
    );
    // To the steps' error.
    assert!((compared.turns[1] - compared.turns[0]).abs() < 1e-5);
    // They are worth something as soon as arms close.
    let [first, second] = [first, second].map(|jump| Scenario {
        arm_tuck: 0.5,
        ..jump
    });
    let compared = Comparison::new(&first, &second);
    assert!(
        compared
            .differences
            .iter()
            .any(|difference| difference.turns.abs() > 1e-4)
    );
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
    assert_eq!(compared.differences[0].input.key(), "jump_turns");
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
