//! Where the turns went: sums, closed forms and flights computed by other means.

#[path = "support/aloft.rs"]
mod command;
#[path = "support/space.rs"]
mod space;

use std::f64::consts::TAU;

use command::aloft;
use proptest::prelude::*;

use turns_aloft::analysis::budget::{Budget, Cause};
use turns_aloft::describe::budget::budget_sentence;
use turns_aloft::physics::body::Body;
use turns_aloft::physics::fixed_time::FixedTimeFlight;
use turns_aloft::physics::flight::{Flight, Launch, Spin};
use turns_aloft::physics::live_flight::LiveFlight;
use turns_aloft::physics::mass_properties::MassProperties;
use turns_aloft::physics::plan::{Plan, PlanSpec, Turning};
use turns_aloft::physics::table::{PlanTable, Resolution};
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::{Scenario, starts};

fn budget(scenario: &Scenario) -> Budget {
    Budget::new(scenario, &scenario.fly())
}

fn start(name: &str) -> Scenario {
    starts::named(name).expect("it is there").scenario.clone()
}

/// The same jumper as a body that never moves a joint.
fn rigid(scenario: &Scenario) -> Scenario {
    Scenario {
        arm_tuck: 0.0,
        leg_tuck: 0.0,
        open_lead_s: 0.0,
        ..straight(scenario)
    }
}

fn straight(scenario: &Scenario) -> Scenario {
    Scenario {
        lean_rad: 0.0,
        arm_asymmetry: 0.0,
        arm_lag_s: 0.0,
        ..scenario.clone()
    }
}

/// The tightest posture of a scenario's jumper.
fn tightest(scenario: &Scenario) -> MassProperties {
    let spec = PlanSpec {
        arm_tuck: 1.0,
        leg_tuck: 1.0,
        arm_asymmetry: 0.0,
        arm_lag_s: 0.0,
        led: None,
        ..scenario.plan_spec()
    };
    let body = Body::new(scenario.body_spec());
    *PlanTable::new(body, Plan::new(spec), Resolution::STANDARD).air()
}

/// What a rigid body turns about its own long axis: h T / (2 pi I).
fn closed_form_turns(scenario: &Scenario, flight: &Flight) -> f64 {
    let tight = tightest(scenario);
    let inertia_kg_m2 = tight
        .long_axis
        .dot(tight.state.inertia_kg_m2 * tight.long_axis);
    flight.h_kg_m2_s.length() * flight.touchdown_s / (TAU * inertia_kg_m2)
}

/// A flight for its own time in the air, and the launch with its angular momentum.
fn as_flown(flight: &Flight) -> (FixedTimeFlight, Launch) {
    let timed = FixedTimeFlight {
        closed: false,
        open_s: flight.open_s,
        hang_s: flight.touchdown_s,
    };
    let launch = Launch {
        spin: Spin::AngularMomentum(flight.h_kg_m2_s.length()),
        ..flight.launch
    };
    (timed, launch)
}

