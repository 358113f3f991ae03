//! Tables and flights that others lend to: what is shared changes no digit, and a flight that keeps
//! less says the same.

use std::sync::Arc;

use proptest::prelude::*;

use turns_aloft::physics::flight_summary::FlightSummary;
use turns_aloft::physics::table::{PlanTable, Resolution};
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::{Scenario, starts};

#[path = "support/space.rs"]
mod space;

fn table(scenario: &Scenario, earlier: &[&Arc<PlanTable>]) -> Arc<PlanTable> {
    let (body, plan) = (scenario.body_spec(), scenario.plan_spec());
    PlanTable::after(earlier, body, plan, Resolution::STANDARD)
}

fn changed(scenario: &Scenario, key: &str, value: f64) -> Scenario {
    let mut changed = scenario.clone();
    let key = Parameter::named(key).expect("a key");
    key.set(&mut changed, value).expect("a value of its range");
    changed
}

/// Which sample tables of two scenarios are the same one: the closing, the opening.
fn same_tables(one: &Scenario, other: &Scenario) -> [bool; 2] {
    let first = table(one, &[]);
    let then = table(other, &[&first]);
    let opening = |table: &PlanTable| Arc::clone(&table.opening.as_ref().expect("opens").states);
    [
        Arc::ptr_eq(&first.closing.states, &then.closing.states),
        Arc::ptr_eq(&opening(&first), &opening(&then)),
    ]
}

/// In its own unit of time a blend is the same whatever time it takes, and the opening does not care
/// how the body has closed.
#[test]
fn times_share_tables() {
    let start = starts::named("four-turns").expect("a start");
    let start = &start.scenario;
    for (key, value, same) in [
        ("takeoff_rate_rad_s", 9.0, [true, true]),
        ("close_delay_s", 0.1, [true, true]),
        ("close_time_s", 0.1, [true, true]),
        // More steps.
        ("close_time_s", 0.3, [false, true]),
        ("arm_lag_s", 0.05, [false, true]),
        ("open_lead_s", 0.15, [true, false]),
        ("arm_tuck", 0.5, [false, false]),
        ("takeoff_openness", 0.1, [false, false]),
        ("boot_mass_kg", 0.1, [false, false]),
    ] {
        assert_eq!(
            same_tables(start, &changed(start, key, value)),
            same,
            "{key}"
        );
    }
    let other = Scenario {
        turning: turns_aloft::physics::plan::Turning::Clockwise,
        ..start.clone()
    };
    assert_eq!(same_tables(start, &other), [false, false]);
}

proptest! {
    #![proptest_config(space::cases(64))]

    /// Any jump flown after any other two that differ from it in one number each: to the last bit as
    /// on its own.
    #[test]
    fn shared_or_not(
        scenario in space::scenario(),
        other in space::scenario(),
        keys in (0..Parameter::COUNT, 0..Parameter::COUNT),
    ) {
        let earlier = [keys.0, keys.1].map(|i| {
            let near = changed(&scenario, Parameter::ALL[i].key(), Parameter::ALL[i].get(&other));
            table(&near, &[])
        });
        let (alone, _) = scenario.fly_summary(&[]);
        let (shared, _) = scenario.fly_summary(&[&earlier[0], &earlier[1]]);
        prop_assert_eq!(alone, shared);
    }

    /// What keeps less of a flight says the same as the flight's own readout.
    #[test]
    fn a_summary_is_the_readout(scenario in space::scenario()) {
        let jump = scenario.fly();
        let (summary, whole) = (scenario.fly_summary(&[]).0, FlightSummary::of(&jump.readout));
        prop_assert!((summary.air_turns - whole.air_turns).abs() < 1e-11);
        prop_assert_eq!(summary.takeoff_rate_rad_s, whole.takeoff_rate_rad_s);
        prop_assert_eq!(summary.peak_rate_rad_s, whole.peak_rate_rad_s);
    }

    /// No jumper lies down on the way, so that turns can be counted from end to end.
    #[test]
    fn nobody_lies_down(scenario in space::scenario()) {
        for sample in &scenario.fly().flight.samples {
            prop_assert!(sample.attitude.axis.y > 0.0, "{sample:?}");
        }
    }
}
