//! Where every part of the body is in the world at one instant of a flight, and how it moves.

use glam::{DQuat, DVec3};

use crate::body::forward_kinematics::ForwardKinematics;
use crate::body::model::{Body, Segment};
use crate::body::posture::{JointRates, Posture};
use crate::dynamics::centroidal::CentroidalState;
use crate::dynamics::tree::Tree;
use crate::flight::sample::FlightSample;

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
