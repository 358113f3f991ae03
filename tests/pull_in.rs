//! Arms that come in along the shoulder line: w = w0 I0 / I(t), exactly.
//!
//! Torque-free motion of a body that stays symmetric about a vertical plane through its shoulders
//! and moves nothing out of it: the joint motion has no angular momentum of its own, the vertical
//! stays a principal axis, and the whole flight reduces to the two-position pull-in of the
//! textbooks at every instant. Tolerance 1e-12: rounding only.

#[path = "support/given_states.rs"]
mod given_states;

use std::f64::consts::{FRAC_PI_2, TAU};

use glam::DVec3;

use turns_aloft::physics::body::{Body, BodySpec, Footwear, Segment};
use turns_aloft::physics::centroidal::CentroidalState;
use turns_aloft::physics::flight::{Flight, Launch, Spin};
use turns_aloft::physics::inverse::Loads;
use turns_aloft::physics::joint_motion::JointState;
use turns_aloft::physics::minimum_jerk::{minimum_jerk, minimum_jerk_acceleration};
use turns_aloft::physics::posture::{Arm, Leg, Posture, STILL};
use turns_aloft::physics::readout::Readout;
use turns_aloft::physics::segments::SegmentTable;
use turns_aloft::physics::tree::Tree;
use turns_aloft::scenario::ground::Ground;

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
        footwear: Footwear::BAREFOOT,
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
fn states(body: &Body) -> Vec<CentroidalState> {
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
            CentroidalState::new(&tree, &posture(FRAC_PI_2 * (1.0 - part)), &rates)
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
    given_states::fly(
        body,
        given_states::closing_only(CLOSE_TIME_S),
        states,
        launch,
    )
}

#[test]
fn rate_follows_the_inertia_at_every_instant() {
    let flight = flight(Spin::Rate(8.0));
    let first = flight.takeoff();
    let mut least = f64::INFINITY;
    for sample in &flight.samples {
        let expected = 8.0 * first.inertia_kg_m2 / sample.inertia_kg_m2;
        assert!((sample.spin_rad_s / expected - 1.0).abs() < 1e-12);
        assert!(sample.tilt_rad() < 1e-12);
        least = least.min(sample.inertia_kg_m2);
    }
    // The arms did come in: with a kilogram in each hand by far more than a factor of three.
    assert!(first.inertia_kg_m2 / least > 3.0);
}

/// Both positions' inertias are those of the still body, so the end rate is the two-position
/// pull-in's: w2 = w1 I1 / I2, K2 = K1 I1 / I2, work L^2 / 2 (1/I2 - 1/I1).
#[test]
fn both_ends_are_the_two_position_pull_in() {
    let flight = flight(Spin::Rate(8.0));
    let r = Readout::new(&flight, Ground::Ice.stopping_time_s());
    let still = |elevation_rad| {
        CentroidalState::new(&Tree::new(&body()), &posture(elevation_rad), &STILL)
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
    let turns = Readout::new(&flight, Ground::Ice.stopping_time_s()).air_turns;
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
        assert_eq!(fast.samples.len(), slow.samples.len());
        for (a, b) in slow.samples.iter().zip(&fast.samples) {
            assert!((b.spin_rad_s / (times * a.spin_rad_s) - 1.0).abs() < 1e-12);
        }
        let peaks =
            [&slow, &fast].map(|f| Readout::new(f, Ground::Ice.stopping_time_s()).peak_rate_rad_s);
        assert!((peaks[1] / (times * peaks[0]) - 1.0).abs() < 1e-12);
    }
}

/// How the arms move in [`states`], some time after take-off.
fn joint_motion(t_s: f64) -> JointState {
    let (part, part_rate) = minimum_jerk(t_s, 0.0, CLOSE_TIME_S);
    let part_change = minimum_jerk_acceleration(t_s, 0.0, CLOSE_TIME_S);
    let both = |of: f64| {
        let mut joints = STILL;
        joints[Segment::RightUpperArm as usize] = DVec3::X * FRAC_PI_2 * of;
        joints[Segment::LeftUpperArm as usize] = DVec3::NEG_X * FRAC_PI_2 * of;
        joints
    };
    JointState {
        moving: (posture(FRAC_PI_2 * (1.0 - part)), both(part_rate)),
        accelerations: both(part_change),
    }
}

/// The force on the hand of an arm held out at a constant rate is m w^2 r with its own mass and what
/// it holds, arm's length from the axis; on the weight alone with its own.
#[test]
fn hands_are_held_on_their_circle() {
    let body = body();
    let hand = body.link(Segment::RightHand);
    let wrist_m = body.link(Segment::RightUpperArm).joint_m.z
        - body.link(Segment::RightForearm).joint_m.y
        - body.link(Segment::RightHand).joint_m.y;
    let tree = Tree::new(&body);
    let still = JointState {
        moving: (posture(FRAC_PI_2), STILL),
        accelerations: STILL,
    };
    let loads = Loads::new(&tree, &still, DVec3::Y * 8.0);
    let expected = hand.mass_kg * 64.0 * (wrist_m - hand.cm_m.y);
    for force in loads.hand_n() {
        assert!((force / expected - 1.0).abs() < 1e-12, "{force} {expected}");
    }
    for acceleration in loads.grip_m_s2() {
        let expected = 64.0 * (wrist_m - hand.end_m.y);
        assert!((acceleration / expected - 1.0).abs() < 1e-12);
    }
}

