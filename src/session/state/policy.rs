//! Which inputs may be changed: all of them, unless some are locked.

use crate::state::document::Document;
use turns_aloft_describe::Inline;
use turns_aloft_scenario::input::Input;
use turns_aloft_words::say;

#[derive(Debug, Clone, Default)]
pub struct Policy {
    locked: Vec<Input>,
}

impl Policy {
    /// Everything but these may be changed.
    pub fn locking(locked: impl IntoIterator<Item = Input>) -> Self {
        Self {
            locked: locked.into_iter().collect(),
        }
    }

    /// Whether a document may become another one.
    ///
    /// # Errors
    ///
    /// One sentence naming the first locked input that would change.
    pub fn check(&self, before: &Document, after: &Document) -> Result<(), String> {
        let mut changed = Input::differing(&before.scenario, &after.scenario);
        match changed.find(|input| self.locked.contains(input)) {
            Some(input) => Err(say!("input-locked", what = input.inline())),
            None => Ok(()),
        }
    }
}
