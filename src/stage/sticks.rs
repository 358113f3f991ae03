//! The jumper as sticks from joint to joint: no thickness of any segment.

use bevy::math::{DVec3, Vec3};

use crate::mannequin::tint;
use crate::mesh_builder::MeshBuilder;
use crate::palette::{self, BevyColour as _};
use turns_aloft_physics::body::{Body, Segment};

/// Radii of the sticks and of the balls at the joints, m.
const STICK_M: f32 = 0.011;
const JOINT_M: f32 = 0.021;

/// A segment's part of the stick figure, in the segment's frame.
pub fn stick(body: &Body, segment: Segment) -> MeshBuilder {
    use Segment::{
        Head, LeftFoot, LeftThigh, LeftUpperArm, LowerTrunk, RightFoot, RightThigh, RightUpperArm,
        UpperTrunk,
    };
    let color = tint(segment).linear();
    let mut mesh_builder = MeshBuilder::default();
    let mut line = |from: Vec3, to: Vec3| {
        mesh_builder.limb(from, to, STICK_M, STICK_M, color);
    };
    let end_m = body.link(segment).end_m.as_vec3();
    let joint_m = |segment: Segment| body.link(segment).joint_m.as_vec3();
    match segment {
        Head => {
            // A ball from the chin to the crown, with a nose that shows where it faces.
            let radius = 0.075 * body.spec.stature_m as f32 / 1.735;
            let middle = end_m - Vec3::Y * radius;
            line(Vec3::ZERO, middle);
            mesh_builder.ball(middle, Vec3::splat(radius), color);
            let nose = middle + Vec3::X * radius;
            mesh_builder.ball(nose, Vec3::new(0.03, 0.014, 0.014), color);
        }
        LeftFoot | RightFoot => {
            let [heel, toe] = body.sole_m.map(DVec3::as_vec3);
            let lift = Vec3::Y * STICK_M;
            line(Vec3::ZERO, heel + lift);
            line(heel + lift, toe + lift);
            line(toe + lift, Vec3::ZERO);
        }
        LowerTrunk | UpperTrunk => {
            let across = match segment {
                LowerTrunk => [LeftThigh, RightThigh],
                _ => [LeftUpperArm, RightUpperArm],
            };
            line(Vec3::ZERO, end_m);
            let [left, right] = across.map(joint_m);
            line(left, right);
        }
        _ => line(Vec3::ZERO, end_m),
    }
    let ball = palette::now().mark.linear();
    mesh_builder.ball(Vec3::ZERO, Vec3::splat(JOINT_M), ball);
    mesh_builder
}
