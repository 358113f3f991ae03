//! The reference attempt: a second, translucent figure in the same place or beside the jumper, with its own
//! pointer on the jumper's dial.
//!
//! Both take off at the same time; each lands at its own time.

use bevy::prelude::*;

use crate::beside::Beside;
use crate::drawn::segment_meshes;
use crate::figure::segment_transform;
use crate::level;
use crate::material::{StageMaterials, mesh_bundle};
use crate::order::StageSystems;
use crate::palette::BevyColour as _;
use crate::shown::{ReferenceSample, ShownReference};
use crate::{dial, palette};
use turns_aloft_appearance::{Figure, Theme, chosen, shown};
use turns_aloft_physics::body::{BodySpec, Segment};

pub fn plugin(app: &mut App) {
    app.add_systems(
        PostUpdate,
        (
            rebuild_meshes.run_if(resource_exists_and_changed::<ShownReference>),
            pose.run_if(
                resource_exists_and_changed::<ReferenceSample>
                    .or_else(resource_exists_and_changed::<Beside>),
            ),
        )
            .chain()
            .in_set(StageSystems::Follow),
    );
}

/// What an entity draws of the reference attempt.
#[derive(Component, Clone, Copy)]
enum Part {
    Limb(Segment),
    /// Points in the heading of the pelvis.
    Pointer,
    /// Marks on the spiral how far it has turned.
    Bead,
}

/// Width of the pointer relative to the jumper's, so that the two differ without colour as well.
const WIDTH_RATIO: f32 = 0.55;

/// Builds the figure, rebuilds it for another body, theme or way of drawing, or removes it.
fn rebuild_meshes(
    mut commands: Commands,
    reference: Res<ShownReference>,
    parts: Query<Entity, With<Part>>,
    mut meshes: ResMut<Assets<Mesh>>,
    materials: Res<StageMaterials>,
    mut built_for: Local<Option<(Theme, Figure, BodySpec)>>,
) {
    let body = reference.flight().map(|flight| &flight.table.body);
    let key = body.map(|body| (shown(), chosen().figure, body.spec));
    if *built_for == key {
        return;
    }
    *built_for = key;
    for part in parts {
        commands.entity(part).despawn();
    }
    let Some(body) = body else {
        return;
    };
    let build = segment_meshes(body);
    let color = palette::now().reference.linear();
    for segment in Segment::ALL {
        let mesh = build(segment).single_colored(color).mesh();
        commands.spawn((
            Part::Limb(segment),
            mesh_bundle(meshes.add(mesh), &materials.translucent),
        ));
    }
    let marks = [
        (Part::Pointer, dial::needle(palette::now().reference_mark)),
        (Part::Bead, dial::bead(palette::now().reference_mark)),
    ];
    for (part, mesh_builder) in marks {
        commands.spawn((
            part,
            mesh_bundle(meshes.add(mesh_builder.mesh()), &materials.unlit),
        ));
    }
}

fn pose(
    reference: Res<ShownReference>,
    sample: Res<ReferenceSample>,
    beside: Res<Beside>,
    parts: Query<(&Part, &mut Transform)>,
) {
    let (Some(flight), Some((flown, pose))) = (reference.flight(), &sample.moment) else {
        return;
    };
    for (part, mut transform) in parts {
        *transform = match *part {
            Part::Limb(segment) => {
                let place = segment_transform(pose, segment);
                place.with_translation(place.translation + beside.offset_m())
            }
            Part::Pointer => {
                dial::pointing(flown, level::REFERENCE).with_scale(Vec3::new(1.0, 1.0, WIDTH_RATIO))
            }
            Part::Bead => Transform::from_translation(
                dial::turned_to(flight, flown.turned_rad) + Vec3::Y * level::REFERENCE,
            ),
        };
    }
}
