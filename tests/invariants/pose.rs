//! Velocities and rates of a pose are the derivatives of its positions and attitudes.
//!
//! Conservation alone would not notice a velocity that is wrong in the same way everywhere.

use std::sync::Arc;

use proptest::prelude::*;

use crate::space;
use turns_aloft::physics::body::{Body, Segment};
use turns_aloft::physics::flight::Flight;
use turns_aloft::physics::plan::Plan;
use turns_aloft::physics::rotation::log;
use turns_aloft::physics::table::{PlanTable, Resolution};
use turns_aloft::scenario::Scenario;

/// Flown in steps so short that between two of them the attitude is exact as well.
fn finely_flown(scenario: &Scenario) -> Flight {
    let resolution = Resolution {
        longest_step_s: 2.5e-4,
        steps_per_blend: 400,
    };
    let body = Body::new(scenario.body_spec());
    let plan = Plan::new(scenario.plan_spec());
    Flight::new(
        Arc::new(PlanTable::new(body, plan, resolution)),
        scenario.launch(),
    )
}

proptest! {
    #![proptest_config(space::cases(48))]

    /// Central differences over 2 x 10 microseconds. Their own error is e^2/6 times the third
    /// derivative: the fastest admissible limbs turn at some 300 rad/s within a blend of 0.05 s,
    /// which gives 1e-4 of the speed; typical bodies do a hundred times better.
    #[test]
    fn velocities_are_derivatives(
        scenario in space::scenario(),
        share in 0.01..=0.99_f64,
    ) {
        let flight = finely_flown(&scenario);
        const E: f64 = 1e-5;
        let t_s = share * flight.touchdown_s;
        let [before, pose, after] = [t_s - E, t_s, t_s + E].map(|t_s| flight.pose_at(t_s));
        for segment in Segment::ALL {
            let point = flight.table.body.link(segment).end_m;
            let velocity = pose.velocity_m_s(segment, point);
            let moved = after.point_m(segment, point) - before.point_m(segment, point);
            let differed = moved / (2.0 * E);
            let off = (velocity - differed).length();
            prop_assert!(off < 1e-4 * (1.0 + velocity.length()), "{segment:?}: {off:e}");

            let rate = pose.segment_rate_rad_s(segment);
            let turned = log(after.orientation(segment) * before.orientation(segment).conjugate());
            let off = (rate - turned / (2.0 * E)).length();
            prop_assert!(off < 1e-4 * (1.0 + rate.length()), "{segment:?}: {off:e}");
        }
    }

    /// A body hangs together: a segment's joint is the same point of its parent, wherever it is.
    #[test]
    fn joints_hold_together(
        scenario in space::scenario(),
        share in 0.0..=1.0_f64,
    ) {
        let flight = scenario.fly().flight;
        let pose = flight.pose_at(share * flight.touchdown_s);
        for segment in Segment::ALL {
            let Some(parent) = segment.parent() else { continue };
            let joint = flight.table.body.link(segment).joint_m;
            let zero = glam::DVec3::ZERO;
            let apart = pose.point_m(segment, zero) - pose.point_m(parent, joint);
            prop_assert!(apart.length() < 1e-13);
            let sliding = pose.velocity_m_s(segment, zero) - pose.velocity_m_s(parent, joint);
            let speed = pose.velocity_m_s(segment, zero).length();
            prop_assert!(sliding.length() < 1e-12 * (1.0 + speed));
        }
    }
}
