//! Equally likely candidates, moved on until where they began no longer shows.
//!
//! Every move is taken or left so that the likely places are visited as often as they are likely (Metropolis
//! and Hastings), which holds however well or badly the draws they began as were spread.

use rand::RngExt;
use rand_pcg::Pcg64Mcg;

use crate::candidate::Candidate;
use crate::draws::{Draw, Draws, log_likely};
use crate::problem::Problem;
use crate::proposal::Proposal;

/// How far the moves of each round go, as a part of the whole spread: far ones where all is as regular as
/// it looks, near ones where it is not.
const PARTS: [f64; 12] = [
    0.9, 0.5, 0.25, 0.9, 0.5, 0.25, 0.9, 0.5, 0.25, 0.7, 0.4, 0.2,
];

/// Rounds after which it is looked again how the candidates are spread.
const LOOKED_AGAIN: usize = 3;

#[derive(Debug)]
pub struct Walk {
    pub walkers: Vec<Draw>,
    proposals: Vec<Proposal>,
    random: Pcg64Mcg,
    /// Moves that have been tried and that were taken.
    tried: usize,
    taken: usize,
}

impl Walk {
    pub fn new(mut draws: Draws, count: usize) -> Self {
        Self {
            walkers: draws.equally_likely(count),
            proposals: draws.proposals(),
            random: draws.random,
            tried: 0,
            taken: 0,
        }
    }

    /// Tries a few more moves; whether those were all.
    pub fn go_on(&mut self, problem: &Problem, count: usize) -> bool {
        for _ in 0..count {
            let (round, i) = (
                self.tried / self.walkers.len(),
                self.tried % self.walkers.len(),
            );
            let Some(&part) = PARTS.get(round) else {
                return true;
            };
            if i == 0 && round > 0 && round.is_multiple_of(LOOKED_AGAIN) {
                self.look_again();
            }
            self.tried += 1;
            self.try_move(problem, i, part);
        }
        false
    }

    fn try_move(&mut self, problem: &Problem, i: usize, part: f64) {
        let walker = &mut self.walkers[i];
        let proposal = &self.proposals[walker.part];
        let point = proposal.near(&walker.point, part, &mut self.random);
        let candidate = Candidate::fly(problem, &point, None);
        let log_likely = log_likely(problem, &point, &candidate);
        let there = log_likely - proposal.log_normal(&point);
        let here = walker.log_likely - proposal.log_normal(&walker.point);
        let chance: f64 = self.random.random();
        if libm::log(chance) < there - here {
            (walker.point, walker.log_likely) = (point, log_likely);
            self.taken += 1;
        }
    }

    fn look_again(&mut self) {
        for (i, proposal) in self.proposals.iter_mut().enumerate() {
            let of_it = self.walkers.iter().filter(|walker| walker.part == i);
            let points: Vec<_> = of_it.map(|walker| &walker.point).collect();
            if let Some(other) = Some(points)
                .filter(|points| !points.is_empty())
                .and_then(|points| proposal.among(&points))
            {
                *proposal = other;
            }
        }
    }

    /// Moves taken for each candidate.
    pub fn taken_each(&self) -> f64 {
        self.taken as f64 / self.walkers.len().max(1) as f64
    }
}
