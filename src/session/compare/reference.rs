//! The attempt beside the present one: chosen, flown, kept over a reload.

use serde::{Deserialize, Serialize};

use crate::say;
use crate::scenario::beyond::Respect;
use crate::scenario::file::Opened;
use crate::scenario::fly::Jump;
use crate::scenario::{Scenario, starts};
use crate::session::Session;
use crate::session::collection::Id;

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

/// Where an attempt is taken from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Which {
    Kept(Id),
    /// A starting point, by its name on the command line.
    Start(String),
    /// The present jump as it was opened.
    AsOpened,
    /// It came with a link.
    Linked,
}

/// What survives a reload: also an attempt whose origin is gone by then.
#[derive(Debug, Serialize, Deserialize)]
pub struct SavedReference {
    which: Which,
    name: String,
    scenario: String,
}

impl Reference {
    fn new(which: Which, name: String, scenario: Scenario) -> Self {
        let jump = scenario.fly();
        Self {
            which,
            name,
            beyond_seen: scenario.beyond_seen(&jump),
            jump,
            scenario,
        }
    }

    pub fn keep(&self) -> SavedReference {
        SavedReference {
            which: self.which.clone(),
            name: self.name.clone(),
            scenario: self.scenario.to_file(),
        }
    }
}

impl SavedReference {
    /// The attempt again, or why what was kept of it cannot be flown.
    pub fn restore(self) -> Result<Opened<Reference>, String> {
        let opened = Scenario::open_file(&self.scenario).map_err(|why| why.to_string())?;
        Ok(Opened {
            read: Reference::new(self.which, self.name, opened.read),
            earlier_body: opened.earlier_body,
        })
    }
}

impl Session {
    /// The attempt that the present one is compared with.
    pub const fn reference(&self) -> Option<&Reference> {
        self.compare.reference.as_ref()
    }

    /// Grows with every attempt laid beside, with its name, and when it is taken away.
    pub const fn reference_changes(&self) -> u64 {
        self.compare.reference_changes
    }

    /// Lays a kept jump, a starting point or the present jump as it was opened beside the present
    /// one. What is not there any more is passed over.
    pub fn set_reference(&mut self, which: Which) {
        let found = match &which {
            Which::Kept(id) => {
                let entry = self.compare.keeping.collection().get(*id);
                entry.map(|entry| entry.scenario.clone())
            }
            Which::Start(name) => starts::named(name).map(|start| start.scenario.clone()),
            Which::AsOpened => Some(self.base.clone()),
            Which::Linked => None,
        };
        if let Some(scenario) = found {
            self.name_and_set_reference(which, scenario);
        }
    }

    /// Lays beside what came with a link.
    pub(in crate::session) fn lay_linked_beside(&mut self, scenario: Scenario) {
        self.name_and_set_reference(Which::Linked, scenario);
    }

    fn name_and_set_reference(&mut self, which: Which, scenario: Scenario) {
        let name = self.name_of(&which, &scenario);
        self.set_reference_to(Some(Reference::new(which, name, scenario)));
    }

    /// What an attempt is called: in the language spoken, where the name is not the user's own.
    fn name_of(&self, which: &Which, scenario: &Scenario) -> String {
        match which {
            Which::Kept(_) => scenario.name.clone(),
            Which::Start(_) | Which::Linked => starts::shown_name(&scenario.name).to_owned(),
            Which::AsOpened => {
                say!(
                    "compare-as-opened",
                    name = starts::shown_name(&self.base.name)
                )
            }
        }
    }

    /// Takes the second attempt away.
    pub fn clear_reference(&mut self) {
        self.set_reference_to(None);
    }

    pub(in crate::session) fn set_reference_to(&mut self, reference: Option<Reference>) {
        self.compare.reference = reference;
        self.compare.reference_changes += 1;
        self.changes += 1;
        // The later landing may be an earlier one now.
        self.playback.t_s = self.playback.t_s.min(self.last_s());
    }

    /// Names it anew in the language spoken; what the user has named is left alone.
    pub(in crate::session) fn name_reference(&mut self) {
        let Some(reference) = self.compare.reference.as_ref() else {
            return;
        };
        if matches!(reference.which, Which::Kept(_)) {
            return;
        }
        let name = self.name_of(&reference.which, &reference.scenario);
        if let Some(reference) = &mut self.compare.reference {
            reference.name = name;
            self.compare.reference_changes += 1;
            self.changes += 1;
        }
    }

    /// Another jump has been opened: what stands beside it as it was opened is another one, too.
    pub(in crate::session) fn renew_as_opened(&mut self) {
        if self
            .reference()
            .is_some_and(|reference| reference.which == Which::AsOpened)
        {
            self.set_reference(Which::AsOpened);
        }
    }
}
