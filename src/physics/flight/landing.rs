//! Estimates of what a landing takes: the load, from the touch-down speed, and the torque that would
//! stop the turning. Both follow from the shortest and the longest time in which the landing stops the
//! body.

use std::f64::consts::FRAC_PI_2;

use crate::dynamics::gravity::GRAVITY_M_S2;

/// Peak load over body weight, lowest and highest, for a touch-down at `speed_m_s` (downwards
/// positive) stopped by a half-sine push: 1 + (pi/2) v / (g T).
pub fn load_bw(speed_m_s: f64, stopping_time_s: [f64; 2]) -> [f64; 2] {
    let [short, long] =
        stopping_time_s.map(|time_s| 1.0 + FRAC_PI_2 * speed_m_s / (GRAVITY_M_S2 * time_s));
    [long, short]
}

/// Mean torque about the vertical, lowest and highest, N m, that would stop an angular momentum
/// (size about the vertical, kg m²/s) in the time in which the fall is stopped: |h| / T. In
/// skating it is less: part of the turning goes on in the edge that is glided out of (common
/// practice, no source).
pub fn stopping_torque_n_m(momentum_kg_m2_s: f64, stopping_time_s: [f64; 2]) -> [f64; 2] {
    let [short, long] = stopping_time_s.map(|time_s| momentum_kg_m2_s / time_s);
    [long, short]
}
