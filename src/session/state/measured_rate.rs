//! The rate of a real chair, as a sensor has it: from this device while it is recorded, or from a file.

use turns_aloft_trace::{AboutVertical, CountedAbout};
use turns_aloft_turntable::calibrate::Reading;
use turns_aloft_turntable::slowing::longest;

/// Longest recording, s.
pub const LONGEST_S: f64 = 600.0;

#[derive(Debug, Clone)]
pub struct MeasuredRate {
    pub(crate) readings: AboutVertical,
    /// Whether more are to come.
    pub(crate) recording: bool,
    /// The time of the run at which its first reading is laid, s.
    pub(crate) begins_s: f64,
}

impl MeasuredRate {
    pub(crate) const fn new(readings: AboutVertical, recording: bool, begins_s: f64) -> Self {
        Self {
            readings,
            recording,
            begins_s,
        }
    }

    pub const fn is_recording(&self) -> bool {
        self.recording
    }

    pub fn is_empty(&self) -> bool {
        self.readings.t_s().is_empty()
    }

    pub fn counted_about(&self) -> CountedAbout {
        self.readings.counted_about()
    }

    /// From the first reading to the last, s.
    pub fn span_s(&self) -> f64 {
        match self.readings.t_s() {
            [first_s, .., last_s] => last_s - first_s,
            _ => 0.0,
        }
    }

    /// The time of the run at which its last reading is laid, s.
    pub fn end_s(&self) -> f64 {
        self.begins_s + self.span_s()
    }

    /// The last rate, rad/s.
    pub fn now_rad_s(&self) -> Option<f64> {
        let last = self.readings.t_s().len().checked_sub(1)?;
        Some(self.readings.rates_rad_s()(last))
    }

    /// The fastest, rad/s.
    pub fn most_rad_s(&self) -> f64 {
        self.points().fold(0.0, |most, [_, rate]| most.max(rate))
    }

    /// Times of the run and rates.
    pub fn points(&self) -> impl ExactSizeIterator<Item = [f64; 2]> + DoubleEndedIterator + '_ {
        let t_s = self.readings.t_s();
        let rate = self.readings.rates_rad_s();
        (0..t_s.len()).map(move |i| [self.begins_s + t_s[i] - t_s[0], rate(i)])
    }

    /// Where it only slows down.
    pub(crate) fn slowing(&self) -> Option<[Reading; 3]> {
        longest(self.points().map(|[t_s, rate_rad_s]| (t_s, rate_rad_s)))
    }
}
