//! Resources with the flights and poses that the picture shows, updated from the session.

use std::sync::Arc;

use bevy::prelude::*;

use crate::current_session::CurrentSession;
use crate::shown_turntable::ground as ground_under;
use turns_aloft_figure::pose::FigurePose;
use turns_aloft_figure::shown::shown_pose;
use turns_aloft_physics::flight::{Flight, FlightSample};
use turns_aloft_scenario::ground::Ground;

/// The flight shown; marked changed only when the session has another one.
#[derive(Resource)]
pub struct ShownFlight {
    pub flight: Arc<Flight>,
    pub ground: Ground,
    pub owed_heading_rad: Option<f64>,
}

/// The moment shown; marked changed only when playhead or flight have changed.
#[derive(Resource)]
pub struct ShownSample {
    pub playhead_s: f64,
    /// The flight at the playhead, held at its ends.
    pub flown: FlightSample,
    /// The jumper, who lands after touch-down.
    pub pose: FigurePose,
}

/// The flight of the reference attempt; marked changed only when it is another one or removed.
#[derive(Resource, Default)]
pub struct ShownReference {
    pub attempt: Option<(Arc<Flight>, Ground)>,
}

/// The reference attempt at the same time after take-off.
#[derive(Resource, Default)]
pub struct ReferenceSample {
    pub playhead_s: f64,
    pub moment: Option<(FlightSample, FigurePose)>,
}

impl ShownFlight {
    /// The moment at the playhead.
    fn at(&self, playhead_s: f64) -> ShownSample {
        let (flown, pose) = moment(&self.flight, self.ground, playhead_s);
        ShownSample {
            playhead_s,
            flown,
            pose,
        }
    }
}

impl ShownReference {
    pub fn flight(&self) -> Option<&Arc<Flight>> {
        self.attempt.as_ref().map(|(flight, _)| flight)
    }
}

fn moment(flight: &Flight, ground: Ground, playhead_s: f64) -> (FlightSample, FigurePose) {
    (
        flight.at(playhead_s),
        shown_pose(flight, ground, playhead_s),
    )
}

pub fn read_session(
    mut commands: Commands,
    session: Res<CurrentSession>,
    flight: Option<ResMut<ShownFlight>>,
    sample: Option<ResMut<ShownSample>>,
) {
    let playhead_s = session.playhead_s();
    // Under a turntable lies what it stands on.
    let ground = match session.turntable() {
        Some(on_turntable) => ground_under(on_turntable.setup().stand),
        None => session.scenario().ground,
    };
    let now = || ShownFlight {
        flight: Arc::clone(session.flight()),
        ground,
        owed_heading_rad: session.owed_heading_rad(),
    };
    let (Some(mut flight), Some(mut sample)) = (flight, sample) else {
        let flight = now();
        commands.insert_resource(flight.at(playhead_s));
        commands.insert_resource(flight);
        return;
    };
    let same_flight = Arc::ptr_eq(&flight.flight, session.flight())
        && flight.ground == ground
        && flight.owed_heading_rad == session.owed_heading_rad();
    if !same_flight {
        *flight = now();
    }
    if !same_flight || sample.playhead_s != playhead_s {
        *sample = flight.at(playhead_s);
    }
}

pub fn read_reference(
    session: Res<CurrentSession>,
    mut reference: ResMut<ShownReference>,
    mut sample: ResMut<ReferenceSample>,
) {
    let attempt = session.reference();
    let flight = attempt.map(|reference| &reference.jump.flight);
    let playhead_s = session.playhead_s();
    let same_flight = reference.flight().map(Arc::as_ptr) == flight.map(Arc::as_ptr);
    if same_flight && (flight.is_none() || sample.playhead_s == playhead_s) {
        return;
    }
    if !same_flight {
        reference.attempt = attempt.map(|reference| {
            (
                Arc::clone(&reference.jump.flight),
                reference.scenario.ground,
            )
        });
    }
    let shown = reference.attempt.as_ref();
    *sample = ReferenceSample {
        playhead_s,
        moment: shown.map(|(flight, ground)| moment(flight, *ground, playhead_s)),
    };
}
