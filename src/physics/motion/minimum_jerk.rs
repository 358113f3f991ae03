//! The minimum-jerk blend between two postures.
//!
//! Flash T, Hogan N. The coordination of arm movements: an experimentally confirmed mathematical
//! model. J Neurosci 1985;5(7):1688-1703.

/// The largest rate of the progress, in the middle, times the time that the movement takes.
pub const PEAK_RATE: f64 = 1.875;

/// Progress of a movement that starts at `start_s` and takes `time_s`, and its rate (1/s).
///
/// 0 before, 1 after; value, first and second derivative are continuous everywhere.
pub fn minimum_jerk(t_s: f64, start_s: f64, time_s: f64) -> (f64, f64) {
    let x = ((t_s - start_s) / time_s).clamp(0.0, 1.0);
    let (x2, y) = (x * x, 1.0 - x);
    let s = x2 * x * (10.0 + x * (6.0 * x - 15.0));
    (s, 30.0 * x2 * y * y / time_s)
}

/// Second derivative of that progress, 1/s²; 0 before and after.
pub fn minimum_jerk_acceleration(t_s: f64, start_s: f64, time_s: f64) -> f64 {
    let x = ((t_s - start_s) / time_s).clamp(0.0, 1.0);
    let y = 1.0 - x;
    60.0 * x * y * (y - x) / (time_s * time_s)
}
