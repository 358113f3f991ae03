//! Somebody on a turntable, drawn in place of the jump: on a layer of its own.

use bevy::prelude::*;
use bevy::window::{PrimaryWindow, RequestRedraw};

use crate::current_session::CurrentSession;
use crate::drawn::segment_meshes;
use crate::figure::{segment_transform, spot};
use crate::material::{StageMaterials, mesh_bundle};
use crate::order::{StageArea, StageSystems};
use crate::shown_turntable::{ShownTurntable, TurntableMoment, WhoOnWhat, read};
use crate::{camera, layers, level, seat};
use turns_aloft_appearance::{Figure, Theme, chosen, shown as theme};
use turns_aloft_physics::body::Segment;

/// Where the axis is on the window at the height of the hips, and the size of a metre there, logical px.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AxisOnWindow {
    pub hips: Vec2,
    pub px_per_m: f32,
}

/// None while nobody is on a turntable.
#[derive(Resource, Debug, Default, Clone, Copy, PartialEq)]
pub struct TurntableAxis(pub Option<AxisOnWindow>);

#[derive(Component, Clone, Copy)]
enum Part {
    Limb(Segment),
    /// The seat or platform, which turns along.
    Seat,
    /// What it stands on, which does not.
    Base,
    Shadow,
}

/// Radius and opacity of the shadow.
const SHADOW_M: f32 = 0.46;
const SHADOW_DARK: f32 = 0.42;

pub fn plugin(app: &mut App) {
    app.init_resource::<ShownTurntable>()
        .init_resource::<TurntableMoment>()
        .init_resource::<TurntableAxis>()
        .add_systems(
            PostUpdate,
            (
                read.in_set(StageSystems::Read)
                    .run_if(resource_exists::<CurrentSession>),
                (
                    (choose_layer, build).run_if(resource_exists_and_changed::<ShownTurntable>),
                    pose.run_if(
                        resource_exists_and_changed::<TurntableMoment>
                            .or_else(resource_exists_and_changed::<ShownTurntable>),
                    ),
                    write_axis.after(camera::place),
                )
                    .chain()
                    .in_set(StageSystems::Follow),
            ),
        );
}

pub fn spawn(commands: &mut Commands, meshes: &mut Assets<Mesh>, materials: &StageMaterials) {
    let limbs = Segment::ALL.map(Part::Limb);
    for part in limbs.into_iter().chain([Part::Seat, Part::Base]) {
        let drawn = mesh_bundle(Handle::default(), &materials.lit);
        commands.spawn((part, layers::turntable(), drawn));
    }
    let shadow = meshes.add(spot(SHADOW_DARK).mesh());
    let drawn = mesh_bundle(shadow, &materials.transparent);
    commands.spawn((Part::Shadow, layers::turntable(), drawn));
}

fn choose_layer(
    mut commands: Commands,
    shown: Res<ShownTurntable>,
    camera: Single<Entity, With<Camera3d>>,
) {
    let layer = layers::shown(shown.is_some());
    commands.entity(*camera).insert(layer);
}

/// New meshes for another body, stand, theme or way of drawing.
fn build(
    session: Res<CurrentSession>,
    shown: Res<ShownTurntable>,
    parts: Query<(&Part, &mut Mesh3d)>,
    mut meshes: ResMut<Assets<Mesh>>,
    mut built_for: Local<Option<(Theme, Figure, WhoOnWhat)>>,
) {
    let (Some(own), Some(on_turntable)) = (shown.0, session.turntable()) else {
        // The theme may change until somebody is on it again.
        *built_for = None;
        return;
    };
    let key = (theme(), chosen().figure, own);
    if built_for.replace(key) == Some(key) {
        return;
    }
    let segment = segment_meshes(&on_turntable.turntable().person().body);
    for (part, mut mesh) in parts {
        let builder = match *part {
            Part::Limb(of) => segment(of),
            Part::Seat => seat::turning(own.stand, own.support_m),
            Part::Base => seat::base(own.stand, own.support_m),
            Part::Shadow => continue,
        };
        mesh.0 = meshes.add(builder.mesh());
    }
}

fn pose(moment: Res<TurntableMoment>, parts: Query<(&Part, &mut Transform)>) {
    let Some(turned) = &moment.0 else {
        return;
    };
    for (part, mut transform) in parts {
        *transform = match *part {
            Part::Limb(segment) => segment_transform(&turned.pose, segment),
            Part::Seat => Transform::from_rotation(Quat::from_rotation_y(
                turned.turned_rad.rem_euclid(std::f64::consts::TAU) as f32,
            )),
            Part::Base => Transform::default(),
            Part::Shadow => {
                Transform::from_xyz(0.0, level::SHADOW, 0.0).with_scale(Vec3::splat(SHADOW_M))
            }
        };
    }
}

/// Tells the panels where a finger leads the hands. They are drawn before the picture, so one more frame
/// follows a change.
fn write_axis(
    shown: Res<ShownTurntable>,
    area: Res<StageArea>,
    window: Single<&Window, With<PrimaryWindow>>,
    eye: Single<&Transform, With<Camera3d>>,
    mut written: ResMut<TurntableAxis>,
    mut redraw: MessageWriter<RequestRedraw>,
) {
    let now = shown.0.map(|shown| {
        let hips_m = Vec3::Y * shown.hips_m.y as f32;
        let rect = camera::on(area.figure, &window);
        let [hips, beside] = [hips_m, hips_m + eye.rotation * Vec3::X]
            .map(|at_m| camera::on_screen(&eye, rect, at_m));
        AxisOnWindow {
            hips,
            px_per_m: beside.x - hips.x,
        }
    });
    if written.set_if_neq(TurntableAxis(now)) {
        redraw.write(RequestRedraw);
    }
}
