//! What an answer is: worked out piece by piece, so that no frame waits for it, and again when something
//! that it depends on is another.

use std::fmt;
use std::sync::Arc;

use crate::state::goal_settings::GoalSettings;
use crate::state::levers::Levers;
use crate::state::reference::Reference;
use crate::state::uncertainty::UncertaintyInputs;
use turns_aloft_attempt::Attempt;
use turns_aloft_fit::Fit;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::collection::Collection;
use turns_aloft_scenario::fly::Jump;

/// What answers can depend on.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Basis<'a> {
    pub scenario: &'a Scenario,
    pub jump: &'a Jump,
    /// Which flight that jump is.
    pub generation: u64,
    /// Whether it was a try, or the way back from one.
    pub is_tried: bool,
    /// Whether a control is held: what would only be in the way then can wait.
    pub dragging: bool,
    pub reference: Option<&'a Reference>,
    pub kept: &'a Collection,
    pub goal: &'a GoalSettings,
    pub levers: &'a Levers,
    pub uncertainty: &'a UncertaintyInputs,
    /// The attempt that is measured, or that the jump at hand was found from.
    pub attempt: Option<&'a Attempt>,
    /// What that says of the jump at hand, if it was found from one.
    pub fit: Option<&'a Arc<Fit>>,
}

/// One answer. What has been found stays in sight until it is replaced.
pub(crate) trait Answer: fmt::Debug + Default {
    /// What it depends on: where this is the same, so is the answer.
    type Depends: fmt::Debug + PartialEq;

    fn depends(on: &Basis) -> Self::Depends;

    /// Starts anew, with what it depended on `before`.
    fn ask(&mut self, on: &Basis, before: Option<&Self::Depends>);

    /// Does the next piece, of a few milliseconds at most; whether there was one.
    fn poll(&mut self, on: &Basis) -> bool;
}

/// An answer and what it was asked for.
#[derive(Debug)]
pub(crate) struct Asked<A: Answer> {
    of: Option<A::Depends>,
    answer: A,
}

impl<A: Answer> Default for Asked<A> {
    fn default() -> Self {
        Self {
            of: None,
            answer: A::default(),
        }
    }
}

impl<A: Answer> Asked<A> {
    /// As far as it has been worked out, perhaps of something earlier.
    pub const fn result(&self) -> &A {
        &self.answer
    }

    /// What it was last asked for.
    pub const fn asked_for(&self) -> Option<&A::Depends> {
        self.of.as_ref()
    }
}

/// An answer of any kind.
pub(crate) trait Poll {
    /// Asks anew where that is due and does the next piece; whether there was one.
    fn poll(&mut self, on: &Basis) -> bool;
}

impl<A: Answer> Poll for Asked<A> {
    fn poll(&mut self, on: &Basis) -> bool {
        let depends = A::depends(on);
        if self.of.as_ref() != Some(&depends) {
            self.answer.ask(on, self.of.as_ref());
            self.of = Some(depends);
        }
        self.answer.poll(on)
    }
}
