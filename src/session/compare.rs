use super::Session;
use super::readings::Reading;

impl Session {
    /// Does the next piece; whether there was one.
    pub(super) fn think_compare(&mut self) -> bool {
        false
    }

    pub(super) fn compare_readings(&self) -> Vec<Reading> {
        Vec::new()
    }
}
