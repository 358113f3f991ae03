//! Where the rest of a candidate is drawn: all but what follows nearly from it (`conditional`), around
//! the likely ones.

use nalgebra::{Cholesky, SMatrix};
use rand::RngExt;
use rand::distr::Distribution;
use rand_distr::{ChiSquared, StandardNormal};
use rand_pcg::Pcg64Mcg;

use crate::conditional;
use crate::problem::Problem;
use crate::solve::Mode;
use crate::unknown::{COUNT, Point, Unknown};

/// Degrees of freedom of the multivariate Student's t that is drawn from first.
const FREEDOM: f64 = 8.0;

/// How much wider than the likely ones are spread it is drawn: our choice.
const WIDER: f64 = 1.1;

/// How much of what was known before is mixed into what the curvature around the likeliest says: that tells
/// nothing of how it goes on further out.
const BEFORE: f64 = 0.3;

pub type Square = SMatrix<f64, COUNT, COUNT>;

/// What a coordinate is to the draws.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Role {
    /// Drawn around the likely ones.
    Drawn,
    /// As it was known before: no mark says anything about it.
    AsKnown,
    /// Found from all the others.
    Found,
}

/// One place to draw around.
#[derive(Debug, Clone)]
pub struct Proposal {
    middle: Point,
    /// The lower root of its covariance.
    spread: Square,
    /// Minus the logarithm of its volume.
    log_density: f64,
    roles: [Role; COUNT],
}

fn roles(problem: &Problem) -> [Role; COUNT] {
    Unknown::ALL.map(|unknown| {
        if conditional::OF.contains(&unknown) {
            Role::Found
        } else if problem.is_told(unknown) {
            Role::Drawn
        } else {
            Role::AsKnown
        }
    })
}

fn normal(random: &mut Pcg64Mcg) -> Point {
    Point::from_fn(|_, _| random.sample(StandardNormal))
}

impl Proposal {
    /// Around a likely candidate. None where the marks leave its surroundings without bounds.
    pub fn around(problem: &Problem, mode: &Mode) -> Option<Self> {
        let local = Cholesky::new(mode.curvature)?.inverse();
        let covariance = local * (1.0 - BEFORE) + Square::identity() * BEFORE;
        Self::new(mode.point * (1.0 - BEFORE), covariance, roles(problem))
    }

    /// Around points that are likely together. A few span no space: as much as they lack is held as it
    /// is.
    pub fn among(&self, points: &[&Point]) -> Option<Self> {
        let count = points.len() as f64;
        let middle = points.iter().copied().sum::<Point>() / count;
        let covariance: Square = points
            .iter()
            .map(|&point| (point - middle) * (point - middle).transpose() / count)
            .sum();
        let trust = count / (count + 2.0 * COUNT as f64);
        let own = self.spread * self.spread.transpose() / (WIDER * WIDER);
        let covariance = covariance * trust + own * (1.0 - trust);
        Self::new(
            middle * trust + self.middle * (1.0 - trust),
            covariance,
            self.roles,
        )
    }

    fn new(mut middle: Point, mut covariance: Square, roles: [Role; COUNT]) -> Option<Self> {
        covariance *= WIDER * WIDER;
        for (i, _) in roles.iter().enumerate().filter(|it| *it.1 != Role::Drawn) {
            covariance.row_mut(i).fill(0.0);
            covariance.column_mut(i).fill(0.0);
            covariance[(i, i)] = 1.0;
            middle[i] = 0.0;
        }
        let spread = Cholesky::new(covariance)?.l();
        let lengths = spread.diagonal();
        let log_volume: f64 = lengths.iter().map(|length| libm::log(*length)).sum();
        Some(Self {
            middle,
            spread,
            log_density: -log_volume,
            roles,
        })
    }

    /// Draws from the wide Student's t.
    pub fn draw(&self, random: &mut Pcg64Mcg) -> Point {
        let chi = ChiSquared::new(FREEDOM).expect("there are degrees of freedom");
        let wide = (FREEDOM / chi.sample(random)).sqrt();
        let mut normal = normal(random);
        for (z, _) in self.each(&mut normal, Role::Drawn) {
            *z *= wide;
        }
        self.middle + self.spread * normal
    }

    /// The logarithm of how often a point is drawn, but for what is found, and a constant.
    pub fn log_density(&self, point: &Point) -> f64 {
        let mut off = self.off(point);
        let known: f64 = self
            .each(&mut off, Role::AsKnown)
            .map(|(z, _)| *z * *z)
            .sum();
        let mut dimensions = 0.0;
        let mut square = 0.0;
        for (z, _) in self.each(&mut off, Role::Drawn) {
            square += *z * *z;
            dimensions += 1.0;
        }
        let student = -0.5 * (FREEDOM + dimensions) * libm::log1p(square / FREEDOM);
        self.log_density + student - 0.5 * known
    }

    /// A point further on, by a part of the whole spread (generalised preconditioned Crank-Nicolson: Rudolf &
    /// Sprungk 2018, from memory).
    pub fn near(&self, point: &Point, part: f64, random: &mut Pcg64Mcg) -> Point {
        let kept = (1.0 - part * part).sqrt();
        self.middle + (point - self.middle) * kept + self.spread * normal(random) * part
    }

    /// The logarithm of how likely those moves alone would leave a point, but for a constant.
    pub fn log_normal(&self, point: &Point) -> f64 {
        let mut off = self.off(point);
        for (z, _) in self.each(&mut off, Role::Found) {
            *z = 0.0;
        }
        -0.5 * off.norm_squared()
    }

    fn off(&self, point: &Point) -> Point {
        self.spread
            .solve_lower_triangular_unchecked(&(point - self.middle))
    }

    fn each<'a>(
        &'a self,
        point: &'a mut Point,
        role: Role,
    ) -> impl Iterator<Item = (&'a mut f64, &'a Role)> {
        let both = point.iter_mut().zip(&self.roles);
        both.filter(move |(_, of)| **of == role)
    }
}
