//! The marks on the numbers for the jump at hand, those by strength as of when the hand last rested.

use super::Session;
use crate::analysis::effort_marks::{is_marked, marks, unmarked};
use crate::scenario::marks::Marks;
use crate::scenario::parameter::Parameter;

/// Those that take flights, by number.
#[derive(Debug, Default)]
pub(super) struct MarksAnswer {
    marks: [Option<Marks>; Parameter::COUNT],
    /// The flight that each is of.
    of: [Option<u64>; Parameter::COUNT],
}

impl Session {
    /// Works out the next marks by strength, unless a hand is at work; whether there was something to do.
    pub(super) fn poll_marks(&mut self) -> bool {
        if self.dragging {
            return false;
        }
        let generation = Some(self.generation);
        let mut marked = Parameter::ALL.into_iter().filter(|it| is_marked(*it));
        let Some(stale) = marked.find(|it| self.marks.of[*it as usize] != generation) else {
            return false;
        };
        self.marks.marks[stale as usize] = marks(stale, &self.document.scenario, &self.jump);
        self.marks.of[stale as usize] = generation;
        true
    }

    /// The marks of a number. Those by strength are of an earlier flight until they have been worked out
    /// anew, and none at first.
    pub fn marks(&self, parameter: Parameter) -> Option<Marks> {
        if is_marked(parameter) {
            let marks = self.marks.marks[parameter as usize].clone();
            return marks.or_else(|| unmarked(parameter, &self.document.scenario, &self.jump));
        }
        self.document.scenario.marks(parameter, &self.jump)
    }
}
