//! The times of the frames by the player's clock.

use std::ops::Range;

use turns_aloft_film::FilmTimes;

/// When the frames start by the player's clock, once that is set by what it shows.
pub struct Clock {
    times: FilmTimes,
    /// What the player's clock says more than the file's.
    ahead_s: f64,
    /// The frames that the film shows: one that was cut may have more.
    part: Range<usize>,
}

impl Clock {
    /// None where the film shows no frame at all.
    pub fn new(times: FilmTimes) -> Option<Self> {
        let mut part = (0..times.frames()).filter(|&frame| times.is_in_edit(frame));
        let first = part.next()?;
        let part = first..part.next_back().unwrap_or(first) + 1;
        Some(Self {
            times,
            ahead_s: 0.0,
            part,
        })
    }

    /// Sets the clock by what the player's says of the first frame in the file.
    pub fn set_first(&mut self, first_s: f64) {
        self.ahead_s = first_s - self.times.starts_s()[0];
    }

    pub fn part(&self) -> Range<usize> {
        self.part.clone()
    }

    pub const fn last(&self) -> usize {
        self.part.end - 1
    }

    /// The frame itself, or the nearest that the film shows.
    pub fn shown(&self, frame: usize) -> usize {
        frame.clamp(self.part.start, self.last())
    }

    pub fn start_s(&self, frame: usize) -> f64 {
        self.times.starts_s()[frame] + self.ahead_s
    }

    /// The middle of a frame's interval, where no rounding reaches another.
    pub fn middle_s(&self, frame: usize) -> f64 {
        self.times.middle_s(frame) + self.ahead_s
    }

    pub fn duration_s(&self, frame: usize) -> f64 {
        self.times.ends_s(frame) - self.times.starts_s()[frame]
    }

    /// The frame whose start is nearest to a time: engines round.
    pub fn starting_at(&self, time_s: f64) -> usize {
        let earlier = self.times.frame_at(time_s - self.ahead_s);
        let later = (earlier + 1).min(self.times.frames() - 1);
        if (self.start_s(later) - time_s).abs() < (self.start_s(earlier) - time_s).abs() {
            later
        } else {
            earlier
        }
    }

    /// Whether the last frame of the file starts then.
    pub fn ends_with(&self, time_s: f64) -> bool {
        let last = self.times.frames() - 1;
        (self.start_s(last) - time_s).abs() < self.duration_s(last) / 2.0
    }
}
