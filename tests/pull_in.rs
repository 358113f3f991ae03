//! Arms that come in along the shoulder line: w = w0 I0 / I(t), exactly.
//!
//! Torque-free motion of a body that stays symmetric about a vertical plane through its shoulders
//! and moves nothing out of it: the joint motion has no angular momentum of its own, the vertical
//! stays a principal axis, and the whole flight reduces to the two-position pull-in of the
//! textbooks at every instant. Tolerance 1e-12: rounding only.

#[path = "support/made.rs"]
mod made;

use std::f64::consts::{FRAC_PI_2, TAU};

use glam::DVec3;
use turns_aloft::physics::blend::minimum_jerk;
use turns_aloft::physics::body::{Body, BodySpec, Footwear, Segment};
use turns_aloft::physics::flight::{Flight, Launch, Spin};
use turns_aloft::physics::landing::Ground;
use turns_aloft::physics::momentum::MassState;
use turns_aloft::physics::posture::{Arm, Leg, Posture, STILL};
use turns_aloft::physics::readout::Readout;
use turns_aloft::physics::segments::SegmentTable;
use turns_aloft::physics::tree::Tree;

const CLOSE_TIME_S: f64 = 0.2;
const STEPS: usize = 60;

/// A body with a kilogram in each hand and its feet's mass centred under the ankles.
fn body() -> Body {
    let mut body = Body::new(BodySpec {
        table: SegmentTable::Female,
        stature_m: 1.60,
        body_mass_kg: 50.0,
        hand_mass_kg: 1.0,
        boot_mass_kg: 0.0,
        footwear: Footwear::Barefoot,
        core_inertia: 1.0,
    });
    for foot in [Segment::LeftFoot, Segment::RightFoot] {
        body.links[foot as usize].cm_m.x = 0.0;
    }
    body
}

/// Straight arms raised sideways by this angle.
fn posture(elevation_rad: f64) -> Posture {
    let arm = Arm {
        plane_rad: 0.0,
        elevation_rad,
        axial_rad: 0.0,
        elbow_flexion_rad: 0.0,
    };
    let leg = Leg {
        hip_flexion_rad: 0.0,
        hip_abduction_rad: 0.0,
        knee_flexion_rad: 0.0,
        plantarflexion_rad: 0.0,
    };
    Posture::new(arm, arm, leg, leg)
}

/// Arms straight out at take-off, down at the sides 0.2 s later: two states a step.
fn states(body: &Body) -> Vec<MassState> {
    let tree = Tree::new(body);
    (0..=2 * STEPS)
        .map(|i| {
            let t_s = CLOSE_TIME_S * i as f64 / (2 * STEPS) as f64;
            let (part, part_rate) = minimum_jerk(t_s, 0.0, CLOSE_TIME_S);
            let mut rates = STILL;
            // The right arm comes down about +x, the left one about -x.
            let rate = DVec3::X * FRAC_PI_2 * part_rate;
            rates[Segment::RightUpperArm as usize] = rate;
            rates[Segment::LeftUpperArm as usize] = -rate;
            MassState::new(&tree, &posture(FRAC_PI_2 * (1.0 - part)), &rates)
        })
        .collect()
}

fn flight(spin: Spin) -> Flight {
    let body = body();
    let states = states(&body);
    let launch = Launch {
        spin,
        jump_height_m: 0.4,
        lean_rad: 0.0,
        heading_rad: 0.0,
    };
    made::fly(body, made::closing_only(CLOSE_TIME_S), states, launch)
}

#[test]
fn rate_follows_the_inertia_at_every_instant() {
    let flight = flight(Spin::Rate(8.0));
    let first = flight.takeoff();
    let mut least = f64::INFINITY;
    for moment in &flight.moments {
        let expected = 8.0 * first.inertia_kg_m2 / moment.inertia_kg_m2;
        assert!((moment.spin_rad_s / expected - 1.0).abs() < 1e-12);
        assert!(moment.tilt_rad() < 1e-12);
        least = least.min(moment.inertia_kg_m2);
    }
    // The arms did come in: with a kilogram in each hand by far more than a factor of three.
    assert!(first.inertia_kg_m2 / least > 3.0);
}

