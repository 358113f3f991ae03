//! Equally likely candidates, moved on until where they began no longer shows.
//!
//! Every move is taken or left so that the likely places are visited as often as they are likely (Metropolis
//! and Hastings), which holds however well or badly the draws they began as were spread.

use rand::RngExt;
use rand_pcg::Pcg64Mcg;
use turns_aloft_physics::order::sorted;

use crate::draws::{Draw, Draws, Part};
use crate::problem::Problem;

/// How far the moves of each round go, as a part of the whole spread: far ones where all is as regular as
/// it looks, nearer ones where it is not.
const PARTS: [f64; 5] = [0.9, 0.6, 0.9, 0.4, 0.9];

/// Rounds after which it is looked again how the candidates are spread.
const LOOKED_AGAIN: usize = 2;

/// Likely candidates whose turns are further apart than this have other counts of them.
const OTHER_COUNT_TURNS: f64 = 0.45;

#[derive(Debug)]
pub struct Walk {
    pub walkers: Vec<Draw>,
    parts: Vec<Part>,
    random: Pcg64Mcg,
    /// Moves that have been tried and that were taken.
    tried: usize,
    taken: usize,
}

impl Walk {
    pub fn new(mut draws: Draws, count: usize) -> Self {
        Self {
            walkers: draws.equally_likely(count),
            parts: draws.parts(),
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

    fn try_move(&mut self, problem: &Problem, i: usize, by: f64) {
        let walker = &mut self.walkers[i];
        let proposal = &self.parts[walker.part].proposal;
        let rest = proposal.near(&walker.point, by, &mut self.random);
        let draw = Draw::new(problem, &rest, (&self.parts, walker.part), &mut self.random);
        let worth = |of: &Draw| of.log_likely - of.log_found - proposal.log_normal(&of.point);
        let chance: f64 = self.random.random();
        if libm::log(chance) < worth(&draw) - worth(walker) {
            *walker = draw;
            self.taken += 1;
        }
    }

    fn look_again(&mut self) {
        for (i, part) in self.parts.iter_mut().enumerate() {
            let of_it = self.walkers.iter().filter(|walker| walker.part == i);
            let points: Vec<_> = of_it.map(|walker| &walker.point).collect();
            let among = Some(points).filter(|points| !points.is_empty());
            if let Some(other) = among.and_then(|points| part.proposal.among(&points)) {
                part.proposal = other;
            }
        }
    }

    /// Which candidates have the same count of turns: a number for each, the same where theirs is.
    pub fn counts(&self) -> Vec<usize> {
        let turns = sorted(self.parts.iter().map(|part| part.air_turns).collect());
        let of = |air_turns: f64| {
            let below = turns.windows(2).take_while(|pair| pair[0] < air_turns);
            below
                .filter(|pair| pair[1] - pair[0] > OTHER_COUNT_TURNS)
                .count()
        };
        let walkers = self.walkers.iter();
        walkers
            .map(|walker| of(self.parts[walker.part].air_turns))
            .collect()
    }

    /// Moves taken for each candidate.
    pub fn taken_each(&self) -> f64 {
        self.taken as f64 / self.walkers.len().max(1) as f64
    }
}
