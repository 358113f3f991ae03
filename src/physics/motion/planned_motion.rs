//! The motion of a plan whose opening begins at a known time.

use crate::body::posture::{JointAccelerations, JointRates, Posture};
use crate::motion::joint_motion::{JointMotion, Sampling};
use crate::motion::plan::Plan;
use crate::motion::resolution::Resolution;

/// A plan with the beginning of its opening.
#[derive(Debug, Clone, Copy)]
pub struct PlannedMotion<'a> {
    pub plan: &'a Plan,
    /// s after take-off; infinite for a body that never opens.
    pub open_s: f64,
}

impl Plan {
    /// The motion for an opening that begins at this time.
    pub const fn opening_at(&self, open_s: f64) -> PlannedMotion<'_> {
        PlannedMotion { plan: self, open_s }
    }
}

/// How many times a movement can begin or end.
pub const CORNERS: usize = 6;

impl PlannedMotion<'_> {
    /// When movements begin or end, in no order, s.
    pub fn corners_s(&self) -> [f64; CORNERS] {
        let spec = &self.plan.spec;
        let closed_s = spec.close_delay_s + spec.close_time_s;
        [
            spec.close_delay_s,
            spec.close_delay_s + spec.arm_lag_s,
            closed_s,
            closed_s + spec.arm_lag_s,
            self.open_s,
            self.open_s + spec.open_time_s,
        ]
    }
}

impl JointMotion for PlannedMotion<'_> {
    fn at(&self, t_s: f64) -> (Posture, JointRates) {
        self.plan.at(t_s, self.open_s)
    }

    fn accelerations_at(&self, t_s: f64) -> JointAccelerations {
        self.plan.accelerations_at(t_s, self.open_s)
    }

    fn sampling_from(&self, t_s: f64) -> Sampling {
        let standard = Resolution::STANDARD;
        let blend_step_s = self.plan.shortest_blend_s() / standard.steps_per_blend as f64;
        let later = self.corners_s().into_iter().filter(|&s| s > t_s);
        Sampling {
            longest_step_s: standard.longest_step_s.min(blend_step_s),
            smooth_until_s: later.fold(f64::INFINITY, f64::min),
        }
    }
}
