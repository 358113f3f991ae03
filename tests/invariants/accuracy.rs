//! How far the computation is from its own limit, and that it is a number at all.

use std::sync::Arc;

use proptest::prelude::*;

use crate::space;
use turns_aloft::describe::report::flight::Report;
use turns_aloft::physics::body::Body;
use turns_aloft::physics::flight::Flight;
use turns_aloft::physics::plan::Plan;
use turns_aloft::physics::table::PlanTable;

/// Every number in a JSON value; `null` where a float was not finite.
fn numbers(value: &serde_json::Value, key: &str, found: &mut Vec<(String, Option<f64>)>) {
    match value {
        serde_json::Value::Object(map) => {
            for (key, value) in map {
                numbers(value, key, found);
            }
        }
        serde_json::Value::Array(list) => {
            for value in list {
                numbers(value, key, found);
            }
        }
        serde_json::Value::Number(number) => found.push((key.to_owned(), number.as_f64())),
        serde_json::Value::Null => found.push((key.to_owned(), None)),
        serde_json::Value::Bool(_) | serde_json::Value::String(_) => {}
    }
}

proptest! {
    #![proptest_config(space::cases(256))]

    /// The model's requirement: halving the step changes the turns by less than 1e-5.
    #[test]
    fn halving_the_step_does_not_change_the_turns(scenario in space::scenario()) {
        let standard = scenario.fly().flight;
        let halved = Flight::new(
            Arc::new(PlanTable::new(
                Body::new(scenario.body_spec()),
                Plan::new(scenario.plan_spec()),
                standard.table.resolution.halved(),
            )),
            scenario.launch(),
        );
        let [a, b] = [&*standard, &halved].map(|f| f.touchdown().air_turns());
        prop_assert!((a - b).abs() < 1e-5, "{:e}", a - b);
        prop_assert!((standard.touchdown_s - halved.touchdown_s).abs() < 1e-5);
    }

    /// Nothing is infinite or NaN, in no readout and at no moment. Only what a free jump owes, how
    /// off-ice jumps are called and by how much others are over-rotated is not there.
    #[test]
    fn everything_is_finite(scenario in space::scenario(), share in -0.5..=1.5_f64) {
        let jump = scenario.fly();
        let report = serde_json::to_value(Report::new(&scenario, &jump)).expect("numbers and words");
        let mut found = Vec::new();
        numbers(&report, "", &mut found);
        prop_assert!(found.len() > 25);
        for (key, number) in found {
            let absent = [
                "turns_owed",
                "shortfall_deg",
                "over_rotated_deg",
                "landing_facing_deg",
                "call",
            ]
            .contains(&key.as_str());
            prop_assert!(number.is_some_and(f64::is_finite) || absent && number.is_none(), "{}", key);
        }
        let sample = jump.flight.at(share * jump.flight.touchdown_s);
        for sample in jump.flight.samples.iter().chain([&sample]) {
            prop_assert!(sample.orientation().is_finite() && sample.orientation().is_normalized());
            prop_assert!(sample.rate_rad_s().is_finite() && sample.long_axis().is_finite());
            for number in [
                sample.t_s,
                sample.turned_rad,
                sample.inertia_kg_m2,
                sample.energy_j,
                sample.lowest_m,
                sample.tilt_rad(),
            ] {
                prop_assert!(number.is_finite());
            }
            prop_assert!(sample.inertia_kg_m2 > 0.0 && sample.energy_j > 0.0);
        }
    }

    /// The readout's extremes are those of the flight: a look between two steps finds hardly more.
    /// Where a blend of 0.05 s peaks, half a step is 2 % of it and a parabola is cut by 0.1 %; the
    /// rate of a slow, open body and of one that wobbles peaks more sharply: of a hundred thousand
    /// looks at random jumps 30 found more than 0.05 % of the rate, and none 1.2 %.
    #[test]
    fn extremes_are_not_missed(scenario in space::scenario(), share in 0.0..=1.0_f64) {
        let jump = scenario.fly();
        let sample = jump.flight.at(share * jump.flight.touchdown_s);
        let r = &jump.readout;
        let rate = scenario.turning.sign() * sample.spin_rad_s;
        prop_assert!(rate <= r.peak_rate_rad_s + 1.5e-2 * r.peak_rate_rad_s.abs());
        prop_assert!(sample.inertia_kg_m2 >= r.inertia_least_kg_m2 * 0.999);
        prop_assert!(sample.energy_j <= r.energy_peak_j * 1.01);
        prop_assert!(sample.tilt_rad() <= r.tilt_peak_rad + 3e-3);
    }
}
