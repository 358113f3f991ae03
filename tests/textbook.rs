//! Textbook problems, flown: the product's own flight and readout meet the published answers.
//!
//! Sources, by their sections: OpenStax, College Physics 2e (CP) and University Physics Volume 1
//! (UP); others are named where they are used. Tolerance 0.5 % unless said otherwise: it covers
//! g = 9.80 against 9.806 65 m/s2 and answers rounded to three figures.

#[path = "support/given_states.rs"]
mod given_states;
#[path = "support/motionless_state.rs"]
mod motionless_state;

use std::f64::consts::{PI, TAU};

use glam::{DMat3, DQuat, DVec3};

use turns_aloft::physics::GRAVITY_M_S2;
use turns_aloft::physics::body::{Body, Segment};
use turns_aloft::physics::centroidal::CentroidalState;
use turns_aloft::physics::flight::{Launch, Spin};
use turns_aloft::physics::inverse::Loads;
use turns_aloft::physics::joint_motion::JointState;
use turns_aloft::physics::posture::{Arm, Leg, Posture, STILL};
use turns_aloft::physics::readout::Readout;
use turns_aloft::physics::tree::Tree;
use turns_aloft::scenario::call::{Call, QUARTER_BAND_FROM_DEG};
use turns_aloft::scenario::ground::Ground;
use turns_aloft::scenario::starts;
use turns_aloft::scenario::units::RateUnit;

const SHARE: f64 = 0.005;

#[track_caller]
fn assert_near(found: f64, expected: f64) {
    assert!(
        (found - expected).abs() <= SHARE * expected.abs(),
        "{found} is not within 0.5 % of {expected}"
    );
}

/// A jump that leaves the ground with one moment of inertia about the vertical and has another
/// ever after: the limbs move in a thousandth of a second.
fn jump(takeoff_kg_m2: f64, air_kg_m2: f64, turns_per_s: f64, height_m: f64) -> Readout {
    const CLOSE_TIME_S: f64 = 1e-3;
    let states = [0.0, 0.5, 1.0].map(|part| {
        let long = takeoff_kg_m2 + part * (air_kg_m2 - takeoff_kg_m2);
        motionless_state::motionless(DVec3::new(99.0, long, 98.0))
    });
    let launch = Launch {
        spin: Spin::Rate(RateUnit::TurnsPerS.unit().to_si(turns_per_s)),
        jump_height_m: height_m,
        lean_rad: 0.0,
        heading_rad: 0.0,
    };
    let body = Body::new(starts::all()[0].scenario.body_spec());
    let spec = given_states::closing_only(CLOSE_TIME_S);
    Readout::new(
        &given_states::fly(body, spec, states.to_vec(), launch),
        Ground::Floor.stopping_time_s(),
    )
}

/// Rise that gives this time in the air between equal heights.
fn height_m(hang_time_s: f64) -> f64 {
    GRAVITY_M_S2 * hang_time_s * hang_time_s / 8.0
}

/// What a change of inertia does to rate and energy, at any height.
fn pull_in(from_kg_m2: f64, to_kg_m2: f64, turns_per_s: f64) -> Readout {
    jump(from_kg_m2, to_kg_m2, turns_per_s, 0.3)
}

fn turns_per_s(rate_rad_s: f64) -> f64 {
    RateUnit::TurnsPerS.unit().from_si(rate_rad_s)
}

/// 1. Spinning skater, CP 10.5: 2.34 to 0.363 kg m2 from 0.800 turns/s gives 5.16 turns/s; 29.6 J
///    becomes 191 J, so pulling in took 161 J.
#[test]
fn spinning_skater() {
    let r = pull_in(2.34, 0.363, 0.800);
    assert_near(turns_per_s(r.touchdown_rate_rad_s), 5.157);
    assert_near(r.energy_takeoff_j, 29.56);
    assert_near(r.energy_peak_j, 190.8);
    assert_near(r.closing_work_j, 161.3);
}

