//! Candidates drawn around the likely ones, and weighed by how likely they are against how often they are
//! drawn (importance sampling).

use rand::RngExt;
use rand_pcg::Pcg64Mcg;

use crate::candidate::Candidate;
use crate::problem::Problem;
use crate::proposal::{Proposal, told};
use crate::solve::{Mode, of_marks};
use crate::unknown::Point;

/// How many are drawn.
const DRAWS: usize = 600;

/// The least share of the draws for a likely candidate, however unlikely against the others.
const LEAST_SHARE: f64 = 0.08;

/// A likely candidate, how often it is drawn around, and its turns, by which draws are told apart.
#[derive(Debug)]
struct Part {
    share: f64,
    proposal: Proposal,
    air_turns: f64,
}

/// A candidate that was drawn.
#[derive(Debug, Clone)]
pub struct Draw {
    pub point: Point,
    /// Logarithm of how likely it is; minus infinity for a jump that cannot be set.
    pub log_likely: f64,
    /// Which likely candidate it belongs to.
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
pub fn log_likely(problem: &Problem, point: &Point, candidate: &Candidate) -> f64 {
    let off = of_marks(problem, candidate).chain(problem.prior_residuals(point));
    let lost: f64 = off.map(|off| off * off).sum();
    if candidate.is_admissible() && lost.is_finite() {
        -0.5 * lost
    } else {
        f64::NEG_INFINITY
    }
}

impl Draws {
    pub fn new(problem: &Problem, modes: &[Mode], seed: u64) -> Self {
        let told = told(problem);
        let around = modes.iter().filter_map(|mode| {
            let proposal = Proposal::around(mode, told)?;
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
            let point = self.draw();
            let candidate = Candidate::fly(problem, &point, None);
            let log_likely = log_likely(problem, &point, &candidate);
            // What no mark tells is drawn as it is known, and so counts on neither side.
            let untold = told(problem).into_iter().zip(&point);
            let untold = untold.filter(|(told, _)| !told).map(|(_, z)| z * z);
            let log_weight = log_likely + 0.5 * untold.sum::<f64>() - self.log_density(&point);
            let air_turns = candidate.air_turns();
            self.draws.push(Draw {
                point,
                log_likely,
                part: self.nearest(air_turns),
                log_weight,
                air_turns,
            });
        }
        self.draws.len() == DRAWS
    }

    fn draw(&mut self) -> Point {
        let mut left: f64 = self.random.random();
        let last = self.parts.len() - 1;
        for part in &self.parts[..last] {
            left -= part.share;
            if left < 0.0 {
                return part.proposal.draw(&mut self.random);
            }
        }
        self.parts[last].proposal.draw(&mut self.random)
    }

    fn log_density(&self, point: &Point) -> f64 {
        let parts = self.parts.iter();
        let logs: Vec<f64> = parts
            .map(|part| libm::log(part.share) + part.proposal.log_density(point))
            .collect();
        let most = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        most + libm::log(logs.iter().map(|log| libm::exp(log - most)).sum())
    }

    /// The likely candidate whose turns are nearest.
    fn nearest(&self, air_turns: f64) -> usize {
        let off = |i: &usize| (self.parts[*i].air_turns - air_turns).abs();
        let places = 0..self.parts.len();
        places
            .min_by(|one, other| off(one).total_cmp(&off(other)))
            .unwrap_or(0)
    }

    pub fn proposals(&self) -> Vec<Proposal> {
        self.parts
            .iter()
            .map(|part| part.proposal.clone())
            .collect()
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
        let mut order: Vec<usize> = (0..weights.len()).collect();
        order.sort_unstable_by(|&one, &other| {
            self.draws[one]
                .air_turns
                .total_cmp(&self.draws[other].air_turns)
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
