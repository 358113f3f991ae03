//! The turns are those of the body: found again from its attitudes, and from its rate.

use std::f64::consts::{PI, TAU};

use glam::{DMat3, DVec3};
use proptest::prelude::*;

use crate::space;
use turns_aloft::physics::flight::FlightSample;

/// Heading of the pelvis's right-left axis, anticlockwise from above, rad.
fn heading(sample: &FlightSample) -> f64 {
    let right = DMat3::from_quat(sample.orientation()).z_axis;
    libm::atan2(right.x, right.z)
}

/// How fast that heading turns: u' = w x u, then the derivative of the arc tangent.
fn heading_rate(sample: &FlightSample) -> f64 {
    let u: DVec3 = DMat3::from_quat(sample.orientation()).z_axis;
    let du = sample.rate_rad_s().cross(u);
    (u.z * du.x - u.x * du.z) / (u.x * u.x + u.z * u.z)
}

proptest! {
    #![proptest_config(space::cases(128))]

    /// Unwrapped here in steps of half a millisecond, in which no admissible body turns half
    /// round. Rounding only.
    #[test]
    fn turns_are_the_unwrapped_heading(scenario in space::scenario()) {
        let jump = scenario.fly();
        let flight = &jump.flight;
        let steps = libm::ceil(flight.touchdown_s / 5e-4) as usize;
        let mut turned = 0.0;
        let mut last = heading(flight.takeoff());
        for i in 1..=steps {
            let now = heading(&flight.at(flight.touchdown_s * i as f64 / steps as f64));
            let step = (now - last + PI).rem_euclid(TAU) - PI;
            prop_assert!(step.abs() < 0.5 * PI);
            turned += step;
            last = now;
        }
        let turns = scenario.turning.sign() * turned / TAU;
        prop_assert!((turns - jump.readout.air_turns).abs() < 1e-9);
    }

    /// The integral of the heading's rate over the flight, by Simpson's rule over every step. The
    /// rate wobbles with the body, so 2e-5 of a turn.
    #[test]
    fn turns_are_the_integral_of_the_rate(scenario in space::scenario()) {
        let jump = scenario.fly();
        let turned: f64 = jump
            .flight
            .samples
            .windows(2)
            .map(|pair| {
                let step_s = pair[1].t_s - pair[0].t_s;
                // Four panels a step keep the rule's own error below the tolerance.
                let rate = |i: usize| {
                    heading_rate(&jump.flight.at(pair[0].t_s + step_s * i as f64 / 8.0))
                };
                let sum = (0..4).map(|i| rate(2 * i) + 4.0 * rate(2 * i + 1) + rate(2 * i + 2));
                sum.sum::<f64>() * step_s / 24.0
            })
            .sum();
        let turns = scenario.turning.sign() * turned / TAU;
        prop_assert!((turns - jump.readout.air_turns).abs() < 2e-5);
    }

    /// Turns in all are those in the air and those on the ice; what is missing follows from them.
    #[test]
    fn the_tally_adds_up(scenario in space::scenario()) {
        let jump = scenario.fly();
        let turns = jump.readout.air_turns + scenario.pre_rotation_turns;
        prop_assert!((jump.turns - turns).abs() < 1e-14 * turns.abs().max(1.0));
        if let Some(owed) = jump.owed {
            let short_deg = 360.0 * (owed.turns - turns);
            prop_assert!((owed.shortfall_deg - short_deg).abs() < 1e-9);
            // More than a quarter turn too far is over-rotated (common practice, no source).
            let over_deg = (short_deg < -90.0).then_some(-owed.shortfall_deg);
            prop_assert_eq!(owed.over_rotated_deg, over_deg);
            // The hips face what the turns leave over of whole ones. The turns are summed up step
            // by step, the heading is that of the last attitude alone.
            let past_deg = owed.landing_facing_deg;
            prop_assert!(-180.0 < past_deg && past_deg <= 180.0);
            let off = (past_deg + short_deg + 180.0).rem_euclid(360.0) - 180.0;
            prop_assert!(off.abs() < 1e-6, "{} {}", past_deg, short_deg);
        }
        let mean = TAU * jump.readout.air_turns / jump.readout.hang_time_s;
        prop_assert!((jump.readout.mean_rate_rad_s - mean).abs() < 1e-9 * mean.abs().max(1.0));
    }
}
