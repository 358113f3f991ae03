use super::Session;
use super::readings::Reading;

impl Session {
    /// Does the next piece; whether there was one.
    pub(super) fn think_win(&mut self) -> bool {
        false
    }

    pub(super) fn win_readings(&self) -> Vec<Reading> {
        Vec::new()
    }
}
