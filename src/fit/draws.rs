//! Candidates drawn around the likely ones, and weighed by how likely they are against how often they are
//! drawn (importance sampling).

use rand::RngExt;
use rand_pcg::Pcg64Mcg;
use turns_aloft_physics::order::by_number;

use crate::candidate::Candidate;
use crate::conditional::Conditional;
use crate::problem::Problem;
use crate::proposal::Proposal;
use crate::solve::{Mode, of_marks};
use crate::unknown::Point;

/// How many are drawn.
const DRAWS: usize = 500;

/// The least share of the draws for a likely candidate, however unlikely against the others.
const LEAST_SHARE: f64 = 0.08;

/// A likely candidate, how often it is drawn around, and its turns, by which draws are told apart.
#[derive(Debug, Clone)]
pub struct Part {
    share: f64,
    pub proposal: Proposal,
    pub air_turns: f64,
}

/// A candidate that was drawn.
#[derive(Debug, Clone)]
pub struct Draw {
    pub point: Point,
    /// Logarithm of how likely it is; minus infinity for a jump that cannot be set.
    pub log_likely: f64,
    /// Logarithm of how often what was found from the rest is drawn.
    pub log_found: f64,
    /// Which likely candidate it was drawn around.
    pub part: usize,
    log_weight: f64,
    air_turns: f64,
}

#[derive(Debug)]
pub struct Draws {
    pub random: Pcg64Mcg,
    parts: Vec<Part>,
    draws: Vec<Draw>,
}

/// The logarithm of how likely a candidate is, but for a constant.
fn log_likely(problem: &Problem, point: &Point, candidate: &Candidate) -> f64 {
    let off = of_marks(problem, candidate).chain(problem.prior_residuals(point));
    let lost: f64 = off.map(|off| off * off).sum();
    if candidate.is_admissible() && lost.is_finite() {
        -0.5 * lost
    } else {
        f64::NEG_INFINITY
    }
}

/// The part whose turns are nearest.
fn nearest(parts: &[Part], air_turns: f64) -> usize {
    let off = |i: &usize| (parts[*i].air_turns - air_turns).abs();
    let nearest = (0..parts.len()).min_by(|one, other| off(one).total_cmp(&off(other)));
    nearest.unwrap_or(0)
}

impl Draw {
    /// With the rest of a point as given, and what is found from it as drawn.
    pub fn new(
        problem: &Problem,
        rest: &Point,
        (parts, part): (&[Part], usize),
        random: &mut Pcg64Mcg,
    ) -> Self {
        let (conditional, candidate) = Conditional::new(problem, rest, parts[part].air_turns, None);
        let mut draw = Self {
            point: *rest,
            log_likely: f64::NEG_INFINITY,
            log_found: 0.0,
            part,
            log_weight: f64::NEG_INFINITY,
            air_turns: candidate.air_turns(),
        };
        if let Some(conditional) = conditional {
            draw.point = conditional.draw(rest, random);
            draw.log_found = conditional.log_density(&draw.point);
            let candidate = Candidate::fly(problem, &draw.point, Some(&candidate));
            draw.air_turns = candidate.air_turns();
            // What another part is nearer to is left to that one.
            if nearest(parts, draw.air_turns) == part {
                draw.log_likely = log_likely(problem, &draw.point, &candidate);
            }
        }
        draw
    }
}

impl Draws {
    pub fn new(problem: &Problem, modes: &[Mode], seed: u64) -> Self {
        let around = modes.iter().filter_map(|mode| {
            let proposal = Proposal::around(problem, mode)?;
            // Laplace's estimate of how much of all is likely around there.
            let log_volume = 0.5 * libm::log(mode.curvature.determinant());
            Some((-mode.lost - log_volume, proposal, mode.air_turns))
        });
        let around: Vec<_> = around.collect();
        let most = around
            .iter()
            .fold(f64::NEG_INFINITY, |most, it| most.max(it.0));
        let mut parts: Vec<Part> = around
            .into_iter()
            .map(|(log_share, proposal, air_turns)| Part {
                share: libm::exp(log_share - most).max(LEAST_SHARE),
                proposal,
                air_turns,
            })
            .collect();
        let sum: f64 = parts.iter().map(|part| part.share).sum();
        parts.iter_mut().for_each(|part| part.share /= sum);
        Self {
            random: Pcg64Mcg::new(u128::from(seed) << 64 | 1),
            parts,
            draws: Vec::with_capacity(DRAWS),
        }
    }

    /// Draws a few more; whether that is all.
    pub fn go_on(&mut self, problem: &Problem, count: usize) -> bool {
        for _ in 0..count.min(DRAWS - self.draws.len()) {
            let part = self.draw_part();
            let of = &self.parts[part];
            let rest = of.proposal.draw(&mut self.random);
            let log_drawn = libm::log(of.share) + of.proposal.log_density(&rest);
            let mut draw = Draw::new(problem, &rest, (&self.parts, part), &mut self.random);
            draw.log_weight = draw.log_likely - draw.log_found - log_drawn;
            self.draws.push(draw);
        }
        self.draws.len() == DRAWS
    }

    fn draw_part(&mut self) -> usize {
        let mut left: f64 = self.random.random();
        for (i, part) in self.parts.iter().enumerate() {
            left -= part.share;
            if left < 0.0 {
                return i;
            }
        }
        0
    }

    pub fn parts(&self) -> Vec<Part> {
        self.parts.clone()
    }

    /// As many equally likely draws; likely ones more than once. (Systematic resampling: one random number
    /// for all.) None weighs more than the root of their number on average: a few that weigh all would
    /// be no sample (truncated importance sampling: Ionides 2008, from memory).
    pub fn equally_likely(&mut self, count: usize) -> Vec<Draw> {
        let logs = || self.draws.iter().map(|draw| draw.log_weight);
        let most = logs().fold(f64::NEG_INFINITY, f64::max);
        let mut weights: Vec<f64> = logs().map(|log| libm::exp(log - most)).collect();
        let drawn = weights.len() as f64;
        let highest = weights.iter().sum::<f64>() / drawn.sqrt();
        weights
            .iter_mut()
            .for_each(|weight| *weight = weight.min(highest));
        let sum: f64 = weights.iter().sum();
        let order = by_number((0..weights.len()).collect(), |&draw: &usize| {
            self.draws[draw].air_turns
        });
        let begin: f64 = self.random.random();
        let mut chosen = Vec::with_capacity(count);
        let mut passed = 0.0;
        for i in order {
            passed += weights[i] / sum * count as f64;
            while chosen.len() < count && begin + (chosen.len() as f64) < passed {
                chosen.push(self.draws[i].clone());
            }
        }
        chosen
    }
}
