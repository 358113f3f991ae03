//! The jumper, and the shadow under the jumper.

use bevy::prelude::*;
use glam::DVec3;

use crate::ice::level;
use crate::mannequin::Mannequin;
use crate::mesh_builder::{MeshBuilder, circle};
use crate::order::StageSystems;
use crate::paint::{Paint, Paints, thing};
use crate::palette;
use crate::palette::BevyColour as _;
use crate::shown::ShownFlight;
use crate::shown::ShownSample;
use crate::theme::Themed;
use turns_aloft_appearance::{self as appearance, Light};
use turns_aloft_physics::body::{BodySpec, Segment};
use turns_aloft_physics::flight::Pose;

pub fn plugin(app: &mut App) {
    app.add_systems(Themed, (spawn_figure, spawn_shadow))
        .add_systems(
            PostUpdate,
            (
                theme.run_if(resource_exists_and_changed::<ShownFlight>),
                (pose_figure, place_shadow).run_if(resource_exists_and_changed::<ShownSample>),
            )
                .in_set(StageSystems::Follow),
        );
}

/// A segment of the figure.
#[derive(Component)]
struct Limb(Segment);

#[derive(Component)]
struct Shadow;

fn spawn_figure(mut commands: Commands, paints: Res<Paints>) {
    for segment in Segment::ALL {
        commands.spawn((Limb(segment), thing(Handle::default(), &paints.solid)));
    }
}

/// Makes the figure anew when another body jumps.
fn theme(
    shown: Res<ShownFlight>,
    limbs: Query<(&Limb, &mut Mesh3d)>,
    mut meshes: ResMut<Assets<Mesh>>,
    mut themed: Local<Option<(Light, BodySpec)>>,
) {
    let body = &shown.flight.table.body;
    let clothes = (appearance::shown(), body.spec);
    if themed.replace(clothes) == Some(clothes) {
        return;
    }
    let mannequin = Mannequin::new(body);
    for (limb, mut mesh) in limbs {
        mesh.0 = meshes.add(mannequin.segment(limb.0).mesh());
    }
}

fn pose_figure(shown: Res<ShownSample>, limbs: Query<(&Limb, &mut Transform)>) {
    for (limb, mut transform) in limbs {
        *transform = placed(&shown.pose, limb.0);
    }
}

/// Where a segment of a body in a pose is.
pub fn placed(pose: &Pose, segment: Segment) -> Transform {
    Transform {
        translation: pose.point_m(segment, DVec3::ZERO).as_vec3(),
        rotation: pose.orientation(segment).as_quat(),
        ..default()
    }
}

/// How dark the shadow's middle is while the feet are on the ice.
const SHADOW_DARK: f32 = 0.42;
const SHADOW_RADIUS_M: f32 = 0.46;
/// Height of the feet at which the shadow has faded to half.
const SHADOW_HALF_M: f32 = 0.55;

/// A dark spot that thins out to its rim, one metre in radius.
fn spot() -> MeshBuilder {
    let mut mesh_builder = MeshBuilder::default();
    let row = |mesh_builder: &mut MeshBuilder, radius: f32| -> Vec<u32> {
        // Falls smoothly from the middle to nothing at the rim.
        let alpha = (1.0 - radius * radius).powi(2);
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

fn spawn_shadow(mut commands: Commands, mut meshes: ResMut<Assets<Mesh>>, paints: Res<Paints>) {
    commands.spawn((Shadow, thing(meshes.add(spot().mesh()), &paints.shadow)));
}

fn place_shadow(
    shown: Res<ShownSample>,
    mut transform: Single<&mut Transform, With<Shadow>>,
    paints: Res<Paints>,
    mut all: ResMut<Assets<Paint>>,
) {
    let sample = &shown.pose.sample;
    let height_m = (sample.lowest_m as f32).max(0.0);
    let near = 0.5_f32.powf(height_m / SHADOW_HALF_M);
    transform.translation = Vec3::Y * level::SHADOW;
    transform.scale = Vec3::splat(SHADOW_RADIUS_M * (0.7 + 0.3 * near));
    if let Some(mut paint) = all.get_mut(&paints.shadow) {
        paint.set_opacity(SHADOW_DARK * near);
    }
}
