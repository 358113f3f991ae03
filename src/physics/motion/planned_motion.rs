//! The motion of a plan whose opening begins at a known time.

use crate::body::posture::{JointAccelerations, JointRates, Posture};
use crate::motion::joint_motion::{JointMotion, Sampling};
use crate::motion::led_tucks::LedTucks;
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

impl PlannedMotion<'_> {
    /// When movements begin or end, in no order, s.
    pub fn corners_s(&self) -> impl Iterator<Item = f64> {
        let spec = &self.plan.spec;
        let closed_s = spec.close_delay_s + spec.close_time_s;
        let planned = [
            spec.close_delay_s,
            spec.close_delay_s + spec.arm_lag_s,
            closed_s,
            closed_s + spec.arm_lag_s,
            self.open_s,
            self.open_s + spec.open_time_s,
        ];
        let planned = spec.led.is_none().then_some(planned);
        let led = spec.led.as_ref().map_or(&[][..], LedTucks::knots);
        let led = led
            .iter()
            .flat_map(|knot| self.plan.corners_of_knot_s(knot.time_s));
        planned.into_iter().flatten().chain(led)
    }
}

impl Plan {
    /// When the movements begin and end that a knot at this time makes, s; those of what goes over to the landing
    /// with them, where it is the first.
    pub const fn corners_of_knot_s(&self, time_s: f64) -> [f64; 6] {
        let (lag_s, movement_s) = (self.spec.arm_lag_s, self.spec.close_time_s);
        let (end_s, over_s) = (time_s + movement_s, time_s + 2.0 * movement_s);
        [
            time_s,
            time_s + lag_s,
            end_s,
            end_s + lag_s,
            over_s,
            over_s + lag_s,
        ]
    }

    /// How finely a motion has to be sampled that has these corners.
    pub fn sampling(&self, t_s: f64, corners_s: impl Iterator<Item = f64>) -> Sampling {
        let standard = Resolution::STANDARD;
        let blend_step_s = self.shortest_blend_s() / standard.steps_per_blend as f64;
        let later = corners_s.filter(|&s| s > t_s);
        Sampling {
            longest_step_s: standard.longest_step_s.min(blend_step_s),
            smooth_until_s: later.fold(f64::INFINITY, f64::min),
        }
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
        self.plan.sampling(t_s, self.corners_s())
    }
}
