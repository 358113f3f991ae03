//! Where every segment is shown.

use glam::{DQuat, DVec3};

use turns_aloft_physics::body::{Body, SEGMENTS, Segment};
use turns_aloft_physics::flight::Pose;
use turns_aloft_physics::posture::Posture;
use turns_aloft_physics::rotation::about;

/// The jumper as shown at one moment, world frame.
#[derive(Debug, Clone, PartialEq)]
pub struct FigurePose {
    /// Joint of each segment towards the pelvis, m.
    pub joint_m: [DVec3; SEGMENTS],
    /// Segment axes to world axes.
    pub rotation: [DQuat; SEGMENTS],
    /// CM of the whole body, m.
    pub cm_m: DVec3,
}

impl FigurePose {
    pub fn flown(pose: &Pose) -> Self {
        Self {
            joint_m: Segment::ALL.map(|segment| pose.point_m(segment, DVec3::ZERO)),
            rotation: Segment::ALL.map(|segment| pose.orientation(segment)),
            cm_m: pose.sample.cm_m(),
        }
    }

    /// A body whose pelvis is there and whose segments are turned so.
    pub fn of(body: &Body, pelvis_m: DVec3, rotation: [DQuat; SEGMENTS]) -> Self {
        let mut joint_m = [pelvis_m; SEGMENTS];
        for segment in Segment::ALL {
            if let Some(parent) = segment.parent() {
                let p = parent as usize;
                joint_m[segment as usize] = joint_m[p] + rotation[p] * body.link(segment).joint_m;
            }
        }
        let moment = |segment: Segment| {
            let (i, link) = (segment as usize, body.link(segment));
            (joint_m[i] + rotation[i] * link.cm_m) * link.mass_kg
        };
        let cm_m = Segment::ALL.into_iter().map(moment).sum::<DVec3>() / body.mass_kg;
        Self {
            joint_m,
            rotation,
            cm_m,
        }
    }

    /// A body that stands or sits upright, its hips there, turned so far about the vertical through the origin.
    pub fn upright(body: &Body, posture: &Posture, hips_m: DVec3, turned_rad: f64) -> Self {
        let mut rotation = [DQuat::IDENTITY; SEGMENTS];
        for segment in Segment::ALL {
            let parent = segment.parent();
            let of_parent = parent.map_or(DQuat::IDENTITY, |parent| rotation[parent as usize]);
            rotation[segment as usize] = of_parent * posture[segment];
        }
        Self::of(body, hips_m, rotation).turned_about(DVec3::ZERO, turned_rad)
    }

    /// A point fixed to a segment, m.
    pub fn point_m(&self, segment: Segment, own_m: DVec3) -> DVec3 {
        let i = segment as usize;
        self.joint_m[i] + self.rotation[i] * own_m
    }

    /// Lowest point of both soles or blades, m.
    pub fn lowest_m(&self, body: &Body) -> f64 {
        [Segment::LeftFoot, Segment::RightFoot]
            .into_iter()
            .flat_map(|foot| body.sole_m.map(|end_m| self.point_m(foot, end_m).y))
            .fold(f64::INFINITY, f64::min)
    }

    /// All of it turned about the vertical through a point.
    pub fn turned_about(mut self, centre_m: DVec3, angle_rad: f64) -> Self {
        let turn = about(DVec3::Y, angle_rad);
        let turned = |at_m: DVec3| centre_m + turn * (at_m - centre_m);
        self.joint_m = self.joint_m.map(turned);
        self.rotation = self.rotation.map(|rotation| turn * rotation);
        self.cm_m = turned(self.cm_m);
        self
    }

    /// All of it moved up.
    pub fn raised(mut self, by_m: f64) -> Self {
        for joint_m in &mut self.joint_m {
            joint_m.y += by_m;
        }
        self.cm_m.y += by_m;
        self
    }
}
