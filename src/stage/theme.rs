//! Rebuilds the 3D picture when the theme, or the way of drawing the jumper, changes.

use bevy::ecs::schedule::ScheduleLabel;
use bevy::prelude::*;
use bevy::window::RequestRedraw;

use crate::shown::{ReferenceSample, ShownFlight, ShownReference, ShownSample};
use crate::shown_turntable::ShownTurntable;
use turns_aloft_appearance::{Figure, Theme, chosen, shown};

/// Runs the systems that spawn the picture's entities in the colours of the current theme.
#[derive(ScheduleLabel, Debug, Clone, PartialEq, Eq, Hash)]
pub struct BuildScene;

pub fn plugin(app: &mut App) {
    app.init_schedule(BuildScene)
        .add_systems(PreUpdate, rebuild.run_if(look_changed));
}

/// True at the first call, and whenever the look differs from that of the last call.
fn look_changed(mut last: Local<Option<(Theme, Figure)>>) -> bool {
    let look = (shown(), chosen().figure);
    last.replace(look) != Some(look)
}

fn rebuild(world: &mut World) {
    let mut drawn = world.query_filtered::<Entity, With<Mesh3d>>();
    for entity in drawn.iter(world).collect::<Vec<_>>() {
        world.despawn(entity);
    }
    world.run_schedule(BuildScene);
    // Marks the resources as changed, so that the new entities get their meshes and transforms.
    if let Some(mut flight) = world.get_resource_mut::<ShownFlight>() {
        flight.set_changed();
    }
    if let Some(mut sample) = world.get_resource_mut::<ShownSample>() {
        sample.set_changed();
    }
    world.resource_mut::<ShownTurntable>().set_changed();
    world.resource_mut::<ShownReference>().set_changed();
    world.resource_mut::<ReferenceSample>().set_changed();
    world.write_message(RequestRedraw);
}
