//! An attempt measured by a gyroscope on the trunk, reduced to what its trace says of the flight.
//!
//! Times are seconds on the trace's own clock.

use serde::Serialize;

#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Sensor {
    /// Name of the trace's file.
    pub file_name: String,
    /// When the ice was left and met again, each with the standard deviation of its error.
    pub takeoff_s: f64,
    pub takeoff_sigma_s: f64,
    pub landing_s: f64,
    pub landing_sigma_s: f64,
    /// Turned about the vertical since any instant, positive anticlockwise seen from above, unwrapped.
    pub turned: Vec<Turned>,
    /// How far off the rate is that all of them have in common, as a share: the sensor's scale. Standard
    /// deviation.
    pub scale_sigma: f64,
}

#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Turned {
    pub t_s: f64,
    pub angle_rad: f64,
    /// Standard deviation of what is wrong with this reading alone.
    pub sigma_rad: f64,
}
