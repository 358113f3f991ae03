//! The boards of a wooden floor.

use bevy::math::{Vec2, Vec3};

use crate::level;
use crate::mesh_builder::MeshBuilder;
use crate::palette::{self, BevyColour as _};
use crate::traces::{EDGE_M, line, smooth};

/// Width and length of a board, and of the joint between two, m.
const BOARD_M: [f32; 2] = [0.22, 2.2];
const JOINT_M: f32 = 0.012;
/// Boards on either side of the middle one.
const BOARDS: i32 = 34;
/// Strength of the joints, and of the tint that tells boards apart.
const JOINT: f32 = 0.75;
const TINTS: [f32; 5] = [0.0, 0.16, 0.05, 0.22, 0.10];
/// Parts in which a board fades out.
const PARTS: i32 = 16;

/// Boards along X at this height, with their joints; they fade out far from the jumper.
pub fn boards(height_m: f32) -> MeshBuilder {
    let mut mesh_builder = MeshBuilder::default();
    let joint = palette::now().joint;
    let height_m = height_m + level::SCRATCH;
    for board in -BOARDS..=BOARDS {
        let z = BOARD_M[0] * board as f32;
        let half_m = (EDGE_M * EDGE_M - z * z).max(0.0).sqrt();
        let xs = || (-PARTS..=PARTS).map(|i| half_m * i as f32 / PARTS as f32);
        // Between this joint and the next one.
        let tint = TINTS[board.rem_euclid(TINTS.len() as i32) as usize];
        if tint > 0.0 {
            tinted(&mut mesh_builder, xs(), [z, z + BOARD_M[0]], height_m, tint);
        }
        let along: Vec<Vec2> = xs().map(|x| Vec2::new(x, z)).collect();
        line(&mut mesh_builder, &along, JOINT_M, height_m, joint, |_| {
            JOINT
        });
        // The boards of neighbouring rows end at different places.
        let shift = BOARD_M[1] * (0.37 * board as f32).rem_euclid(1.0);
        let ends = (half_m / BOARD_M[1]) as i32 + 1;
        for end in -ends..=ends {
            let x = BOARD_M[1] * end as f32 + shift;
            if x.abs() < half_m {
                let across = [Vec2::new(x, z), Vec2::new(x, z + BOARD_M[0])];
                line(&mut mesh_builder, &across, JOINT_M, height_m, joint, |_| {
                    JOINT
                });
            }
        }
    }
    mesh_builder
}

/// A board a little darker than the floor.
fn tinted(
    mesh_builder: &mut MeshBuilder,
    xs: impl Iterator<Item = f32>,
    [near, far]: [f32; 2],
    height_m: f32,
    tint: f32,
) {
    let mut before: Option<(u32, u32)> = None;
    for x in xs {
        let fading = smooth(1.0 - Vec2::new(x, near).length() / EDGE_M);
        let color = palette::now().joint.linear_alpha(tint * fading);
        let mut corner = |z: f32| mesh_builder.vertex(Vec3::new(x, height_m, z), Vec3::Y, color);
        let here = (corner(near), corner(far));
        if let Some((left, right)) = before {
            mesh_builder.quad(left, right, here.1, here.0);
        }
        before = Some(here);
    }
}
