//! The picture in the colours chosen: everything is built again when others are.

use bevy::ecs::schedule::ScheduleLabel;
use bevy::prelude::*;
use bevy::window::RequestRedraw;

use crate::shown::ReferenceSample;
use crate::shown::ShownFlight;
use crate::shown::ShownReference;
use crate::shown::ShownSample;
use turns_aloft_appearance::{Light, shown};

/// Builds what is seen, in the present colours.
#[derive(ScheduleLabel, Debug, Clone, PartialEq, Eq, Hash)]
pub struct Themed;

pub fn plugin(app: &mut App) {
    app.init_schedule(Themed)
        .add_systems(PreUpdate, theme.run_if(others_chosen));
}

/// At first, and whenever other colours are shown than when this was asked last.
fn others_chosen(mut last: Local<Option<Light>>) -> bool {
    last.replace(shown()) != Some(shown())
}

fn theme(world: &mut World) {
    let mut applied_theme = world.query_filtered::<Entity, With<Mesh3d>>();
    for thing in applied_theme.iter(world).collect::<Vec<_>>() {
        world.despawn(thing);
    }
    world.run_schedule(Themed);
    // What follows the jump is put in its place again.
    if let Some(mut flight) = world.get_resource_mut::<ShownFlight>() {
        flight.set_changed();
    }
    if let Some(mut moment) = world.get_resource_mut::<ShownSample>() {
        moment.set_changed();
    }
    world.resource_mut::<ShownReference>().set_changed();
    world.resource_mut::<ReferenceSample>().set_changed();
    world.write_message(RequestRedraw);
}
