//! What would win the missing turns, in words.

mod lines;
pub mod words;

pub use crate::state::goal_settings::GoalTurns;

use crate::readings::Reading;
use crate::session::Session;
use turns_aloft_analysis::limits::Verdict;

impl Session {
    pub(crate) fn goal_readings(&self) -> Vec<Reading> {
        lines::all(self)
    }
}

/// Whether a verdict is one that a change can be proposed with.
pub fn can(verdict: Verdict) -> bool {
    verdict != Verdict::CannotAlone
}
