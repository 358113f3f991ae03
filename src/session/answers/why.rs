//! Why the jump has the turns it has: where they went, and what matters most.

use crate::answers::basis::{Answer, Basis};
use turns_aloft_analysis::budget::Budget;
use turns_aloft_analysis::caution::{self, Caution};
use turns_aloft_analysis::lever::{Lever, PerLever};
use turns_aloft_analysis::one_change::OneChange;
use turns_aloft_analysis::steps::{Gain, gain};
use turns_aloft_analysis::weights::Weights;
use turns_aloft_describe::budget::all_there;
use turns_aloft_describe::rounded_budget::Shown;
use turns_aloft_physics::order::by_number;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::beyond::Respect;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::seen::Stand;
use turns_aloft_scenario::source::Source;

/// Pieces of the answer.
const PIECES: usize = Lever::COUNT + 2;

/// The answer as far as it stands: one gain for each lever, and the budget and the weights as one
/// piece more each.
#[derive(Debug, Default)]
pub(crate) struct Why {
    pub budget_answer: Option<BudgetAnswer>,
    pub gains: PerLever<Option<Gain>>,
    pub weights: Option<Weights>,
    /// The levers, the largest gain first as of when the hand last rested.
    pub order: Vec<Lever>,
    /// Which pieces are of this flight.
    done: [bool; PIECES],
    /// The piece to begin with: who drags without rest gets all of them in turn.
    next: usize,
    /// The order has to be looked at again.
    unsettled: bool,
}

/// Where the turns went.
#[derive(Debug, Clone, PartialEq)]
pub struct BudgetAnswer {
    pub budget: Budget,
    pub shown: Shown,
    /// What is to be known of the one change that the budget's sentence tells of; none where no turn is missing.
    pub proposal: Option<Proposal>,
}

/// A change that somebody might jump, and what has to stand beside it.
#[derive(Debug, Clone, PartialEq)]
pub struct Proposal {
    pub change: OneChange,
    /// Where what people have been seen to do ends, if it is beyond that.
    pub unseen: Option<Source>,
    /// In which respects the jump with it is beyond what has been seen.
    pub beyond_seen: Vec<Respect>,
    /// Estimates with it, lowest and highest, in body weights.
    pub landing_load_bw: [f64; 2],
    pub cautions: Vec<Caution>,
}

impl BudgetAnswer {
    fn new(scenario: &Scenario, jump: &Jump) -> Self {
        let budget = Budget::new(scenario, jump);
        Self {
            shown: Shown::new(&budget, jump.owed.map(|owed| owed.turns)),
            proposal: budget
                .one_change
                .filter(|_| !all_there(scenario, &budget))
                .map(|change| Proposal::new(scenario, jump, change)),
            budget,
        }
    }
}

impl Proposal {
    fn new(scenario: &Scenario, now: &Jump, change: OneChange) -> Self {
        let mut then = scenario.clone();
        change.parameter.hold(&mut then, change.to);
        let jump = then.fly_after(Some(now));
        let unseen = then
            .marks(change.parameter, &jump)
            .filter(|marks| marks.stand(change.to) == Stand::Beyond)
            .map(|marks| marks.source);
        Self {
            change,
            unseen,
            beyond_seen: then.beyond_seen(&jump),
            landing_load_bw: jump.readout.landing_load_bw,
            cautions: caution::of(scenario, &then),
        }
    }
}

impl Answer for Why {
    /// The flight.
    type Depends = u64;

    fn depends(on: &Basis) -> u64 {
        on.generation
    }

    fn ask(&mut self, on: &Basis, before: Option<&u64>) {
        self.done.fill(false);
        // Who tries one step after the other finds it where it was.
        let next = before.is_some_and(|before| before + 1 == on.generation);
        self.unsettled |= !(next && on.is_tried);
    }

    fn poll(&mut self, on: &Basis) -> bool {
        let due = (0..PIECES)
            .map(|i| (self.next + i) % PIECES)
            .find(|&piece| !self.done[piece]);
        if let Some(piece) = due {
            self.work_out(piece, on);
            self.done[piece] = true;
            self.next = (piece + 1) % PIECES;
            return true;
        }
        if self.unsettled && !on.dragging {
            self.settle();
            return true;
        }
        false
    }
}

impl Why {
    fn work_out(&mut self, piece: usize, on: &Basis) {
        let Basis { scenario, jump, .. } = on;
        match Lever::ALL.get(piece) {
            Some(&lever) => self.gains[lever] = Some(gain(lever, scenario, jump)),
            None if piece == Lever::COUNT => {
                self.budget_answer = Some(BudgetAnswer::new(scenario, jump))
            }
            None => self.weights = Weights::more(scenario, jump),
        }
    }

    /// The largest gain first, what is not possible last.
    fn settle(&mut self) {
        let worth = |&lever: &Lever| {
            let gain = self.gains[lever].as_ref();
            gain.and_then(|gain| gain.turns_gained)
                .unwrap_or(f64::NEG_INFINITY)
        };
        self.order = by_number(Lever::ALL.into(), |lever| -worth(lever));
        self.unsettled = false;
    }
}
