//! How the bed of a trampoline gives way, for looks: it is not computed.

use std::f64::consts::FRAC_PI_2;

use turns_aloft_physics::minimum_jerk::minimum_jerk;

/// Deepest that the bed is shown, m: above the floor under it.
const DEEPEST_M: f64 = 0.5;
/// Of a bed with somebody standing on it, m.
const RESTING_M: f64 = 0.1;
/// Part of the fall that the bed takes; the legs take the rest.
pub const BED_SHARE: f64 = 0.75;
/// How long the bed gives way, and how long it then comes back, s.
const SINKING_S: f64 = 0.2;
const RISING_S: f64 = 0.45;

/// Height of the bed under the feet before take-off at `t_s` < 0, from the speed that it gives, m: a
/// quarter of a swing, upwards from its deepest.
pub fn bed_before_takeoff_m(t_s: f64, speed_m_s: f64) -> f64 {
    let deep_m = (0.6 * SINKING_S * speed_m_s).clamp(1e-3, DEEPEST_M);
    let phase = (-t_s * speed_m_s / deep_m).clamp(0.0, FRAC_PI_2);
    -deep_m * libm::sin(phase)
}

/// Height of the bed under the feet after touch-down, from the speed of the fall, m.
pub fn bed_after_touchdown_m(since_s: f64, fall_m_s: f64) -> f64 {
    let speed_m_s = BED_SHARE * fall_m_s.max(0.0);
    let deep_m = (0.5 * SINKING_S * speed_m_s).min(DEEPEST_M);
    let bottom_s = if speed_m_s > 0.0 {
        2.0 * deep_m / speed_m_s
    } else {
        SINKING_S
    };
    let down = sinking_m(since_s, speed_m_s, bottom_s);
    let rest_m = RESTING_M - deep_m;
    -(down + rest_m * minimum_jerk(since_s, bottom_s, RISING_S).0)
}

/// Way of something that moves at this speed at first and is evenly stopped in `time_s`, m.
pub fn sinking_m(since_s: f64, speed_m_s: f64, time_s: f64) -> f64 {
    let t_s = since_s.clamp(0.0, time_s);
    speed_m_s * t_s * (1.0 - 0.5 * t_s / time_s)
}
