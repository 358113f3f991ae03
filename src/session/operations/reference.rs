//! Choosing the attempt beside the present one, and following it.

use crate::operations::action::Action;
use crate::session::Session;
use crate::state::document::{Attempt, Which};
use crate::state::reference::Reference;
use turns_aloft_describe::start::shown_name;
use turns_aloft_scenario::starts;
use turns_aloft_words::say;

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
