//! What would win the missing turns: each lever alone, then several together.

use crate::answers::basis::{Answer, Basis};
use crate::state::goal_settings::GoalSettings;
use turns_aloft_analysis::combination::{Combination, CombinationSearch};
use turns_aloft_analysis::goal::{Goal, Single};
use turns_aloft_analysis::lever::{Lever, PerLever};
use turns_aloft_analysis::limits::Verdict;
use turns_aloft_analysis::weights::{KEEPS, Needed};

/// Pieces of the answer, and where among them the joint change is.
const PIECES: usize = Lever::COUNT + 1 + KEEPS.len();
pub(crate) const JOINT: usize = Lever::COUNT;

/// The answer as far as it stands. What belongs to an earlier question stays until it is replaced.
#[derive(Debug, Default)]
pub(crate) struct GoalAnswer {
    pub singles: PerLever<Option<Single>>,
    pub combination: Option<Combination>,
    /// Beside the answer: what the hands would have to hold, by what is kept.
    pub weights: [Option<Needed>; KEEPS.len()],
    /// Which pieces answer what is asked: the levers', the joint one, then the weights.
    pub done: [bool; PIECES],
    search: Option<CombinationSearch>,
}

impl Answer for GoalAnswer {
    /// The flight, and what is asked of it.
    type Depends = (u64, GoalSettings);

    fn depends(on: &Basis) -> Self::Depends {
        (on.generation, on.goal.clone())
    }

    fn ask(&mut self, _: &Basis, _: Option<&Self::Depends>) {
        self.done.fill(false);
        self.search = None;
    }

    /// Unless a hand is at work.
    fn poll(&mut self, on: &Basis) -> bool {
        if on.dragging {
            return false;
        }
        let Some(place) = self.done.iter().position(|done| !done) else {
            return false;
        };
        let GoalSettings { limits, season, .. } = on.goal;
        let turns = on.goal.turns(on.jump);
        let goal = &Goal::new(on.scenario, on.jump, turns, limits, season);
        if place == JOINT {
            return self.search_on(goal);
        }
        if let Some(&lever) = Lever::ALL.get(place) {
            self.singles[lever] = Some(goal.single(lever));
        } else {
            let keep = place - JOINT - 1;
            self.weights[keep] = Some(Needed::of(keep, goal));
        }
        self.done[place] = true;
        true
    }
}

impl GoalAnswer {
    fn search_on(&mut self, goal: &Goal) -> bool {
        let Some(mut search) = self.search.take() else {
            let singles = self.singles.iter().filter_map(|(_, single)| single.clone());
            let singles: Vec<Single> = singles.collect();
            self.search = Some(CombinationSearch::new(goal, &singles));
            return true;
        };
        if search.advance(goal) {
            self.search = Some(search);
        } else {
            self.combination = search.answer(goal);
            self.done[JOINT] = true;
        }
        true
    }
}

/// Whether a verdict is one that a change can be proposed with.
pub fn can(verdict: Verdict) -> bool {
    !matches!(verdict, Verdict::CannotAlone | Verdict::NoPart)
}
