//! Changes tried on the jump at hand, and the way back.

use super::Session;
use crate::scenario::Scenario;
use crate::scenario::keys::Key;

#[derive(Debug, Default)]
pub(super) struct Tried {
    /// The scenarios from before each try, the first one first.
    before: Vec<Scenario>,
    /// Which flight the last try, or the last way back, was.
    revision: Option<u64>,
}

impl Tried {
    /// Nothing to go back to any more: another jump is at hand.
    pub(super) fn forget(&mut self) {
        self.before.clear();
    }

    /// Whether a flight came of a try or of the way back.
    pub(super) fn made(&self, revision: u64) -> bool {
        self.revision == Some(revision)
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
        self.tried.before.push(before);
        self.fly_tried();
    }

    /// Tries another value of one number, held inside its range.
    pub fn try_change(&mut self, key: &Key, value: f64) {
        self.try_on(|scenario| {
            key.hold(scenario, value);
        });
    }

    /// Makes the jump what it was before the last try, also where it has been changed by hand since.
    pub fn go_back(&mut self) {
        if let Some(before) = self.tried.before.pop() {
            self.scenario = before;
            self.fly_tried();
        }
    }

    fn fly_tried(&mut self) {
        self.notice = None;
        self.fly();
        self.tried.revision = Some(self.revision);
    }

    /// How many tries can be gone back on, one at a time.
    pub const fn tried(&self) -> usize {
        self.tried.before.len()
    }
}
