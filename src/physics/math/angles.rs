//! Units of angle at the edge of the mechanics.

use std::f64::consts::PI;

/// Degrees to radians.
pub const fn rad(degrees: f64) -> f64 {
    degrees * (PI / 180.0)
}
