//! Turning the other way mirrors the whole jump: no readout but the sign of h changes.

use proptest::prelude::*;

use crate::space;
use turns_aloft::describe::report::flight::Report;
use turns_aloft::physics::plan::Turning;
use turns_aloft::scenario::Scenario;

fn report(scenario: &Scenario, turning: Turning) -> serde_json::Map<String, serde_json::Value> {
    let scenario = Scenario {
        turning,
        ..scenario.clone()
    };
    let report = Report::new(&scenario, &scenario.fly());
    match serde_json::to_value(report) {
        Ok(serde_json::Value::Object(map)) => map,
        other => panic!("a report is an object, not {other:?}"),
    }
}

proptest! {
    #![proptest_config(space::cases(200))]

    /// Every number of the report. Both flights do the same arithmetic on mirrored numbers, so
    /// they differ by rounding, and by when a foot is within a nanometre of the ice: 1e-6.
    #[test]
    fn only_the_sign_of_h_changes(scenario in space::scenario()) {
        let left = report(&scenario, Turning::Anticlockwise);
        let right = report(&scenario, Turning::Clockwise);
        prop_assert_eq!(left.len(), right.len());
        for (key, one) in &left {
            let other = &right[key];
            match key.as_str() {
                "turning" => prop_assert_ne!(one, other),
                "angular_momentum_kg_m2_s" => {
                    let [a, b] = [one, other].map(|h| h[1].as_f64().expect("a number"));
                    prop_assert!(a > 0.0);
                    prop_assert!((a + b).abs() <= 1e-12 * a);
                }
                "landing_load_bw" | "landing_torque_n_m" => {
                    for i in 0..2 {
                        let [a, b] = [one, other].map(|h| h[i].as_f64().expect("a number"));
                        prop_assert!((a - b).abs() <= 1e-6 * (1.0 + a.abs()));
                    }
                }
                "beyond_seen" => {
                    let of = |list: &serde_json::Value| {
                        let of_one = |one: &serde_json::Value| {
                            (one["key"].to_string(), one["value"].as_f64().expect("a number"))
                        };
                        list.as_array().expect("a list").iter().map(of_one).collect::<Vec<_>>()
                    };
                    for (a, b) in of(one).iter().zip(&of(other)) {
                        prop_assert_eq!(&a.0, &b.0);
                        prop_assert!((a.1 - b.1).abs() <= 1e-6 * (1.0 + a.1.abs()));
                    }
                }
                // The opposite way is 180 degrees, and just as well -180.
                "landing_facing_deg" if one.is_number() && other.is_number() => {
                    let [a, b] = [one, other].map(|deg| deg.as_f64().expect("a number"));
                    let off = (a - b + 180.0).rem_euclid(360.0) - 180.0;
                    prop_assert!(off.abs() <= 1e-6 * 3600.0, "{} {}", a, b);
                }
                _ => match (one.as_f64(), other.as_f64()) {
                    (Some(a), Some(b)) => {
                        // A shortfall of some degrees is a difference of thousands of degrees.
                        let degrees = ["shortfall_deg", "over_rotated_deg"];
                        let scale = if degrees.contains(&key.as_str()) { 3600.0 } else { 1.0 };
                        prop_assert!(
                            (a - b).abs() <= 1e-6 * (scale + a.abs()),
                            "{}: {} {}", key, a, b
                        );
                    }
                    _ => prop_assert_eq!(one, other, "{}", key),
                },
            }
        }
    }

    /// The body itself is the mirror image at every moment: the same height and tilt.
    #[test]
    fn the_flight_is_the_mirror_image(scenario in space::scenario(), share in 0.0..=1.0_f64) {
        let fly = |turning| Scenario { turning, ..scenario.clone() }.fly().flight;
        let (left, right) = (fly(Turning::Anticlockwise), fly(Turning::Clockwise));
        prop_assert_eq!(left.samples.len(), right.samples.len());
        let t_s = share * left.touchdown_s;
        let (a, b) = (left.at(t_s), right.at(t_s));
        prop_assert!((a.turned_rad - b.turned_rad).abs() < 1e-6);
        prop_assert!((a.tilt_rad() - b.tilt_rad()).abs() < 1e-6);
        prop_assert!((a.lowest_m - b.lowest_m).abs() < 1e-6);
    }
}
