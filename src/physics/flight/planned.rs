//! Free flight of a body that moves its joints by plan.
//!
//! The CM follows the parabola; the angular momentum h about it is constant in the world. In
//! pelvis axes w = I⁻¹ (Rᵀ h - k), `R' = R [w]x`.

use std::sync::Arc;

use glam::DVec3;

use crate::dynamics::gravity::GRAVITY_M_S2;
use crate::flight::constants::FlightConstants;
use crate::flight::fixed_time::FixedTimeFlight;
use crate::flight::launch::Launch;
use crate::flight::pose::Pose;
use crate::flight::sample::FlightSample;
use crate::flight::step_record::{StepRecord, is_resolved};
use crate::flight::table::PlanTable;
use crate::flight::touchdown;
use crate::motion::joint_motion::JointMotion;
use crate::motion::planned_motion::PlannedMotion;

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
pub(crate) struct FlightSteps<K> {
    pub table: Arc<PlanTable>,
    constants: FlightConstants,
    open_s: f64,
    pub steps: Vec<K>,
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

    /// The flight of a tabulated plan that hangs for a given time, which the launch's height is taken to give
    /// (`fixed_time::height_for_m`): the touch-down is not looked for.
    pub fn for_time(table: Arc<PlanTable>, launch: Launch, hang_s: f64) -> Self {
        let timed = FixedTimeFlight::of_plan(&table, hang_s);
        let constants = FlightConstants::of(table.takeoff(), &launch, table.plan.spec.turning);
        Self {
            launch,
            h_kg_m2_s: DVec3::new(0.0, constants.h_kg_m2_s, 0.0),
            takeoff_speed_m_s: constants.speed_m_s,
            takeoff_cm_m: constants.cm_m,
            touchdown_s: hang_s,
            open_s: timed.open_s,
            samples: timed.fly(&table, &launch),
            table,
        }
    }

    /// The same, with `K` recorded of each step.
    pub(crate) fn fly<K: StepRecord>(table: Arc<PlanTable>, launch: Launch) -> FlightSteps<K> {
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

    /// How the joints move.
    pub fn motion(&self) -> PlannedMotion<'_> {
        self.table.plan.opening_at(self.open_s)
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
        let (posture, rates) = self.motion().at(sample.t_s);
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
