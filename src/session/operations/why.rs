//! What the answer is to why the jump has the turns it has, and trying what it tells of.

use crate::answers::why::{BudgetAnswer, Why};
use crate::session::Session;
use turns_aloft_analysis::caution::{self, Caution};
use turns_aloft_analysis::lever::Lever;
use turns_aloft_analysis::steps::{Flown, Gain};
use turns_aloft_analysis::weights::Weights;
use turns_aloft_describe::Text;
use turns_aloft_scenario::Scenario;

impl Session {
    const fn why(&self) -> &Why {
        self.answers.why.result()
    }

    /// Where the turns went; none before the first answer stands.
    pub const fn budget_answer(&self) -> Option<&BudgetAnswer> {
        self.why().budget_answer.as_ref()
    }

    /// What a step of each lever gives. The largest gain stands first once the hand rests; none
    /// before the first answer stands.
    pub fn gains(&self) -> impl Iterator<Item = &Gain> {
        let gain_of = |&lever: &Lever| self.why().gains[lever].as_ref();
        self.why().order.iter().filter_map(gain_of)
    }

    /// A little more in each hand, under every assumption; none before it has been worked out, or where
    /// nothing more can be set.
    pub const fn more_weights(&self) -> Option<&Weights> {
        self.why().weights.as_ref()
    }

    /// What has to stand beside the steps: the cautions of all of them together.
    pub fn step_cautions(&self) -> Vec<&'static str> {
        let mut then = self.document.scenario.clone();
        for gain in self.gains().filter(|gain| gain.flown == Flown::Forward) {
            step(&mut then, gain);
        }
        let said = caution::of(&self.document.scenario, &then);
        said.into_iter().map(Caution::text).collect()
    }

    /// Tries the change that the budget's sentence tells of.
    pub fn try_one_change(&mut self) {
        let budget_answer = self.budget_answer();
        let proposal = budget_answer.and_then(|answer| answer.proposal.as_ref());
        if let Some(change) = proposal.map(|proposal| proposal.change) {
            self.try_change(change.parameter, change.to);
        }
    }

    /// Tries a lever's step; one that is not possible changes nothing.
    pub fn try_step(&mut self, lever: Lever) {
        let gain = self.gains().find(|gain| gain.lever == lever).cloned();
        if let Some(gain) = gain.filter(|gain| gain.flown == Flown::Forward) {
            self.try_on(|scenario| step(scenario, &gain));
        }
    }
}

/// A lever's step, taken.
fn step(scenario: &mut Scenario, gain: &Gain) {
    if let Some(change) = gain.change {
        let lever = gain.lever;
        *scenario = lever.at(scenario, lever.value(scenario) + change);
    }
}
