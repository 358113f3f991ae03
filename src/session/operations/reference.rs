//! Choosing the attempt beside the present one, and following it.

use crate::operations::action::Action;
use crate::session::Session;
use crate::state::document::{Attempt, Which};
use crate::state::reference::Reference;
use turns_aloft_describe::name::{differences, name_of};
use turns_aloft_scenario::starts;
use turns_aloft_words::{say, text};

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
            Which::BeforeTry => self.before_try.clone(),
            Which::Linked => None,
        };
        if let Some(scenario) = found {
            self.apply(Action::SetReference(Attempt { which, scenario }));
        }
    }

    /// What the jump was before the last change that was tried, in short; none where none was, or where
    /// nothing is left of it.
    pub fn before_try(&self) -> Option<String> {
        let before = self.before_try.as_ref()?;
        let was = differences(self.scenario(), before, self.units(), 1);
        (!was.is_empty()).then_some(was)
    }

    /// Whether that jump is the one beside the present one.
    pub fn is_before_try_beside(&self) -> bool {
        let beside = self.reference.as_ref();
        beside.is_some_and(|it| {
            it.which == Which::BeforeTry && Some(&it.scenario) == self.before_try.as_ref()
        })
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
            Which::Start(_) | Which::Linked => name_of(scenario).into_owned(),
            Which::AsOpened => {
                say!("compare-as-opened", name = name_of(&self.document.base))
            }
            Which::BeforeTry => text("compare-before-try").to_owned(),
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
