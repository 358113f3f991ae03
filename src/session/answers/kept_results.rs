//! What the kept jumps come to.

use std::collections::HashMap;

use turns_aloft_describe::turns::hundredths_of;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::collection::{Collection, Entry, Id};
use turns_aloft_scenario::fly::Owed;

/// What a kept jump came to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct KeptResult {
    pub turns: f64,
    /// None for a free jump.
    pub owed: Option<Owed>,
    /// Whether it is beyond what has been seen, in any respect.
    pub is_beyond_seen: bool,
}

impl KeptResult {
    /// Its turns in hundredths, as shown beside those owed.
    pub fn hundredths(&self) -> i64 {
        hundredths_of(self.turns, self.owed.map(|owed| owed.turns))
    }
}

/// With the jump that each is of: an id may stand for another one later.
#[derive(Debug, Default)]
pub(crate) struct KeptResults(HashMap<Id, (Scenario, KeptResult)>);

impl KeptResults {
    /// Flies the first kept jump whose turns are not known yet; whether there was one.
    pub fn fly_next(&mut self, kept: &Collection) -> bool {
        let unknown = kept.entries().iter().find(|entry| self.of(entry).is_none());
        let Some(entry) = unknown else {
            return false;
        };
        let jump = entry.scenario.fly();
        let outcome = KeptResult {
            turns: jump.turns,
            owed: jump.owed,
            is_beyond_seen: !entry.scenario.beyond_seen(&jump).is_empty(),
        };
        self.0.insert(entry.id, (entry.scenario.clone(), outcome));
        true
    }

    pub fn of(&self, entry: &Entry) -> Option<KeptResult> {
        let (scenario, outcome) = self.0.get(&entry.id)?;
        (*scenario == entry.scenario).then_some(*outcome)
    }
}
