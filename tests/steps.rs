//! What matters most: the gain of each step is the difference of two plain flights.

#[path = "support/space.rs"]
mod space;

use proptest::prelude::*;

use turns_aloft::analysis::lever::Lever;
use turns_aloft::analysis::steps::{Flown, Gain, ranked};
use turns_aloft::describe::lever::step_text;
use turns_aloft::physics::plan::Turning;
use turns_aloft::scenario::fly::Jump;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::units::{LengthUnit, MassUnit, RateUnit, Units};
use turns_aloft::scenario::{Scenario, starts};

fn gains(scenario: &Scenario) -> Vec<Gain> {
    ranked(scenario, &scenario.fly())
}

#[track_caller]
fn gain(gains: &[Gain], name: &str) -> f64 {
    let gain = gains
        .iter()
        .find(|gain| gain.lever.key() == name)
        .expect("a lever");
    gain.turns_gained.expect("available")
}

fn stepped(scenario: &Scenario, gain: &Gain) -> Scenario {
    let row = Parameter::named(gain.lever.key()).expect("a key");
    let mut other = scenario.clone();
    let value = row.get(scenario) + gain.change.expect("a change");
    row.set(&mut other, value).expect("an admissible value");
    other
}

/// Mean distance of the hands from the long axis in the air position, m.
fn hands_m(jump: &Jump) -> f64 {
    let air = jump.flight.table.air();
    let [left, right] = air
        .state
        .hands_m
        .map(|hand| hand.cross(air.long_axis).length());
    0.5 * (left + right)
}

#[track_caller]
fn holds(scenario: &Scenario) {
    let now = scenario.fly();
    let gains = gains(scenario);
    assert_eq!(gains.len(), Lever::COUNT);
    let mut last = f64::INFINITY;
    for gain in &gains {
        let then = stepped(scenario, gain).fly();
        let sign = match gain.flown {
            Flown::Forward => 1.0,
            Flown::Back => -1.0,
            Flown::Unavailable | Flown::NoPart => {
                panic!("{} is unavailable for {scenario:?}", gain.lever.key())
            }
        };
        let gained = gain.turns_gained.expect("available");
        let flown = sign * (then.turns - now.turns);
        if gained == 0.0 {
            // Nothing that turns anybody has changed: what is left is the steps' error.
            assert!(flown.abs() < 1e-5, "{} {flown:e}", gain.lever.key());
        } else {
            assert_eq!(gained, flown, "{}", gain.lever.key());
        }
        assert_eq!(gain.landing_load_bw, Some(then.readout.landing_load_bw));
        assert!(gained <= last);
        last = gained;
        if gain.lever.key() == "arm_tuck" {
            let nearer_m = sign * (hands_m(&now) - hands_m(&then));
            assert!((nearer_m - 0.01).abs() < 1e-6, "{nearer_m} {scenario:?}");
        }
    }
}

#[test]
fn gains_are_differences_of_flights_on_every_starting_point() {
    for start in starts::all() {
        holds(&start.scenario);
    }
}

proptest! {
    #![proptest_config(space::cases(48))]

    #[test]
    fn gains_are_differences_of_flights_anywhere(scenario in space::scenario()) {
        let led = gains(&scenario);
        let has_part = |gain: &Gain| scenario.has_part(gain.lever.parameter());
        prop_assert!(led.iter().all(|gain| has_part(gain) != (gain.flown == Flown::NoPart)));
        holds(&Scenario { led: None, ..scenario });
    }
}

/// At the end of a range the step is flown back, and what is lost is the gain.
#[test]
fn a_step_that_leaves_the_range_is_flown_back() {
    let scenario = Scenario {
        jump_height_m: 2.5,
        close_delay_s: 0.005,
        arm_tuck: 1.0,
        ..starts::named("trampoline")
            .expect("a start")
            .scenario
            .clone()
    };
    for gain in gains(&scenario) {
        let back = ["jump_height_m", "close_delay_s", "arm_tuck"].contains(&gain.lever.key());
        let expected = if back { Flown::Back } else { Flown::Forward };
        assert_eq!(gain.flown, expected, "{}", gain.lever.key());
    }
    holds(&scenario);
    assert!(gain(&gains(&scenario), "jump_height_m") > 0.0);
}

/// A rigid body turns in proportion to its rate and to the root of its height; closing, tightening
/// the time of it and opening later are worth nothing to it. To 1e-6 turns: the steps' error.
#[test]
fn a_rigid_bodys_gains_are_the_closed_forms() {
    let scenario = Scenario {
        arm_tuck: 0.0,
        leg_tuck: 0.0,
        open_lead_s: 0.0,
        lean_rad: 0.0,
        arm_asymmetry: 0.0,
        arm_lag_s: 0.0,
        ..starts::all()[0].scenario.clone()
    };
    let turns = scenario.fly().readout.air_turns;
    let gains = gains(&scenario);
    let rpm = 2.0 * std::f64::consts::PI / 60.0;
    let rate = turns * 5.0 * rpm / scenario.takeoff_rate_rad_s;
    assert!((gain(&gains, "takeoff_rate_rad_s") - rate).abs() < 1e-6);
    let height = turns * ((1.0 + 0.01 / scenario.jump_height_m).sqrt() - 1.0);
    assert!((gain(&gains, "jump_height_m") - height).abs() < 1e-6);
    for name in ["close_delay_s", "close_time_s"] {
        assert!(gain(&gains, name).abs() < 1e-6, "{name}");
    }
    assert!(gain(&gains, "arm_tuck") > 1e-3);
}

/// 1 cm is 0.39 in, 5 rpm are 0.083 turns/s: the inch as defined.
#[test]
fn steps_are_said_in_the_users_units() {
    let said = |units: Units| {
        let gains = gains(&starts::all()[0].scenario);
        ["jump_height_m", "arm_tuck", "takeoff_rate_rad_s"].map(|key| {
            let gain = gains
                .iter()
                .find(|gain| gain.lever.key() == key)
                .expect("a lever");
            step_text(gain.lever, &units)
        })
    };
    assert_eq!(
        said(Units::default()),
        [
            "1 cm higher",
            "hands 1 cm nearer to the axis",
            "5 rpm faster at take-off"
        ]
    );
    let others = Units {
        rate: RateUnit::TurnsPerS,
        length: LengthUnit::In,
        mass: MassUnit::Lb,
    };
    assert_eq!(
        said(others),
        [
            "0.4 in higher",
            "hands 0.4 in nearer to the axis",
            "0.08 turns/s faster at take-off"
        ]
    );
}

/// The jumper who closes late and not tight gains by every step, most by the take-off rate.
#[test]
fn ranks_are_sensible() {
    let scenario = &starts::named("half-a-turn-short")
        .expect("a start")
        .scenario;
    let all = gains(scenario);
    assert!(
        all.iter()
            .all(|gain| gain.turns_gained.expect("available") > 0.0)
    );
    assert_eq!(all[0].lever.key(), "takeoff_rate_rad_s");
}

/// A mirrored jumper gains the same, to rounding.
#[test]
fn the_turning_direction_changes_nothing() {
    for start in starts::all() {
        let mirrored = Scenario {
            turning: Turning::Clockwise,
            ..start.scenario.clone()
        };
        let other = gains(&mirrored);
        for one in gains(&start.scenario) {
            let gained = one.turns_gained.expect("available");
            assert!(
                (gained - gain(&other, one.lever.key())).abs() < 1e-7,
                "{}",
                one.lever.key()
            );
        }
    }
}
