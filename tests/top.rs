//! A body that keeps its posture is a torque-free rigid body.
//!
//! The symmetric top has a closed form (Goldstein, Classical Mechanics, section 5.6; Landau &
//! Lifshitz, Mechanics, section 33): its axis goes round h at the rate h / I_t at a constant angle,
//! and the body turns about its own axis meanwhile. For the asymmetric top the reference is an
//! independent solution of Euler's equations and the quaternion's kinematics, both written out
//! here in plain components, by the classical Runge-Kutta method in steps of about 40 microseconds:
//! a hundredth of a flight's own, with an error far below the tolerances (tested).

#[path = "support/given_states.rs"]
mod given_states;
#[path = "support/motionless_state.rs"]
mod motionless_state;

use std::f64::consts::TAU;

use glam::{DMat3, DQuat, DVec3};

use turns_aloft::physics::attitude::Attitude;
use turns_aloft::physics::body::Body;
use turns_aloft::physics::flight::{Flight, Launch, Spin};
use turns_aloft::physics::integrate;
use turns_aloft::physics::mass_properties::RateFromMomentum;
use turns_aloft::physics::rotation::{about, exp, log};
use turns_aloft::scenario::{Scenario, starts};

/// Moments of a body much like a tight jumper, the same about both axes across, kg m2.
const ACROSS: f64 = 8.0;
const ALONG: f64 = 0.6;
const H: DVec3 = DVec3::new(0.0, 18.0, 0.0);

/// The attitude after `t_s` from `start`, in closed form.
fn symmetric_top(start: DQuat, h: DVec3, t_s: f64) -> DQuat {
    let along = (start.conjugate() * h).y;
    let own_rate = along * (1.0 / ALONG - 1.0 / ACROSS);
    exp(h * (t_s / ACROSS)) * start * about(DVec3::Y, own_rate * t_s)
}

/// The same attitude by the product's integrator in even steps.
fn stepped(start: DQuat, moments: DVec3, h: f64, t_s: f64, steps: usize) -> DQuat {
    let rate_from_momentum = RateFromMomentum::from(&motionless_state::motionless(moments));
    (0..steps)
        .fold(Attitude::of(start), |attitude, _| {
            integrate::step(attitude, h, t_s / steps as f64, [&rate_from_momentum; 3])
        })
        .orientation()
}

fn angle_between(a: DQuat, b: DQuat) -> f64 {
    log(a.conjugate() * b).length()
}

/// Through one second and nearly five turns, tilted by 0.3 rad: the step that a flight takes
/// leaves 1e-6 rad, and a tenth of it ten thousand times less, as a fourth-order method must.
#[test]
fn the_integrator_meets_the_symmetric_top() {
    let moments = DVec3::new(ACROSS, ALONG, ACROSS);
    let start = about(DVec3::X, 0.3) * about(DVec3::Y, 0.7);
    let exact = symmetric_top(start, H, 1.0);
    let error = |steps| angle_between(stepped(start, moments, H.y, 1.0, steps), exact);
    assert!(error(250) < 1e-6, "{}", error(250));
    assert!(error(2500) < 1e-10, "{}", error(2500));
    let order = libm::log2(error(125) / error(250));
    assert!((3.7..4.5).contains(&order), "{order}");
}

/// A whole flight of a made-up symmetric body that leans by 0.25 rad: constant tilt, and its axis
/// goes round the vertical at h / I_t.
#[test]
fn a_flight_meets_the_symmetric_top() {
    let body = Body::new(starts::all()[0].scenario.body_spec());
    let state = motionless_state::motionless(DVec3::new(ACROSS, ALONG, ACROSS));
    let launch = Launch {
        spin: Spin::AngularMomentum(H.y),
        jump_height_m: 0.6,
        lean_rad: 0.25,
        heading_rad: 1.0,
    };
    let flight = given_states::fly(
        body,
        given_states::closing_only(0.1),
        vec![state; 41],
        launch,
    );
    let start = flight.takeoff().orientation();
    let azimuth = |axis: DVec3| libm::atan2(axis.x, axis.z);
    for sample in &flight.samples {
        let exact = symmetric_top(start, H, sample.t_s);
        assert!(angle_between(sample.orientation(), exact) < 1e-6);
        assert!((sample.tilt_rad() - 0.25).abs() < 1e-7);
        let gone = azimuth(sample.long_axis()) - azimuth(flight.takeoff().long_axis());
        let expected = H.y / ACROSS * sample.t_s;
        let off = (gone - expected).rem_euclid(TAU);
        assert!(off.min(TAU - off) < 1e-6, "{gone} {expected}");
    }
}