/// The torque at a shoulder while a straight arm comes down the shoulder line, by Lagrange's equation
/// and by the change of angular momentum.
///
/// The arm hangs at the angle f from a shoulder z0 off the axis; A, B are its moments about the shoulder
/// across and along itself, S its mass times the distance of its CM. Its moment about the axis is
/// I(f) = m z0^2 + 2 z0 S sin f + A sin^2 f + B cos^2 f. About the shoulder line's normal:
/// A f'' - w^2 I'(f) / 2 + S sin f a, where a is the shoulder's acceleration upwards; both arms keep
/// the CM of the whole in free fall, M a = -2 S (sin f)' f' - 2 S sin f f'' = -2 S (sin f f'' + cos f f'^2).
/// About the vertical: (I w)' - z0 (m w' z + 2 m w z') with m z = m z0 + S sin f.
#[test]
fn shoulder_torque_of_the_pull_in() {
    let body = body();
    let tree = Tree::new(&body);
    let arm = [
        Segment::RightUpperArm,
        Segment::RightForearm,
        Segment::RightHand,
    ];
    let (mut along_m, mut mass, mut first, mut across, mut long) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for (i, segment) in arm.into_iter().enumerate() {
        let link = body.link(segment);
        if i > 0 {
            along_m -= link.joint_m.y;
        }
        let at_m = along_m - link.cm_m.y;
        mass += link.mass_kg;
        first += link.mass_kg * at_m;
        across += link.inertia_kg_m2.x_axis.x + link.mass_kg * at_m * at_m;
        long += link.inertia_kg_m2.y_axis.y;
    }
    // What swings about the normal (x) and what circles with raised arms (z) differ a little.
    let raised = arm.iter().fold(across, |sum, &segment| {
        let inertia = body.link(segment).inertia_kg_m2;
        sum + inertia.z_axis.z - inertia.x_axis.x
    });
    let z0 = body.link(Segment::RightUpperArm).joint_m.z;
    for i in 0..=20 {
        let t_s = CLOSE_TIME_S * f64::from(i) / 20.0;
        let joints = joint_motion(t_s);
        let state = CentroidalState::new(&tree, &joints.moving.0, &joints.moving.1);
        let h = 8.0
            * CentroidalState::new(&tree, &posture(FRAC_PI_2), &STILL)
                .inertia_kg_m2
                .y_axis
                .y;
        let inertia = state.inertia_kg_m2.y_axis.y;
        let w = h / inertia;
        let loads = Loads::new(&tree, &joints, DVec3::Y * w);

        let (part, part_rate) = minimum_jerk(t_s, 0.0, CLOSE_TIME_S);
        let f = FRAC_PI_2 * (1.0 - part);
        let f1 = -FRAC_PI_2 * part_rate;
        let f2 = -FRAC_PI_2 * minimum_jerk_acceleration(t_s, 0.0, CLOSE_TIME_S);
        let (sin, cos) = libm::sincos(f);
        let own = mass * z0 * z0 + 2.0 * z0 * first * sin + raised * sin * sin + long * cos * cos;
        let slope = 2.0 * z0 * first * cos + 2.0 * (raised - long) * sin * cos;
        let a = -2.0 * first * (sin * f2 + cos * f1 * f1) / body.mass_kg;
        // About -x the right arm rises.
        let swing = across * f2 - 0.5 * w * w * slope + first * sin * a;
        let w1 = -h * 2.0 * slope * f1 / (inertia * inertia);
        let out = mass * z0 + first * sin;
        let round = own * w1 + slope * f1 * w - z0 * (w1 * out + 2.0 * w * first * cos * f1);
        let torque = DVec3::from(loads.on(Segment::RightUpperArm).torque_n_m);
        let size = 1.0 + torque.length();
        assert!((-torque.x - swing).abs() < 1e-11 * size, "{torque} {swing}");
        assert!((torque.y - round).abs() < 1e-11 * size, "{torque} {round}");
        let power = loads.on(Segment::RightUpperArm).power_w;
        assert!((power - swing * f1).abs() < 1e-10 * (1.0 + power.abs()));
        assert!((loads.pelvis_rad_s2 - DVec3::Y * w1).length() < 1e-10 * (1.0 + w1.abs()));
        assert!((loads.pelvis_m_s2 - DVec3::Y * a).length() < 1e-11 * (1.0 + a.abs()));
    }
}
