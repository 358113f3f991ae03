//! A flown jump as plain data: the exact body, the exact joint motion and the exact start, for
//! whoever wants to compute the flight again with other means.

use serde::Serialize;

use crate::fly::Jump;
use turns_aloft_physics::GRAVITY_M_S2;
use turns_aloft_physics::body::{Body, Segment};
use turns_aloft_physics::flight::Flight;
use turns_aloft_physics::rotation::exp;

/// Version of the form, and that of a jump that was led by hand, whose joints move otherwise.
const VERSION: u32 = 1;
const LED_VERSION: u32 = 2;

/// Even steps between the first and the last sample.
const SAMPLE_STEPS: u32 = 24;

/// Everything that the flight is computed from, then what came of it. SI units; vectors are [x, y, z], quaternions
/// [w, x, y, z] from the own axes to those named.
#[derive(Debug, Serialize)]
pub struct Export {
    turns_aloft_export: u32,
    gravity_m_s2: f64,
    /// Seen from above: 1 anticlockwise, -1 clockwise.
    turning: f64,
    segments: Vec<SegmentData>,
    parts: Vec<PartData>,
    start: Start,
    /// Heel and toe of either sole, in the axes of its foot, from the ankle, m.
    sole_m: [[f64; 3]; 2],
    touchdown_s: f64,
    /// At even times from take-off to touch-down.
    samples: Vec<Sample>,
}

/// A rigid segment and the joint towards its parent.
///
/// Its rotation against the parent at time t is `takeoff exp(s1 closing) exp(s2 opening)`, where
/// s1 and s2 are minimum-jerk blends 10 x³ - 15 x⁴ + 6 x⁵ of x = (t - start) / time, held to 0..1.
#[derive(Debug, Serialize)]
struct SegmentData {
    name: &'static str,
    parent: Option<&'static str>,
    /// Joint in the parent's axes, from the parent's own joint, m.
    joint_m: [f64; 3],
    /// Own axes to the parent's.
    takeoff: [f64; 4],
    #[serde(skip_serializing_if = "Option::is_none")]
    closing: Option<Blend>,
    #[serde(skip_serializing_if = "Option::is_none")]
    opening: Option<Blend>,
    /// In place of both where the jump was led by hand.
    #[serde(skip_serializing_if = "Option::is_none")]
    led: Option<Led>,
}

/// A joint that was led by hand. Its rotation at time t is
/// `tight exp((1 - s) (w opening - (1 - w) closing))`: s is the sum of `way` times the blend of x = (t - start) /
/// movement over all steps, and w the blend from `over_start` on, in the same time.
#[derive(Debug, Serialize)]
struct Led {
    /// Own axes to the parent's.
    tight: [f64; 4],
    closing_rad: [f64; 3],
    opening_rad: [f64; 3],
    movement_s: f64,
    /// None where nothing is ever led in; then w is 0.
    over_start_s: Option<f64>,
    steps: Vec<LedStep>,
}

#[derive(Debug, Serialize)]
struct LedStep {
    start_s: f64,
    way: f64,
}

#[derive(Debug, Serialize)]
struct Blend {
    rotation_vector_rad: [f64; 3],
    start_s: f64,
    time_s: f64,
}

/// A rigid body fixed to a segment: its own tissue or what it carries.
#[derive(Debug, Serialize)]
pub struct PartData {
    name: &'static str,
    segment: &'static str,
    mass_kg: f64,
    /// CM in the segment's axes, from its joint, m.
    cm_m: [f64; 3],
    /// Principal moments about the CM along the segment's axes, kg m².
    moments_kg_m2: [f64; 3],
}

/// The instant the ice is left. World: X travel, Y up, Z right.
#[derive(Debug, Serialize)]
struct Start {
    /// Pelvis axes to world axes.
    orientation: [f64; 4],
    cm_height_m: f64,
    cm_velocity_m_s: [f64; 3],
    /// About the CM, kg m²/s.
    angular_momentum_kg_m2_s: [f64; 3],
}

/// What the flight found at one instant.
#[derive(Debug, Serialize)]
struct Sample {
    t_s: f64,
    /// Pelvis axes to world axes.
    orientation: [f64; 4],
    /// Of the pelvis, world axes.
    rate_rad_s: [f64; 3],
    /// About the vertical since take-off, in the turning direction.
    turned_rad: f64,
    /// Relative to the CM.
    energy_j: f64,
    cm_in_pelvis_m: [f64; 3],
    /// Rows of the tensor about the CM, pelvis axes.
    inertia_kg_m2: [[f64; 3]; 3],
    /// Of the joint motion alone (pelvis held), about the CM, pelvis axes.
    joint_momentum_kg_m2_s: [f64; 3],
    /// Of the pelvis, pelvis axes.
    pelvis_acceleration_rad_s2: [f64; 3],
    /// Of all segments but the root, in their order: net torque that the parent exerts about the joint,
    /// in the parent's axes.
    joint_torques_n_m: Vec<[f64; 3]>,
    /// Force of the left and the right forearm on its hand with what it holds, and of the hand on the
    /// weight alone.
    hand_force_n: [f64; 2],
    grip_force_n: [f64; 2],
}

