//! Jumps that were found from attempts, each with its attempt: the samples behind its ranges are found
//! again from that.

use std::collections::VecDeque;

use turns_aloft_attempt::Attempt;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::collection::Collection;

/// Most that are remembered, our choice: with some kilobytes each they have room beside the kept jumps.
const MOST: usize = 60;

#[derive(Debug, Clone, Default, PartialEq)]
pub struct FittedJumps(VecDeque<(Scenario, Attempt)>);

impl FittedJumps {
    /// The attempt that a jump was found from, as it was opened, whatever it has been called since.
    pub fn attempt_of(&self, opened: &Scenario) -> Option<&Attempt> {
        let found = self
            .0
            .iter()
            .find(|(scenario, _)| is_same(scenario, opened));
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

    /// Remembers one, in place of an earlier one that is the same jump. Where there are too many, the oldest
    /// that is not among `kept` is forgotten.
    pub fn add(&mut self, scenario: Scenario, attempt: Attempt, kept: &Collection) {
        self.0.retain(|(other, _)| !is_same(other, &scenario));
        self.0.push_front((scenario, attempt));
        if self.0.len() > MOST {
            let is_kept =
                |jump: &Scenario| (kept.entries().iter()).any(|it| is_same(&it.scenario, jump));
            let forgotten = self.0.iter().rposition(|(jump, _)| !is_kept(jump));
            let forgotten = forgotten.filter(|&place| place > 0);
            self.0.remove(forgotten.unwrap_or(MOST));
        }
    }
}

fn is_same(one: &Scenario, other: &Scenario) -> bool {
    let named = Scenario {
        name: one.name.clone(),
        note: one.note.clone(),
        ..other.clone()
    };
    named == *one
}
