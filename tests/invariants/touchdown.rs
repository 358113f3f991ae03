//! Touch-down is the first moment at which either foot is back on the ice.

use proptest::prelude::*;

use crate::space;
use turns_aloft::physics::body::Segment;
use turns_aloft::physics::flight::Flight;

/// Lowest end of either sole or blade, from the pose's own points, m.
fn lowest(flight: &Flight, t_s: f64) -> f64 {
    let pose = flight.pose_at(t_s);
    let mut lowest_m = f64::INFINITY;
    for foot in [Segment::LeftFoot, Segment::RightFoot] {
        for end in flight.table.body.sole_m {
            lowest_m = lowest_m.min(pose.point_m(foot, end).y);
        }
    }
    lowest_m
}

proptest! {
    #![proptest_config(space::cases(256))]

    /// The ice is left with a foot on it, and met with a foot on it: 1 nm.
    #[test]
    fn the_ice_is_left_and_met_with_a_foot_on_it(scenario in space::scenario()) {
        let flight = scenario.fly().flight;
        let met = lowest(&flight, flight.touchdown_s);
        prop_assert!(lowest(&flight, 0.0).abs() < 1e-12);
        prop_assert!(met.abs() < 1e-9, "{:e} m at touch-down", met);
        prop_assert!((flight.touchdown().lowest_m - met).abs() < 1e-12);
        prop_assert_eq!(flight.touchdown().t_s, flight.touchdown_s);
    }

    /// No foot is in the ice before: at no step, nor at times between. 1 um.
    #[test]
    fn no_foot_is_in_the_ice_before(
        scenario in space::scenario(),
        shares in prop::array::uniform8(0.0..=1.0_f64),
    ) {
        let flight = scenario.fly().flight;
        for sample in &flight.samples {
            prop_assert!(sample.lowest_m > -1e-6, "{} m at {} s", sample.lowest_m, sample.t_s);
        }
        for share in shares {
            let t_s = share * flight.touchdown_s;
            let at = lowest(&flight, t_s);
            prop_assert!(at > -1e-6, "{} m at {} s", at, t_s);
        }
    }

    /// The flight's steps go from take-off to touch-down and never back.
    #[test]
    fn time_goes_on(scenario in space::scenario()) {
        let flight = scenario.fly().flight;
        prop_assert_eq!(flight.takeoff().t_s, 0.0);
        for pair in flight.samples.windows(2) {
            prop_assert!(pair[0].t_s < pair[1].t_s);
        }
        prop_assert!(flight.touchdown().t_s <= flight.touchdown_s);
    }
}
