//! How the movements of a landing run.

use glam::{DQuat, DVec3};

use turns_aloft_physics::minimum_jerk::minimum_jerk;
use turns_aloft_physics::rotation::{exp, log};

/// How far something has come that moves at 1 per second at first and comes to rest after `time_s`:
/// half of that time in the end, with a continuous rate.
pub fn dying_away(t_s: f64, time_s: f64) -> f64 {
    let x = (t_s / time_s).clamp(0.0, 1.0);
    let x3 = x * x * x;
    time_s * (x - x3 + 0.5 * x3 * x)
}

/// Progress of a minimum-jerk movement that starts at 0.
pub fn progress(t_s: f64, time_s: f64) -> f64 {
    minimum_jerk(t_s, 0.0, time_s).0
}

/// A joint that goes on as it turned (rate in its own axes) while that dies away, and reaches `to` on
/// the way.
pub fn turned_on(from: DQuat, rate_rad_s: DVec3, to: DQuat, dying: [f64; 2], part: f64) -> DQuat {
    let [now_s, in_the_end_s] = dying;
    let in_the_end = from * exp(rate_rad_s * in_the_end_s);
    from * exp(rate_rad_s * now_s) * exp(log(in_the_end.conjugate() * to) * part)
}
