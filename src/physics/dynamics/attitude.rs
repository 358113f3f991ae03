//! The attitude of the pelvis as tilt and twist (swing-twist decomposition).
//!
//! Angular momentum is vertical, so how the body wobbles does not depend on how far it has turned:
//! the two are computed one after the other, and turns are counted without any jump at half a
//! turn. The attitude is R = (turn about the vertical) (smallest rotation that puts `up` upright);
//! only a body upside down has no such split, and none gets near to that.

use glam::{DQuat, DVec3};

use crate::math::rotation::{about, smallest_rotation};

/// The attitude of the pelvis.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Attitude {
    /// The world's vertical in pelvis axes, unit.
    pub up: DVec3,
    /// Turn about the vertical since the pelvis was only tilted, rad, not wrapped.
    pub twist_rad: f64,
}

impl Attitude {
    /// From pelvis axes to world axes.
    pub fn of(orientation: DQuat) -> Self {
        let up = orientation.conjugate() * DVec3::Y;
        let twist = orientation * smallest_rotation(up, DVec3::Y).conjugate();
        Self {
            up,
            twist_rad: 2.0 * libm::atan2(twist.y, twist.w),
        }
    }

    /// Pelvis axes to world axes.
    pub fn orientation(&self) -> DQuat {
        (about(DVec3::Y, self.twist_rad) * smallest_rotation(self.up, DVec3::Y)).normalize()
    }

    /// How far the pelvis's right-left axis has turned about the vertical, rad, since an attitude
    /// from which the tilt alone has not turned it by half a turn or more.
    pub fn turned_since(&self, before: &Self) -> f64 {
        let ([z, x], [was_z, was_x]) = (self.tilted_right(), before.tilted_right());
        let tilted = libm::atan2(was_z * x - was_x * z, was_z * z + was_x * x);
        self.twist_rad - before.twist_rad + tilted
    }

    /// Where the tilt alone points the right-left axis: along the world's Z and X, to some length.
    fn tilted_right(&self) -> [f64; 2] {
        let up = self.up;
        [1.0 + up.y - up.z * up.z, -up.x * up.z]
    }
}
