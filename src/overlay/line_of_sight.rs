//! From where the camera looks, in the world of a flight.

use glam::DVec3;

use turns_aloft_physics::flight::Flight;
use turns_aloft_physics::rotation::heading_rad;

/// The direction from the jumper to the camera, seen from above. The camera looks level.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LineOfSight {
    /// At take-off, from the world's X, anticlockwise.
    pub takeoff_rad: f64,
    /// By how much it turns from then on.
    pub rate_rad_s: f64,
}

impl LineOfSight {
    /// Of a camera that sees the hips' front turned by this angle at take-off (0 towards it, anticlockwise
    /// seen from above), and sees the jumper turn by `drift_rad` more in the whole flight than the jumper
    /// does.
    pub fn of_facing(flight: &Flight, first_facing_rad: f64, drift_rad: f64) -> Self {
        let heading_rad = heading_rad(flight.takeoff().orientation());
        Self {
            takeoff_rad: heading_rad - first_facing_rad,
            rate_rad_s: -drift_rad / flight.touchdown_s,
        }
    }

    /// To the right of the picture, so long after take-off: across the line of sight, level.
    pub fn right(&self, since_s: f64) -> DVec3 {
        let (sin, cos) = libm::sincos(self.takeoff_rad + self.rate_rad_s * since_s);
        DVec3::new(-sin, 0.0, -cos)
    }

    /// A point of the world across the line of sight: to the right, and up, m.
    pub fn across_m(&self, point_m: DVec3, since_s: f64) -> [f64; 2] {
        [self.right(since_s).dot(point_m), point_m.y]
    }
}
