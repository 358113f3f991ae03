//! Prints flights about any axis as JSON, for the checks from outside: the body, its measured joint motion,
//! how it is let go, and what the flight found at even times. In the words of `aloft export`.

use std::collections::BTreeMap;

use glam::{DQuat, DVec3};
use serde_json::{Value, json};

use turns_aloft::physics::GRAVITY_M_S2;
use turns_aloft::physics::body::{Body, Segment};
use turns_aloft::physics::inverse::Loads;
use turns_aloft::physics::joint_motion::JointMotion;
use turns_aloft::physics::measured_motion::MeasuredMotion;
use turns_aloft::physics::motion_flight::MotionFlight;
use turns_aloft::physics::posture::{Arm, Leg, Posture};
use turns_aloft::physics::release::Release;
use turns_aloft::physics::rotation::{about, exp, log};
use turns_aloft::scenario::starts;

/// So many samples from release to the end.
const SAMPLES: u32 = 25;

/// Joint rotations a hundred times a second, in s.
const MEASURED_EVERY_S: f64 = 0.01;

const END_S: f64 = 0.9;

struct Case {
    name: &'static str,
    start: DQuat,
    h_kg_m2_s: DVec3,
    /// What the joints do, as the measurement sees it.
    posture_at: fn(f64) -> Posture,
}

const CASES: [Case; 5] = [
    Case {
        name: "rigid, upside down",
        start: DQuat::from_xyzw(0.96, 0.0, 0.28, 0.0),
        h_kg_m2_s: DVec3::new(3.0, 25.0, -4.0),
        posture_at: |_| spread(),
    },
    Case {
        name: "rigid, head over heels",
        start: DQuat::from_xyzw(0.0, 0.6, 0.0, 0.8),
        h_kg_m2_s: DVec3::new(-6.0, 3.0, 70.0),
        posture_at: |_| spread(),
    },
    Case {
        name: "bending round, no momentum",
        start: DQuat::from_xyzw(1.0, 0.0, 0.0, 0.0),
        h_kg_m2_s: DVec3::ZERO,
        posture_at: bending_round,
    },
    Case {
        name: "arms round, no momentum",
        start: DQuat::from_xyzw(0.0, 0.0, 0.6, 0.8),
        h_kg_m2_s: DVec3::ZERO,
        posture_at: arms_round,
    },
    Case {
        name: "somersault with a twist",
        start: DQuat::IDENTITY,
        h_kg_m2_s: DVec3::new(0.0, 0.0, -55.0),
        posture_at: twisting,
    },
];

fn main() {
    let flights: BTreeMap<_, _> = CASES.iter().map(|case| (case.name, case.fly())).collect();
    println!("{}", json!(flights));
}

impl Case {
    fn fly(&self) -> Value {
        let body = Body::new(starts::all()[0].scenario.body_spec());
        let count = (END_S / MEASURED_EVERY_S) as u32 + 2;
        let times_s: Vec<f64> = (0..count)
            .map(|i| MEASURED_EVERY_S * f64::from(i))
            .collect();
        let postures: Vec<Posture> = times_s.iter().map(|&t_s| (self.posture_at)(t_s)).collect();
        let motion = MeasuredMotion::new(times_s.clone(), &postures).expect("good samples");
        let release = Release {
            orientation: self.start.normalize(),
            angular_momentum_kg_m2_s: self.h_kg_m2_s,
            cm_height_m: 4.0,
            speed_m_s: 2.5,
        };
        let mut flight =
            MotionFlight::released(body.clone(), motion, &release).expect("a fair release");
        let samples: Vec<Value> = (0..=SAMPLES)
            .map(|i| {
                let t_s = END_S * f64::from(i) / f64::from(SAMPLES);
                flight.step(t_s - flight.sample().t_s);
                sample(&flight)
            })
            .collect();
        assert!(!flight.has_landed());
        json!({
            "gravity_m_s2": GRAVITY_M_S2,
            "segments": Segment::ALL.map(|segment| json!({
                "name": segment.name(),
                "parent": segment.parent().map(Segment::name),
                "joint_m": body.link(segment).joint_m.to_array(),
            })),
            "parts": body.parts.iter().map(|part| json!({
                "name": part.name,
                "segment": part.segment.name(),
                "mass_kg": part.mass_kg,
                "cm_m": part.cm_m.to_array(),
                "moments_kg_m2": part.moments_kg_m2.to_array(),
            })).collect::<Vec<_>>(),
            "sole_m": body.sole_m.map(|sole| sole.to_array()),
            "measured": {
                "times_s": times_s,
                "rotations": postures.iter().map(rotations).collect::<Vec<_>>(),
            },
            "start": {
                "orientation": wxyz(release.orientation),
                "cm_height_m": release.cm_height_m,
                "cm_velocity_m_s": [0.0, release.speed_m_s, 0.0],
                "angular_momentum_kg_m2_s": self.h_kg_m2_s.to_array(),
            },
            "samples": samples,
        })
    }
}

