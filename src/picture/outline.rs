//! The outline of a segment of the body, seen from one side without perspective.

use glam::{DVec2, DVec3};
use turns_aloft_physics::order::by_number;

use turns_aloft_physics::rotation::about;

/// Points around each round end: the outline is within 1 % of the radius.
const ROUND: usize = 24;

/// A round end of a segment, as seen: its middle and radius, m.
#[derive(Debug, Clone, Copy)]
pub struct End {
    pub middle_m: DVec2,
    pub radius_m: f64,
}

/// From where the body is seen.
#[derive(Debug, Clone, Copy)]
pub struct Side {
    right: DVec3,
    up: DVec3,
    /// From the body to the eye.
    towards: DVec3,
}

impl Side {
    /// `yaw_rad` 0 looks along -Z and π/2 along -X; `pitch_rad` is the angle below the horizontal.
    pub fn new(yaw_rad: f64, pitch_rad: f64) -> Self {
        let turn = about(DVec3::Y, yaw_rad) * about(DVec3::X, -pitch_rad);
        Self {
            right: turn * DVec3::X,
            up: turn * DVec3::Y,
            towards: turn * DVec3::Z,
        }
    }

    /// Right and up on the picture, m.
    pub fn seen_m(&self, point_m: DVec3) -> DVec2 {
        DVec2::new(self.right.dot(point_m), self.up.dot(point_m))
    }

    /// How near to the eye, m.
    pub fn nearness_m(&self, point_m: DVec3) -> f64 {
        self.towards.dot(point_m)
    }
}

/// The corners around round ends and all between them: their convex hull, anticlockwise.
pub fn around(ends: &[End]) -> Vec<DVec2> {
    let points: Vec<DVec2> = ends
        .iter()
        .flat_map(|end| {
            (0..ROUND).map(|i| {
                let angle = std::f64::consts::TAU * i as f64 / ROUND as f64;
                end.middle_m + end.radius_m * DVec2::new(libm::cos(angle), libm::sin(angle))
            })
        })
        .collect();
    // From left to right, of those above one another from below.
    let points = by_number(by_number(points, |point| point.y), |point| point.x);
    // Andrew's monotone chain: the lower side from left to right, the upper one back.
    let mut corners = half(points.iter().copied());
    corners.extend(half(points.iter().rev().copied()));
    corners
}

/// One side of the hull, without its last point.
fn half(points: impl Iterator<Item = DVec2>) -> Vec<DVec2> {
    let mut corners: Vec<DVec2> = Vec::new();
    for point in points {
        while let [.., a, b] = corners[..] {
            if (b - a).perp_dot(point - b) > 0.0 {
                break;
            }
            corners.pop();
        }
        corners.push(point);
    }
    corners.pop();
    corners
}
