//! How somebody likes the page, whatever the jump.

use crate::Session;
use turns_aloft_scenario::units::Units;

#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(crate) struct Preferences {
    pub units: Units,
    /// What a newcomer is told has been put away.
    pub greeted: bool,
    /// Nothing is to move unasked. The system's own setting, so no visit keeps it.
    pub still: bool,
}

impl Session {
    pub const fn units(&self) -> &Units {
        &self.preferences.units
    }

    pub fn set_units(&mut self, units: Units) {
        self.preferences.units = units;
    }

    /// Whether a newcomer has yet to be told what to do here.
    pub const fn greets(&self) -> bool {
        !self.preferences.greeted
    }

    /// Puts what a newcomer is told away for good.
    pub fn greet_no_more(&mut self) {
        self.preferences.greeted = true;
    }

    /// From now on plays only when asked: an opened jump shows its landing at once.
    pub fn keep_still(&mut self) {
        self.preferences.still = true;
        self.show();
    }
}
