//! The marks on the numbers for the jump at hand, those by strength as of when the hand last rested.

use super::Session;
use crate::analysis::effort_marks::{MARKED, marks, unmarked};
use crate::scenario::keys::Key;
use crate::scenario::marks::Marks;

/// Those that take flights.
#[derive(Debug, Default)]
pub(super) struct MarksAnswer {
    marks: [Option<Marks>; MARKED.len()],
    /// The flight that each is of.
    of: [Option<u64>; MARKED.len()],
}

impl Session {
    /// Works out the next marks by strength, unless a hand is at work; whether there was something to do.
    pub(super) fn poll_marks(&mut self) -> bool {
        if self.dragging {
            return false;
        }
        let generation = Some(self.generation);
        let Some(place) = self.marks.of.iter().position(|of| *of != generation) else {
            return false;
        };
        self.marks.marks[place] = marks(place, &self.document.scenario, &self.jump);
        self.marks.of[place] = generation;
        true
    }

    /// The marks of a number. Those by strength are of an earlier flight until they have been worked out
    /// anew, and none at first.
    pub fn marks(&self, key: &Key) -> Option<Marks> {
        match MARKED.iter().position(|marked| *marked == key.key) {
            Some(place) => (self.marks.marks[place].clone())
                .or_else(|| unmarked(key, &self.document.scenario, &self.jump)),
            None => self.document.scenario.marks(key, &self.jump),
        }
    }
}
