//! The moment at the playhead in words.

use crate::describe::turntable;
use crate::session::Session;
use crate::state::slow_flight::SlowFlight;
use turns_aloft_describe::turns::{hundredths_of, turns_text};
use turns_aloft_describe::unit::{SECONDS, UnitText};
use turns_aloft_physics::flight::FlightSample;
use turns_aloft_scenario::curve::turns_of;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_words::{say, text};

/// What the phase of the flight at the playhead is called.
pub fn phase(session: &Session) -> &'static str {
    if let Some(slow) = session.slow_flight() {
        return phase_by_hand(session, slow);
    }
    let (t_s, flight) = (session.playhead_s(), session.flight());
    let plan = &flight.table.plan;
    if t_s < 0.0 {
        text("phase-on-the-ground")
    } else if t_s >= flight.touchdown_s {
        text("phase-landed")
    } else if t_s >= flight.open_s && plan.opens() {
        text("phase-opening")
    } else if t_s < plan.closes_from_s() {
        text("phase-still-open")
    } else if t_s < plan.closed_s() {
        text("phase-closing")
    } else {
        text("phase-held-tight")
    }
}

/// The same of a flight by hand, which has no plan.
fn phase_by_hand(session: &Session, slow: &SlowFlight) -> &'static str {
    match slow.landed() {
        None if slow.is_in_air() => text("slow-phase-in-air"),
        None => text("phase-on-the-ground"),
        Some(_) if session.playhead_s() < 0.0 => text("phase-on-the-ground"),
        Some(landed) if session.playhead_s() < landed.jump.flight.touchdown_s => {
            text("slow-phase-in-air")
        }
        Some(_) => text("phase-landed"),
    }
}

/// The picture in one sentence, at the playhead.
pub fn picture(session: &Session) -> String {
    if let Some(on_turntable) = session.turntable() {
        return turntable::picture(session, on_turntable);
    }
    let turns = turns_at(session, &session.now());
    say!(
        "picture",
        phase = phase(session),
        time = SECONDS.text(session.now().t_s),
        turns = turns_so_far_text(session.pictured(), turns)
    )
}

/// Turns of a jump up to a moment; at the last one they are its turns in all, as those are shown.
pub fn turns_so_far_text(jump: &Jump, turns: f64) -> String {
    turns_text(hundredths_of(turns, jump.owed.map(|owed| owed.turns)))
}

/// Turns up to a moment, the part turned on the ice included.
pub fn turns_at(session: &Session, sample: &FlightSample) -> f64 {
    turns_of(session.scenario(), sample)
}
