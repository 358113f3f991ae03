//! The attempt beside the present one: chosen, flown, kept over a reload.

use serde::{Deserialize, Serialize};
use turns_aloft_describe::Sentence;

use crate::Action;
use crate::Attempt;
use crate::Session;
use turns_aloft_describe::start::shown_name;
use turns_aloft_scenario::beyond::Respect;
use turns_aloft_scenario::collection::Id;
use turns_aloft_scenario::file::Opened;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::{Scenario, starts};
use turns_aloft_words::say;

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

impl Session {
    /// The attempt that the present one is compared with.
    pub const fn reference(&self) -> Option<&Reference> {
        self.reference.as_ref()
    }

    /// Lays a kept jump, a starting point or the present jump as it was opened beside the present
    /// one. What is not there any more is passed over.
    pub fn set_reference(&mut self, which: Which) {
        let found = match &which {
            Which::Kept(id) => {
                let entry = self.library.collection().get(*id);
                entry.map(|entry| entry.scenario.clone())
            }
            Which::Start(name) => starts::named(name).map(|start| start.scenario.clone()),
            Which::AsOpened => Some(self.document.base.clone()),
            Which::Linked => None,
        };
        if let Some(scenario) = found {
            self.apply(Action::SetReference(Attempt { which, scenario }));
        }
    }

    /// Takes the second attempt away.
    pub fn clear_reference(&mut self) {
        self.apply(Action::ClearReference);
    }

    /// What an attempt is called: in the language spoken, where the name is not the user's own.
    fn name_of(&self, attempt: &Attempt) -> String {
        let scenario = &attempt.scenario;
        match &attempt.which {
            Which::Kept(id) => {
                // It may have got another name meanwhile.
                let entry = self.library.collection().get(*id);
                let named = entry.map_or(scenario, |entry| &entry.scenario);
                named.name.clone()
            }
            Which::Start(_) | Which::Linked => shown_name(&scenario.name).to_owned(),
            Which::AsOpened => {
                say!(
                    "compare-as-opened",
                    name = shown_name(&self.document.base.name)
                )
            }
        }
    }

    /// Brings the attempt in sight up to date with the document's, with the kept jumps' names and with
    /// the language spoken; flies it where it is another one.
    pub(crate) fn follow_reference(&mut self) {
        let Some(attempt) = self.document.reference.clone() else {
            self.reference = None;
            self.hold_playhead();
            return;
        };
        let name = self.name_of(&attempt);
        let mut scenario = attempt.scenario;
        if matches!(attempt.which, Which::Kept(_)) {
            scenario.name.clone_from(&name);
        }
        match &mut self.reference {
            Some(shown) if shown.which == attempt.which && shown.scenario == scenario => {
                shown.name = name;
            }
            shown => *shown = Some(Reference::new(attempt.which, name, scenario)),
        }
        self.hold_playhead();
    }
}
