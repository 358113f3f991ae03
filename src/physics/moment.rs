//! The flight at one instant.

use std::f64::consts::TAU;

use glam::{DQuat, DVec3};

/// The flight at one instant. World frame unless said otherwise.
#[derive(Debug, Clone, Copy)]
pub struct Moment {
    pub t_s: f64,
    /// Pelvis axes to world axes.
    pub orientation: DQuat,
    /// Angular velocity of the pelvis, rad/s.
    pub rate_rad_s: DVec3,
    /// Turned since take-off in the turning direction, rad, unwrapped.
    pub turned_rad: f64,
    /// Moment of inertia about h, kg m².
    pub inertia_kg_m2: f64,
    /// The body's long axis (least principal axis).
    pub long_axis: DVec3,
    /// Kinetic energy relative to the CM, J.
    pub energy_j: f64,
    /// Pull that keeps the left and the right hand, with what it holds, on its circle, N.
    pub hand_pull_n: [f64; 2],
    /// CM of the whole body, m.
    pub cm_m: DVec3,
    /// Height of the lowest point of either foot over the ice, m.
    pub lowest_m: f64,
}

impl Moment {
    /// Turned since take-off, in whole turns.
    pub fn air_turns(&self) -> f64 {
        self.turned_rad / TAU
    }

    /// Tilt of the long axis against the vertical, rad.
    pub fn tilt_rad(&self) -> f64 {
        let level = libm::hypot(self.long_axis.x, self.long_axis.z);
        libm::atan2(level, self.long_axis.y)
    }
}
