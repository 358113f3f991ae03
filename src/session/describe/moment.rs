//! The moment at the playhead in words.

use crate::session::Session;
use turns_aloft_describe::unit::{SECONDS, TURNS, UnitText};
use turns_aloft_physics::flight::FlightSample;
use turns_aloft_scenario::Scenario;
use turns_aloft_words::{say, text};

/// What the phase of the flight at the playhead is called.
pub fn phase(session: &Session) -> &'static str {
    let (t_s, flight) = (session.playhead_s(), session.flight());
    let spec = &flight.table.plan.spec;
    if t_s < 0.0 {
        text("phase-on-the-ground")
    } else if t_s >= flight.touchdown_s {
        text("phase-landed")
    } else if t_s >= flight.open_s && spec.open_lead_s > 0.0 {
        text("phase-opening")
    } else if t_s < spec.close_delay_s {
        text("phase-still-open")
    } else if t_s < flight.table.plan.closed_s() {
        text("phase-closing")
    } else {
        text("phase-held-tight")
    }
}

/// The picture in one sentence, at the playhead.
pub fn picture(session: &Session) -> String {
    let turns = turns_at(session, &session.now());
    say!(
        "picture",
        phase = phase(session),
        time = SECONDS.text(session.now().t_s),
        turns = TURNS.number(turns)
    )
}

/// Turns up to a moment, the part turned on the ice included.
pub fn turns_at(session: &Session, sample: &FlightSample) -> f64 {
    turns_of(session.scenario(), sample)
}

/// The same of any attempt.
pub fn turns_of(scenario: &Scenario, sample: &FlightSample) -> f64 {
    sample.air_turns() + scenario.pre_rotation_turns
}
