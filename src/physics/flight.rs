//! Free flight of a body that moves its joints by plan.
//!
//! The CM follows the parabola; the angular momentum h about it is constant in the world. In
//! pelvis axes w = I⁻¹ (Rᵀ h - k), `R' = R [w]x`.

use std::sync::Arc;

use glam::{DQuat, DVec3};

use super::GRAVITY_M_S2;
use super::body::{Body, Segment};
use super::centroidal::CentroidalState;
use super::constants::FlightConstants;
use super::forward_kinematics::ForwardKinematics;
use super::posture::{JointRates, Posture};
use super::step_record::StepRecord;
use super::table::PlanTable;
use super::touchdown;
use super::tree::Tree;

pub use super::launch::{Launch, Spin};
pub use super::sample::FlightSample;

/// A finished flight. Everything shown is read from it.
#[derive(Debug, Clone)]
pub struct Flight {
    pub table: Arc<PlanTable>,
    pub launch: Launch,
    /// Angular momentum about the CM, world, kg m²/s; the same all through the flight.
    pub h_kg_m2_s: DVec3,
    /// Vertical speed of the CM at take-off, m/s.
    pub takeoff_speed_m_s: f64,
    /// Height of the CM at take-off, m.
    pub takeoff_cm_m: f64,
    pub touchdown_s: f64,
    /// Beginning of the opening, s after take-off.
    pub open_s: f64,
    /// The flight step by step, from take-off to touch-down.
    pub samples: Vec<FlightSample>,
}

/// The recorded steps of a flight, and the table that it was flown on.
pub(super) struct FlightSteps<K> {
    pub table: Arc<PlanTable>,
    constants: FlightConstants,
    open_s: f64,
    pub steps: Vec<K>,
}

/// How large the fifth powers of the angles (rad) turned in each step may grow in sum; with less,
/// halving the steps changes the turns of any admissible flight by less than 1e-5.
const MOST_ADDED_UP: f64 = 0.7;

/// Whether the steps of a flight were short enough for how fast the body turned: the error of a step
/// grows with the fifth power of the angle turned in it, and the errors add up on the way.
pub(super) fn is_resolved<K: StepRecord>(steps: &[K]) -> bool {
    let added_up: f64 = steps
        .windows(2)
        .map(|pair| {
            let step_s = pair[1].t_s() - pair[0].t_s();
            let square = pair[0].own_rate_rad_s().length_squared() * step_s * step_s;
            square * square * square.sqrt()
        })
        .sum();
    added_up <= MOST_ADDED_UP
}

impl Flight {
    /// Flies a tabulated plan; where the body turns too fast for the table's steps, on a table
    /// with finer ones.
    pub fn new(table: Arc<PlanTable>, launch: Launch) -> Self {
        let FlightSteps {
            table,
            constants,
            open_s,
            steps: samples,
        } = Self::fly::<FlightSample>(table, launch);
        Self {
            launch,
            h_kg_m2_s: DVec3::new(0.0, constants.h_kg_m2_s, 0.0),
            takeoff_speed_m_s: constants.speed_m_s,
            takeoff_cm_m: constants.cm_m,
            touchdown_s: samples[samples.len() - 1].t_s,
            open_s,
            samples,
            table,
        }
    }

    /// The same, with `K` recorded of each step.
    pub(super) fn fly<K: StepRecord>(table: Arc<PlanTable>, launch: Launch) -> FlightSteps<K> {
        let constants = FlightConstants::of(table.takeoff(), &launch, table.plan.spec.turning);
        let (open_s, steps) = touchdown::fly(&constants, &table);
        if is_resolved(&steps) {
            return FlightSteps {
                table,
                constants,
                open_s,
                steps,
            };
        }
        Self::fly(table.finer(), launch)
    }

    pub fn takeoff(&self) -> &FlightSample {
        &self.samples[0]
    }

    pub fn touchdown(&self) -> &FlightSample {
        &self.samples[self.samples.len() - 1]
    }

    /// The flight at any time, held at its ends.
    pub fn at(&self, t_s: f64) -> FlightSample {
        let t_s = t_s.clamp(0.0, self.touchdown_s);
        let after = self.samples.partition_point(|sample| sample.t_s <= t_s);
        let from = &self.samples[after.max(1) - 1];
        let constants = FlightConstants {
            h_kg_m2_s: self.h_kg_m2_s.y,
            attitude: self.takeoff().attitude,
            speed_m_s: self.takeoff_speed_m_s,
            cm_m: self.takeoff_cm_m,
            sign: self.table.plan.spec.turning.sign(),
        };
        constants.advanced_to(from, t_s, |t_s| self.table.state_at(t_s, self.open_s))
    }

    /// Where every segment is at a time, and how it moves, relative to the CM.
    pub fn pose_at(&self, t_s: f64) -> Pose {
        let sample = self.at(t_s);
        let (posture, rates) = self.table.plan.at(sample.t_s, self.open_s);
        let table = &self.table;
        let falling_m_s = GRAVITY_M_S2 * sample.t_s - self.takeoff_speed_m_s;
        Pose::new(
            &table.body,
            &table.tree,
            (&posture, &rates),
            sample,
            falling_m_s,
        )
    }
}

/// Where every segment is in the world at one instant.
#[derive(Debug, Clone, Copy)]
pub struct Pose {
    pub sample: FlightSample,
    /// Pelvis axes to world axes.
    orientation: DQuat,
    pub cm_velocity_m_s: DVec3,
    kinematics: ForwardKinematics,
    held_cm_m: DVec3,
    held_cm_velocity_m_s: DVec3,
}

impl Pose {
    /// A body in this posture and at these rates, its CM falling at this speed.
    pub fn new(
        body: &Body,
        tree: &Tree,
        (posture, rates): (&Posture, &JointRates),
        sample: FlightSample,
        falling_m_s: f64,
    ) -> Self {
        let state = CentroidalState::new(tree, posture, rates);
        Self {
            orientation: sample.orientation(),
            kinematics: ForwardKinematics::new(body, posture, rates),
            held_cm_m: state.cm_m,
            held_cm_velocity_m_s: state.cm_velocity_m_s,
            cm_velocity_m_s: DVec3::Y * -falling_m_s,
            sample,
        }
    }

    /// A point fixed to a segment, in the world, m.
    pub fn point_m(&self, segment: Segment, own_m: DVec3) -> DVec3 {
        let (p, _) = self.kinematics.point(segment, own_m);
        self.sample.cm_m() + self.orientation * (p - self.held_cm_m)
    }

    /// Velocity of that point in the world, m/s.
    pub fn velocity_m_s(&self, segment: Segment, own_m: DVec3) -> DVec3 {
        let (p, v) = self.kinematics.point(segment, own_m);
        let turn = self.orientation;
        self.cm_velocity_m_s
            + turn * (v - self.held_cm_velocity_m_s)
            + turn * self.sample.own_rate_rad_s.cross(p - self.held_cm_m)
    }

    /// Segment axes to world axes.
    pub fn orientation(&self, segment: Segment) -> DQuat {
        self.orientation * self.kinematics.rotation[segment as usize]
    }

    /// Angular velocity of the segment in the world, rad/s.
    pub fn segment_rate_rad_s(&self, segment: Segment) -> DVec3 {
        self.orientation
            * (self.sample.own_rate_rad_s + self.kinematics.rate_rad_s[segment as usize])
    }
}
