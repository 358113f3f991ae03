//! The attempt beside the present one: flown, and kept over a reload.

use serde::{Deserialize, Serialize};

use crate::state::document::{Attempt, Which};
use turns_aloft_describe::Sentence;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::beyond::Respect;
use turns_aloft_scenario::file::Opened;
use turns_aloft_scenario::fly::Jump;

/// A second attempt, flown.
#[derive(Debug, Clone)]
pub struct Reference {
    /// Where it was taken from.
    pub which: Which,
    /// What it is called on the page.
    pub name: String,
    pub scenario: Scenario,
    pub jump: Jump,
    /// In which respects that jump is beyond what has been seen.
    pub beyond_seen: Vec<Respect>,
}

/// What survives a reload: also an attempt whose origin is gone by then.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub(crate) struct SavedReference {
    which: Which,
    name: String,
    scenario: String,
}

impl Reference {
    pub(crate) fn new(which: Which, name: String, scenario: Scenario) -> Self {
        let jump = scenario.fly();
        Self {
            which,
            name,
            beyond_seen: scenario.beyond_seen(&jump),
            jump,
            scenario,
        }
    }
}

impl SavedReference {
    pub fn of(reference: &Reference) -> Self {
        Self {
            which: reference.which.clone(),
            name: reference.name.clone(),
            scenario: reference.scenario.to_file(),
        }
    }

    /// The attempt again, or why what was kept of it cannot be flown. It is named anew: another language
    /// may have been spoken then.
    pub fn restore(self) -> Result<Opened<Attempt>, String> {
        let opened = Scenario::open_file(&self.scenario).map_err(|why| why.sentence())?;
        Ok(Opened {
            read: Attempt {
                which: self.which,
                scenario: opened.read,
            },
            earlier_body: opened.earlier_body,
        })
    }
}
