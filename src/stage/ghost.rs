//! The attempt beside the jumper's: a second figure in the same place, half seen through.
//!
//! It leaves the ice where and when the jumper does, and lands when it lands.

use bevy::prelude::*;

use super::figure::placed;
use super::mannequin::Mannequin;
use super::paint::{Paints, thing};
use super::{BesideMoment, ShownBeside, StageSystems, palette};
use crate::physics::body::{BodySpec, Segment};

pub fn plugin(app: &mut App) {
    app.add_systems(
        PostUpdate,
        (
            appear.run_if(resource_exists_and_changed::<ShownBeside>),
            pose.run_if(resource_exists_and_changed::<BesideMoment>),
        )
            .chain()
            .in_set(StageSystems::Follow),
    );
}

/// A segment of the second figure.
#[derive(Component)]
struct GhostLimb(Segment);

/// Makes the figure, makes it anew for another body, or takes it away.
fn appear(
    mut commands: Commands,
    beside: Res<ShownBeside>,
    limbs: Query<Entity, With<GhostLimb>>,
    mut meshes: ResMut<Assets<Mesh>>,
    paints: Res<Paints>,
    mut dressed: Local<Option<BodySpec>>,
) {
    let body = beside.flight.as_ref().map(|flight| &flight.table.body);
    let spec = body.map(|body| body.spec);
    if *dressed == spec {
        return;
    }
    *dressed = spec;
    for limb in limbs {
        commands.entity(limb).despawn();
    }
    let Some(body) = body else {
        return;
    };
    let mannequin = Mannequin::new(body);
    let ink = palette::GHOST.linear();
    for segment in Segment::ALL {
        let mesh = mannequin.segment(segment).in_one(ink).mesh();
        commands.spawn((GhostLimb(segment), thing(meshes.add(mesh), &paints.ghost)));
    }
}

fn pose(moment: Res<BesideMoment>, limbs: Query<(&GhostLimb, &mut Transform)>) {
    let Some(pose) = &moment.pose else {
        return;
    };
    for (limb, mut transform) in limbs {
        *transform = placed(pose, limb.0);
    }
}
