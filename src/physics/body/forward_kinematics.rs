//! Where every segment of a body is in a posture, and how it moves: forward kinematics.

use glam::{DQuat, DVec3};

use crate::body::model::{Body, SEGMENTS, Segment};
use crate::body::posture::{JointRates, Posture};

/// Where each segment is while the pelvis is held still at the origin.
#[derive(Debug, Clone, Copy)]
pub struct ForwardKinematics {
    /// Joint towards the pelvis, pelvis frame, m.
    pub joint_m: [DVec3; SEGMENTS],
    /// Segment axes to pelvis axes.
    pub rotation: [DQuat; SEGMENTS],
    /// Velocity of that joint, pelvis frame, m/s.
    pub velocity_m_s: [DVec3; SEGMENTS],
    /// Angular velocity of the segment, pelvis frame, rad/s.
    pub rate_rad_s: [DVec3; SEGMENTS],
}

impl ForwardKinematics {
    /// Forward kinematics from the pelvis outwards.
    pub fn new(body: &Body, posture: &Posture, rates: &JointRates) -> Self {
        let mut kinematics = Self {
            joint_m: [DVec3::ZERO; SEGMENTS],
            rotation: [DQuat::IDENTITY; SEGMENTS],
            velocity_m_s: [DVec3::ZERO; SEGMENTS],
            rate_rad_s: [DVec3::ZERO; SEGMENTS],
        };
        for segment in Segment::ALL {
            let i = segment as usize;
            let Some(parent) = body.links[i].parent else {
                continue;
            };
            let p = parent as usize;
            let arm = kinematics.rotation[p] * body.links[i].joint_m;
            kinematics.joint_m[i] = kinematics.joint_m[p] + arm;
            kinematics.velocity_m_s[i] =
                kinematics.velocity_m_s[p] + kinematics.rate_rad_s[p].cross(arm);
            kinematics.rotation[i] = kinematics.rotation[p] * posture.joints[i];
            kinematics.rate_rad_s[i] = kinematics.rate_rad_s[p] + kinematics.rotation[i] * rates[i];
        }
        kinematics
    }

    /// A point fixed to a segment: position (m) and velocity (m/s) in the pelvis frame.
    pub fn point(&self, segment: Segment, own_m: DVec3) -> (DVec3, DVec3) {
        let i = segment as usize;
        let arm = self.rotation[i] * own_m;
        (
            self.joint_m[i] + arm,
            self.velocity_m_s[i] + self.rate_rad_s[i].cross(arm),
        )
    }
}
