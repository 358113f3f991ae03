//! The camera position from which the whole jump fits the picture, and a second one beside it.

use glam::{Quat, Vec2, Vec3};

/// Horizontal circles about the vertical through the CM that have to fit the picture.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Subject {
    /// Radius of the dial on the ice, m.
    pub dial_m: f32,
    /// Height and radius of the spread arms at the apex of the flight, m.
    pub arms_m: [f32; 2],
    /// Heights of the lowest point that the feet come to and of the highest point, m.
    pub low_m: f32,
    pub top_m: f32,
    /// Where a second figure stands that has to fit as well, from the first; zero without one. Its dial is
    /// the first one's.
    pub beside_m: Vec3,
}

/// Radius about each figure's axis that its feet keep to, m.
const FEET_M: f32 = 0.3;

impl Subject {
    fn points(&self) -> impl Iterator<Item = Vec3> {
        let ring = |height: f32, radius: f32| {
            (0..24).map(move |i| {
                let p = Vec2::from_angle(std::f32::consts::TAU * i as f32 / 24.0) * radius;
                Vec3::new(p.x, height, p.y)
            })
        };
        let second = move |p: Vec3| p + self.beside_m;
        let arms = move || ring(self.arms_m[0], self.arms_m[1]);
        ring(0.0, self.dial_m)
            .chain(arms())
            .chain(ring(self.low_m, FEET_M))
            .chain(ring(self.top_m, 0.06))
            .chain(arms().map(second))
            .chain(ring(0.0, FEET_M).map(second))
    }

    fn middle(&self) -> Vec3 {
        0.5 * (Vec3::Y * (self.low_m + self.top_m) + self.beside_m)
    }

    /// Interpolates to another subject; `part` 1 is the other.
    pub fn towards(&self, other: &Self, part: f32) -> Self {
        let mix = |a: f32, b: f32| {
            if (b - a).abs() < 1e-3 {
                b
            } else {
                a + (b - a) * part
            }
        };
        Self {
            dial_m: mix(self.dial_m, other.dial_m),
            arms_m: [
                mix(self.arms_m[0], other.arms_m[0]),
                mix(self.arms_m[1], other.arms_m[1]),
            ],
            low_m: mix(self.low_m, other.low_m),
            top_m: mix(self.top_m, other.top_m),
            beside_m: Vec3::new(
                mix(self.beside_m.x, other.beside_m.x),
                mix(self.beside_m.y, other.beside_m.y),
                mix(self.beside_m.z, other.beside_m.z),
            ),
        }
    }

    /// The camera position, m, world frame, for a camera oriented by `turn` (looking along its -Z),
    /// from which everything just fits into half angles with these tangents (horizontal, vertical).
    /// A zoom over 1 moves nearer.
    pub fn eye(&self, turn: Quat, tangents: Vec2, zoom: f32) -> Vec3 {
        let (right, up, ahead) = (turn * Vec3::X, turn * Vec3::Y, turn * Vec3::NEG_Z);
        let across = Fit::new(
            self.points().map(|p| (p.dot(right), p.dot(ahead))),
            tangents.x,
        );
        let upward = Fit::new(self.points().map(|p| (p.dot(up), p.dot(ahead))), tangents.y);
        let fitting = across.depth.min(upward.depth);
        let middle = self.middle().dot(ahead);
        let depth = middle - (middle - fitting) / zoom;
        right * across.offset + up * upward.offset + ahead * depth
    }
}

/// The fit along one axis of the picture.
struct Fit {
    /// Position along the line of sight from which everything just fits, m.
    depth: f32,
    /// Position along the axis, m.
    offset: f32,
}

impl Fit {
    /// Solves, for points (across, ahead), |across - offset| <= tangent (ahead - depth).
    fn new(points: impl Iterator<Item = (f32, f32)>, tangent: f32) -> Self {
        let (mut right, mut left) = (f32::NEG_INFINITY, f32::NEG_INFINITY);
        for (across, ahead) in points {
            right = right.max(across - tangent * ahead);
            left = left.max(-across - tangent * ahead);
        }
        Self {
            depth: -0.5 * (right + left) / tangent,
            offset: 0.5 * (right - left),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const JUMP: Subject = Subject {
        dial_m: 1.1,
        arms_m: [1.9, 0.9],
        low_m: -0.4,
        top_m: 2.7,
        beside_m: Vec3::ZERO,
    };

    const TWO: Subject = Subject {
        beside_m: Vec3::new(0.0, 0.0, 1.7),
        ..JUMP
    };

    /// Every point is inside the picture, and one touches its edge.
    #[test]
    fn whole_jump_fits_every_shape_of_picture_and_fills_it() {
        for subject in [JUMP, TWO] {
            fits_and_fills(subject);
        }
    }

    fn fits_and_fills(subject: Subject) {
        for pitch_deg in [0.0_f32, 15.0, 45.0, 80.0, 90.0] {
            for aspect in [0.4_f32, 0.75, 1.0, 1.8, 3.0] {
                let tangents = Vec2::new(0.25 * aspect, 0.25);
                let turn =
                    Quat::from_rotation_y(0.7) * Quat::from_rotation_x(-pitch_deg.to_radians());
                let eye = subject.eye(turn, tangents, 1.0);
                let widest = subject
                    .points()
                    .map(|p| {
                        let seen = turn.inverse() * (p - eye);
                        assert!(seen.z < 0.0, "behind the eye at {pitch_deg}, {aspect}");
                        (seen.truncate().abs() / (-seen.z * tangents)).max_element()
                    })
                    .fold(0.0, f32::max);
                // Single precision over a few metres.
                assert!(
                    (widest - 1.0).abs() < 1e-3,
                    "{widest} at {pitch_deg}, {aspect}"
                );
            }
        }
    }

    /// The head and feet of the second figure are in the picture, and the first stays in it.
    #[test]
    fn both_figures_fit_side_by_side() {
        for yaw_rad in [0.0_f32, 1.15, 2.4] {
            let turn = Quat::from_rotation_y(yaw_rad) * Quat::from_rotation_x(-0.3);
            let tangents = Vec2::new(0.35, 0.25);
            let eye = TWO.eye(turn, tangents, 1.0);
            for place in [Vec3::ZERO, TWO.beside_m] {
                for height in [0.0, TWO.arms_m[0]] {
                    let seen = turn.inverse() * (place + Vec3::Y * height - eye);
                    let share = seen.truncate().abs() / (-seen.z * tangents);
                    assert!(share.max_element() <= 1.0, "{yaw_rad}: {share}");
                }
            }
        }
    }
}