/// The same as a law (UP 11.3): K' = K I / I', and work L^2 / 2 (1/I' - 1/I), which is algebra and
/// holds to rounding.
#[test]
fn energy_grows_as_the_inertia_falls() {
    for (from, to, rate) in [(2.34, 0.363, 0.8), (1.8, 0.5, 0.5), (3.0, 2.9, 4.0)] {
        let r = pull_in(from, to, rate);
        let h = r.angular_momentum_kg_m2_s.y;
        let work = 0.5 * h * h * (1.0 / to - 1.0 / from);
        assert!((r.energy_peak_j / (r.energy_takeoff_j * from / to) - 1.0).abs() < 1e-12);
        assert!((r.closing_work_j / work - 1.0).abs() < 1e-12);
    }
}

/// 2. Jump with turns, UP 11.3: 1.8 kg m2 at 0.5 turns/s, launch 9.0 m/s at 45 degrees, 0.5 kg m2
///    in the air: 1.80 turns/s, 1.299 s, 2.338 turns.
#[test]
fn jump_with_turns() {
    let upwards_m_s = 9.0 * libm::sin(PI / 4.0);
    let rise_m = upwards_m_s * upwards_m_s / (2.0 * GRAVITY_M_S2);
    let r = jump(1.8, 0.5, 0.5, rise_m);
    assert_near(turns_per_s(r.peak_rate_rad_s), 1.80);
    assert_near(r.hang_time_s, 1.299);
    assert_near(r.air_turns, 2.338);
}

/// A body of which only the trunk and two rods exist.
fn cylinder_with_rods(cylinder_kg: f64, radius_m: f64, rod: Option<(f64, f64, f64)>) -> Body {
    let mut body = Body::new(starts::all()[0].scenario.body_spec());
    for link in &mut body.links {
        link.mass_kg = 0.0;
        link.joint_m = DVec3::ZERO;
        link.cm_m = DVec3::ZERO;
        link.inertia_kg_m2 = DMat3::ZERO;
    }
    let trunk = &mut body.links[Segment::LowerTrunk as usize];
    let long = 0.5 * cylinder_kg * radius_m * radius_m;
    let tall_m: f64 = 1.6;
    let across = 0.5 * long + cylinder_kg * tall_m * tall_m / 12.0;
    trunk.mass_kg = cylinder_kg;
    trunk.inertia_kg_m2 = DMat3::from_diagonal(DVec3::new(across, long, across));
    body.mass_kg = cylinder_kg;
    if let Some((rod_kg, length_m, from_axis_m)) = rod {
        for (segment, side) in [(Segment::LeftUpperArm, -1.0), (Segment::RightUpperArm, 1.0)] {
            let arm = &mut body.links[segment as usize];
            let own = rod_kg * length_m * length_m / 12.0;
            arm.mass_kg = rod_kg;
            arm.joint_m = DVec3::new(0.0, 0.0, side * from_axis_m);
            arm.cm_m = DVec3::new(0.0, -0.5 * length_m, 0.0);
            arm.inertia_kg_m2 = DMat3::from_diagonal(DVec3::new(own, 0.0, own));
            body.mass_kg += rod_kg;
        }
    }
    body
}

/// Its moment of inertia about the vertical with the rods straight out sideways.
fn rods_out(body: &Body) -> f64 {
    let arm = Arm {
        plane_rad: 0.0,
        elevation_rad: 0.5 * PI,
        axial_rad: 0.0,
        elbow_flexion_rad: 0.0,
    };
    let leg = Leg {
        hip_flexion_rad: 0.0,
        hip_abduction_rad: 0.0,
        knee_flexion_rad: 0.0,
        plantarflexion_rad: 0.0,
    };
    let posture = Posture::new(arm, arm, leg, leg);
    CentroidalState::new(&Tree::new(body), &posture, &STILL)
        .inertia_kg_m2
        .y_axis
        .y
}

/// 3. Moment of inertia of a skater, CP 10.3: a 60.0 kg cylinder of radius 0.110 m has 0.363; a
///    52.5 kg one with two 3.75 kg rods of 0.900 m turned about their ends has 2.34 kg m2.
#[test]
fn cylinders_and_rods() {
    let tight = rods_out(&cylinder_with_rods(60.0, 0.110, None));
    let open = rods_out(&cylinder_with_rods(52.5, 0.110, Some((3.75, 0.900, 0.0))));
    assert_near(tight, 0.3630);
    assert_near(open, 2.3426);
    // Problem 1 is about this very skater.
    assert_near(
        turns_per_s(pull_in(open, tight, 0.800).peak_rate_rad_s),
        5.157,
    );
}

