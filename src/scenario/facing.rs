//! Which way a landing faces, against the way it has to.

use turns_aloft_physics::plan::Turning;
use turns_aloft_physics::rotation::heading_rad;
use turns_aloft_physics::sample::FlightSample;

/// Within this of the heading owed a landing faces as it has to, and within this of the opposite one
/// the opposite way. Our own limit: half-way to sideways.
pub const NEAR_DEG: f64 = 45.0;

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Facing {
    AsOwed,
    Sideways,
    Opposite,
}

impl Facing {
    /// For hips that face `past_deg` further than they have to, in (-180, 180].
    pub fn of(past_deg: f64) -> Self {
        if past_deg.abs() <= NEAR_DEG {
            Self::AsOwed
        } else if past_deg.abs() < 180.0 - NEAR_DEG {
            Self::Sideways
        } else {
            Self::Opposite
        }
    }
}

/// How far past the heading owed the hips face, degrees in (-180, 180], positive turned further.
pub fn past_deg(sample: &FlightSample, owed_heading_rad: f64, turning: Turning) -> f64 {
    let past_rad = turning.sign() * (heading_rad(sample.orientation()) - owed_heading_rad);
    let around_deg = past_rad.to_degrees().rem_euclid(360.0);
    if around_deg > 180.0 {
        around_deg - 360.0
    } else {
        around_deg
    }
}
