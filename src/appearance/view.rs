//! The named views of the 3D picture, which the panels offer and the camera moves to.

use std::f32::consts::FRAC_PI_2;

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum View {
    Front,
    /// Level with the jumper, where heights and the tilt of the axis are easiest to read.
    Side,
    /// Straight down, as a plan: where the dial is easiest to read, and which way the body faces.
    Above,
}

impl View {
    /// Rotation of the camera about the vertical (0 looks along -Z, a quarter turn along -X), and the angle
    /// of its line of sight below the horizontal, rad.
    pub const fn yaw_and_pitch_rad(self) -> [f32; 2] {
        match self {
            Self::Front => [1.15, 0.30],
            Self::Side => [0.0, 0.04],
            Self::Above => [FRAC_PI_2, FRAC_PI_2],
        }
    }
}
