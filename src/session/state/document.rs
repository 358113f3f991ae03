//! What is worked on: a jump, what its controls go back to, and the attempt that it is compared with.
//!
//! Everything that undo brings back is in here; what is computed from it is not.

use serde::{Deserialize, Serialize};

use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::collection::Id;
use turns_aloft_scenario::input::Input;

#[derive(Debug, Clone, PartialEq)]
pub struct Document {
    pub scenario: Scenario,
    /// The starting point, file or link last opened.
    pub base: Scenario,
    pub reference: Option<Attempt>,
}

/// An attempt to compare with, and where it was taken from.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Attempt {
    pub which: Which,
    pub scenario: Scenario,
}

/// Where an attempt is taken from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Which {
    Kept(Id),
    /// A starting point, by its name on the command line.
    Start(String),
    /// The present jump as it was opened.
    AsOpened,
    /// The present jump as it was before the last change that was tried.
    BeforeTry,
    /// It came with a link.
    Linked,
}

impl Document {
    /// A jump as it has just been opened, alone.
    pub fn opened(scenario: Scenario) -> Self {
        Self {
            base: scenario.clone(),
            scenario,
            reference: None,
        }
    }

    /// Opens a jump; without an attempt of its own to compare it with, the present one stays.
    pub fn open(&mut self, scenario: Scenario, reference: Option<Attempt>) {
        self.base.clone_from(&scenario);
        self.scenario = scenario;
        if reference.is_some() {
            self.reference = reference;
        } else if let Some(attempt) = &mut self.reference
            && attempt.which == Which::AsOpened
        {
            attempt.scenario.clone_from(&self.base);
        }
    }

    /// Whether anything differs from the opened jump, its name and note included.
    pub fn differs_from_base(&self) -> bool {
        self.scenario != self.base
    }

    /// Whether any input differs from the opened jump.
    pub fn inputs_differ(&self) -> bool {
        Input::differing(&self.base, &self.scenario)
            .next()
            .is_some()
    }

    /// Whether it was begun anew, from no jump that has a name.
    pub const fn is_begun(&self) -> bool {
        self.base.name.is_empty()
    }

    /// Puts every input back; what the jump is called and what is noted of it stays.
    pub fn put_back(&mut self) {
        self.scenario = Scenario {
            name: self.scenario.name.clone(),
            note: self.scenario.note.clone(),
            ..self.base.clone()
        };
    }

    /// Leaves no jump with a note about another one.
    pub fn settle_notes(&mut self) {
        self.scenario.settle_note();
        self.base.settle_note();
        if let Some(attempt) = &mut self.reference {
            attempt.scenario.settle_note();
        }
    }
}