/// Torso and raised arms (Knight, Physics for Scientists and Engineers, 12.90; geometry from a
/// secondary source, answer from memory): a 40 kg cylinder of 0.20 m diameter with 2.5 kg rods of
/// 0.66 m outside it, then a 45 kg cylinder: 1.306 to 0.225 kg m2, 1.0 to 5.80 turns/s.
#[test]
fn torso_and_arms() {
    let open = rods_out(&cylinder_with_rods(40.0, 0.10, Some((2.5, 0.66, 0.10))));
    let tight = rods_out(&cylinder_with_rods(45.0, 0.10, None));
    assert_near(open, 1.306);
    assert_near(tight, 0.225);
    assert_near(turns_per_s(pull_in(open, tight, 1.0).peak_rate_rad_s), 5.80);
}

/// Record spin, arms out, UP 11.3: 342 rpm with a 45 kg rod of 0.15 m radius, then 10 % of it as
/// a 1.30 m crossbar: 0.506 to 1.089 kg m2, 158.9 rpm (the book rounds the inertias first).
#[test]
fn record_spin_slowed() {
    let tight = rods_out(&cylinder_with_rods(45.0, 0.15, None));
    let open = rods_out(&cylinder_with_rods(40.5, 0.15, Some((2.25, 0.65, 0.0))));
    assert_near(tight, 0.506);
    assert_near(open, 1.089);
    let rpm = RateUnit::Rpm.unit();
    let r = pull_in(tight, open, turns_per_s(rpm.to_si(342.0)));
    assert_near(rpm.from_si(r.touchdown_rate_rad_s), 158.9);
}

/// 4. Rise and take-off speed: 0.900 m and 4.20 m/s (CP ch. 4), 1.25 m and 4.95 m/s (CP 2.7),
///    0.950 m and 4.315 m/s (CP ch. 7).
#[test]
fn rise_and_takeoff_speed() {
    for (rise_m, speed_m_s) in [(0.900, 4.20), (1.25, 4.95), (0.950, 4.315)] {
        let r = jump(1.0, 1.0, 1.0, rise_m);
        // A body that keeps its shape comes down as fast as it went up.
        assert_near(r.touchdown_speed_m_s, speed_m_s);
    }
}

/// Height, time and speed between equal heights, T = sqrt(8h/g), v = gT/2, g = 9.81 m/s2. The
/// table is rounded to 1 ms and 1 cm/s, which is 0.25 % at its low end.
#[test]
fn height_time_and_speed() {
    for (rise_m, time_s, speed_m_s) in [
        (0.20, 0.404, 1.98),
        (0.288, 0.485, 2.38),
        (0.322, 0.512, 2.51),
        (0.383, 0.559, 2.74),
        (0.457, 0.611, 2.99),
        (0.51, 0.645, 3.16),
        (0.58, 0.688, 3.37),
    ] {
        let r = jump(1.0, 1.0, 1.0, rise_m);
        assert_near(r.hang_time_s, time_s);
        assert_near(r.touchdown_speed_m_s, speed_m_s);
    }
}

/// Loads on a body that stands upright and turns, with the right and the left hand of this mass, its
/// centre and its grip this far from the axis.
fn circled(hand_kg: f64, radius_m: f64, rate_rad_s: f64) -> Loads {
    let mut body = Body::new(starts::all()[0].scenario.body_spec());
    for link in &mut body.links {
        link.cm_m.x = 0.0;
    }
    let shoulder_m = body.link(Segment::RightUpperArm).joint_m.z;
    for (hand, side) in [(Segment::LeftHand, -1.0), (Segment::RightHand, 1.0)] {
        let link = &mut body.links[hand as usize];
        link.mass_kg = hand_kg;
        link.cm_m.z = side * (radius_m - shoulder_m);
        link.end_m.z = link.cm_m.z;
    }
    let still = JointState {
        moving: (Posture::STANDING, STILL),
        accelerations: STILL,
    };
    Loads::new(&Tree::new(&body), &still, DVec3::Y * rate_rad_s)
}

