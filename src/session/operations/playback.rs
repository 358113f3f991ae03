//! Moving the playhead.

use crate::session::Session;
use crate::state::playback::AFTER_S;

impl Session {
    /// The later landing may be an earlier one now.
    pub(crate) fn hold_playhead(&mut self) {
        self.playback.t_s = self.playback.t_s.min(self.last_s());
    }

    /// Touch-down, or the later one of two, s after take-off.
    pub fn end_s(&self) -> f64 {
        let own_s = self.pictured().flight.touchdown_s;
        let beside = self.pictured_beside();
        beside.map_or(own_s, |(flight, _)| own_s.max(flight.touchdown_s))
    }

    fn last_s(&self) -> f64 {
        self.end_s() + AFTER_S
    }

    /// Moves the playhead, or a flight that is led, on by `passed_s` of real time.
    pub fn advance(&mut self, passed_s: f64) {
        if self.fly_on(passed_s) {
            return;
        }
        self.playback.advance(passed_s, self.last_s());
    }

    /// Starts or stops; from the end it starts over.
    pub fn play_or_pause(&mut self) {
        self.playback.play_or_pause(self.last_s());
    }

    /// Shows what has been opened.
    pub(crate) fn show(&mut self) {
        self.playback.show(self.preferences.still, self.last_s());
    }

    /// Puts the playhead somewhere inside the flight and stops there.
    pub fn scrub(&mut self, t_s: f64) {
        self.playback.scrub(t_s, self.end_s());
    }

    /// One frame on or back.
    pub fn step(&mut self, frames: f64) {
        self.playback.step(frames, self.end_s());
    }
}
