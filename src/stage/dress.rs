//! The picture in the colours chosen: everything is built again when others are.

use bevy::ecs::schedule::ScheduleLabel;
use bevy::prelude::*;
use bevy::window::RequestRedraw;

use super::{BesideMoment, ShownBeside, ShownFlight, ShownMoment};
use crate::look::{self, Light};

/// Builds what is seen, in the present colours.
#[derive(ScheduleLabel, Debug, Clone, PartialEq, Eq, Hash)]
pub struct Dress;

pub fn plugin(app: &mut App) {
    app.init_schedule(Dress)
        .add_systems(PreUpdate, dress.run_if(others_chosen));
}

/// At first, and whenever other colours are shown than when this was asked last.
fn others_chosen(mut last: Local<Option<Light>>) -> bool {
    last.replace(look::shown()) != Some(look::shown())
}

fn dress(world: &mut World) {
    let mut worn = world.query_filtered::<Entity, With<Mesh3d>>();
    for thing in worn.iter(world).collect::<Vec<_>>() {
        world.despawn(thing);
    }
    world.run_schedule(Dress);
    // What follows the jump is put in its place again.
    if let Some(mut flight) = world.get_resource_mut::<ShownFlight>() {
        flight.set_changed();
    }
    if let Some(mut moment) = world.get_resource_mut::<ShownMoment>() {
        moment.set_changed();
    }
    world.resource_mut::<ShownBeside>().set_changed();
    world.resource_mut::<BesideMoment>().set_changed();
    world.write_message(RequestRedraw);
}
