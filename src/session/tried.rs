//! Changes tried on the jump at hand, and the way back.

use super::Session;
use crate::scenario::Scenario;

/// The scenarios from before each try, the first one first.
#[derive(Debug, Default)]
pub(super) struct Tried(Vec<Scenario>);

impl Tried {
    /// Nothing to go back to any more: another jump is at hand.
    pub(super) fn forget(&mut self) {
        self.0.clear();
    }
}

impl Session {
    /// Changes the jump in a way that can be gone back on. What changes nothing is no try.
    pub fn try_on(&mut self, change: impl FnOnce(&mut Scenario)) {
        let before = self.scenario.clone();
        change(&mut self.scenario);
        if self.scenario == before {
            return;
        }
        self.tried.0.push(before);
        self.notice = None;
        self.fly();
    }

    /// Makes the jump what it was before the last try, also where it has been changed by hand since.
    pub fn go_back(&mut self) {
        if let Some(before) = self.tried.0.pop() {
            self.scenario = before;
            self.notice = None;
            self.fly();
        }
    }

    /// How many tries can be gone back on, one at a time.
    pub const fn tried(&self) -> usize {
        self.tried.0.len()
    }
}
