//! Resources with the flights and poses that the picture shows, updated from the session.

use std::sync::Arc;

use bevy::prelude::*;

use crate::current_session::CurrentSession;
use crate::shown_turntable::ground as ground_under;
use turns_aloft_figure::pose::FigurePose;
use turns_aloft_figure::shown::shown_pose;
use turns_aloft_physics::flight::{Flight, FlightSample};
use turns_aloft_physics::led_flight::LedFlight;
use turns_aloft_scenario::ground::Ground;
use turns_aloft_session::{Moment, Session};

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
    /// Of which moment it is.
    of: Moment,
    pub playhead_s: f64,
    /// It is led by hand while it flies: the flight shown is not what it will have been.
    pub is_led: bool,
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
    /// The moment at the playhead, or of the flight that is led.
    fn at(&self, session: &Session) -> ShownSample {
        let of = session.moment();
        if let Some(led) = session.slow_flight().and_then(|slow| slow.led()) {
            return self.led(of, led);
        }
        let playhead_s = session.playhead_s();
        let (flown, pose) = moment(&self.flight, self.ground, playhead_s);
        ShownSample {
            of,
            playhead_s,
            is_led: false,
            flown,
            pose,
        }
    }

    fn led(&self, of: Moment, led: &LedFlight) -> ShownSample {
        ShownSample {
            of,
            // It may be in the air for longer than the flight shown.
            playhead_s: led.time_s().min(self.flight.touchdown_s.next_down()),
            is_led: true,
            flown: *led.sample(),
            pose: FigurePose::flown(&led.pose()),
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
    // Under a turntable lies what it stands on.
    let ground = match session.turntable() {
        Some(on_turntable) => ground_under(on_turntable.setup().stand),
        None => session.scenario().ground,
    };
    let pictured = &session.pictured().flight;
    let now = || ShownFlight {
        flight: Arc::clone(pictured),
        ground,
        owed_heading_rad: session.owed_heading_rad(),
    };
    let (Some(mut flight), Some(mut sample)) = (flight, sample) else {
        let flight = now();
        commands.insert_resource(flight.at(&session));
        commands.insert_resource(flight);
        return;
    };
    let same_flight = Arc::ptr_eq(&flight.flight, pictured)
        && flight.ground == ground
        && flight.owed_heading_rad == session.owed_heading_rad();
    if !same_flight {
        *flight = now();
    }
    if !same_flight || sample.of != session.moment() {
        *sample = flight.at(&session);
    }
}

pub fn read_reference(
    session: Res<CurrentSession>,
    mut reference: ResMut<ShownReference>,
    mut sample: ResMut<ReferenceSample>,
) {
    let attempt = session.pictured_beside();
    let flight = attempt.map(|(flight, _)| flight);
    let playhead_s = session.playhead_s();
    let same_flight = reference.flight().map(Arc::as_ptr) == flight.map(Arc::as_ptr);
    if same_flight && (flight.is_none() || sample.playhead_s == playhead_s) {
        return;
    }
    if !same_flight {
        reference.attempt = attempt.map(|(flight, ground)| (Arc::clone(flight), ground));
    }
    let shown = reference.attempt.as_ref();
    *sample = ReferenceSample {
        playhead_s,
        moment: shown.map(|(flight, ground)| moment(flight, *ground, playhead_s)),
    };
}