fn sample(flight: &MotionFlight<MeasuredMotion>) -> Value {
    let found = flight.sample();
    let state = flight.motion().state_at(found.t_s);
    let loads: Loads = flight.loads();
    let joints = Segment::ALL[1..].iter();
    json!({
        "t_s": found.t_s,
        "orientation": wxyz(found.orientation()),
        "rate_rad_s": found.rate_rad_s().to_array(),
        "about_momentum_rad": flight.about_momentum_rad(),
        "energy_j": found.energy_j,
        "joint_rotations": rotations(&state.moving.0),
        "joint_rates_rad_s": vectors(&state.moving.1),
        "joint_accelerations_rad_s2": vectors(&state.accelerations),
        "pelvis_acceleration_rad_s2": loads.pelvis_rad_s2.to_array(),
        "joint_torques_n_m": joints
            .map(|&joint| loads.torque_in_parent_n_m(&state.moving.0, joint).to_array())
            .collect::<Vec<_>>(),
    })
}

/// Of all segments but the pelvis, against their parents.
fn rotations(posture: &Posture) -> Vec<[f64; 4]> {
    posture.joints[1..]
        .iter()
        .map(|&joint| wxyz(joint))
        .collect()
}

fn vectors(of: &[DVec3]) -> Vec<[f64; 3]> {
    of[1..].iter().map(DVec3::to_array).collect()
}

fn wxyz(q: DQuat) -> [f64; 4] {
    [q.w, q.x, q.y, q.z]
}

/// One arm out, the other one up, one leg forward: without symmetry.
fn spread() -> Posture {
    let arm = |elevation_rad, elbow_flexion_rad| Arm {
        plane_rad: 0.5,
        elevation_rad,
        axial_rad: 0.2,
        elbow_flexion_rad,
    };
    let leg = |hip_flexion_rad, knee_flexion_rad| Leg {
        hip_flexion_rad,
        hip_abduction_rad: 0.15,
        knee_flexion_rad,
        plantarflexion_rad: 0.4,
    };
    Posture::new(arm(1.4, 0.3), arm(2.6, 0.1), leg(0.9, 1.2), leg(0.0, 0.1))
}

/// How far something has come that begins at 0 and ends at 1.
fn blend(x: f64) -> f64 {
    turns_aloft::physics::minimum_jerk::minimum_jerk(x, 0.0, 1.0).0
}

/// A cat: the waist bends, the bend goes round once, the waist straightens again.
fn bending_round(t_s: f64) -> Posture {
    let bend = 1.1 * (blend(t_s / 0.25) - blend((t_s - 0.6) / 0.25));
    let round = std::f64::consts::TAU * blend((t_s - 0.1) / 0.65);
    let axis = about(DVec3::Y, round) * DVec3::Z;
    let mut posture = Posture::STANDING;
    posture[Segment::MiddleTrunk] = exp(axis * (-0.5 * bend));
    posture[Segment::UpperTrunk] = exp(axis * (-0.5 * bend));
    for thigh in [Segment::LeftThigh, Segment::RightThigh] {
        posture[thigh] = exp(axis * (0.4 * bend));
    }
    posture
}

/// Both straight arms go round the long axis of the body.
fn arms_round(t_s: f64) -> Posture {
    let round = std::f64::consts::TAU * blend(t_s / 0.8);
    let out = 1.2 * blend(t_s / 0.3);
    let mut posture = Posture::STANDING;
    let turned = about(DVec3::Y, round);
    let arm = turned * about(DVec3::X, out) * turned.conjugate();
    posture[Segment::LeftUpperArm] = arm;
    posture[Segment::RightUpperArm] = arm;
    posture
}

/// Piked, then straight with one arm thrown down and the other up: a twist out of a somersault.
fn twisting(t_s: f64) -> Posture {
    let pike = blend(t_s / 0.2) - blend((t_s - 0.3) / 0.25);
    let throw = blend((t_s - 0.25) / 0.3);
    let mut posture = Posture::STANDING;
    for thigh in [Segment::LeftThigh, Segment::RightThigh] {
        posture[thigh] = about(DVec3::Z, 1.5 * pike);
    }
    let raised = about(DVec3::X, 2.8);
    let lowered = about(DVec3::X, -2.8);
    posture[Segment::LeftUpperArm] = exp(log(raised) * (1.0 - throw));
    posture[Segment::RightUpperArm] = lowered;
    posture
}
