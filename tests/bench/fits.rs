//! Fits that are timed, the same natively and in the browser: of the attempt that the command prints as an
//! example, with 9 facings, 3 postures and both contacts.

use turns_aloft::attempt::Attempt;
use turns_aloft::attempt::example::example;
use turns_aloft::fit::unknown::Point;
use turns_aloft::fit::{Fit, Fitting};

/// The attempt, and where the search ended before its last mark was moved.
pub struct Fits {
    attempt: Attempt,
    before: Option<Point>,
}

impl Fits {
    pub fn new() -> Self {
        let attempt = example();
        let mut before = begin(&attempt, None);
        while before.point().is_none() {
            before.poll();
        }
        Self {
            before: before.point(),
            attempt,
        }
    }

    /// All that the marks say, from the beginning.
    pub fn whole(&self) -> Fit {
        begin(&self.attempt, None).complete()
    }

    /// The likeliest jump of marks of which one has been moved; its turns in the air.
    ///
    /// # Panics
    /// If one piece of work is not enough for it.
    pub fn first(&self) -> f64 {
        let mut fitting = begin(&self.attempt, self.before);
        fitting.poll();
        fitting.first().expect("one piece is enough").air_turns
    }
}

fn begin(attempt: &Attempt, before: Option<Point>) -> Fitting {
    Fitting::new(attempt, before).expect("it can be fitted")
}
