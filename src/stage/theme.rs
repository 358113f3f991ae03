//! Rebuilds the 3D picture when the theme, or the way of drawing the jumper, changes.

use bevy::prelude::*;
use bevy::window::RequestRedraw;

use crate::material::StageMaterials;
use crate::shown::{ReferenceSample, ShownFlight, ShownReference, ShownSample};
use crate::shown_turntable::ShownTurntable;
use crate::{axis, dial, figure, ground, hand_distance, trails, turntable};
use turns_aloft_appearance::{Figure, Theme, chosen, shown};

pub fn plugin(app: &mut App) {
    app.add_systems(PreUpdate, rebuild.run_if(look_changed));
}

/// True at the first call, and whenever the look differs from that of the last call.
fn look_changed(mut last: Local<Option<(Theme, Figure)>>) -> bool {
    let look = (shown(), chosen().figure);
    last.replace(look) != Some(look)
}

/// Spawns the picture's entities in the colours of the current theme.
fn spawn(mut commands: Commands, mut meshes: ResMut<Assets<Mesh>>, materials: Res<StageMaterials>) {
    let (commands, meshes, materials) = (&mut commands, &mut *meshes, &*materials);
    ground::spawn(commands, materials);
    dial::spawn(commands, meshes, materials);
    axis::spawn(commands, meshes, materials);
    trails::spawn(commands, materials);
    figure::spawn_figure(commands, materials);
    figure::spawn_shadow(commands, meshes, materials);
    hand_distance::spawn(commands, meshes, materials);
    turntable::spawn(commands, meshes, materials);
}

fn rebuild(world: &mut World) {
    let mut drawn = world.query_filtered::<Entity, With<Mesh3d>>();
    for entity in drawn.iter(world).collect::<Vec<_>>() {
        world.despawn(entity);
    }
    if let Err(why) = world.run_system_cached(spawn) {
        error!("the scene is not built: {why}");
    }
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
