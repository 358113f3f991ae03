//! Where a body may touch the ground: the soles, and the surface of all but the feet.
//!
//! The forms of [`solids`] are hulls of balls, so the lowest point of a body is that of one of the
//! balls. The feet are left to the soles or blades: these are what stands on the ground.

use glam::DVec3;

use crate::body::forward_kinematics::ForwardKinematics;
use crate::body::model::{Body, Segment};
use crate::body::thickness::{Solid, solids};

/// A ball fixed to a segment; a point has no radius.
#[derive(Debug, Clone, Copy)]
struct Ball {
    segment: Segment,
    /// In the segment's frame.
    centre_m: DVec3,
    radius_m: f64,
}

/// The balls of which a body's surface is the hull, segment by segment.
#[derive(Debug, Clone)]
pub struct Surface {
    balls: Vec<Ball>,
}

const FEET: [Segment; 2] = [Segment::LeftFoot, Segment::RightFoot];

impl Surface {
    pub fn new(body: &Body) -> Self {
        let mut balls = Vec::new();
        let mut add = |segment, centre_m, radius_m| {
            balls.push(Ball {
                segment,
                centre_m,
                radius_m,
            });
        };
        for foot in FEET {
            for end_m in body.sole_m {
                add(foot, end_m, 0.0);
            }
        }
        for (segment, solid) in Segment::ALL.into_iter().zip(solids(body)) {
            match solid {
                _ if FEET.contains(&segment) => {}
                Solid::Cone { ends_m, radii_m } => {
                    for (end_m, radius_m) in ends_m.into_iter().zip(radii_m) {
                        add(segment, end_m, radius_m);
                    }
                }
                Solid::Board {
                    heights_m,
                    half_width_m,
                    radius_m,
                } => {
                    for height_m in heights_m {
                        for z in [-half_width_m, half_width_m] {
                            add(segment, DVec3::new(0.0, height_m, z), radius_m);
                        }
                    }
                }
            }
        }
        Self { balls }
    }

    /// Lowest point of a body whose segments are there, relative to a point of the pelvis frame (m), for
    /// this direction (unit, pelvis frame) upwards, m.
    pub fn lowest_m(&self, kinematics: &ForwardKinematics, up: DVec3, from_m: DVec3) -> f64 {
        let height = |ball: &Ball| {
            let (centre_m, _) = kinematics.point(ball.segment, ball.centre_m);
            (centre_m - from_m).dot(up) - ball.radius_m
        };
        self.balls.iter().map(height).fold(f64::INFINITY, f64::min)
    }
}
