//! What a hand did, frame by frame, as the fewest knots with which the jump is flown again alike.

use crate::flight::led_flight::LedFlight;
use crate::motion::led_knots::{fewer, follow_alike};
use crate::motion::led_tucks::{LedTucks, MOST_KNOTS};

/// Numbers of knots that are tried, until one is enough; all of them are.
const KNOTS: [usize; 16] = [
    1, 2, 3, 4, 5, 6, 8, 10, 12, 14, 18, 24, 32, 48, 80, MOST_KNOTS,
];

/// How far off the flight with the knots that are kept may be: turns, less than half a hundredth, and its
/// end, s.
const KEPT_TURNS: f64 = 0.004;
const KEPT_S: f64 = 0.001;

/// A search that flies one jump at a time.
#[derive(Debug, Clone)]
pub struct KnotSearch {
    /// How many numbers of knots have been tried.
    tried: usize,
    /// The nearest so far, and how far off it is, in parts of what may be.
    best: (f64, LedTucks),
}

impl Default for KnotSearch {
    fn default() -> Self {
        Self {
            tried: 0,
            best: (f64::INFINITY, LedTucks::nothing()),
        }
    }
}

impl KnotSearch {
    /// Tries the next number of knots for what a hand did so far; returns the knots once they are found: as few as
    /// make a flight of the same turns by the same way, or, where even the most do not, the best of those that were
    /// tried.
    pub fn advance(&mut self, led: &LedFlight) -> Option<LedTucks> {
        let most = *KNOTS.get(self.tried)?;
        self.tried += 1;
        let (knots, end_s) = (led.all_knots(), led.time_s());
        if let Ok(few) = LedTucks::new(&fewer(knots, end_s, most)) {
            let off = off_with(led, &few);
            if off < 1.0 && follow_alike(knots, few.knots(), end_s, led.movement_s()) {
                return Some(few);
            }
            if off < self.best.0 {
                self.best = (off, few);
            }
        }
        let is_last = most >= knots.len() || self.tried == KNOTS.len();
        is_last.then(|| self.best.1.clone())
    }
}

impl LedFlight {
    /// What the hand did so far, as a few knots.
    pub fn knots(&self) -> LedTucks {
        let mut search = KnotSearch::default();
        loop {
            if let Some(knots) = search.advance(self) {
                return knots;
            }
        }
    }
}

/// How far off the flight with these knots is, in parts of what may be.
fn off_with(led: &LedFlight, few: &LedTucks) -> f64 {
    let flight = led.with_knots(few.clone());
    let end = if led.has_landed() {
        *flight.touchdown()
    } else {
        flight.at(led.time_s())
    };
    let off_turns = (end.air_turns() - led.air_turns()).abs();
    let off_s = (end.t_s - led.time_s()).abs();
    (off_turns / KEPT_TURNS).max(off_s / KEPT_S)
}