impl Export {
    pub fn new(jump: &Jump) -> Self {
        let flight = &jump.flight;
        let body = &flight.table.body;
        let start = flight.takeoff();
        Self {
            turns_aloft_export: if flight.table.plan.spec.led.is_some() {
                LED_VERSION
            } else {
                VERSION
            },
            gravity_m_s2: GRAVITY_M_S2,
            turning: flight.table.plan.spec.turning.sign(),
            segments: Segment::ALL
                .map(|segment| SegmentData::new(jump, segment))
                .into(),
            parts: PartData::of(body),
            start: Start {
                orientation: wxyz(start.orientation()),
                cm_height_m: flight.takeoff_cm_m,
                cm_velocity_m_s: [0.0, flight.takeoff_speed_m_s, 0.0],
                angular_momentum_kg_m2_s: flight.h_kg_m2_s.to_array(),
            },
            sole_m: body.sole_m.map(|sole| sole.to_array()),
            touchdown_s: flight.touchdown_s,
            samples: (0..=SAMPLE_STEPS)
                .map(|i| f64::from(i) / f64::from(SAMPLE_STEPS))
                .map(|part| Sample::new(flight, part * flight.touchdown_s))
                .collect(),
        }
    }
}

impl PartData {
    /// Every part of a body.
    pub fn of(body: &Body) -> Vec<Self> {
        let parts = body.parts.iter().map(|part| Self {
            name: part.name,
            segment: part.segment.name(),
            mass_kg: part.mass_kg,
            cm_m: part.cm_m.to_array(),
            moments_kg_m2: part.moments_kg_m2.to_array(),
        });
        parts.collect()
    }
}

impl Sample {
    fn new(flight: &Flight, t_s: f64) -> Self {
        let sample = flight.at(t_s);
        let state = flight.table.state_at(t_s, flight.open_s);
        let motion = flight.joint_state_at(t_s);
        let loads = flight.loads_at(t_s);
        let torque = |&segment: &Segment| loads.torque_in_parent_n_m(&motion.moving.0, segment);
        let held_kg = flight.table.body.spec.hand_mass_kg;
        Self {
            t_s,
            orientation: wxyz(sample.orientation()),
            rate_rad_s: sample.rate_rad_s().to_array(),
            turned_rad: sample.turned_rad,
            energy_j: sample.energy_j,
            cm_in_pelvis_m: state.cm_m.to_array(),
            inertia_kg_m2: state.inertia_kg_m2.transpose().to_cols_array_2d(),
            joint_momentum_kg_m2_s: state.joint_momentum_kg_m2_s.to_array(),
            pelvis_acceleration_rad_s2: loads.pelvis_rad_s2.to_array(),
            joint_torques_n_m: Segment::ALL[1..]
                .iter()
                .map(|segment| torque(segment).to_array())
                .collect(),
            hand_force_n: loads.hand_n(),
            grip_force_n: loads.grip_m_s2().map(|grip_m_s2| held_kg * grip_m_s2),
        }
    }
}

impl SegmentData {
    fn new(jump: &Jump, segment: Segment) -> Self {
        let plan = &jump.flight.table.plan;
        let (takeoff, closing, opening) = plan.blend_rotations(segment);
        let led = plan.spec.led.as_ref().map(|led| {
            let steps: Vec<LedStep> = plan
                .led_steps(segment, led.knots())
                .map(|(start_s, way)| LedStep { start_s, way })
                .collect();
            let first_over_s = plan.close_start_s(segment) + plan.spec.close_time_s;
            Led {
                tight: wxyz(takeoff * exp(closing)),
                closing_rad: closing.to_array(),
                opening_rad: opening.to_array(),
                movement_s: plan.spec.close_time_s,
                over_start_s: led.first_pull_s().map(|_| first_over_s),
                steps,
            }
        });
        let planned = led.is_none();
        Self {
            name: segment.name(),
            parent: segment.parent().map(Segment::name),
            joint_m: jump.flight.table.body.link(segment).joint_m.to_array(),
            takeoff: wxyz(takeoff),
            closing: planned.then(|| Blend {
                rotation_vector_rad: closing.to_array(),
                start_s: plan.close_start_s(segment),
                time_s: plan.spec.close_time_s,
            }),
            opening: planned.then(|| Blend {
                rotation_vector_rad: opening.to_array(),
                start_s: jump.flight.open_s,
                time_s: plan.spec.open_time_s,
            }),
            led,
        }
    }
}

/// A quaternion as exports have it: [w, x, y, z].
pub fn wxyz(q: glam::DQuat) -> [f64; 4] {
    [q.w, q.x, q.y, q.z]
}
