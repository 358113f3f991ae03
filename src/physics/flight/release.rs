//! How a body is let go: the start of a flight about any axis.

use std::fmt;

use glam::{DQuat, DVec3};

/// How a body is let go. Nothing of it follows from a posture: the attitude may be any, and the angular
/// momentum may point anywhere, or be zero.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Release {
    /// Pelvis axes to world axes.
    pub orientation: DQuat,
    /// Angular momentum about the CM, world axes.
    pub angular_momentum_kg_m2_s: DVec3,
    pub cm_height_m: f64,
    /// Speed of the CM upwards.
    pub speed_m_s: f64,
}

/// Why a body can't be let go like that.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ReleaseError {
    NotARotation,
    NotFinite,
}

impl fmt::Display for ReleaseError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NotARotation => "the orientation is no rotation; give a unit quaternion",
            Self::NotFinite => "momentum, height and speed have to be finite numbers",
        })
    }
}

impl std::error::Error for ReleaseError {}

impl Release {
    /// Refuses what no flight can start from.
    pub fn check(&self) -> Result<(), ReleaseError> {
        if !self.orientation.is_normalized() {
            return Err(ReleaseError::NotARotation);
        }
        let finite = self.angular_momentum_kg_m2_s.is_finite()
            && self.cm_height_m.is_finite()
            && self.speed_m_s.is_finite();
        if finite {
            Ok(())
        } else {
            Err(ReleaseError::NotFinite)
        }
    }
}
