//! The frames as a container lists them, put into the order in which they are shown.

use crate::codec::Codec;
use crate::fault::FilmFault;
use crate::limits::MOST_FRAMES;
use crate::times::{Edit, FilmTimes};

/// Times beyond these, in a container's units, are no times. Nearer ones keep apart as floats.
const FURTHEST: i64 = 1 << 50;

/// Intervals longer than the usual one by so much are gaps, and tell nothing of the rate. Our choice.
const LONGEST_INTERVAL: f64 = 1.5;

/// Frames in the order of the file.
pub(crate) struct Samples {
    /// Of the file, bytes.
    length: u64,
    /// Twice the time in the container's units, and 1 more for a key frame: so they are sorted by time
    /// as plain numbers.
    times: Vec<i64>,
    /// The latest moment at which a frame that says how long it is shown ends.
    end: i64,
}

/// What a container says of the film besides its frames.
pub(crate) struct Track {
    pub codec: Codec,
    pub width_px: u32,
    pub height_px: u32,
    /// A unit of time, s.
    pub unit_s: f64,
    pub edit: Edit,
    pub capture_rate_hz: Option<f64>,
}

impl Samples {
    pub const fn new(length: u64) -> Self {
        Self {
            length,
            times: Vec::new(),
            end: 0,
        }
    }

    /// Adds the next frame; `duration` is 0 where it isn't known.
    pub fn add(&mut self, time: i64, duration: i64, key: bool) -> Result<(), FilmFault> {
        if self.times.len() >= MOST_FRAMES {
            return Err(FilmFault::TooManyFrames);
        }
        // Each has a byte at least.
        let has_room = (self.times.len() as u64) < self.length;
        if !has_room || time.abs() > FURTHEST || duration.abs() > FURTHEST {
            return Err(FilmFault::Damaged);
        }
        self.times.push(2 * time + i64::from(key));
        self.end = self.end.max(time + duration);
        Ok(())
    }

    /// Says that the last frame is no key frame after all.
    pub fn last_is_no_key(&mut self) {
        if let Some(last) = self.times.last_mut() {
            *last &= !1;
        }
    }

    pub fn into_times(mut self, track: Track) -> Result<FilmTimes, FilmFault> {
        match self.times.len() {
            0 => return Err(FilmFault::NoFilmTrack),
            1 => return Err(FilmFault::StillPicture),
            _ => {}
        }
        if !track.codec.is_in_order() {
            sort(&mut self.times);
        }
        let intervals = self
            .times
            .windows(2)
            .map(|two| (two[1] >> 1) - (two[0] >> 1));
        let mut intervals: Vec<i64> = intervals.collect();
        if intervals.iter().any(|&interval| interval <= 0) {
            return Err(FilmFault::TimesNotAscending);
        }
        sort(&mut intervals);
        let usual = usual(&intervals);
        if self.times.iter().all(|time| time & 1 == 0) {
            return Err(FilmFault::NoKeyFrame);
        }
        let unit_s = track.unit_s;
        let last = self.times[self.times.len() - 1] >> 1;
        let mut last_interval = (self.end - last) as f64;
        if last_interval <= 0.0 || last_interval > usual {
            last_interval = usual;
        }
        let keys = (0..self.times.len()).filter(|&i| self.times[i] & 1 == 1);
        Ok(FilmTimes {
            keys: keys.collect(),
            starts_s: self
                .times
                .iter()
                .map(|&time| (time >> 1) as f64 * unit_s)
                .collect(),
            end_s: (last as f64 + last_interval) * unit_s,
            stored_rate_hz: 1.0 / (usual * unit_s),
            codec: track.codec,
            width_px: track.width_px,
            height_px: track.height_px,
            edit: track.edit,
            capture_rate_hz: track.capture_rate_hz,
        })
    }
}

/// The mean of the intervals that are no gaps: a single one may be rounded to whole milliseconds.
fn usual(ascending: &[i64]) -> f64 {
    let longest = ascending[ascending.len() / 2] as f64 * LONGEST_INTERVAL;
    let count = ascending.partition_point(|&interval| interval as f64 <= longest);
    let sum: f64 = ascending[..count]
        .iter()
        .map(|&interval| interval as f64)
        .sum();
    sum / count as f64
}

/// All sorting goes through one sort: the compiler makes one for every way to compare.
fn sort(numbers: &mut [i64]) {
    numbers.sort_unstable();
}
