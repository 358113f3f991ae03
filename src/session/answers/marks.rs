//! The marks on the numbers that take flights: those by strength, as of when the hand last rested.

use crate::answers::basis::{Answer, Basis};
use turns_aloft_analysis::effort_marks::{is_marked, marks};
use turns_aloft_scenario::marks::Marks;
use turns_aloft_scenario::parameter::Parameter;

/// By number.
#[derive(Debug, Default)]
pub(crate) struct MarksAnswer {
    pub marks: [Option<Marks>; Parameter::COUNT],
    done: [bool; Parameter::COUNT],
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
        let mut marked = Parameter::ALL.into_iter().filter(|it| is_marked(*it));
        let Some(due) = marked.find(|it| !self.done[*it as usize]) else {
            return false;
        };
        self.marks[due as usize] = marks(due, on.scenario, on.jump);
        self.done[due as usize] = true;
        true
    }
}