/// 5. Turning skater's nose, CP 6.2: 5 turns/s is 31.4 rad/s, and 0.120 m from the axis that is
///    118 m/s2; 9 turns/s, 384 m/s2.
#[test]
fn inward_acceleration() {
    let inwards = |turns_per_s| {
        let rate_rad_s = RateUnit::TurnsPerS.unit().to_si(turns_per_s);
        (rate_rad_s, circled(0.4, 0.120, rate_rad_s).grip_m_s2())
    };
    let (rate_rad_s, [left, right]) = inwards(5.0);
    assert_near(rate_rad_s, 31.42);
    assert_near(left, 118.4);
    assert_near(right, 118.4);
    assert_near(inwards(9.0).1[0], 383.7);
}

/// Load to hold an arm in, F = m w^2 r: 2.245 kg (4.49 % of 50 kg, de Leva) at 0.10 m, and a hand
/// of 0.28 kg at 0.15 m; 300, 400 and 500 rpm. Growth with the square of the rate: exact.
#[test]
fn load_of_an_arm() {
    let arm = |mass_kg, radius_m, rpm| {
        circled(mass_kg, radius_m, RateUnit::Rpm.unit().to_si(rpm)).hand_n()[0]
    };
    for (rpm, at_10_cm, at_15_cm) in [
        (300.0, 222.0, 332.0),
        (400.0, 394.0, 591.0),
        (500.0, 615.0, 923.0),
    ] {
        assert_near(arm(2.245, 0.10, rpm), at_10_cm);
        assert_near(arm(2.245, 0.15, rpm), at_15_cm);
    }
    // Printed to two figures.
    assert!((arm(0.28, 0.15, 400.0) - 74.0).abs() < 0.5);
    let ratio = arm(2.245, 0.10, 500.0) / arm(2.245, 0.10, 300.0);
    assert!((ratio - 25.0 / 9.0).abs() < 1e-12);
}

/// 9. The call on missing rotation (ISU Communications 2324 and 2334, secondary): a quarter is q,
///    between a quarter and a half <, a half or more <<. Exact at the published limits; where q
///    begins is our own band. More than a quarter too far is over-rotated: common practice, no
///    source.
#[test]
fn the_call_at_its_limits() {
    for (missing_deg, call, sign) in [
        (-700.0, Call::OverRotated, ""),
        ((-90.0_f64).next_down(), Call::OverRotated, ""),
        (-90.0, Call::Full, ""),
        (-30.0, Call::Full, ""),
        (0.0, Call::Full, ""),
        (QUARTER_BAND_FROM_DEG.next_down(), Call::Full, ""),
        (QUARTER_BAND_FROM_DEG, Call::Quarter, "q"),
        (90.0, Call::Quarter, "q"),
        (90.0_f64.next_up(), Call::Under, "<"),
        (180.0_f64.next_down(), Call::Under, "<"),
        (180.0, Call::Downgraded, "<<"),
        (700.0, Call::Downgraded, "<<"),
    ] {
        assert_eq!(Call::of(missing_deg), call, "{missing_deg}");
        assert_eq!(call.sign(), sign);
    }
}

/// Skater slowed by the arms, CP 10.5: 0.400 kg m2 at 6.00 turns/s has 15.08 kg m2/s; slowed to
/// 1.25 turns/s it has 1.92 kg m2.
#[test]
fn skater_slowed() {
    let r = pull_in(0.400, 1.92, 6.00);
    assert_near(r.angular_momentum_kg_m2_s.y, 15.08);
    assert_near(turns_per_s(r.touchdown_rate_rad_s), 1.25);
    // Letting go gives energy back: L w / 2 before, less L w / 2 after.
    assert_near(r.closing_work_j, 0.5 * 15.08 * TAU * (1.25 - 6.00));
    assert_eq!(r.opening_work_j, 0.0);
}

