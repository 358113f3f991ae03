//! The marks on the numbers for the jump at hand.

use crate::session::Session;
use turns_aloft_analysis::effort_marks::{is_marked, unmarked};
use turns_aloft_scenario::marks::Marks;
use turns_aloft_scenario::parameter::Parameter;

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
