//! One step of the attitude's equation.
//!
//! With n the direction of the angular momentum, about which the attitude is split, and w the rate, both
//! in pelvis axes: n' = n x w, and
//! the twist of [`Attitude`] goes on by (w . n + s w . y) / (1 + s n . y), where s is +1 in the first
//! chart and -1 in the second. A body that turns at the rate it has at the beginning of the step
//! carries n round exactly; what is left over, the change of that rate, is small and taken by the
//! classical fourth-order method (integrating factor: Lawson 1967, SIAM J Numer Anal 4:372-380). n is
//! drawn back to unit length after every step.

use glam::{DMat3, DVec3};

use crate::dynamics::attitude::Attitude;
use crate::dynamics::mass_properties::RateFromMomentum;

/// The attitude after `step_s` of a body with angular momentum of this size (kg m²/s, 0 for none), whose
/// rates as functions of the momentum at the start, the middle and the end of the step are given. In the
/// first chart, which a body that does not lie down never leaves.
#[inline]
pub fn step(
    from: Attitude,
    h_kg_m2_s: f64,
    step_s: f64,
    rates_from_momentum: [&RateFromMomentum; 3],
) -> Attitude {
    debug_assert!(from.chart > 0.0);
    step_in(1.0, from, h_kg_m2_s, step_s, rates_from_momentum).0
}

/// The same in either chart, and the integral of the rate about the momentum, rad: regular whichever way
/// the axes of the body point.
pub fn step_and_turn(
    from: Attitude,
    h_kg_m2_s: f64,
    step_s: f64,
    rates_from_momentum: [&RateFromMomentum; 3],
) -> (Attitude, f64) {
    let (attitude, turned_rad) = step_in(from.chart, from, h_kg_m2_s, step_s, rates_from_momentum);
    (attitude.in_regular_chart(), turned_rad)
}

#[inline(always)]
fn step_in(
    chart: f64,
    from: Attitude,
    h_kg_m2_s: f64,
    step_s: f64,
    rates_from_momentum: [&RateFromMomentum; 3],
) -> (Attitude, f64) {
    let [start, middle, end] = rates_from_momentum;
    let rate = |map: &RateFromMomentum, axis: DVec3| map.rate_rad_s(axis * h_kg_m2_s);
    let axis_1 = from.axis;
    let first = rate(start, axis_1);
    let half_way = turned(first * (-0.5 * step_s));
    let axis_2 = half_way * axis_1;
    let rate_2 = rate(middle, axis_2);
    let left_2 = axis_2.cross(rate_2 - first);
    let axis_3 = axis_2 + left_2 * (0.5 * step_s);
    let rate_3 = rate(middle, axis_3);
    let left_3 = axis_3.cross(rate_3 - first);
    let axis_4 = half_way * (axis_2 + left_3 * step_s);
    let rate_4 = rate(end, axis_4);
    let left_4 = axis_4.cross(rate_4 - first);

    let sixth_s = step_s * (1.0 / 6.0);
    let axis = half_way * (axis_2 + (left_2 + left_3) * (2.0 * sixth_s)) + left_4 * sixth_s;
    let along = [
        first.dot(axis_1),
        rate_2.dot(axis_2),
        rate_3.dot(axis_3),
        rate_4.dot(axis_4),
    ];
    let twist =
        |along: f64, axis: DVec3, rate: DVec3| (along + chart * rate.y) / (1.0 + chart * axis.y);
    let twisted = twist(along[0], axis_1, first)
        + 2.0 * (twist(along[1], axis_2, rate_2) + twist(along[2], axis_3, rate_3))
        + twist(along[3], axis_4, rate_4);
    let attitude = Attitude {
        // One step of Newton's for the inverse root: the length is off by the step's error only.
        axis: axis * (1.5 - 0.5 * axis.length_squared()),
        twist_rad: from.twist_rad + twisted * sixth_s,
        chart,
    };
    let turned_rad = (along[0] + 2.0 * (along[1] + along[2]) + along[3]) * sixth_s;
    (attitude, turned_rad)
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
