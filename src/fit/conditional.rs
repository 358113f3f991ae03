//! What the marks say of take-off rate, first facing and drift once all the rest of a jump is given.
//!
//! A body whose motion and hang time are given turns as far as it leaves the ice fast, nearly in
//! proportion. So these three are found for any such body by a few weighted least squares on one flight,
//! and are drawn from around there. How near that is to the truth does not matter for what comes out: what
//! is drawn is flown, and weighed by how likely it is against how often it is drawn.

use nalgebra::{Cholesky, Const, SMatrix, SVector};
use rand::RngExt;
use rand::distr::Distribution;
use rand_distr::{ChiSquared, StandardNormal};
use rand_pcg::Pcg64Mcg;

use crate::candidate::Candidate;
use crate::likelihood::{off, weight, wrapped_rad};
use crate::mark::Mark;
use crate::problem::Problem;
use crate::unknown::{Point, Unknown};
use turns_aloft_scenario::parameter::{Parameter, Prior};

/// The three.
pub const OF: [Unknown; 3] = [
    Unknown::Number(Parameter::TakeoffRate),
    Unknown::FirstFacing,
    Unknown::Drift,
];

/// Rounds of weighted least squares.
const ROUNDS: usize = 5;

/// Degrees of freedom of the Student's t that is drawn from, and how much wider it is than found.
const FREEDOM: f64 = 6.0;
const WIDER: f64 = 1.15;

type Three = SVector<f64, 3>;

/// Where the three are drawn from.
#[derive(Debug, Clone)]
pub struct Conditional {
    middle: Three,
    root: Cholesky<f64, Const<3>>,
    log_density: f64,
}

/// How fast the logarithm of the take-off rate grows with its variable.
fn log_sigma() -> f64 {
    match Parameter::TakeoffRate.row().prior {
        Some(Prior::Factor { log_sigma, .. }) => log_sigma,
        _ => unreachable!("a take-off rate is positive"),
    }
}

/// Those of a point.
fn of(point: &Point) -> Three {
    Three::from_fn(|i, _| point[OF[i].place()])
}

/// A point with other ones.
fn with(point: &Point, three: &Three) -> Point {
    let mut other = *point;
    for (unknown, value) in OF.into_iter().zip(three) {
        other[unknown.place()] = *value;
    }
    other
}

/// What a mark is off by at given ones, when it is off by so much on the flight, and how that grows with each.
struct Line {
    off: f64,
    slopes: Three,
    /// A whole turn, in the mark's standard deviations, where any number of them is the same.
    turn: Option<f64>,
}

impl Line {
    fn of(problem: &Problem, mark: &Mark, candidate: &Candidate) -> Self {
        let grows = log_sigma();
        let facing = |t_s: f64, sigma_rad: f64| {
            let sign = candidate.setting.scenario.turning.sign();
            let turned_rad = sign * candidate.turned_rad(t_s);
            let passed = (t_s - candidate.setting.takeoff_s) / candidate.setting.hang_s();
            let drift = problem.drift_sigma_rad * passed + problem.drift_sigma_share * turned_rad;
            Three::new(grows * turned_rad, 1.0, drift) / sigma_rad
        };
        let in_all = |sigma: f64| Three::new(grows * candidate.air_turns() / sigma, 0.0, 0.0);
        let (slopes, turn) = match *mark {
            Mark::Facing { t_s, sigma_rad, .. } => (
                facing(t_s, sigma_rad),
                Some(std::f64::consts::TAU / sigma_rad),
            ),
            Mark::Turned { t_s, sigma_rad, .. } => (facing(t_s, sigma_rad), None),
            Mark::TurnsCounted { sigma, .. } => (in_all(sigma), None),
            Mark::LandingFacing { sigma, .. } => (in_all(sigma), Some(1.0 / sigma)),
            Mark::Arms { .. } | Mark::Legs { .. } => (Three::zeros(), None),
        };
        Self {
            off: off(mark, candidate),
            slopes,
            turn,
        }
    }