/// Body-axes rate and quaternion (w, x, y, z).
type State = [f64; 7];

/// Euler's equations I w' = I w x w and q' = q (0, w) / 2, in body axes.
fn slope(inertia: DMat3, y: State) -> State {
    let rate = DVec3::new(y[0], y[1], y[2]);
    let turning = inertia.inverse() * (inertia * rate).cross(rate);
    let (qw, q) = (y[3], DVec3::new(y[4], y[5], y[6]));
    let vector = (rate * qw + q.cross(rate)) * 0.5;
    [
        turning.x,
        turning.y,
        turning.z,
        -0.5 * q.dot(rate),
        vector.x,
        vector.y,
        vector.z,
    ]
}

fn runge_kutta(inertia: DMat3, start: State, end_s: f64, steps: usize) -> State {
    let h = end_s / steps as f64;
    let along = |y: State, k: State, h: f64| std::array::from_fn(|i| y[i] + h * k[i]);
    (0..steps).fold(start, |y, _| {
        let k1 = slope(inertia, y);
        let k2 = slope(inertia, along(y, k1, 0.5 * h));
        let k3 = slope(inertia, along(y, k2, 0.5 * h));
        let k4 = slope(inertia, along(y, k3, h));
        std::array::from_fn(|i| y[i] + h / 6.0 * (k1[i] + 2.0 * (k2[i] + k3[i]) + k4[i]))
    })
}

/// A real body that keeps its take-off posture: arms and one leg out, leaning, so that nothing
/// about it is symmetric.
fn rigid_flight(lean_rad: f64) -> Flight {
    let scenario = Scenario {
        arm_tuck: 0.0,
        leg_tuck: 0.0,
        open_lead_s: 0.0,
        takeoff_openness: 0.7,
        takeoff_rate_rad_s: 14.0,
        jump_height_m: 0.8,
        lean_rad,
        ..starts::named("crooked-takeoff")
            .expect("a starting point")
            .scenario
            .clone()
    };
    Flight::clone(&scenario.fly().flight)
}

/// The reference's attitude at touch-down.
fn reference(flight: &Flight, steps: usize) -> DQuat {
    let inertia = flight.table.takeoff().state.inertia_kg_m2;
    let q = flight.takeoff().orientation();
    let rate = inertia.inverse() * (q.conjugate() * flight.h_kg_m2_s);
    let start = [rate.x, rate.y, rate.z, q.w, q.x, q.y, q.z];
    let end = runge_kutta(inertia, start, flight.touchdown_s, steps);
    DQuat::from_xyzw(end[4], end[5], end[6], end[3]).normalize()
}

/// A whole flight of a real body without symmetry: the same attitude at touch-down as the
/// reference, to the 1e-6 rad that a flight's step leaves.
#[test]
fn a_rigid_posture_meets_the_asymmetric_top() {
    for lean_rad in [-0.3, 0.1, 0.2, 0.35] {
        let flight = rigid_flight(lean_rad);
        let exact = reference(&flight, 20_000);
        assert!(angle_between(exact, reference(&flight, 10_000)) < 1e-10);
        let error = angle_between(flight.touchdown().orientation(), exact);
        assert!(error < 1e-6, "{lean_rad}: {error}");
        // Not by standing still: it wobbled, and went round more than once.
        assert!(flight.touchdown().turned_rad > TAU);
        let tilts = flight.samples.iter().map(|m| m.tilt_rad());
        let most = tilts.clone().fold(0.0, f64::max);
        let least = tilts.fold(f64::INFINITY, f64::min);
        assert!(most - least > 5e-4, "{lean_rad}: {least} {most}");
    }
}

/// No muscle works in a rigid posture: the energy stays, to the step's error.
#[test]
fn a_rigid_posture_keeps_its_energy() {
    for lean_rad in [-0.3, 0.1, 0.2, 0.35] {
        let flight = rigid_flight(lean_rad);
        let first = flight.takeoff().energy_j;
        for sample in &flight.samples {
            assert!((sample.energy_j / first - 1.0).abs() < 1e-8);
        }
    }
}