proptest! {
    #![proptest_config(space::cases(200))]

    /// Ideal less losses is what is left, and that is the readout itself.
    #[test]
    fn the_parts_add_up(scenario in space::scenario()) {
        let jump = scenario.fly();
        let budget = Budget::new(&scenario, &jump);
        prop_assert_eq!(budget.air_turns, jump.readout.air_turns);
        let left = budget.ideal_turns - budget.losses.iter().sum::<f64>();
        prop_assert!((left - budget.air_turns).abs() < 1e-9);
        prop_assert!(budget.losses.iter().all(|&loss| loss >= -1e-6), "{:?}", budget.losses);
        let all = budget.air_turns + budget.pre_rotation_turns;
        prop_assert!((all - jump.turns).abs() < 1e-9);
        prop_assert_eq!(budget.turns, jump.turns);
    }

    /// The ideal turns about a principal axis: exact but for rounding.
    #[test]
    fn the_ideal_is_a_rigid_body_on_its_axis(scenario in space::scenario()) {
        let jump = scenario.fly();
        let expected = closed_form_turns(&scenario, &jump.flight);
        let ideal = Budget::new(&scenario, &jump).ideal_turns;
        prop_assert!((ideal - expected).abs() < 1e-9 * (1.0 + expected), "{} {}", ideal, expected);
    }

    /// The ideal turns per second in proportion to the angular momentum, and this in proportion to
    /// the take-off rate.
    #[test]
    fn the_ideal_is_proportional_to_the_momentum(scenario in space::scenario(), part in 0.1..1.0_f64) {
        let rate = Parameter::named("takeoff_rate_rad_s").expect("it is there");
        let slower_rad_s = rate.least() + part * (scenario.takeoff_rate_rad_s - rate.least());
        let slower = Scenario { takeoff_rate_rad_s: slower_rad_s, ..scenario.clone() };
        let per_s = |scenario: &Scenario| {
            let jump = scenario.fly();
            Budget::new(scenario, &jump).ideal_turns / jump.readout.hang_time_s
        };
        let expected = per_s(&scenario) * slower_rad_s / scenario.takeoff_rate_rad_s;
        prop_assert!((per_s(&slower) - expected).abs() < 1e-9 * (1.0 + expected));
    }

    /// A body that moves no joint can neither close nor open late: all is lost by not getting tight.
    #[test]
    fn a_rigid_posture_loses_nothing_by_closing_or_opening(scenario in space::planned()) {
        let budget = budget(&rigid(&scenario));
        for cause in [Cause::Closing, Cause::Opening, Cause::Tilt] {
            let loss = budget.loss(cause);
            prop_assert!(loss.abs() < 1e-9 * (1.0 + budget.air_turns.abs()), "{:?}: {}", cause, loss);
        }
        let lost = budget.ideal_turns - budget.air_turns;
        prop_assert!((budget.loss(Cause::Tightness) - lost).abs() < 1e-9 * (1.0 + lost));
        prop_assert!(lost > 0.0);
    }

    /// Upright and even on both sides, nothing is lost by tilt; nor by opening where it never comes;
    /// nor by tightness where the body is as tight as it can get.
    #[test]
    fn what_is_not_there_costs_nothing(scenario in space::scenario()) {
        prop_assert_eq!(budget(&straight(&scenario)).loss(Cause::Tilt), 0.0);
        let scenario = Scenario { led: None, ..scenario };
        let never = Scenario { open_lead_s: 0.0, ..scenario.clone() };
        prop_assert!(budget(&never).loss(Cause::Opening).abs() < 1e-9);
        let tight = Scenario { arm_tuck: 1.0, leg_tuck: 1.0, ..scenario };
        prop_assert_eq!(budget(&tight).loss(Cause::Tightness), 0.0);
    }

    /// Turning the other way changes no part. Tolerance as for the flights themselves.
    #[test]
    fn the_mirror_image_has_the_same_budget(scenario in space::scenario()) {
        let of = |turning: Turning| budget(&Scenario { turning, ..scenario.clone() });
        let (left, right) = (of(Turning::Anticlockwise), of(Turning::Clockwise));
        let close = |a: f64, b: f64| (a - b).abs() <= 1e-6 * (1.0 + left.ideal_turns);
        prop_assert!(close(left.ideal_turns, right.ideal_turns));
        for (one, other) in left.losses.into_iter().zip(right.losses) {
            prop_assert!(close(one, other), "{} {}", one, other);
        }
    }

    /// Flown for its own time as planned, a flight is itself again: both are within 1e-5 of exact. Its planned end
    /// is found to some 1e-11 s.
    #[test]
    fn a_timed_flight_is_the_flight(scenario in space::scenario()) {
        let flight = scenario.fly().flight;
        let (timed, launch) = as_flown(&flight);
        let samples = timed.fly(&flight.table, &launch);
        let (end, expected) = (samples[samples.len() - 1], flight.touchdown());
        prop_assert!((end.t_s - expected.t_s).abs() < 1e-10);
        prop_assert!((end.air_turns() - expected.air_turns()).abs() < 2e-5);
        prop_assert!((end.tilt_rad() - expected.tilt_rad()).abs() < 1e-4);
    }

    /// A body that leaves the ice closed and opens on the way, against one led live from the
    /// same posture, high above any ice.
    #[test]
    fn closed_from_the_start_is_as_led_live(scenario in space::planned()) {
        let flight = scenario.fly().flight;
        let (timed, launch) = as_flown(&flight);
        let samples = FixedTimeFlight { closed: true, ..timed }.fly(&flight.table, &launch);

        let plan = &flight.table.plan;
        let (closed, _) = plan.at(plan.closed_s(), f64::INFINITY);
        let (landing, _) = plan.at(1e3, plan.closed_s());
        let high = Launch { jump_height_m: 50.0, ..launch };
        let body = Body::new(scenario.body_spec());
        let mut live = LiveFlight::launched(body, &closed, &high, scenario.turning);
        live.step(flight.open_s);
        live
            .aim_all(&landing, scenario.open_time_s)
            .expect("a posture, in an admissible time");
        live.step(flight.touchdown_s - flight.open_s);
        prop_assert!(!live.has_landed());
        let (end, expected) = (samples[samples.len() - 1], live.sample());
        prop_assert!((end.t_s - expected.t_s).abs() < 1e-12, "{} {}", end.t_s, expected.t_s);
        prop_assert!(
            (end.air_turns() - expected.air_turns()).abs() < 1e-4,
            "{} {}", end.air_turns(), expected.air_turns()
        );
    }

    /// What is said of one change is what that change does when it is set and flown; it stays
    /// within its range.
    #[test]
    fn the_one_change_is_flown(scenario in space::scenario()) {
        let jump = scenario.fly();
        let budget = Budget::new(&scenario, &jump);
        prop_assert!(!budget_sentence(&scenario, &budget).contains("NaN"));
        if let Some(largest) = budget.largest {
            prop_assert!(budget.losses.iter().all(|&loss| loss <= budget.loss(largest)));
        }
        let Some(change) = budget.one_change else {
            return Ok(());
        };
        let key = change.parameter;
        prop_assert_eq!(key.get(&scenario), change.from);
        let mut changed = scenario.clone();
        prop_assert!(key.set(&mut changed, change.to).is_ok());
        let gained = changed.fly().turns - jump.turns;
        prop_assert!((gained - change.turns_change).abs() < 1e-9);
    }
}

