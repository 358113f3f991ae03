//! The ice and the air above it, which fade into each other at the horizon.
//!
//! Both are the inside of a large sphere around the camera, coloured by elevation.

use std::f32::consts::FRAC_PI_2;

use bevy::prelude::*;

use crate::material::{StageMaterials, mesh_bundle};
use crate::mesh_builder::{MeshBuilder, circle};
use crate::order::StageSystems;
use crate::palette::{self, BevyColour as _, Rgb};
use crate::theme::BuildScene;

/// Heights of the layers drawn on the ice, m: far enough apart for the depth buffer.
pub mod level {
    pub const SCRATCH: f32 = 0.002;
    pub const SHADOW: f32 = 0.004;
    pub const TRACK: f32 = 0.006;
    pub const GAP: f32 = 0.008;
    pub const TURNED: f32 = 0.010;
    pub const MARK: f32 = 0.012;
    pub const REFERENCE: f32 = 0.014;
    pub const POINTER: f32 = 0.016;
}

/// Radii of circles drawn on the ice, m: they make the surface visible.
const RINGS_M: [f32; 6] = [1.75, 2.5, 3.5, 4.75, 6.25, 8.25];
const SCRATCH_WIDTH_M: f32 = 0.016;
/// Radius at which the circles have faded out, m.
const EDGE_M: f32 = 10.0;

/// Angle below and above the horizon at which the haze ends, rad.
const CLEAR_BELOW_RAD: f32 = 0.36;
const CLEAR_ABOVE_RAD: f32 = 0.55;
/// Radius of the sphere, larger than any other distance, m.
const SKY_M: f32 = 500.0;
/// Rows from the horizon to the end of the haze, and points per row.
const HAZE_STEPS: i8 = 12;
const SKY_AROUND: usize = 24;

/// The sphere around the camera.
#[derive(Component)]
struct Sky;

pub fn plugin(app: &mut App) {
    app.add_systems(BuildScene, spawn).add_systems(
        PostUpdate,
        follow
            .after(StageSystems::Follow)
            .before(TransformSystems::Propagate),
    );
}

fn spawn(mut commands: Commands, mut meshes: ResMut<Assets<Mesh>>, materials: Res<StageMaterials>) {
    commands.spawn(mesh_bundle(
        meshes.add(scratches().mesh()),
        &materials.transparent,
    ));
    commands.spawn((Sky, mesh_bundle(meshes.add(sky().mesh()), &materials.unlit)));
    commands.insert_resource(ClearColor(palette::now().ice.color()));
}

fn follow(
    camera: Single<&Transform, With<Camera3d>>,
    mut sky: Single<&mut Transform, (With<Sky>, Without<Camera3d>)>,
) {
    if sky.translation != camera.translation {
        sky.translation = camera.translation;
    }
}

/// Smoothstep: 0 at 0, 1 at 1, with zero slope at both ends.
fn smooth(x: f32) -> f32 {
    let x = x.clamp(0.0, 1.0);
    x * x * (3.0 - 2.0 * x)
}

fn scratches() -> MeshBuilder {
    let mut mesh_builder = MeshBuilder::default();
    for radius in RINGS_M {
        let color = palette::now()
            .scratch
            .linear_alpha(smooth(1.0 - radius / EDGE_M));
        let around = circle(96).chain(std::iter::once(Vec2::X));
        let points = around.map(|p| {
            let out = Vec3::new(p.x, 0.0, -p.y);
            let lift = Vec3::Y * level::SCRATCH;
            (out * (radius - SCRATCH_WIDTH_M) + lift, out * radius + lift)
        });
        mesh_builder.band(points, color);
    }
    mesh_builder
}

/// The colour at an elevation above the horizon.
fn sky_at(elevation_rad: f32) -> Rgb {
    if elevation_rad < 0.0 {
        palette::now().ice.over(
            palette::now().haze,
            smooth(-elevation_rad / CLEAR_BELOW_RAD),
        )
    } else {
        palette::now()
            .air
            .over(palette::now().haze, smooth(elevation_rad / CLEAR_ABOVE_RAD))
    }
}

/// The sphere in rows of one colour each, denser within the haze.
fn sky() -> MeshBuilder {
    let steps = |clear_rad: f32, sign: i8| {
        (1..=HAZE_STEPS).map(move |i| f32::from(sign * i) / f32::from(HAZE_STEPS) * clear_rad)
    };
    let elevations: Vec<f32> = std::iter::once(-FRAC_PI_2)
        .chain(steps(CLEAR_BELOW_RAD, -1).rev())
        .chain(std::iter::once(0.0))
        .chain(steps(CLEAR_ABOVE_RAD, 1))
        .chain(std::iter::once(FRAC_PI_2))
        .collect();
    let mut mesh_builder = MeshBuilder::default();
    let mut below: Option<Vec<u32>> = None;
    for elevation in elevations {
        let (sin, cos) = elevation.sin_cos();
        let color = sky_at(elevation).linear();
        let row: Vec<u32> = circle(SKY_AROUND)
            .map(|p| {
                let out = Vec3::new(p.x * cos, sin, -p.y * cos);
                mesh_builder.vertex(SKY_M * out, -out, color)
            })
            .collect();
        if let Some(below) = below {
            mesh_builder.join(&below, &row);
        }
        below = Some(row);
    }
    mesh_builder
}
