//! Attitudes from rates, and how far they turn about an axis.

use glam::{DQuat, DVec3};

use turns_aloft_physics::angles::wrapped_rad;
use turns_aloft_physics::rotation::{exp, smallest_rotation};

/// The turn from one reading to the next, where the rate changes evenly in between: the mean, and the
/// second term of Magnus's series.
fn turn(from_rad_s: DVec3, to_rad_s: DVec3, step_s: f64) -> DQuat {
    let mean = (from_rad_s + to_rad_s) * (0.5 * step_s);
    exp(mean + from_rad_s.cross(to_rad_s) * (step_s * step_s / 12.0))
}

/// The attitude at each reading: from sensor axes to those of the first one.
pub fn attitudes(t_s: &[f64], rate_rad_s: &[DVec3]) -> Vec<DQuat> {
    let mut now = DQuat::IDENTITY;
    let mut attitudes = vec![now];
    for i in 1..t_s.len() {
        let step_s = t_s[i] - t_s[i - 1];
        now = (now * turn(rate_rad_s[i - 1], rate_rad_s[i], step_s)).normalize();
        attitudes.push(now);
    }
    attitudes
}

/// How far each attitude is turned about an axis since the first, not wrapped. `own` is the axis that the
/// sensor has along it when it is not tilted.
pub fn turned_about(axis: DVec3, own: DVec3, attitudes: &[DQuat]) -> Vec<f64> {
    let upright = smallest_rotation(own, axis);
    let twist_rad = |attitude: &DQuat| {
        let from_upright = *attitude * upright.conjugate();
        let along = DVec3::new(from_upright.x, from_upright.y, from_upright.z).dot(axis);
        2.0 * libm::atan2(along, from_upright.w)
    };
    let Some(mut before) = attitudes.first().map(twist_rad) else {
        return Vec::new();
    };
    let mut turned = 0.0;
    let steps = attitudes.iter().map(|attitude| {
        let now = twist_rad(attitude);
        turned += wrapped_rad(now - before);
        before = now;
        turned
    });
    steps.collect()
}

/// The axis about which these attitudes turn on the whole: where the mean rate points in the axes of the
/// first, along which the momentum is in flight.
pub fn mean_axis(rate_rad_s: &[DVec3], attitudes: &[DQuat]) -> Option<DVec3> {
    let sum: DVec3 = rate_rad_s
        .iter()
        .zip(attitudes)
        .map(|(rate, attitude)| *attitude * *rate)
        .sum();
    sum.try_normalize()
}
