//! How the joints of a body move: the one interface from which a flight takes it.

use glam::DVec3;

use crate::body::model::Segment;
use crate::body::posture::{JointAccelerations, JointRates, Posture, STILL};

/// How the joints stand, move and change their motion at one instant.
#[derive(Debug, Clone, Copy)]
pub struct JointState {
    pub moving: (Posture, JointRates),
    pub accelerations: JointAccelerations,
}

/// How finely a motion has to be sampled from an instant on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sampling {
    /// No step may be longer, s.
    pub longest_step_s: f64,
    /// Up to here all derivatives are continuous, s; no step may lead across.
    pub smooth_until_s: f64,
}

/// A motion of all joints over time, in s since take-off.
pub trait JointMotion {
    /// Posture and joint rates.
    fn at(&self, t_s: f64) -> (Posture, JointRates);

    /// How the joint rates change.
    fn accelerations_at(&self, t_s: f64) -> JointAccelerations;

    /// How finely the motion has to be sampled from this time on.
    fn sampling_from(&self, t_s: f64) -> Sampling;

    /// All that inverse dynamics take.
    fn state_at(&self, t_s: f64) -> JointState {
        JointState {
            moving: self.at(t_s),
            accelerations: self.accelerations_at(t_s),
        }
    }
}

impl JointState {
    /// Whether no joint moves nor begins to.
    pub fn is_still(&self) -> bool {
        self.moving.1 == STILL && self.accelerations == STILL
    }

    /// Whether a segment's joint is anything but straight and still.
    pub(crate) fn moves(&self, segment: Segment) -> bool {
        self.moving.0.moves(segment, &self.moving.1)
            || self.accelerations[segment as usize] != DVec3::ZERO
    }
}
