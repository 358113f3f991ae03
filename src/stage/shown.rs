//! Resources with the flights and poses that the picture shows, updated from the session.

use std::sync::Arc;

use bevy::prelude::*;

use crate::current_session::CurrentSession;
use turns_aloft_physics::flight::{Flight, Pose};

/// The flight shown; marked changed only when the session has another one.
#[derive(Resource)]
pub struct ShownFlight {
    pub flight: Arc<Flight>,
    pub owed_heading_rad: Option<f64>,
}

/// The pose shown; marked changed only when playhead or flight have changed.
#[derive(Resource)]
pub struct ShownSample {
    pub playhead_s: f64,
    pub pose: Pose,
}

/// The flight of the reference attempt; marked changed only when it is another one or removed.
#[derive(Resource, Default)]
pub struct ShownReference {
    pub flight: Option<Arc<Flight>>,
}

/// The pose of the reference attempt at the same time after take-off.
#[derive(Resource, Default)]
pub struct ReferenceSample {
    pub playhead_s: f64,
    pub pose: Option<Pose>,
}

pub fn read_session(
    mut commands: Commands,
    session: Res<CurrentSession>,
    flight: Option<ResMut<ShownFlight>>,
    sample: Option<ResMut<ShownSample>>,
) {
    let owed_heading_rad = session.owed_heading_rad();
    let playhead_s = session.playhead_s();
    let pose = || session.flight().pose_at(playhead_s);
    let (Some(mut flight), Some(mut sample)) = (flight, sample) else {
        commands.insert_resource(ShownFlight {
            flight: Arc::clone(session.flight()),
            owed_heading_rad,
        });
        commands.insert_resource(ShownSample {
            playhead_s,
            pose: pose(),
        });
        return;
    };
    let same_flight = Arc::ptr_eq(&flight.flight, session.flight())
        && flight.owed_heading_rad == owed_heading_rad;
    if !same_flight {
        flight.flight = Arc::clone(session.flight());
        flight.owed_heading_rad = owed_heading_rad;
    }
    if !same_flight || sample.playhead_s != playhead_s {
        *sample = ShownSample {
            playhead_s,
            pose: pose(),
        };
    }
}

pub fn read_reference(
    session: Res<CurrentSession>,
    mut reference: ResMut<ShownReference>,
    mut sample: ResMut<ReferenceSample>,
) {
    let flight = session.reference().map(|reference| &reference.jump.flight);
    let playhead_s = session.playhead_s();
    let same_flight = reference.flight.as_ref().map(Arc::as_ptr) == flight.map(Arc::as_ptr);
    if same_flight && (flight.is_none() || sample.playhead_s == playhead_s) {
        return;
    }
    if !same_flight {
        reference.flight = flight.cloned();
    }
    *sample = ReferenceSample {
        playhead_s,
        pose: flight.map(|flight| flight.pose_at(playhead_s)),
    };
}
