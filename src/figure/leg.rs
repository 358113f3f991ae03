//! A leg between a hip and an ankle that are given.

use glam::{DMat3, DQuat, DVec3};

use turns_aloft_physics::body::{Body, SEGMENTS, Segment};
use turns_aloft_physics::rotation::about;

/// The three segments of a leg.
#[derive(Debug, Clone, Copy)]
pub struct Leg {
    pub thigh: Segment,
    pub shank: Segment,
    pub foot: Segment,
}

pub const LEFT: Leg = Leg {
    thigh: Segment::LeftThigh,
    shank: Segment::LeftShank,
    foot: Segment::LeftFoot,
};
pub const RIGHT: Leg = Leg {
    thigh: Segment::RightThigh,
    shank: Segment::RightShank,
    foot: Segment::RightFoot,
};

impl Leg {
    /// Puts the rotations of its segments in their places.
    pub fn set(self, all: &mut [DQuat; SEGMENTS], [thigh, shank]: [DQuat; 2], foot: DQuat) {
        all[self.thigh as usize] = thigh;
        all[self.shank as usize] = shank;
        all[self.foot as usize] = foot;
    }

    /// Lengths of thigh and shank, m.
    fn lengths_m(self, body: &Body) -> [f64; 2] {
        [self.thigh, self.shank].map(|segment| body.link(segment).end_m.length())
    }

    /// Distance of the ankle from the hip for this angle of the knee, m.
    pub fn reach_m(self, body: &Body, knee_flexion_rad: f64) -> f64 {
        let [thigh, shank] = self.lengths_m(body);
        let square =
            thigh * thigh + shank * shank + 2.0 * thigh * shank * libm::cos(knee_flexion_rad);
        square.max(0.0).sqrt()
    }

    /// Rotations of thigh and shank (world) that bring the ankle of a leg at this hip nearest to a point;
    /// the knee bends about the axis nearest to `hinge`.
    pub fn reaching(self, body: &Body, hip_m: DVec3, ankle_m: DVec3, hinge: DVec3) -> [DQuat; 2] {
        let [thigh, shank] = self.lengths_m(body);
        let way = ankle_m - hip_m;
        let longest_m = self.reach_m(body, 0.0);
        let distance_m = way.length().clamp((thigh - shank).abs() + 1e-6, longest_m);
        let up = -way.normalize_or(DVec3::NEG_Y);
        let across = hinge.reject_from_normalized(up);
        let across = across
            .try_normalize()
            .unwrap_or_else(|| up.any_orthonormal_vector());
        let line = DQuat::from_mat3(&DMat3::from_cols(up.cross(across), up, across));
        let cosine = |a: f64, b: f64, opposite: f64| {
            ((a * a + b * b - opposite * opposite) / (2.0 * a * b)).clamp(-1.0, 1.0)
        };
        let at_hip = libm::acos(cosine(thigh, distance_m, shank));
        let knee = std::f64::consts::PI - libm::acos(cosine(thigh, shank, distance_m));
        let thigh_rotation = line * about(DVec3::Z, at_hip);
        [thigh_rotation, thigh_rotation * about(DVec3::Z, -knee)]
    }
}
