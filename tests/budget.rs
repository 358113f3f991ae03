//! The turn budget adds up, and each part is what it says.

#[path = "support/space.rs"]
mod space;

use std::f64::consts::TAU;
use std::process::Command;

use proptest::prelude::*;
use turns_aloft::analysis::budget::{Budget, Loss};
use turns_aloft::physics::body::Body;
use turns_aloft::physics::plan::{Plan, Turning};
use turns_aloft::physics::table::{PlanTable, Resolution};
use turns_aloft::scenario::{Scenario, starts};

fn budget(scenario: &Scenario) -> Budget {
    Budget::new(scenario, &scenario.fly())
}

fn loss(budget: &Budget, of: Loss) -> f64 {
    budget
        .losses
        .iter()
        .find(|(loss, _)| *loss == of)
        .expect("all four are there")
        .1
}

proptest! {
    #![proptest_config(space::cases(128))]

    /// The ideal less the losses is what the flight's own readout says; the largest is the largest.
    #[test]
    fn it_adds_up(scenario in space::scenario()) {
        let jump = scenario.fly();
        let budget = Budget::new(&scenario, &jump);
        let lost: f64 = budget.losses.iter().map(|(_, turns)| turns).sum();
        prop_assert_eq!(budget.air_turns, jump.readout.air_turns);
        prop_assert!((budget.ideal_turns - lost - budget.air_turns).abs() < 1e-9);
        let most = loss(&budget, budget.largest);
        prop_assert!(budget.losses.iter().all(|(_, turns)| *turns <= most));
        prop_assert!(budget.sentence.ends_with("turns more.") || budget.sentence.ends_with("turns fewer."));
    }

    /// A jumper who turns the other way loses the same.
    #[test]
    fn both_ways_lose_the_same(scenario in space::scenario()) {
        let other = Scenario {
            turning: match scenario.turning {
                Turning::Anticlockwise => Turning::Clockwise,
                Turning::Clockwise => Turning::Anticlockwise,
            },
            ..scenario.clone()
        };
        let (one, other) = (budget(&scenario), budget(&other));
        prop_assert!((one.ideal_turns - other.ideal_turns).abs() < 1e-9);
        for ((_, one), (_, other)) in one.losses.iter().zip(other.losses) {
            prop_assert!((one - other).abs() < 1e-9);
        }
    }

    /// An upright, even body that neither closes nor opens loses nothing by closing, opening or
    /// tilting, up to the error of the steps: only by not getting tight.
    #[test]
    fn a_rigid_body_loses_only_tightness(drawn in space::scenario()) {
        let scenario = Scenario {
            arm_tuck: 0.0,
            leg_tuck: 0.0,
            arm_asymmetry: 0.0,
            arm_lag_s: 0.0,
            open_lead_s: 0.0,
            lean_rad: 0.0,
            ..drawn
        };
        let budget = budget(&scenario);
        prop_assert!(loss(&budget, Loss::Opening).abs() < 1e-4);
        prop_assert!(loss(&budget, Loss::TiltAndAsymmetry).abs() < 1e-4);
    }
}

/// The ideal is a rigid body that turns about its own long axis: h T / (2 pi I), with I the inertia
/// of the tightest posture about that axis.
#[test]
fn the_ideal_is_the_tight_rigid_body() {
    for start in starts::all() {
        let scenario = &start.scenario;
        let jump = scenario.fly();
        let tight = Scenario {
            arm_tuck: 1.0,
            leg_tuck: 1.0,
            arm_asymmetry: 0.0,
            ..scenario.clone()
        };
        let table = PlanTable::new(
            Body::new(tight.body_spec()),
            Plan::new(tight.plan_spec()),
            Resolution::STANDARD,
        );
        let (axis, inertia) = (table.air().long_axis, table.air().state.inertia_kg_m2);
        let h = jump.flight.h_kg_m2_s.length();
        let expected = h * jump.flight.touchdown_s / (TAU * axis.dot(inertia * axis));
        let ideal = Budget::new(scenario, &jump).ideal_turns;
        assert!((ideal / expected - 1.0).abs() < 1e-9, "{}", start.name);
    }
}

/// On the first starting point closing costs most, and nothing is lost by tilt.
#[test]
fn the_first_start_closes_too_slowly() {
    let budget = budget(&starts::all()[0].scenario);
    assert_eq!(budget.largest, Loss::Closing);
    assert!(loss(&budget, Loss::TiltAndAsymmetry).abs() < 1e-5);
    assert!(loss(&budget, Loss::Tightness) > 0.1);
    assert!(loss(&budget, Loss::Opening) > 0.01);
    // A crooked take-off costs what an upright one does not.
    let crooked = starts::named("crooked-takeoff").expect("a starting point");
    let crooked = self::budget(&crooked.scenario);
    assert!(loss(&crooked, Loss::TiltAndAsymmetry) > 0.1);
}

/// What the sentence promises is what the jump then does.
#[test]
fn the_sentence_is_a_flight() {
    let scenario = &starts::all()[0].scenario;
    let quicker = Scenario {
        close_time_s: scenario.close_time_s - 0.1,
        ..scenario.clone()
    };
    let gain = quicker.fly().turns - scenario.fly().turns;
    let sentence = budget(scenario).sentence;
    assert!(
        sentence.contains(&format!("{gain:.2} turns more")),
        "{sentence}"
    );
}

#[test]
fn the_command_prints_it() {
    let printed = Command::new(env!("CARGO_BIN_EXE_aloft"))
        .args(["budget", "four-turns"])
        .output()
        .expect("the command runs");
    assert!(printed.status.success());
    let printed: serde_json::Value = serde_json::from_slice(&printed.stdout).expect("JSON");
    let four = starts::named("four-turns").expect("a starting point");
    let expected = serde_json::to_value(budget(&four.scenario)).expect("JSON");
    assert_eq!(printed, expected);
}
