//! Every readout, and the answer in sight, as lines of text.

use crate::describe::reading::Reading;
use crate::describe::{
    compare, efforts, flight, goal_lines, lesson, loads, map, measuring, result, slow_flight,
    turn_try, turntable, uncertainty, weights, why_lines,
};
use crate::session::Session;
use crate::state::question::Question;

/// All lines, those of one group together.
pub fn readings(session: &Session) -> Vec<Reading> {
    // What is flown by hand has lines of its own: these are of the jump at hand.
    if session.is_flown_by_hand() {
        return Vec::new();
    }
    // What is to be predicted is not told before.
    if session.withholds_flight() {
        return Vec::new();
    }
    if let Some(on_turntable) = session.turntable() {
        return turntable::lines(session, on_turntable);
    }
    let now = session.now();
    let mut lines = result::lines(session);
    lines.extend(weights::lines(session));
    lines.extend(uncertainty::lines(session));
    lines.extend(flight::time(session, &now));
    lines.extend(flight::rate(session, &now));
    lines.extend(flight::inertia(session, &now));
    lines.extend(flight::energy(session, &now));
    lines.extend(loads::hands(session, &now));
    lines.extend(efforts::lines(session));
    lines.extend(flight::axis(session, &now));
    lines.extend(loads::landing(session));
    lines
}

impl Session {
    /// The answer in sight as lines of text.
    pub fn answers(&self) -> Vec<Reading> {
        if self.is_measuring() {
            return measuring::lines(self);
        }
        if let Some(slow) = self.slow_flight() {
            return slow_flight::lines(self, slow);
        }
        if let Some(lesson) = self.lesson() {
            return lesson::lines(self, lesson);
        }
        if self.is_on_turntable() {
            return Vec::new();
        }
        match self.question {
            Question::Jump => turn_try::lines(self),
            Question::Why => why_lines::lines(self),
            Question::Goal => goal_lines::lines(self),
            Question::Map => map::lines(self),
            Question::Compare => compare::lines(self),
        }
    }
}
