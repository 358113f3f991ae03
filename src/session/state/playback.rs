//! Where the playhead is and how it moves.

/// Shown before take-off and after touch-down, s.
pub const BEFORE_S: f64 = 0.25;
pub const AFTER_S: f64 = 0.7;

/// One frame of the playhead's single step, s: video of 60 pictures a second.
pub const FRAME_S: f64 = 1.0 / 60.0;

/// Playing speeds, over real time.
pub const SPEEDS: [f64; 4] = [1.0, 0.5, 0.25, 0.1];

#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Playback {
    /// s after take-off.
    pub t_s: f64,
    pub playing: bool,
    pub speed: f64,
    /// Starts over after the landing.
    pub repeat: bool,
}

impl Default for Playback {
    /// About to fly at a quarter of its speed.
    fn default() -> Self {
        Self {
            t_s: -BEFORE_S,
            playing: true,
            speed: 0.25,
            repeat: false,
        }
    }
}

impl Playback {
    /// Moves on by `passed_s` of real time in what ends at `last_s`.
    pub fn advance(&mut self, passed_s: f64, last_s: f64) {
        if !self.playing {
            return;
        }
        self.t_s += passed_s * self.speed;
        if self.t_s < last_s {
            return;
        }
        if self.repeat {
            self.t_s = -BEFORE_S;
        } else {
            self.t_s = last_s;
            self.playing = false;
        }
    }

    /// Starts or stops; from the end it starts over.
    pub fn play_or_pause(&mut self, last_s: f64) {
        if !self.playing && self.t_s >= last_s {
            self.t_s = -BEFORE_S;
        }
        self.playing = !self.playing;
    }

    /// Stops somewhere inside the flight, which ends at `end_s`.
    pub fn scrub(&mut self, t_s: f64, end_s: f64) {
        self.playing = false;
        self.t_s = t_s.clamp(0.0, end_s);
    }

    /// One frame on or back.
    pub fn step(&mut self, frames: f64, end_s: f64) {
        let inside_s = self.t_s.clamp(0.0, end_s);
        self.scrub(inside_s + frames * FRAME_S, end_s);
    }

    /// Starts from before the take-off, or stands still at the end.
    pub fn show(&mut self, still: bool, last_s: f64) {
        self.playing = !still;
        self.t_s = if still { last_s } else { -BEFORE_S };
    }
}
