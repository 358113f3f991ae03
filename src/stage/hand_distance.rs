//! How far the hands are from the axis of the turning: a level line to each, beside the stick figure.
//!
//! The numbers are text, which the panels draw: here is where on the screen.

use bevy::prelude::*;
use bevy::window::{PrimaryWindow, RequestRedraw};

use crate::camera;
use crate::material::{StageMaterials, mesh_bundle};
use crate::mesh_builder::MeshBuilder;
use crate::order::{StageArea, StageSystems};
use crate::palette::{self, BevyColour as _, Rgb};
use crate::shown::{ShownFlight, ShownSample};
use crate::shown_turntable::ShownTurntable;
use crate::trails::knuckle_m;
use turns_aloft_appearance::{Figure, chosen};
use turns_aloft_physics::body::Segment;

/// Radius of a line, and of the ball where it meets the axis, m.
const LINE_M: f32 = 0.006;
const BALL_M: f32 = 0.016;

/// A hand's distance from the axis, with the place of its number on the screen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HandDistance {
    pub distance_m: f64,
    /// The hand, logical px.
    pub at: Vec2,
    /// The point of the axis at the hand's height, logical px.
    pub axis_at: Vec2,
}

/// What is to be written beside the hands: nothing but in the air, beside the stick figure.
#[derive(Resource, Debug, Default, PartialEq)]
pub struct HandDistances(pub Vec<HandDistance>);

/// A line of 1 m along X, from the axis to a hand.
#[derive(Component)]
struct Level(Segment);

pub fn plugin(app: &mut App) {
    app.init_resource::<HandDistances>().add_systems(
        PostUpdate,
        (
            follow.run_if(resource_exists_and_changed::<ShownSample>),
            write.run_if(resource_exists::<ShownSample>),
        )
            .chain()
            .after(camera::place)
            .in_set(StageSystems::Follow),
    );
}

fn hands() -> [(Segment, Rgb); 2] {
    [
        (Segment::LeftHand, palette::now().left_side),
        (Segment::RightHand, palette::now().mark),
    ]
}

pub fn spawn(commands: &mut Commands, meshes: &mut Assets<Mesh>, materials: &StageMaterials) {
    for (hand, color) in hands() {
        let mut line = MeshBuilder::default();
        line.limb(Vec3::ZERO, Vec3::X, LINE_M, LINE_M, color.linear());
        line.ball(Vec3::ZERO, Vec3::splat(BALL_M), color.linear());
        commands.spawn((
            Level(hand),
            mesh_bundle(meshes.add(line.mesh()), &materials.unlit),
        ));
    }
}

/// A hand, and the point of the vertical through the CM at its height, m.
fn ends_m(flight: &ShownFlight, sample: &ShownSample, hand: Segment) -> [Vec3; 2] {
    let knuckle_m = knuckle_m(&flight.flight.table.body, hand);
    let hand_m = sample.pose.point_m(hand, knuckle_m).as_vec3();
    [hand_m, sample.pose.cm_m.as_vec3().with_y(hand_m.y)]
}

/// Only what is computed is measured: nothing on the ground.
fn is_measured(flight: &ShownFlight, sample: &ShownSample) -> bool {
    chosen().figure == Figure::Sticks
        && (0.0..=flight.flight.touchdown_s).contains(&sample.playhead_s)
}

fn follow(
    flight: Res<ShownFlight>,
    sample: Res<ShownSample>,
    lines: Query<(&Level, &mut Transform, &mut Visibility)>,
) {
    for (level, mut transform, mut visibility) in lines {
        *visibility = if is_measured(&flight, &sample) {
            Visibility::Inherited
        } else {
            Visibility::Hidden
        };
        let [hand_m, axis_m] = ends_m(&flight, &sample, level.0);
        let way = hand_m - axis_m;
        *transform = Transform {
            translation: axis_m,
            rotation: Quat::from_rotation_arc(Vec3::X, way.normalize_or(Vec3::X)),
            scale: Vec3::new(way.length(), 1.0, 1.0),
        };
    }
}

/// Tells the panels what to write where. They are drawn before the picture, so one more frame follows
/// a change.
fn write(
    (flight, sample): (Res<ShownFlight>, Res<ShownSample>),
    turntable: Res<ShownTurntable>,
    area: Res<StageArea>,
    window: Single<&Window, With<PrimaryWindow>>,
    eye: Single<&Transform, With<Camera3d>>,
    mut written: ResMut<HandDistances>,
    mut redraw: MessageWriter<RequestRedraw>,
) {
    let mut now = HandDistances::default();
    if is_measured(&flight, &sample) && !turntable.is_some() {
        let on_screen =
            |at_m: Vec3| camera::on_screen(&eye, camera::on(area.figure, &window), at_m);
        for (hand, _) in hands() {
            let [hand_m, axis_m] = ends_m(&flight, &sample, hand);
            now.0.push(HandDistance {
                distance_m: f64::from(hand_m.distance(axis_m)),
                at: on_screen(hand_m),
                axis_at: on_screen(axis_m),
            });
        }
    }
    if written.set_if_neq(now) {
        redraw.write(RequestRedraw);
    }
}
