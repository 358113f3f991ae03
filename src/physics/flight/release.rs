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
    OutOfRange,
}

impl fmt::Display for ReleaseError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NotARotation => "the orientation is no rotation; give a unit quaternion",
            Self::OutOfRange => {
                "out of range: momentum goes to 1000 kg m²/s, height and speed to 1000 m and m/s"
            }
        })
    }
}

impl std::error::Error for ReleaseError {}

/// Largest momentum, height and speed: far more than any body has, but a flight of it still ends.
const MOST: f64 = 1000.0;

impl Release {
    /// Refuses what no flight can start from.
    pub fn check(&self) -> Result<(), ReleaseError> {
        if !self.orientation.is_normalized() {
            return Err(ReleaseError::NotARotation);
        }
        let sizes = [
            self.angular_momentum_kg_m2_s.length(),
            self.cm_height_m.abs(),
            self.speed_m_s.abs(),
        ];
        if sizes.iter().all(|size| *size <= MOST) {
            Ok(())
        } else {
            Err(ReleaseError::OutOfRange)
        }
    }
}