/// Somersaults, UP 11.3, turned upright. High bar: 21.6 to 5.4 kg m2 from 1.0 turns/s gives 4.0.
/// Diver: three turns in 1.4 s at 4.2 kg m2, opened to 16.9: 2.143 to 0.533 turns/s. Gymnast: 13.5
/// to 3.4 kg m2 from 0.5 turns/s, 2.0 s: 1.985 turns/s and 3.97 turns.
#[test]
fn somersaults() {
    assert_near(
        turns_per_s(pull_in(21.6, 5.4, 1.0).touchdown_rate_rad_s),
        4.0,
    );
    let diver = pull_in(4.2, 16.9, 3.0 / 1.4);
    assert_near(turns_per_s(diver.takeoff_rate_rad_s), 2.143);
    assert_near(turns_per_s(diver.touchdown_rate_rad_s), 0.533);
    let gymnast = jump(13.5, 3.4, 0.5, height_m(2.0));
    assert_near(turns_per_s(gymnast.touchdown_rate_rad_s), 1.985);
    assert_near(gymnast.air_turns, 3.97);
}

/// Coupled flywheels, UP 11.3: four times the inertia at 600 rpm leaves 150 rpm = 15.7 rad/s, and
/// three quarters of the energy is gone.
#[test]
fn coupled_flywheels() {
    let rpm = RateUnit::Rpm.unit();
    let r = pull_in(1.0, 4.0, turns_per_s(rpm.to_si(600.0)));
    assert_near(rpm.from_si(r.touchdown_rate_rad_s), 150.0);
    assert_near(r.touchdown_rate_rad_s, 15.71);
    let left_j = 0.5 * 4.0 * r.touchdown_rate_rad_s * r.touchdown_rate_rad_s;
    assert_near(left_j, 0.25 * r.energy_takeoff_j);
}

/// Weights in the hands. Turntable (Young & Freedman, University Physics, ch. 10; answer from
/// memory): two 5.0 kg from 1.0 to 0.20 m, person 3.0 to 2.2 kg m2, one turn in 2.0 s: 2.5
/// turns/s, 64.2 to 320.8 J. Stool (standard college problem, secondary): two 3.0 kg from 1.00 to
/// 0.300 m, 3.0 kg m2, 0.750 rad/s: 1.907 rad/s, 2.531 to 6.435 J.
#[test]
fn weights_in_the_hands() {
    let with = |person, weight_kg, radius_m: f64| person + 2.0 * weight_kg * radius_m * radius_m;
    let table = pull_in(with(3.0, 5.0, 1.0), with(2.2, 5.0, 0.20), 0.5);
    assert_near(turns_per_s(table.touchdown_rate_rad_s), 2.5);
    assert_near(table.energy_takeoff_j, 64.2);
    assert_near(table.energy_peak_j, 320.8);
    let stool = pull_in(with(3.0, 3.0, 1.00), with(3.0, 3.0, 0.300), 0.750 / TAU);
    assert_near(stool.touchdown_rate_rad_s, 1.907);
    assert_near(stool.energy_takeoff_j, 2.531);
    assert_near(stool.energy_peak_j, 6.435);
}

/// The rates that these problems ask of the readout are those of the flown attitude: 2.338 turns
/// leave the body facing 0.338 of a turn round.
#[test]
fn turns_end_where_the_body_faces() {
    let body = Body::new(starts::all()[0].scenario.body_spec());
    let launch = Launch {
        spin: Spin::AngularMomentum(0.5 * TAU * 1.80),
        jump_height_m: height_m(1.299),
        lean_rad: 0.0,
        heading_rad: 0.0,
    };
    let state = motionless_state::motionless(DVec3::new(99.0, 0.5, 98.0));
    let flight = given_states::fly(
        body,
        given_states::closing_only(1e-3),
        vec![state; 3],
        launch,
    );
    let end: DQuat = flight.touchdown().orientation();
    let right = end * DVec3::Z;
    let faced = libm::atan2(right.x, right.z).rem_euclid(TAU) / TAU;
    assert!((faced - 1.80 * 1.299 + 2.0).abs() < 1e-6, "{faced}");
}
