//! The ground and the air above it, which fade into each other at the horizon.
//!
//! Both are the inside of a large sphere around the camera, coloured by elevation. What lies on the
//! ground nearby tells ice, floor and trampoline apart.

use std::f32::consts::FRAC_PI_2;

use bevy::prelude::*;

use crate::material::{StageMaterial, StageMaterials, mesh_bundle};
use crate::mesh_builder::{MeshBuilder, circle};
use crate::order::StageSystems;
use crate::palette::{self, BevyColour as _, Rgb};
use crate::shown::{ShownFlight, ShownSample};
use crate::traces::smooth;
use crate::{boards, layers, traces, trampoline};
use turns_aloft_appearance::{Theme, shown as theme};
use turns_aloft_figure::shown::bed_m;
use turns_aloft_scenario::ground::Ground;

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

/// What lies on the ground.
#[derive(Component)]
struct Near;

pub fn plugin(app: &mut App) {
    app.add_systems(
        PostUpdate,
        (
            (
                lay.run_if(resource_exists_and_changed::<ShownFlight>),
                sag.run_if(resource_exists_and_changed::<ShownSample>),
            )
                .in_set(StageSystems::Follow),
            follow
                .after(StageSystems::Follow)
                .before(TransformSystems::Propagate),
        ),
    );
}

pub fn spawn(commands: &mut Commands, materials: &StageMaterials) {
    let sky = mesh_bundle(Handle::default(), &materials.unlit);
    commands.spawn((Sky, layers::both(), sky));
}

/// Lays the ground that is jumped from, where another one or none lies.
fn lay(
    mut commands: Commands,
    shown: Res<ShownFlight>,
    mut sphere: Single<&mut Mesh3d, With<Sky>>,
    near: Query<Entity, With<Near>>,
    mut meshes: ResMut<Assets<Mesh>>,
    materials: Res<StageMaterials>,
    mut laid: Local<Option<(Theme, Ground)>>,
) {
    let key = (theme(), shown.ground);
    if laid.replace(key) == Some(key) && !near.is_empty() {
        return;
    }
    for entity in near {
        commands.entity(entity).despawn();
    }
    let colours = palette::now();
    let (ground, parts) = match shown.ground {
        Ground::Ice => (
            colours.ice,
            vec![(traces::traces(), &materials.transparent)],
        ),
        Ground::Floor => (
            colours.floor,
            vec![(boards::boards(0.0), &materials.transparent)],
        ),
        Ground::Trampoline => (
            colours.floor,
            vec![
                (
                    boards::boards(-trampoline::HEIGHT_M),
                    &materials.transparent,
                ),
                (trampoline::bed(), &materials.unlit),
                (trampoline::frame(), &materials.lit),
            ],
        ),
    };
    sphere.0 = meshes.add(sky(ground).mesh());
    for (mesh_builder, material) in parts {
        let drawn = mesh_bundle(meshes.add(mesh_builder.mesh()), material);
        commands.spawn((Near, layers::both(), drawn));
    }
    commands.insert_resource(ClearColor(ground.color()));
}

/// Presses a trampoline's bed down under the jumper, with all that lies on it.
fn sag(
    flight: Res<ShownFlight>,
    sample: Res<ShownSample>,
    materials: Res<StageMaterials>,
    mut all: ResMut<Assets<StageMaterial>>,
    mut pressed_m: Local<f32>,
) {
    let bed_m = bed_m(&flight.flight, flight.ground, sample.playhead_s) as f32;
    if std::mem::replace(&mut *pressed_m, bed_m) == bed_m {
        return;
    }
    for material in [&materials.unlit, &materials.transparent, &materials.shadow] {
        if let Some(mut material) = all.get_mut(material) {
            material.set_sag(-bed_m);
        }
    }
}

fn follow(
    camera: Single<&Transform, With<Camera3d>>,
    mut sky: Single<&mut Transform, (With<Sky>, Without<Camera3d>)>,
) {
    if sky.translation != camera.translation {
        sky.translation = camera.translation;
    }
}

/// The colour at an elevation above the horizon.
fn sky_at(elevation_rad: f32, ground: Rgb) -> Rgb {
    if elevation_rad < 0.0 {
        ground.over(
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
fn sky(ground: Rgb) -> MeshBuilder {
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
        let color = sky_at(elevation, ground).linear();
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
