//! How many turns are asked for, what would win the missing ones, and trying it.

use crate::answers::goal::{GoalAnswer, JOINT};
use crate::operations::stepping::moved;
use crate::session::Session;
use crate::state::goal_settings::GoalTurns;
use turns_aloft_analysis::caution::Caution;
use turns_aloft_analysis::combination::Combination;
use turns_aloft_analysis::goal::{GOAL_TURNS, HAS_THEM_TURNS, Single};
use turns_aloft_analysis::lever::Lever;
use turns_aloft_analysis::weights::Needed;
use turns_aloft_describe::Text;
use turns_aloft_physics::order::by_number;

/// A step of the turns asked for.
const GOAL_STEP_TURNS: f64 = 0.25;

impl Session {
    const fn goal(&self) -> &GoalAnswer {
        self.answers.goal.result()
    }

    /// Whether what is done answers what is asked now.
    fn is_answered(&self) -> bool {
        let asked_for = self.answers.goal.asked_for();
        asked_for.is_some_and(|(generation, settings)| {
            *generation == self.generation && *settings == self.goal_settings
        })
    }

    /// Turns in all that are asked for.
    pub fn goal_turns(&self) -> f64 {
        self.goal_settings.turns(&self.jump)
    }

    pub const fn target(&self) -> GoalTurns {
        self.goal_settings.target
    }

    pub fn set_goal(&mut self, target: GoalTurns) {
        self.goal_settings.target = target;
    }

    /// So many steps more or less, to a whole number of steps.
    pub fn step_goal(&mut self, steps: f64) {
        let turns = moved(self.goal_turns(), GOAL_STEP_TURNS, steps);
        self.set_goal(GoalTurns::Turns(turns.clamp(GOAL_TURNS[0], GOAL_TURNS[1])));
    }

    /// Whether the jump has the wanted turns as it is.
    pub fn has_goal(&self) -> bool {
        self.jump.turns > self.goal_turns() - HAS_THEM_TURNS
    }

    /// The answers for the single levers, those that do it first, the mildest verdict and the least
    /// effort before the others; and whether each still fits the question.
    pub fn singles(&self) -> Vec<(&Single, bool)> {
        let current = self.is_answered();
        let goal = self.goal();
        let all: Vec<(&Single, bool)> = (goal.singles.iter().zip(&goal.done))
            .filter_map(|((_, single), done)| Some((single.as_ref()?, current && *done)))
            .collect();
        let all = by_number(all, |(single, _)| {
            let change = single.proposal.as_ref().map_or(0.0, |it| it.change.abs());
            let season = self.goal_settings.season.unit(single.lever);
            season.map_or(f64::MAX, |unit| change / unit)
        });
        by_number(all, |(single, _)| single.judgement.verdict as u8 as f64)
    }

    /// The smallest joint change, and whether it still fits the question.
    pub fn combination(&self) -> (Option<&Combination>, bool) {
        let fits = self.is_answered() && self.goal().done[JOINT];
        (self.goal().combination.as_ref(), fits)
    }

    /// What the hands would have to hold, under every assumption as far as it has been worked out, and
    /// whether that still fits the question. No proposal.
    pub fn weights_needed(&self) -> impl Iterator<Item = (&Needed, bool)> {
        let current = self.is_answered();
        let done = &self.goal().done[JOINT + 1..];
        (self.goal().weights.iter().zip(done))
            .filter_map(move |(needed, done)| Some((needed.as_ref()?, current && *done)))
    }

    /// Tries what a single lever needs.
    pub fn apply_single(&mut self, lever: Lever) {
        let single = self.goal().singles[lever].as_ref();
        let proposal = single.and_then(|single| single.proposal.as_ref());
        if let Some(value) = proposal.map(|proposal| proposal.value) {
            self.try_on(|scenario| *scenario = lever.at(scenario, value));
        }
    }

    /// Tries the smallest joint change.
    pub fn apply_combination(&mut self) {
        let Some(combination) = self.goal().combination.clone() else {
            return;
        };
        self.try_on(|scenario| {
            for change in &combination.changes {
                *scenario = change.lever.at(scenario, change.value);
            }
        });
    }

    /// What has to stand beside the proposals: the cautions of all of them together.
    pub fn goal_cautions(&self) -> Vec<&'static str> {
        let singles = (self.singles().into_iter())
            .filter_map(|(single, _)| single.proposal.as_ref())
            .flat_map(|proposal| &proposal.cautions);
        let combination =
            (self.combination().0.into_iter()).flat_map(|combination| &combination.cautions);
        let mut said: Vec<Caution> = Vec::new();
        for caution in singles.chain(combination) {
            if !said.contains(caution) {
                said.push(*caution);
            }
        }
        said.into_iter().map(Caution::text).collect()
    }
}