/// Tight at once, until touch-down: at most what the ideal turns in the shortest closing is lost.
#[test]
fn a_nearly_ideal_jump_loses_little() {
    for start in starts::all() {
        let quick = Scenario {
            arm_tuck: 1.0,
            leg_tuck: 1.0,
            close_delay_s: 0.0,
            close_time_s: 0.05,
            open_lead_s: 0.0,
            ..straight(&start.scenario)
        };
        let jump = quick.fly();
        let budget = Budget::new(&quick, &jump);
        let lost = budget.ideal_turns - budget.air_turns;
        let in_closing = budget.ideal_turns * 0.05 / jump.readout.hang_time_s;
        assert!(0.0 < lost && lost < in_closing, "{}: {lost}", start.name);
        assert!((budget.loss(Cause::Closing) - lost).abs() < 1e-9);
    }
}

/// Each fault made worse costs more under its own name.
#[test]
fn every_fault_is_charged_to_its_cause() {
    let sound = start("senior-triple");
    for (key, worse, cause) in [
        ("close_time_s", "0.3", Cause::Closing),
        ("close_delay_s", "0.15", Cause::Closing),
        ("arm_lag_s", "0.15", Cause::Closing),
        ("arm_tuck", "0.5", Cause::Tightness),
        ("leg_tuck", "0.5", Cause::Tightness),
        ("open_lead_s", "0.2", Cause::Opening),
        ("lean_rad", "0.3", Cause::Tilt),
        ("arm_asymmetry", "0.5", Cause::Tilt),
    ] {
        let mut faulty = sound.clone();
        faulty.set(key, worse).expect("it is admissible");
        let [was, is] = [&sound, &faulty].map(|scenario| budget(scenario).loss(cause));
        assert!(is > was + 0.02, "{key}: {was} {is}");
    }
}

