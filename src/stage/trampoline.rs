//! A trampoline: a bed on springs in a frame, over a floor.

use std::f32::consts::TAU;

use bevy::math::{Vec2, Vec3};

use crate::level;
use crate::mesh_builder::MeshBuilder;
use crate::palette::{self, BevyColour as _};
use crate::traces::line;

/// Height of the bed over the floor, m.
pub const HEIGHT_M: f32 = 1.15;
/// Half the length and the width of the bed, m; larger than what a jumper presses down.
const BED_M: Vec2 = Vec2::new(2.14, 1.45);
/// Of the zone that is marked on it.
const ZONE_M: Vec2 = Vec2::new(1.075, 0.54);
/// Length of the springs, width and thickness of the pads around them, m.
const SPRINGS_M: f32 = 0.26;
const PAD_M: f32 = 0.30;
const PAD_THICK_M: f32 = 0.05;
/// Distance between two springs, and the width of one, m.
const SPRING_EVERY_M: f32 = 0.115;
const SPRING_M: f32 = 0.022;
/// Radii of rows of the bed, m: as it is pressed down (`material.wgsl`).
const ROWS_M: [f32; 3] = [0.0, 0.12, 1.3];
const AROUND: u32 = 72;

/// The bed with its marks.
pub fn bed() -> MeshBuilder {
    let mut mesh_builder = MeshBuilder::default();
    let colours = palette::now();
    let mut inner: Option<Vec<u32>> = None;
    let mut row = |points: Vec<Vec2>| {
        let row: Vec<u32> = points
            .into_iter()
            .map(|p| mesh_builder.vertex(Vec3::new(p.x, 0.0, p.y), Vec3::Y, colours.bed.linear()))
            .collect();
        if let Some(inner) = inner.replace(row.clone()) {
            mesh_builder.join(&inner, &row);
        }
    };
    for radius in ROWS_M {
        row(directions().map(|p| p * radius).collect());
    }
    // To the edge of the rectangle, corners included.
    let to_edge = |p: Vec2| p * (BED_M / p.abs().max(Vec2::splat(1e-6))).min_element();
    row(directions().map(to_edge).collect());

    let mark = colours.bed_mark;
    let mut rectangle = |half_m: Vec2, width_m: f32| {
        let corners = [
            half_m,
            Vec2::new(-half_m.x, half_m.y),
            -half_m,
            Vec2::new(half_m.x, -half_m.y),
        ];
        for (i, &from) in corners.iter().enumerate() {
            let to = corners[(i + 1) % corners.len()];
            let points: Vec<Vec2> = (0..=24).map(|i| from.lerp(to, i as f32 / 24.0)).collect();
            line(
                &mut mesh_builder,
                &points,
                width_m,
                level::SCRATCH,
                mark,
                |_| 1.0,
            );
        }
    };
    rectangle(ZONE_M, 0.05);
    rectangle(BED_M - 0.04, 0.05);
    mesh_builder
}

/// Directions around the bed, through its corners.
fn directions() -> impl Iterator<Item = Vec2> {
    let corner = BED_M.to_angle();
    let mut angles: Vec<f32> = (0..AROUND)
        .map(|i| TAU * i as f32 / AROUND as f32)
        .collect();
    for at in [corner, 0.5 * TAU - corner, 0.5 * TAU + corner, TAU - corner] {
        let place = angles.partition_point(|&angle| angle < at);
        angles.insert(place, at);
    }
    angles.into_iter().map(Vec2::from_angle)
}

/// Springs, pads and legs.
pub fn frame() -> MeshBuilder {
    let mut mesh_builder = MeshBuilder::default();
    let colours = palette::now();
    let (steel, pad) = (colours.steel.linear(), colours.pad.linear());
    let mut springs = |half_m: f32, at: &dyn Fn(f32, f32) -> Vec2, edge_m: f32| {
        let most = (half_m / SPRING_EVERY_M) as i32;
        for i in -most..=most {
            let along = SPRING_EVERY_M * i as f32;
            for sign in [-1.0, 1.0] {
                let ends = [edge_m, edge_m + SPRINGS_M].map(|out| {
                    let side = 0.5 * SPRING_M;
                    [along - side, along + side].map(|along| {
                        let p = at(along, sign * out);
                        mesh_builder.vertex(Vec3::new(p.x, -0.01, p.y), Vec3::Y, steel)
                    })
                });
                // Seen from above on either side of the bed.
                let [[a, b], [c, d]] = ends;
                mesh_builder.quad(a, b, d, c);
                mesh_builder.quad(a, c, d, b);
            }
        }
    };
    springs(BED_M.x, &|along, out| Vec2::new(along, out), BED_M.y);
    springs(BED_M.y, &|along, out| Vec2::new(out, along), BED_M.x);
    let inner = BED_M + SPRINGS_M;
    let middle = inner + 0.5 * PAD_M;
    for sign in [-1.0, 1.0] {
        let long = Vec3::new(0.0, 0.0, sign * middle.y);
        let half = Vec3::new(inner.x + PAD_M, 0.5 * PAD_THICK_M, 0.5 * PAD_M);
        mesh_builder.block(long, half, pad);
        let short = Vec3::new(sign * middle.x, 0.0, 0.0);
        let half = Vec3::new(0.5 * PAD_M, 0.5 * PAD_THICK_M, inner.y);
        mesh_builder.block(short, half, pad);
        for other in [-1.0, 1.0] {
            let top = Vec3::new(sign * middle.x * 0.8, -PAD_THICK_M, other * middle.y);
            mesh_builder.limb(top, top.with_y(-HEIGHT_M), 0.035, 0.035, steel);
        }
    }
    mesh_builder
}
