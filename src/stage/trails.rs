//! Trails of the hands: their paths over the last quarter of a second.

use bevy::prelude::*;
use glam::DVec3;

use crate::material::{StageMaterials, mesh_bundle};
use crate::mesh_builder::{MeshBuilder, basis, circle};
use crate::order::StageSystems;
use crate::palette::{self, BevyColour as _, Rgb};
use crate::shown::{ShownFlight, ShownSample};
use turns_aloft_physics::body::{Body, Segment};

/// Age of the oldest point of a trail, s.
const AGE_S: f64 = 0.25;
/// Time between the points of a trail, s: a sixteenth of a turn at the fastest rates jumped.
const STEP_S: f64 = 0.008;
/// Radius and opacity at the hand; both fall to 0 at the oldest point.
const RADIUS_M: f32 = 0.02;
const OPACITY: f32 = 0.85;
const AROUND: usize = 6;

pub fn plugin(app: &mut App) {
    app.add_systems(
        PostUpdate,
        (
            trace.run_if(resource_exists_and_changed::<ShownFlight>),
            draw.run_if(resource_exists_and_changed::<ShownSample>),
        )
            .chain()
            .in_set(StageSystems::Follow),
    );
}

/// The path of one hand through the whole flight, a point every [`STEP_S`], world frame.
#[derive(Component)]
struct Trail {
    hand: Segment,
    color: Rgb,
    points: Vec<Vec3>,
}

pub fn spawn(commands: &mut Commands, materials: &StageMaterials) {
    for (hand, color) in [
        (Segment::LeftHand, palette::now().left_side),
        (Segment::RightHand, palette::now().mark),
    ] {
        let points = Vec::new();
        commands.spawn((
            Trail {
                hand,
                color,
                points,
            },
            mesh_bundle(Handle::default(), &materials.transparent),
        ));
    }
}

fn trace(shown: Res<ShownFlight>, mut trails: Query<&mut Trail>) {
    let flight = &shown.flight;
    for mut trail in &mut trails {
        trail.points.clear();
    }
    let steps = (flight.touchdown_s / STEP_S) as u32;
    for i in 0..=steps {
        let pose = flight.pose_at(STEP_S * f64::from(i));
        for mut trail in &mut trails {
            let knuckle_m = knuckle_m(&flight.table.body, trail.hand);
            let at = pose.point_m(trail.hand, knuckle_m).as_vec3();
            trail.points.push(at);
        }
    }
}

/// In the hand's own frame.
pub fn knuckle_m(body: &Body, hand: Segment) -> DVec3 {
    body.link(hand).end_m
}

fn draw(
    flight: Res<ShownFlight>,
    sample: Res<ShownSample>,
    mut meshes: ResMut<Assets<Mesh>>,
    trails: Query<(&Trail, &mut Mesh3d, &mut Visibility)>,
) {
    let now_s = sample.flown.t_s;
    // The trail ends where the flight does, and ages on after that.
    let oldest_s = sample.playhead_s - AGE_S;
    for (trail, mut mesh, mut visibility) in trails {
        let mut points: Vec<(Vec3, f32)> = trail
            .points
            .iter()
            .enumerate()
            .map(|(i, &at)| (at, STEP_S * i as f64))
            .filter(|&(_, t_s)| t_s >= oldest_s && t_s < now_s - 0.2 * STEP_S)
            .map(|(at, t_s)| (at, ((t_s - oldest_s) / AGE_S) as f32))
            .collect();
        if sample.playhead_s <= now_s {
            let knuckle_m = knuckle_m(&flight.flight.table.body, trail.hand);
            let hand = sample.pose.point_m(trail.hand, knuckle_m).as_vec3();
            points.push((hand, 1.0));
        }
        if points.len() < 2 || sample.playhead_s <= 0.0 || sample.is_led {
            *visibility = Visibility::Hidden;
            continue;
        }
        *visibility = Visibility::Inherited;
        mesh.0 = meshes.add(tube(&points, trail.color).mesh());
    }
}

/// A tube through points; radius and opacity grow with each point's freshness, from 0 (oldest) to
/// 1.
fn tube(points: &[(Vec3, f32)], color: Rgb) -> MeshBuilder {
    let mut mesh_builder = MeshBuilder::default();
    let mut side = basis((points[1].0 - points[0].0).normalize_or(Vec3::Y)).0;
    let mut last: Option<Vec<u32>> = None;
    for (i, &(at, fresh)) in points.iter().enumerate() {
        let ahead = points[(i + 1).min(points.len() - 1)].0;
        let along = (ahead - points[i.saturating_sub(1)].0).normalize_or(Vec3::Y);
        side = side
            .reject_from_normalized(along)
            .normalize_or(basis(along).0);
        let other = along.cross(side);
        let color = color.linear_alpha(OPACITY * fresh * fresh);
        let ring: Vec<u32> = circle(AROUND)
            .map(|p| {
                let normal = side * p.x + other * p.y;
                mesh_builder.vertex(at + normal * RADIUS_M * fresh, normal, color)
            })
            .collect();
        if let Some(last) = last {
            mesh_builder.join(&ring, &last);
        }
        last = Some(ring);
    }
    mesh_builder
}
