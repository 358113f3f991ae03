//! How far two segments of a body in a posture reach into each other.

use glam::DVec3;

use crate::body::forward_kinematics::ForwardKinematics;
use crate::body::model::Segment;
use crate::body::thickness::Solid;

/// Points along a limb at which its distance from another segment is looked at.
const POINTS: u32 = 12;

/// How deep two segments overlap, m; negative is the gap between them.
///
/// A limb is looked at in even points along it, each against the nearest point of the other's core:
/// between two of the points, 2 to 4 cm apart, an overlap is deeper by less than 1 mm.
pub fn overlap_m(
    kinematics: &ForwardKinematics,
    solids: &[Solid],
    one: Segment,
    other: Segment,
) -> f64 {
    let [a, b] = [one, other].map(|segment| PlacedSolid {
        solid: &solids[segment as usize],
        kinematics,
        segment,
    });
    a.deepest_in_m(&b).max(b.deepest_in_m(&a))
}

/// A segment's form where the posture has it.
struct PlacedSolid<'a> {
    solid: &'a Solid,
    kinematics: &'a ForwardKinematics,
    segment: Segment,
}

impl PlacedSolid<'_> {
    /// The deepest that the points of a limb reach into the other; a part of the trunk has none.
    fn deepest_in_m(&self, other: &Self) -> f64 {
        let Solid::Cone { ends_m, radii_m } = self.solid else {
            return f64::NEG_INFINITY;
        };
        (0..=POINTS)
            .map(|i| {
                let part = f64::from(i) / f64::from(POINTS);
                let (point_m, _) = self
                    .kinematics
                    .point(self.segment, ends_m[0].lerp(ends_m[1], part));
                let radius_m = radii_m[0] + part * (radii_m[1] - radii_m[0]);
                radius_m + other.depth_m(point_m)
            })
            .fold(f64::NEG_INFINITY, f64::max)
    }

    /// How deep a point (pelvis frame) lies under the surface, m.
    fn depth_m(&self, point_m: DVec3) -> f64 {
        let i = self.segment as usize;
        let own_m =
            self.kinematics.rotation[i].conjugate() * (point_m - self.kinematics.joint_m[i]);
        match *self.solid {
            Solid::Cone { ends_m, radii_m } => {
                let along = ends_m[1] - ends_m[0];
                let part =
                    ((own_m - ends_m[0]).dot(along) / along.length_squared()).clamp(0.0, 1.0);
                let distance_m = own_m.distance(ends_m[0] + along * part);
                radii_m[0] + part * (radii_m[1] - radii_m[0]) - distance_m
            }
            Solid::Board {
                heights_m: [low, high],
                half_width_m,
                radius_m,
            } => {
                let nearest_m = DVec3::new(
                    0.0,
                    own_m.y.clamp(low, high),
                    own_m.z.clamp(-half_width_m, half_width_m),
                );
                radius_m - own_m.distance(nearest_m)
            }
        }
    }
}
