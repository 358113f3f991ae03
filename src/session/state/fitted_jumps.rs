//! Jumps that were found from attempts, each with its attempt: the samples behind its ranges are found
//! again from that.

use std::collections::VecDeque;

use turns_aloft_attempt::Attempt;
use turns_aloft_scenario::Scenario;

/// Most that are remembered, our choice: those of a lesson.
const MOST: usize = 20;

#[derive(Debug, Clone, Default, PartialEq)]
pub struct FittedJumps(VecDeque<(Scenario, Attempt)>);

impl FittedJumps {
    /// The attempt that a jump was found from, as it was opened.
    pub fn attempt_of(&self, opened: &Scenario) -> Option<&Attempt> {
        let found = self.0.iter().find(|(scenario, _)| scenario == opened);
        found.map(|(_, attempt)| attempt)
    }

    /// As files: each jump's, and its attempt's.
    pub fn saved(&self) -> Vec<[String; 2]> {
        let each = self.0.iter();
        each.map(|(jump, attempt)| [jump.to_file(), attempt.to_file()])
            .collect()
    }

    /// Again from their files; one that cannot be read is left out.
    pub fn restore(saved: &[[String; 2]]) -> Self {
        let each = saved.iter().filter_map(|[jump, attempt]| {
            let jump = Scenario::open_file(jump).ok()?;
            let attempt = Attempt::open_file(attempt).ok()?;
            Some((jump.read, attempt.read))
        });
        Self(each.take(MOST).collect())
    }

    /// Remembers one, in place of an earlier one that is the same jump.
    pub fn add(&mut self, scenario: Scenario, attempt: Attempt) {
        self.0.retain(|(other, _)| *other != scenario);
        self.0.push_front((scenario, attempt));
        self.0.truncate(MOST);
    }
}
