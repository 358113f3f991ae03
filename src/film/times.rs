//! When each frame of a film is shown.

use crate::codec::Codec;

/// How close a rate is to another one to be the same: rates are rounded, and clocks differ a little.
const SAME_RATE: f64 = 0.05;

/// What a film's edit list does to it: a player that heeds the list shows a frame `offset_s` later than
/// its tables say, and only what lies between `from_s` and `to_s`. Where the list cuts a frame in two, some
/// players (those built on ffmpeg) show all from the next one on earlier, by the rest of that frame.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Edit {
    pub offset_s: f64,
    /// On the time line of the tables; without end where the list says none.
    pub from_s: f64,
    pub to_s: f64,
}

impl Edit {
    pub(crate) const NONE: Self = Self {
        offset_s: 0.0,
        from_s: f64::NEG_INFINITY,
        to_s: f64::INFINITY,
    };
}

/// When each frame of a film is shown, on the time line of the file's tables, in the order of being
/// shown. There are two frames at least.
#[derive(Debug, Clone, PartialEq)]
pub struct FilmTimes {
    pub(crate) starts_s: Vec<f64>,
    pub(crate) end_s: f64,
    pub(crate) keys: Vec<usize>,
    pub(crate) stored_rate_hz: f64,
    pub(crate) codec: Codec,
    pub(crate) width_px: u32,
    pub(crate) height_px: u32,
    pub(crate) edit: Edit,
    pub(crate) capture_rate_hz: Option<f64>,
}

impl FilmTimes {
    /// When each frame starts, s.
    pub fn starts_s(&self) -> &[f64] {
        &self.starts_s
    }

    /// When the last frame ends, s.
    pub const fn end_s(&self) -> f64 {
        self.end_s
    }

    pub const fn frames(&self) -> usize {
        self.starts_s.len()
    }

    /// When a frame ends, s: the next one starts then.
    pub fn ends_s(&self, frame: usize) -> f64 {
        self.starts_s.get(frame + 1).copied().unwrap_or(self.end_s)
    }

    /// The middle of the interval in which a frame is shown, s: where to seek to, furthest from both
    /// neighbours. Past the last frame: the last one's.
    pub fn middle_s(&self, frame: usize) -> f64 {
        let frame = frame.min(self.starts_s.len() - 1);
        f64::midpoint(self.starts_s[frame], self.ends_s(frame))
    }

    /// The frame that is shown at a moment: the first one before it has started, the last one after it
    /// has ended.
    pub fn frame_at(&self, time_s: f64) -> usize {
        let started = self.starts_s.partition_point(|&start_s| start_s <= time_s);
        started.saturating_sub(1)
    }

    /// The frames that can be shown without others, in order.
    pub fn keys(&self) -> &[usize] {
        &self.keys
    }

    /// The edit list's doing.
    pub const fn edit(&self) -> Edit {
        self.edit
    }

    /// Whether a player that heeds the edit list shows a frame: players leave out one that has started
    /// before the part that is shown.
    pub fn is_in_edit(&self, frame: usize) -> bool {
        let shown = self.edit.from_s..self.edit.to_s;
        (self.starts_s.get(frame)).is_some_and(|start_s| shown.contains(start_s))
    }

    pub const fn codec(&self) -> &Codec {
        &self.codec
    }

    /// As it is shown, px: an upright film is higher than wide.
    pub const fn size_px(&self) -> [u32; 2] {
        [self.width_px, self.height_px]
    }

    /// Frames a second as they stand in the file, gaps left out.
    pub const fn stored_rate_hz(&self) -> f64 {
        self.stored_rate_hz
    }

    /// Frames a second as they were taken, where the file says so.
    pub const fn capture_rate_hz(&self) -> Option<f64> {
        self.capture_rate_hz
    }

    /// How many times as long as in the world everything takes in the film, as far as the file says: 8
    /// for 240 frames a second stored as 30.
    pub fn slow_motion(&self) -> f64 {
        let slower = self.capture_rate_hz.unwrap_or(self.stored_rate_hz) / self.stored_rate_hz;
        let whole = slower.round();
        if whole >= 1.0 && (slower / whole - 1.0).abs() <= SAME_RATE {
            whole
        } else {
            slower
        }
    }
}
