//! What the picture shows of the session.

use std::sync::Arc;

use bevy::prelude::*;

use crate::current_session::CurrentSession;
use turns_aloft_physics::flight::{Flight, Pose};

/// The jump on the stage; touched only when there is another one.
#[derive(Resource)]
pub struct ShownFlight {
    pub flight: Arc<Flight>,
    pub owed_heading_rad: Option<f64>,
}

/// The moment on the stage; touched only when the playhead or the jump moved.
#[derive(Resource)]
pub struct ShownSample {
    pub playhead_s: f64,
    pub pose: Pose,
}

/// The attempt beside it; touched only when there is another one, or none any more.
#[derive(Resource, Default)]
pub struct ShownReference {
    pub flight: Option<Arc<Flight>>,
}

/// That attempt at the same moment after take-off.
#[derive(Resource, Default)]
pub struct ReferenceSample {
    pub playhead_s: f64,
    pub pose: Option<Pose>,
}

pub fn read_session(
    mut commands: Commands,
    session: Res<CurrentSession>,
    flight: Option<ResMut<ShownFlight>>,
    moment: Option<ResMut<ShownSample>>,
) {
    let owed_heading_rad = session.owed_heading_rad();
    let playhead_s = session.playhead_s();
    let pose = || session.flight().pose_at(playhead_s);
    let (Some(mut flight), Some(mut moment)) = (flight, moment) else {
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
    if !same_flight || moment.playhead_s != playhead_s {
        *moment = ShownSample {
            playhead_s,
            pose: pose(),
        };
    }
}

pub fn read_reference(
    session: Res<CurrentSession>,
    mut reference: ResMut<ShownReference>,
    mut moment: ResMut<ReferenceSample>,
) {
    let flight = session.reference().map(|reference| &reference.jump.flight);
    let playhead_s = session.playhead_s();
    let same_flight = reference.flight.as_ref().map(Arc::as_ptr) == flight.map(Arc::as_ptr);
    if same_flight && (flight.is_none() || moment.playhead_s == playhead_s) {
        return;
    }
    if !same_flight {
        reference.flight = flight.cloned();
    }
    *moment = ReferenceSample {
        playhead_s,
        pose: flight.map(|flight| flight.pose_at(playhead_s)),
    };
}
