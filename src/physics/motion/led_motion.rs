//! Joints that are led from target to target: live, while the motion runs, or replayed as it was led.

use std::fmt;

use glam::DQuat;

use crate::body::model::{SEGMENTS, Segment};
use crate::body::posture::{JointAccelerations, JointRates, Posture, STILL};
use crate::motion::joint_motion::{JointMotion, Sampling};
use crate::motion::joint_trajectory::JointTrajectory;
use crate::motion::resolution::Resolution;

/// Every trajectory that each joint was led along, in the order of time.
#[derive(Debug, Clone)]
pub struct LedMotion {
    joints: [Vec<JointTrajectory>; SEGMENTS],
}

/// Why a target is refused; the joint goes on as before.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TargetError {
    NotARotation,
    TimeOutOfRange,
}

impl fmt::Display for TargetError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NotARotation => "the target is no rotation; give a unit quaternion",
            Self::TimeOutOfRange => "the time to get there is out of range; give 0.01 s to 10 s",
        })
    }
}

impl std::error::Error for TargetError {}

/// Shortest and longest time in which a joint may be asked to reach its target, s.
const WITHIN_S: [f64; 2] = [0.01, 10.0];

/// Targets of a joint for which there is room from the beginning: a flight hardly needs more.
const ROOM: usize = 16;

impl LedMotion {
    /// At rest in a posture.
    pub fn at_rest(posture: &Posture) -> Self {
        Self {
            joints: posture.joints.map(|joint| {
                let mut trajectories = Vec::with_capacity(ROOM);
                trajectories.push(JointTrajectory::at_rest(joint));
                trajectories
            }),
        }
    }

    /// From `now_s` on, no earlier than any target before, this joint goes from where it is, as fast as
    /// it moves, to `target` (segment axes to parent's axes) and comes to rest there `within_s` later,
    /// by a minimum-jerk movement.
    pub fn lead(
        &mut self,
        now_s: f64,
        segment: Segment,
        target: DQuat,
        within_s: f64,
    ) -> Result<(), TargetError> {
        if !target.is_normalized() {
            return Err(TargetError::NotARotation);
        }
        if !(WITHIN_S[0]..=WITHIN_S[1]).contains(&within_s) {
            return Err(TargetError::TimeOutOfRange);
        }
        let next = self
            .trajectory(segment as usize, now_s)
            .redirected(now_s, target, within_s);
        self.joints[segment as usize].push(next);
        Ok(())
    }

    /// The trajectory that a joint is on at a time.
    fn trajectory(&self, joint: usize, t_s: f64) -> &JointTrajectory {
        let all = &self.joints[joint];
        let begun = all.partition_point(|trajectory| trajectory.start_s() <= t_s);
        &all[begun.max(1) - 1]
    }
}

impl JointMotion for LedMotion {
    fn at(&self, t_s: f64) -> (Posture, JointRates) {
        let mut moving = (Posture::STANDING, STILL);
        for i in 0..SEGMENTS {
            (moving.0.joints[i], moving.1[i]) = self.trajectory(i, t_s).at(t_s);
        }
        moving
    }

    fn accelerations_at(&self, t_s: f64) -> JointAccelerations {
        std::array::from_fn(|i| self.trajectory(i, t_s).acceleration_at(t_s))
    }

    fn sampling_from(&self, t_s: f64) -> Sampling {
        let standard = Resolution::STANDARD;
        let mut sampling = Sampling {
            longest_step_s: standard.longest_step_s,
            smooth_until_s: f64::INFINITY,
        };
        for trajectory in self.joints.iter().flatten() {
            let (start_s, end_s) = (trajectory.start_s(), trajectory.end_s());
            if start_s > t_s {
                sampling.smooth_until_s = sampling.smooth_until_s.min(start_s);
            } else if end_s > t_s {
                let blend_step_s = trajectory.time_s() / standard.steps_per_blend as f64;
                sampling.longest_step_s = sampling.longest_step_s.min(blend_step_s);
                sampling.smooth_until_s = sampling.smooth_until_s.min(end_s);
            }
        }
        sampling
    }
}
