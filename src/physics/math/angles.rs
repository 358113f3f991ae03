//! Angles: degrees, and angles that count once round only.

use std::f64::consts::{PI, TAU};

/// Degrees to radians.
pub const fn rad(degrees: f64) -> f64 {
    degrees * (PI / 180.0)
}

/// The same angle in (-pi, pi].
pub fn wrapped_rad(angle_rad: f64) -> f64 {
    let turned = angle_rad - TAU * libm::round(angle_rad / TAU);
    if turned <= -PI { turned + TAU } else { turned }
}
