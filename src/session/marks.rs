//! The marks on the numbers for the jump at hand, those by strength as of when the hand last rested.

use super::Session;
use super::answers::{Answer, Basis};
use crate::analysis::effort_marks::{MARKED, marks, unmarked};
use crate::scenario::keys::Key;
use crate::scenario::marks::Marks;

/// Those that take flights.
#[derive(Debug, Default)]
pub(super) struct MarksAnswer {
    marks: [Option<Marks>; MARKED.len()],
    done: [bool; MARKED.len()],
}

impl Answer for MarksAnswer {
    /// The flight.
    type Depends = u64;

    fn depends(on: &Basis) -> u64 {
        on.generation
    }

    fn ask(&mut self, _: &Basis, _: Option<&u64>) {
        self.done.fill(false);
    }

    /// Unless a hand is at work.
    fn poll(&mut self, on: &Basis) -> bool {
        if on.dragging {
            return false;
        }
        let Some(place) = self.done.iter().position(|done| !done) else {
            return false;
        };
        self.marks[place] = marks(place, on.scenario, on.jump);
        self.done[place] = true;
        true
    }
}

impl Session {
    /// The marks of a number. Those by strength are of an earlier flight until they have been worked out
    /// anew, and none at first.
    pub fn marks(&self, key: &Key) -> Option<Marks> {
        match MARKED.iter().position(|marked| *marked == key.key) {
            Some(place) => (self.answers.marks.result().marks[place].clone())
                .or_else(|| unmarked(key, &self.document.scenario, &self.jump)),
            None => self.document.scenario.marks(key, &self.jump),
        }
    }
}