    fn off_at(&self, change: &Three) -> f64 {
        let off = self.off + self.slopes.dot(change);
        self.turn.map_or(off, |turn| {
            wrapped_rad(off / turn * std::f64::consts::TAU) / std::f64::consts::TAU * turn
        })
    }
}

impl Conditional {
    /// Of all the rest of a point; the turns are to be about these.
    pub fn new(
        problem: &Problem,
        point: &Point,
        air_turns: f64,
        earlier: Option<&Candidate>,
    ) -> (Option<Self>, Candidate) {
        // At a rate that gives those turns.
        let from = with(point, &Three::zeros());
        let candidate = Candidate::fly(problem, &from, earlier);
        let faster = libm::log(air_turns / candidate.air_turns().max(1e-3)) / log_sigma();
        let from = with(point, &Three::new(faster.clamp(-4.0, 4.0), 0.0, 0.0));
        let candidate = Candidate::fly(problem, &from, Some(&candidate));
        let lines: Vec<Line> = problem
            .marks
            .iter()
            .map(|mark| Line::of(problem, mark, &candidate))
            .collect();
        let here = of(&from);
        let flat = problem.is_told(Unknown::FirstFacing);
        let prior = Three::new(1.0, if flat { 0.0 } else { 1.0 }, 1.0);
        let mut change = Three::new(0.0, first_rad(&lines), 0.0);
        let mut root = None;
        for _ in 0..ROUNDS {
            let mut square = SMatrix::<f64, 3, 3>::from_diagonal(&prior);
            let mut pull = -prior.component_mul(&(here + change));
            for line in &lines {
                let off = line.off_at(&change);
                let weight = weight(off);
                square += line.slopes * line.slopes.transpose() * weight;
                pull -= line.slopes * (off * weight);
            }
            let Some(found) = Cholesky::new(square) else {
                return (None, candidate);
            };
            change += found.solve(&pull);
            root = Some(found);
        }
        let conditional = root.map(|root| Self {
            middle: here + change,
            log_density: root.l().diagonal().iter().map(|it| libm::log(*it)).sum(),
            root,
        });
        (conditional, candidate)
    }

    /// The point with the three as they are drawn.
    pub fn draw(&self, point: &Point, random: &mut Pcg64Mcg) -> Point {
        let chi = ChiSquared::new(FREEDOM).expect("there are degrees of freedom");
        let wide = WIDER * (FREEDOM / chi.sample(random)).sqrt();
        let normal = Three::from_fn(|_, _| wide * random.sample::<f64, _>(StandardNormal));
        let upper = self.root.l_dirty().transpose();
        let off = upper.solve_upper_triangular_unchecked(&normal);
        with(point, &(self.middle + off))
    }

    /// The logarithm of how often a point's three are drawn, but for a constant.
    pub fn log_density(&self, point: &Point) -> f64 {
        let off = self.root.l().transpose() * (of(point) - self.middle) / WIDER;
        let square = off.norm_squared();
        self.log_density - 0.5 * (FREEDOM + 3.0) * libm::log1p(square / FREEDOM)
    }
}

/// The first facing that suits most of the facings on the flight: each is tried.
fn first_rad(lines: &[Line]) -> f64 {
    let facings = lines.iter().filter(|line| line.slopes[1] != 0.0);
    let lost = |first_rad: f64| -> f64 {
        let change = Three::new(0.0, first_rad, 0.0);
        let off = lines.iter().map(|line| line.off_at(&change));
        off.map(|off| libm::log1p(off * off)).sum()
    };
    facings
        .map(|line| -line.off / line.slopes[1])
        .map(|first_rad| (first_rad, lost(first_rad)))
        .min_by(|one, other| one.1.total_cmp(&other.1))
        .map_or(0.0, |(first_rad, _)| first_rad)
}
