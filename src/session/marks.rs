//! The marks on the numbers for the jump at hand, those by strength as of when the hand last rested.

use crate::answers::{Answer, Basis};
use crate::session::Session;
use turns_aloft_analysis::effort_marks::{is_marked, marks, unmarked};
use turns_aloft_scenario::marks::Marks;
use turns_aloft_scenario::parameter::Parameter;

/// Those that take flights, by number.
#[derive(Debug, Default)]
pub(crate) struct MarksAnswer {
    marks: [Option<Marks>; Parameter::COUNT],
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

impl Session {
    /// The marks of a number. Those by strength are of an earlier flight until they have been worked out
    /// anew, and none at first.
    pub fn marks(&self, parameter: Parameter) -> Option<Marks> {
        if is_marked(parameter) {
            let marks = self.answers.marks.result().marks[parameter as usize].clone();
            return marks.or_else(|| unmarked(parameter, &self.document.scenario, &self.jump));
        }
        self.document.scenario.marks(parameter, &self.jump)
    }
}