/// Both positions' inertias are those of the still body, so the end rate is the two-position
/// pull-in's: w2 = w1 I1 / I2, K2 = K1 I1 / I2, work L^2 / 2 (1/I2 - 1/I1).
#[test]
fn both_ends_are_the_two_position_pull_in() {
    let flight = flight(Spin::Rate(8.0));
    let r = Readout::new(&flight, Ground::Ice);
    let still = |elevation_rad| {
        MassState::new(&Tree::new(&body()), &posture(elevation_rad), &STILL)
            .inertia_kg_m2
            .y_axis
            .y
    };
    let (open, tight) = (still(FRAC_PI_2), still(0.0));
    let h = 8.0 * open;
    let last = flight.touchdown();
    assert!((r.angular_momentum_kg_m2_s.y / h - 1.0).abs() < 1e-12);
    assert!((r.touchdown_rate_rad_s / (h / tight) - 1.0).abs() < 1e-12);
    assert!((r.inertia_takeoff_kg_m2 / open - 1.0).abs() < 1e-12);
    assert!((r.inertia_least_kg_m2 / tight - 1.0).abs() < 1e-12);
    let work = 0.5 * h * h * (1.0 / tight - 1.0 / open);
    assert!(((last.energy_j - r.energy_takeoff_j) / work - 1.0).abs() < 1e-12);
    // Nothing opens: all of it is the closing's.
    assert!((r.closing_work_j / work - 1.0).abs() < 1e-12);
    assert_eq!(r.opening_work_j, 0.0);
}

/// Turns are the integral of h / I(t): by Simpson's rule over the closing, exact when held. The
/// integrator's fourth-order step is Simpson's rule here, so 1e-10.
#[test]
fn turns_are_the_integral_of_the_rate() {
    let flight = flight(Spin::Rate(8.0));
    let h = flight.h_kg_m2_s.y;
    let step_s = CLOSE_TIME_S / STEPS as f64;
    let states = states(&body());
    let inertia = |i: usize| states[i].inertia_kg_m2.y_axis.y;
    let closing: f64 = (0..STEPS)
        .map(|i| {
            let [a, b, c] = [2 * i, 2 * i + 1, 2 * i + 2].map(|i| h / inertia(i));
            step_s / 6.0 * (a + 4.0 * b + c)
        })
        .sum();
    let held = (flight.touchdown_s - CLOSE_TIME_S) * h / inertia(2 * STEPS);
    let turns = Readout::new(&flight, Ground::Ice).air_turns;
    assert!((turns - (closing + held) / TAU).abs() < 1e-10);
}

/// h settles everything: rates and peak grow in proportion to it, whichever way it is given.
#[test]
fn every_rate_is_in_proportion_to_h() {
    let slow = flight(Spin::Rate(3.0));
    let h = slow.h_kg_m2_s.y;
    let energy_j = slow.takeoff().energy_j;
    for (spin, times) in [
        (Spin::Rate(7.5), 2.5),
        (Spin::AngularMomentum(2.5 * h), 2.5),
        (Spin::Energy(6.25 * energy_j), 2.5),
        (Spin::AngularMomentum(h), 1.0),
    ] {
        let fast = flight(spin);
        assert_eq!(fast.moments.len(), slow.moments.len());
        for (a, b) in slow.moments.iter().zip(&fast.moments) {
            assert!((b.spin_rad_s / (times * a.spin_rad_s) - 1.0).abs() < 1e-12);
        }
        let peaks = [&slow, &fast].map(|f| Readout::new(f, Ground::Ice).peak_rate_rad_s);
        assert!((peaks[1] / (times * peaks[0]) - 1.0).abs() < 1e-12);
    }
}

/// The hand's pull is m w^2 r with its own mass and what it holds, arm's length from the axis.
#[test]
fn hands_pull_with_what_they_hold() {
    let flight = flight(Spin::Rate(8.0));
    let body = body();
    let hand = body.link(Segment::RightHand);
    let reach_m = body.link(Segment::RightUpperArm).joint_m.z
        - body.link(Segment::RightForearm).joint_m.y
        - body.link(Segment::RightHand).joint_m.y
        - hand.cm_m.y;
    let expected = hand.mass_kg * 64.0 * reach_m;
    for pull in flight.takeoff().hand_pull_n {
        assert!((pull / expected - 1.0).abs() < 1e-12, "{pull} {expected}");
    }
}
