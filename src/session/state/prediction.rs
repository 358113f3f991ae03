//! What somebody expects the angular momentum of a turntable to do, and what it does.

use turns_aloft_turntable::Sample;

/// So long after the last push it is told what became of it, s.
pub const WATCHED_S: f64 = 5.0;

/// Slower than this, rad/s, there is no turning to watch yet.
const LEAST_RAD_S: f64 = 0.05;

/// What changes by less than this share stays the same.
const SAME: f64 = 0.01;

/// What it does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Tendency {
    Falls,
    Stays,
    Rises,
}

#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Prediction {
    pub expected: Tendency,
    /// From when it is watched: when it turns, after the last push.
    from: Option<Sample>,
    to: Option<Sample>,
}

/// What became of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outcome {
    pub from: Sample,
    pub to: Sample,
    pub tendency: Tendency,
}

impl Prediction {
    pub(crate) const fn of(expected: Tendency) -> Self {
        Self {
            expected,
            from: None,
            to: None,
        }
    }

    /// After a push it is watched from anew, unless it is told already.
    pub(crate) fn pushed(&mut self) {
        if self.to.is_none() {
            self.from = None;
        }
    }

    /// To be called with what is read as time goes on; whether it has just been told what became of it.
    pub(crate) fn watch(&mut self, now: &Sample, is_still: bool) -> bool {
        if self.to.is_some() {
            return false;
        }
        let Some(from) = &self.from else {
            self.from = (now.rate_rad_s.abs() > LEAST_RAD_S).then_some(*now);
            return false;
        };
        let is_over = is_still || now.t_s - from.t_s >= WATCHED_S;
        self.to = is_over.then_some(*now);
        is_over
    }

    /// None until it is told.
    pub fn outcome(&self) -> Option<Outcome> {
        let (from, to) = (self.from?, self.to?);
        let sizes = [from, to].map(|it| it.momentum_kg_m2_s.abs());
        let risen = sizes[1] - sizes[0];
        let tendency = if risen.abs() <= SAME * sizes[0] {
            Tendency::Stays
        } else if risen < 0.0 {
            Tendency::Falls
        } else {
            Tendency::Rises
        };
        Some(Outcome { from, to, tendency })
    }
}
