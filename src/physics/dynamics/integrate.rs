//! One step of the attitude's equation.
//!
//! With n the world's vertical and w the rate, both in pelvis axes: n' = n x w, and the twist of
//! [`Attitude`] goes on by w . (n + y) / (1 + n . y). A body that turns at the rate it has at the
//! beginning of the step carries n round exactly; what is left over, the change of that rate, is
//! small and taken by the classical fourth-order method (integrating factor: Lawson 1967, SIAM J
//! Numer Anal 4:372-380). n is drawn back to unit length after every step.

use glam::{DMat3, DVec3};

use crate::dynamics::attitude::Attitude;
use crate::dynamics::mass_properties::RateFromMomentum;

/// The attitude after `step_s` of a body with the angular momentum `h` about the vertical, whose
/// rates as functions of the momentum at the start, the middle and the end of the step are given.
#[inline]
pub fn step(
    from: Attitude,
    h_kg_m2_s: f64,
    step_s: f64,
    rates_from_momentum: [&RateFromMomentum; 3],
) -> Attitude {
    let [start, middle, end] = rates_from_momentum;
    let rate = |map: &RateFromMomentum, up: DVec3| map.rate_rad_s(up * h_kg_m2_s);
    let first = rate(start, from.up);
    let half_way = turned(first * (-0.5 * step_s));
    let up_2 = half_way * from.up;
    let rate_2 = rate(middle, up_2);
    let left_2 = up_2.cross(rate_2 - first);
    let up_3 = up_2 + left_2 * (0.5 * step_s);
    let rate_3 = rate(middle, up_3);
    let left_3 = up_3.cross(rate_3 - first);
    let up_4 = half_way * (up_2 + left_3 * step_s);
    let rate_4 = rate(end, up_4);
    let left_4 = up_4.cross(rate_4 - first);

    let sixth_s = step_s * (1.0 / 6.0);
    let up = half_way * (up_2 + (left_2 + left_3) * (2.0 * sixth_s)) + left_4 * sixth_s;
    let twist = twist_rad_s(from.up, first)
        + 2.0 * (twist_rad_s(up_2, rate_2) + twist_rad_s(up_3, rate_3))
        + twist_rad_s(up_4, rate_4);
    Attitude {
        // One step of Newton's for the inverse root: the length is off by the step's error only.
        up: up * (1.5 - 0.5 * up.length_squared()),
        twist_rad: from.twist_rad + twist * sixth_s,
    }
}

fn twist_rad_s(up: DVec3, rate: DVec3) -> f64 {
    (rate.dot(up) + rate.y) / (1.0 + up.y)
}

/// The rotation by a small vector `u`, as a matrix: 1 + sin a / a U + (1 - cos a) / a² U² with U the
/// matrix of the cross product by `u`; both quotients by their series, exact to rounding up to
/// a = 0.2.
fn turned(u: DVec3) -> DMat3 {
    const S: [f64; 5] = [1.0, -1.0 / 6.0, 1.0 / 120.0, -1.0 / 5040.0, 1.0 / 362_880.0];
    const C: [f64; 5] = [
        1.0 / 2.0,
        -1.0 / 24.0,
        1.0 / 720.0,
        -1.0 / 40_320.0,
        1.0 / 3_628_800.0,
    ];
    let a2 = u.length_squared();
    let series = |of: &[f64; 5]| of[0] + a2 * (of[1] + a2 * (of[2] + a2 * (of[3] + a2 * of[4])));
    let c = series(&C);
    let (w, cu) = (u * series(&S), u * c);
    let d = 1.0 - c * a2;
    let (xy, xz, yz) = (cu.x * u.y, cu.x * u.z, cu.y * u.z);
    DMat3::from_cols(
        DVec3::new(d + cu.x * u.x, xy + w.z, xz - w.y),
        DVec3::new(xy - w.z, d + cu.y * u.y, yz + w.x),
        DVec3::new(xz + w.y, yz - w.x, d + cu.z * u.z),
    )
}
