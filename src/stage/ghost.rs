//! The attempt beside the jumper's: a second figure in the same place, half seen through, with a
//! hand of its own on the dial.
//!
//! It leaves the ice where and when the jumper does, and lands when it lands.

use bevy::prelude::*;

use crate::dial;
use crate::figure::placed;
use crate::ice::level;
use crate::mannequin::Mannequin;
use crate::order::StageSystems;
use crate::paint::{Paints, thing};
use crate::palette;
use crate::palette::BevyColour as _;
use crate::shown::ReferenceSample;
use crate::shown::ShownReference;
use turns_aloft_appearance::{Light, shown};
use turns_aloft_physics::body::{BodySpec, Segment};

pub fn plugin(app: &mut App) {
    app.add_systems(
        PostUpdate,
        (
            appear.run_if(resource_exists_and_changed::<ShownReference>),
            pose.run_if(resource_exists_and_changed::<ReferenceSample>),
        )
            .chain()
            .in_set(StageSystems::Follow),
    );
}

/// What there is of the second attempt.
#[derive(Component, Clone, Copy)]
enum Part {
    Limb(Segment),
    /// Points where the pelvis faces.
    Hand,
    /// How far it has turned, on the spiral.
    Bead,
}

/// How thick the hand is against the jumper's own, so that it is told apart without its colour.
const THIN: f32 = 0.55;

/// Makes the figure, makes it anew for another body, or takes it away.
fn appear(
    mut commands: Commands,
    reference: Res<ShownReference>,
    parts: Query<Entity, With<Part>>,
    mut meshes: ResMut<Assets<Mesh>>,
    paints: Res<Paints>,
    mut themed: Local<Option<(Light, BodySpec)>>,
) {
    let body = reference.flight.as_ref().map(|flight| &flight.table.body);
    let clothes = body.map(|body| (shown(), body.spec));
    if *themed == clothes {
        return;
    }
    *themed = clothes;
    for part in parts {
        commands.entity(part).despawn();
    }
    let Some(body) = body else {
        return;
    };
    let mannequin = Mannequin::new(body);
    let ink = palette::now().ghost.linear();
    for segment in Segment::ALL {
        let mesh = mannequin.segment(segment).in_one(ink).mesh();
        commands.spawn((Part::Limb(segment), thing(meshes.add(mesh), &paints.ghost)));
    }
    let marks = [
        (Part::Hand, dial::needle(palette::now().ghost_mark)),
        (Part::Bead, dial::bead(palette::now().ghost_mark)),
    ];
    for (part, mesh_builder) in marks {
        commands.spawn((part, thing(meshes.add(mesh_builder.mesh()), &paints.flat)));
    }
}

fn pose(
    reference: Res<ShownReference>,
    moment: Res<ReferenceSample>,
    parts: Query<(&Part, &mut Transform)>,
) {
    let (Some(flight), Some(pose)) = (&reference.flight, &moment.pose) else {
        return;
    };
    for (part, mut transform) in parts {
        *transform = match *part {
            Part::Limb(segment) => placed(pose, segment),
            Part::Hand => {
                dial::pointing(&pose.sample, level::GHOST).with_scale(Vec3::new(1.0, 1.0, THIN))
            }
            Part::Bead => Transform::from_translation(
                dial::turned_to(flight, pose.sample.turned_rad) + Vec3::Y * level::GHOST,
            ),
        };
    }
}
