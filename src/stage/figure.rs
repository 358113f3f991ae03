//! The jumper, and the shadow under the jumper.

use bevy::prelude::*;

use crate::drawn::segment_meshes;
use crate::level;
use crate::material::{StageMaterial, StageMaterials, mesh_bundle};
use crate::mesh_builder::{MeshBuilder, circle};
use crate::order::StageSystems;
use crate::palette;
use crate::palette::BevyColour as _;
use crate::shown::{ShownFlight, ShownSample};
use turns_aloft_appearance::{Figure, Theme, chosen, shown as theme};
use turns_aloft_figure::pose::FigurePose;
use turns_aloft_physics::body::{BodySpec, Segment};

pub fn plugin(app: &mut App) {
    app.add_systems(
        PostUpdate,
        (
            rebuild_meshes.run_if(resource_exists_and_changed::<ShownFlight>),
            (pose_figure, place_shadow).run_if(resource_exists_and_changed::<ShownSample>),
        )
            .in_set(StageSystems::Follow),
    );
}

/// The entity that draws a segment of the jumper.
#[derive(Component)]
struct Limb(Segment);

#[derive(Component)]
struct Shadow;

pub fn spawn_figure(commands: &mut Commands, materials: &StageMaterials) {
    for segment in Segment::ALL {
        commands.spawn((
            Limb(segment),
            mesh_bundle(Handle::default(), &materials.lit),
        ));
    }
}

/// Builds new meshes when the body, the theme or the way of drawing has changed.
fn rebuild_meshes(
    shown: Res<ShownFlight>,
    limbs: Query<(&Limb, &mut Mesh3d)>,
    mut meshes: ResMut<Assets<Mesh>>,
    mut built_for: Local<Option<(Theme, Figure, BodySpec)>>,
) {
    let body = &shown.flight.table.body;
    let key = (theme(), chosen().figure, body.spec);
    if built_for.replace(key) == Some(key) {
        return;
    }
    let build = segment_meshes(body);
    for (limb, mut mesh) in limbs {
        mesh.0 = meshes.add(build(limb.0).mesh());
    }
}

fn pose_figure(shown: Res<ShownSample>, limbs: Query<(&Limb, &mut Transform)>) {
    for (limb, mut transform) in limbs {
        *transform = segment_transform(&shown.pose, limb.0);
    }
}

/// Position and orientation of a segment in a pose, world frame.
pub fn segment_transform(pose: &FigurePose, segment: Segment) -> Transform {
    Transform {
        translation: pose.joint_m[segment as usize].as_vec3(),
        rotation: pose.rotation[segment as usize].as_quat(),
        ..default()
    }
}

/// Opacity at the shadow's centre while the feet are on the ice.
const SHADOW_DARK: f32 = 0.42;
const SHADOW_RADIUS_M: f32 = 0.46;
/// Height of the feet at which the shadow's opacity has halved, m.
const SHADOW_HALF_M: f32 = 0.55;

/// A dark disc, 1 m in radius, whose opacity falls from `dark` to 0 at its rim.
pub fn spot(dark: f32) -> MeshBuilder {
    let mut mesh_builder = MeshBuilder::default();
    let row = |mesh_builder: &mut MeshBuilder, radius: f32| -> Vec<u32> {
        // Falls smoothly from the centre to 0 at the rim.
        let alpha = dark * (1.0 - radius * radius).powi(2);
        let color = palette::now().dark.linear_alpha(alpha);
        circle(32)
            .map(|p| mesh_builder.vertex(Vec3::new(p.x, 0.0, -p.y) * radius, Vec3::Y, color))
            .collect()
    };
    let mut inner = row(&mut mesh_builder, 0.0);
    for i in 1..=6 {
        let outer = row(&mut mesh_builder, i as f32 / 6.0);
        mesh_builder.join(&inner, &outer);
        inner = outer;
    }
    mesh_builder
}

pub fn spawn_shadow(
    commands: &mut Commands,
    meshes: &mut Assets<Mesh>,
    materials: &StageMaterials,
) {
    commands.spawn((
        Shadow,
        mesh_bundle(meshes.add(spot(1.0).mesh()), &materials.shadow),
    ));
}

fn place_shadow(
    flight: Res<ShownFlight>,
    shown: Res<ShownSample>,
    mut transform: Single<&mut Transform, With<Shadow>>,
    materials: Res<StageMaterials>,
    mut all: ResMut<Assets<StageMaterial>>,
) {
    let pose = &shown.pose;
    let height_m = (pose.lowest_m(&flight.flight.table.body) as f32).max(0.0);
    let fading = 0.5_f32.powf(height_m / SHADOW_HALF_M);
    transform.translation = pose.cm_m.as_vec3().with_y(level::SHADOW);
    transform.scale = Vec3::splat(SHADOW_RADIUS_M * (0.7 + 0.3 * fading));
    if let Some(mut material) = all.get_mut(&materials.shadow) {
        material.set_opacity(SHADOW_DARK * fading);
    }
}