/// The sentence names the largest loss and the change, with the numbers of flights made here.
#[test]
fn the_sentence_is_plain() {
    let gained = |scenario: &Scenario, key: &str, value: &str| {
        let mut changed = scenario.clone();
        changed.set(key, value).expect("it is admissible");
        changed.fly().turns - scenario.fly().turns
    };
    let four = Scenario {
        jump_turns: 5,
        ..start("four-turns")
    };
    let lost = budget(&four).loss(Cause::Closing);
    let more = gained(&four, "close_time_s", "0.15");
    assert_eq!(
        budget_sentence(&four, &budget(&four)),
        format!(
            "Closing cost {lost:.2} turns: it took 0.20 s. With 0.15 s this jump would \
             have {more:.2} turns more."
        )
    );

    let short = start("half-a-turn-short");
    let lost = budget(&short).loss(Cause::Tightness);
    let more = gained(&short, "arm_tuck", "0.7");
    assert_eq!(
        budget_sentence(&short, &budget(&short)),
        format!(
            "Not getting tighter cost {lost:.2} turns: the arms came in 60 %. With 70 % \
             this jump would have {more:.2} turns more."
        )
    );
}

/// Where nothing can be set better, and where nothing is lost, it says so.
#[test]
fn the_sentence_claims_no_more_than_there_is() {
    let best = Scenario {
        jump_turns: 5,
        arm_tuck: 1.0,
        leg_tuck: 1.0,
        close_delay_s: 0.0,
        close_time_s: 0.05,
        open_lead_s: 0.0,
        ..straight(&start("four-turns"))
    };
    let of_best = budget(&best);
    assert_eq!(of_best.one_change, None);
    let lost = of_best.loss(Cause::Closing);
    assert_eq!(
        budget_sentence(&best, &of_best),
        format!("Closing cost {lost:.2} turns, but no better setting was found.")
    );

    let slow = Scenario {
        takeoff_rate_rad_s: 0.5,
        ..best.clone()
    };
    let of_slow = budget(&slow);
    assert_eq!(of_slow.largest, None);
    assert_eq!(
        budget_sentence(&slow, &of_slow),
        "Nothing in the air took a large part of the turns away."
    );
}

/// A jump that has all its turns is told what cost most, and no change.
#[test]
fn no_change_is_told_of_where_nothing_is_missing() {
    let full = Scenario {
        jump_turns: 3,
        ..start("four-turns")
    };
    let of_full = budget(&full);
    let lost = of_full.loss(Cause::Closing);
    assert_eq!(
        budget_sentence(&full, &of_full),
        format!("All turns are there. Closing cost {lost:.2} turns.")
    );
}

#[test]
fn the_command_prints_it() {
    let printed = aloft(&["budget", "four-turns"]);
    assert!(printed.status.success());
    let printed: serde_json::Value = serde_json::from_slice(&printed.stdout).expect("JSON");
    let scenario = start("four-turns");
    let budget = budget(&scenario);
    assert_eq!(printed["sentence"], budget_sentence(&scenario, &budget));
    assert_eq!(printed["ideal_turns"], budget.ideal_turns);
    assert_eq!(
        printed["lost_by_tightness_turns"],
        budget.loss(Cause::Tightness)
    );
}
