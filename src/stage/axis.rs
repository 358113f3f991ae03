//! The angular momentum as an arrow over the head with a line along it, and the body's long axis.

use bevy::camera::visibility::VisibilitySystems;
use bevy::prelude::*;

use crate::material::{StageMaterials, mesh_bundle};
use crate::mesh_builder::MeshBuilder;
use crate::orbit::Orbit;
use crate::order::StageSystems;
use crate::palette::{self, BevyColour as _};
use crate::shown::{ShownFlight, ShownSample};

/// Length of the arrow per kg m²/s, and the least and the greatest length, m.
const ARROW_M_PER_KG_M2_S: f32 = 0.02;
const ARROW_M: [f32; 2] = [0.22, 0.46];
const ARROW_HEAD_M: f32 = 0.14;
/// Gap between the head and the arrow, m.
const GAP_M: f32 = 0.11;
/// Height over the CM just above the head of the standing jumper, as a fraction of the stature.
const CROWN_PER_STATURE: f32 = 0.475;

pub fn plugin(app: &mut App) {
    app.add_systems(
        PostUpdate,
        hide.run_if(resource_exists::<ShownSample>)
            .after(StageSystems::Follow)
            .before(VisibilitySystems::VisibilityPropagate),
    );
    app.add_systems(
        PostUpdate,
        (
            draw.run_if(resource_exists_and_changed::<ShownFlight>),
            follow.run_if(resource_exists_and_changed::<ShownSample>),
        )
            .in_set(StageSystems::Follow),
    );
}

/// The arrow of the angular momentum: moves with the CM without rotating.
#[derive(Component)]
struct Momentum;

/// The line from the arrow down through the CM: built 1 m long, with its top at the origin.
#[derive(Component)]
struct Line;

/// The body's long axis: moves with the CM and tilts with the body.
#[derive(Component)]
struct LongAxis;

pub fn spawn(commands: &mut Commands, meshes: &mut Assets<Mesh>, materials: &StageMaterials) {
    let mut line = MeshBuilder::default();
    let color = palette::now().momentum.linear();
    line.limb(Vec3::ZERO, -Vec3::Y, 0.0065, 0.0065, color);
    commands.spawn((Line, mesh_bundle(meshes.add(line.mesh()), &materials.unlit)));
    commands.spawn((Momentum, mesh_bundle(Handle::default(), &materials.unlit)));
    commands.spawn((LongAxis, mesh_bundle(Handle::default(), &materials.unlit)));
}

/// Height of the arrow's upper end over the CM, m.
pub fn arrow_top_m(shown: &ShownFlight) -> f32 {
    crown_m(shown) + GAP_M + arrow_m(shown)
}

fn crown_m(shown: &ShownFlight) -> f32 {
    CROWN_PER_STATURE * shown.flight.table.body.spec.stature_m as f32
}

fn arrow_m(shown: &ShownFlight) -> f32 {
    let size = shown.flight.h_kg_m2_s.length() as f32;
    (ARROW_M_PER_KG_M2_S * size).clamp(ARROW_M[0], ARROW_M[1])
}

fn draw(
    shown: Res<ShownFlight>,
    mut meshes: ResMut<Assets<Mesh>>,
    mut momentum: Single<&mut Mesh3d, (With<Momentum>, Without<LongAxis>)>,
    mut long_axis: Single<&mut Mesh3d, (With<LongAxis>, Without<Momentum>)>,
) {
    let up = Vec3::Y;
    let (low, high) = (crown_m(&shown) + GAP_M, arrow_top_m(&shown));
    // An arrow that points down has its tip at the head.
    let (from, to) = if shown.flight.h_kg_m2_s.y < 0.0 {
        (high, low)
    } else {
        (low, high)
    };
    let neck = to + (from - to).signum() * ARROW_HEAD_M;
    let color = palette::now().momentum.linear();
    let mut mesh_builder = MeshBuilder::default();
    mesh_builder.limb(up * from, up * neck, 0.022, 0.022, color);
    mesh_builder.cone(up * neck, up * to, 0.058, color);
    momentum.0 = meshes.add(mesh_builder.mesh());

    let color = palette::now().long_axis.linear();
    let mut mesh_builder = MeshBuilder::default();
    // Its lower end stays over the ice at take-off and at touch-down.
    let flight = &shown.flight;
    let lowest = flight.takeoff_cm_m.min(flight.touchdown().cm_height_m) as f32;
    let (low, high) = (-up * (lowest - 0.04), up * (crown_m(&shown) + 0.06));
    mesh_builder.limb(low, high, 0.005, 0.005, color);
    for end in [low, high] {
        mesh_builder.ball(end, Vec3::splat(0.021), color);
    }
    long_axis.0 = meshes.add(mesh_builder.mesh());
}

/// Hides what holds in the air only once the jumper has landed, and from straight above what would
/// hide the jumper.
fn hide(
    flight: Res<ShownFlight>,
    shown: Res<ShownSample>,
    orbit: Res<Orbit>,
    parts: Query<(&mut Visibility, Has<LongAxis>), Of<Momentum, Line, LongAxis>>,
) {
    let landed = shown.playhead_s > flight.flight.touchdown_s;
    for (mut visibility, is_long_axis) in parts {
        let hidden = landed || (!is_long_axis && orbit.looks_down());
        visibility.set_if_neq(if hidden {
            Visibility::Hidden
        } else {
            Visibility::Inherited
        });
    }
}

type Of<A, B, C> = Or<(With<A>, With<B>, With<C>)>;
type Moved<T, Other1, Other2> = (With<T>, Without<Other1>, Without<Other2>);

fn follow(
    flight: Res<ShownFlight>,
    shown: Res<ShownSample>,
    mut momentum: Single<&mut Transform, Moved<Momentum, Line, LongAxis>>,
    mut line: Single<&mut Transform, Moved<Line, Momentum, LongAxis>>,
    mut long_axis: Single<&mut Transform, Moved<LongAxis, Momentum, Line>>,
) {
    let cm = shown.pose.cm_m.as_vec3();
    momentum.translation = cm;
    long_axis.translation = cm;
    long_axis.rotation =
        Quat::from_rotation_arc(Vec3::Y, shown.flown.long_axis().as_vec3().normalize());
    // From the arrow to 12 cm below the feet, but not below the ice.
    let top = crown_m(&flight) + GAP_M;
    let under_feet = flight.flight.takeoff_cm_m as f32 + 0.12;
    line.translation = cm + Vec3::Y * top;
    line.scale.y = top + under_feet.min(cm.y);
}
