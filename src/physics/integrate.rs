//! One step of the attitude equation on the rotation group.
//!
//! `R' = R [w]x` with w a rate in body axes. Fourth-order Runge-Kutta-Munthe-Kaas: Munthe-Kaas H.
//! High order Runge-Kutta methods on manifolds. Appl Numer Math 1999;29:115-127. The quaternion
//! stays a unit one to rounding; there are no angles that could lock.

use glam::{DQuat, DVec3};

use super::rotation::exp;

/// Inverse of the derivative of the exponential map for `R' = R [w]x`, to the order the method
/// needs: w + u x w / 2 + u x (u x w) / 12.
fn dexp_inverse(u: DVec3, w: DVec3) -> DVec3 {
    let first = u.cross(w);
    w + first * 0.5 + u.cross(first) * (1.0 / 12.0)
}

/// The orientation after `step_s`, given the body-axes rate as a function of the orientation at
/// the start, the middle and the end of the step.
pub fn step(
    from: DQuat,
    step_s: f64,
    start: impl Fn(DQuat) -> DVec3,
    middle: impl Fn(DQuat) -> DVec3,
    end: impl Fn(DQuat) -> DVec3,
) -> DQuat {
    let k1 = start(from);
    let u2 = k1 * (0.5 * step_s);
    let k2 = dexp_inverse(u2, middle(from * exp(u2)));
    let u3 = k2 * (0.5 * step_s);
    let k3 = dexp_inverse(u3, middle(from * exp(u3)));
    let u4 = k3 * step_s;
    let k4 = dexp_inverse(u4, end(from * exp(u4)));
    (from * exp((k1 + (k2 + k3) * 2.0 + k4) * (step_s / 6.0))).normalize()
}
