//! What would win the missing turns: each lever alone, then several together.

mod lines;
mod own;
pub mod words;

pub use own::SavedGoal;

use serde::{Deserialize, Serialize};

use super::Session;
use super::readings::Reading;
use super::stepping::moved;
use crate::analysis::caution::Caution;
use crate::analysis::combination::{Combination, CombinationSearch};
use crate::analysis::goal::{GOAL_TURNS, Goal, MET_TURNS, Single};
use crate::analysis::lever::{Lever, PerLever, Season};
use crate::analysis::limits::{Limits, Verdict};
use crate::analysis::weights::{KEEPS, Needed};
use crate::order::by_number;
use crate::scenario::call::QUARTER_BAND_FROM_DEG;

/// How many turns are asked for.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum GoalTurns {
    /// All that the jump's name owes.
    #[default]
    Full,
    /// As many as keep it from being called.
    NotCalled,
    /// In all.
    Turns(f64),
}

/// A step of the turns asked for.
pub const GOAL_STEP_TURNS: f64 = 0.25;

/// Pieces of the answer, and where among them the joint change is.
const PIECES: usize = Lever::COUNT + 1 + KEEPS.len();
const JOINT: usize = Lever::COUNT;

/// The answer as far as it stands. What belongs to an earlier question stays until it is replaced.
#[derive(Debug, Default)]
pub(super) struct GoalAnswer {
    target: GoalTurns,
    limits: Limits,
    season: Season,
    singles: PerLever<Option<Single>>,
    combination: Option<Combination>,
    /// Beside the answer: what the hands would have to hold, by what is kept.
    weights: [Option<Needed>; KEEPS.len()],
    /// The question that each piece is to: the levers' answers, the joint one, then the weights.
    of: [Option<Asked>; PIECES],
    search: Option<(Asked, CombinationSearch)>,
    /// Grows with the target, the limits and the seasons.
    settings: u64,
}

/// What tells one question from another: the flight, and what is asked of it.
type Asked = (u64, u64);

impl Session {
    /// Does the next piece, unless a hand is at work; whether there was one.
    pub(super) fn poll_goal(&mut self) -> bool {
        if self.dragging {
            return false;
        }
        let asked = self.asked();
        let goal_turns = self.goal_turns();
        let GoalAnswer {
            limits,
            season,
            singles,
            combination,
            weights,
            of,
            search,
            ..
        } = &mut self.goal;
        let goal = Goal::new(
            &self.document.scenario,
            &self.jump,
            goal_turns,
            limits,
            season,
        );
        let Some(place) = of.iter().position(|of| *of != Some(asked)) else {
            return false;
        };
        if let Some(&lever) = Lever::ALL.get(place) {
            singles[lever] = Some(goal.single(lever));
            of[place] = Some(asked);
            return true;
        }
        if place > JOINT {
            let keep = place - JOINT - 1;
            weights[keep] = Some(Needed::of(keep, &goal));
            of[place] = Some(asked);
            return true;
        }
        let going_on = search.take().filter(|(of, _)| *of == asked);
        let Some((_, mut going_on)) = going_on else {
            let singles = singles.iter().filter_map(|(_, single)| single.clone());
            let singles: Vec<Single> = singles.collect();
            *search = Some((asked, CombinationSearch::new(&goal, &singles)));
            return true;
        };
        if going_on.advance(&goal) {
            *search = Some((asked, going_on));
        } else {
            *combination = going_on.answer(&goal);
            of[JOINT] = Some(asked);
        }
        true
    }

    const fn asked(&self) -> Asked {
        (self.revision, self.goal.settings)
    }

    /// Turns in all that are asked for.
    pub fn goal_turns(&self) -> f64 {
        let owed = self.jump.owed.map(|owed| owed.turns);
        let turns = match (self.goal.target, owed) {
            (GoalTurns::Turns(turns), _) => turns,
            (GoalTurns::Full, Some(owed)) => owed,
            // On the safe side of the limit by what a proposal may miss.
            (GoalTurns::NotCalled, Some(owed)) => owed - QUARTER_BAND_FROM_DEG / 360.0 + MET_TURNS,
            // A free jump owes nothing: half a turn more, to the half.
            (GoalTurns::Full | GoalTurns::NotCalled, None) => {
                0.5 * (2.0 * self.jump.turns + 1.0).floor()
            }
        };
        turns.clamp(GOAL_TURNS[0], GOAL_TURNS[1])
    }

    pub const fn target(&self) -> GoalTurns {
        self.goal.target
    }

    pub fn set_goal(&mut self, target: GoalTurns) {
        self.goal.target = target;
        self.goal.settings += 1;
        self.changes += 1;
    }

    /// So many steps more or less, to a whole number of steps.
    pub fn step_goal(&mut self, steps: f64) {
        let turns = moved(self.goal_turns(), GOAL_STEP_TURNS, steps);
        self.set_goal(GoalTurns::Turns(turns.clamp(GOAL_TURNS[0], GOAL_TURNS[1])));
    }

    /// Whether the jump has the wanted turns as it is.
    pub fn has_goal(&self) -> bool {
        self.jump.turns >= self.goal_turns() - MET_TURNS
    }

    /// The answers for the single levers, those that do it first, the mildest verdict and the least
    /// effort before the others; and whether each still fits the question.
    pub fn singles(&self) -> Vec<(&Single, bool)> {
        let asked = self.asked();
        let all: Vec<(&Single, bool)> = (self.goal.singles.iter().zip(&self.goal.of))
            .filter_map(|((_, single), of)| Some((single.as_ref()?, *of == Some(asked))))
            .collect();
        let all = by_number(all, |(single, _)| {
            let change = single.proposal.as_ref().map_or(0.0, |it| it.change.abs());
            let season = self.goal.season.unit(single.lever);
            season.map_or(f64::MAX, |unit| change / unit)
        });
        by_number(all, |(single, _)| single.judgement.verdict as u8 as f64)
    }

    /// The smallest joint change, and whether it still fits the question.
    pub fn combination(&self) -> (Option<&Combination>, bool) {
        let fits = self.goal.of[JOINT] == Some(self.asked());
        (self.goal.combination.as_ref(), fits)
    }

    /// What the hands would have to hold, under every assumption as far as it has been worked out, and
    /// whether that still fits the question. No proposal.
    pub fn weights_needed(&self) -> impl Iterator<Item = (&Needed, bool)> {
        let asked = self.asked();
        let of = &self.goal.of[JOINT + 1..];
        (self.goal.weights.iter().zip(of))
            .filter_map(move |(needed, of)| Some((needed.as_ref()?, *of == Some(asked))))
    }

    /// Tries what a single lever needs.
    pub fn apply_single(&mut self, lever: Lever) {
        let single = self.goal.singles[lever].as_ref();
        let proposal = single.and_then(|single| single.proposal.as_ref());
        if let Some(value) = proposal.map(|proposal| proposal.value) {
            self.try_on(|scenario| *scenario = lever.at(scenario, value));
        }
    }

    /// Tries the smallest joint change.
    pub fn apply_combination(&mut self) {
        let Some(combination) = self.goal.combination.clone() else {
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

    pub(super) fn goal_readings(&self) -> Vec<Reading> {
        lines::all(self)
    }
}

/// Whether a verdict is one that a change can be proposed with.
pub fn can(verdict: Verdict) -> bool {
    verdict != Verdict::CannotAlone
}
