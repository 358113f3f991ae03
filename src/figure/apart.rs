//! How far two legs are apart from each other, for keeping one out of the other.

use glam::DVec3;

use crate::forms::girth;
use crate::leg::Leg;
use crate::pose::FigurePose;
use turns_aloft_physics::body::Body;

/// Radii of shank and foot with all that is drawn around them, m, of the stature that is drawn.
const SHANK_M: f64 = 0.058;
const FOOT_M: f64 = 0.046;

/// A straight line with a radius.
struct Capsule {
    ends_m: [DVec3; 2],
    radius_m: f64,
}

/// How deep the shank or the foot of one leg is inside that of the other, m; negative is a gap.
pub fn overlap_m(body: &Body, pose: &FigurePose, one: Leg, other: Leg) -> f64 {
    let [one, other] = [one, other].map(|leg| capsules(body, pose, leg));
    let pairs = one.iter().flat_map(|a| other.iter().map(move |b| (a, b)));
    pairs
        .map(|(a, b)| a.radius_m + b.radius_m - distance_m(a.ends_m, b.ends_m))
        .fold(f64::NEG_INFINITY, f64::max)
}

fn capsules(body: &Body, pose: &FigurePose, leg: Leg) -> [Capsule; 3] {
    let girth = f64::from(girth(body));
    let [knee_m, ankle_m] = [leg.shank, leg.foot].map(|segment| pose.joint_m[segment as usize]);
    let sole_m = body.sole_m.map(|end_m| pose.point_m(leg.foot, end_m));
    [
        ([knee_m, ankle_m], SHANK_M),
        // The foot, and the boot or the blade under it.
        (sole_m.map(|end_m| 0.5 * (end_m + ankle_m)), FOOT_M),
        (sole_m, 0.3 * FOOT_M),
    ]
    .map(|(ends_m, radius_m)| Capsule {
        ends_m,
        radius_m: radius_m * girth,
    })
}

/// Least distance between two straight lines, m: looked at in even points along the one.
fn distance_m(one: [DVec3; 2], [from, to]: [DVec3; 2]) -> f64 {
    const POINTS: u32 = 16;
    let along = to - from;
    (0..=POINTS)
        .map(|i| {
            let at = one[0].lerp(one[1], f64::from(i) / f64::from(POINTS));
            let part = ((at - from).dot(along) / along.length_squared()).clamp(0.0, 1.0);
            at.distance(from + along * part)
        })
        .fold(f64::INFINITY, f64::min)
}
