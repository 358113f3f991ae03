//! Postures: joint angles named by the clinical motion, and the joint rotations they stand for.
//!
//! All angles are zero in the standing posture with the arms hanging. Shoulder angles follow the
//! ISB's plane of elevation, elevation, axial rotation (Wu et al. 2005, J Biomech 38:981).

use glam::{DQuat, DVec3};

use crate::body::model::{SEGMENTS, Segment};
use crate::math::rotation::{about, mirrored};

/// Rate of every joint, rad/s: the segment's rotation against its parent, in the segment's axes.
pub type JointRates = [DVec3; SEGMENTS];

/// Change of every joint's rate, rad/s², in the same axes.
pub type JointAccelerations = [DVec3; SEGMENTS];

/// No joint moves.
pub const STILL: JointRates = [DVec3::ZERO; SEGMENTS];

/// An arm, in radians; the same numbers mean mirrored positions on either side.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Arm {
    /// 0 lifts the arm sideways, pi/2 forwards.
    pub plane_rad: f64,
    pub elevation_rad: f64,
    /// Inward positive.
    pub axial_rad: f64,
    pub elbow_flexion_rad: f64,
}

/// A leg, in radians; the same numbers mean mirrored positions on either side.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Leg {
    pub hip_flexion_rad: f64,
    pub hip_abduction_rad: f64,
    pub knee_flexion_rad: f64,
    pub plantarflexion_rad: f64,
}

/// Rotation of every segment against its parent; the pelvis's own entry is the identity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Posture {
    pub joints: [DQuat; SEGMENTS],
}

impl Posture {
    /// Standing straight with the arms hanging.
    pub const STANDING: Self = Self {
        joints: [DQuat::IDENTITY; SEGMENTS],
    };

    /// A straight trunk with these limbs.
    pub fn new(left_arm: Arm, right_arm: Arm, left_leg: Leg, right_leg: Leg) -> Self {
        let mut posture = Self::STANDING;
        posture.set_arms(left_arm, right_arm);
        posture.set_legs(left_leg, right_leg);
        posture
    }

    fn set_arms(&mut self, left: Arm, right: Arm) {
        self[Segment::RightUpperArm] = right.shoulder();
        self[Segment::RightForearm] = about(DVec3::Z, right.elbow_flexion_rad);
        self[Segment::LeftUpperArm] = mirrored(left.shoulder());
        self[Segment::LeftForearm] = about(DVec3::Z, left.elbow_flexion_rad);
    }

    fn set_legs(&mut self, left: Leg, right: Leg) {
        self[Segment::RightThigh] = right.hip();
        self[Segment::RightShank] = about(DVec3::Z, -right.knee_flexion_rad);
        self[Segment::RightFoot] = about(DVec3::Z, -right.plantarflexion_rad);
        self[Segment::LeftThigh] = mirrored(left.hip());
        self[Segment::LeftShank] = about(DVec3::Z, -left.knee_flexion_rad);
        self[Segment::LeftFoot] = about(DVec3::Z, -left.plantarflexion_rad);
    }

    /// Whether a segment's joint is anything but straight and still.
    pub fn moves(&self, segment: Segment, rates: &JointRates) -> bool {
        self[segment] != DQuat::IDENTITY || rates[segment as usize] != DVec3::ZERO
    }

    /// The posture of the jumper who turns the other way.
    pub fn mirrored(&self) -> Self {
        let mut other = Self::STANDING;
        for segment in Segment::ALL {
            other[segment.mirrored()] = mirrored(self[segment]);
        }
        other
    }
}

impl std::ops::Index<Segment> for Posture {
    type Output = DQuat;
    fn index(&self, segment: Segment) -> &DQuat {
        &self.joints[segment as usize]
    }
}

impl std::ops::IndexMut<Segment> for Posture {
    fn index_mut(&mut self, segment: Segment) -> &mut DQuat {
        &mut self.joints[segment as usize]
    }
}

impl Arm {
    /// Right shoulder.
    fn shoulder(&self) -> DQuat {
        about(DVec3::Y, self.plane_rad)
            * about(DVec3::X, -self.elevation_rad)
            * about(DVec3::Y, self.axial_rad - self.plane_rad)
    }
}

impl Leg {
    /// Right hip.
    fn hip(&self) -> DQuat {
        about(DVec3::Z, self.hip_flexion_rad) * about(DVec3::X, -self.hip_abduction_rad)
    }
}
