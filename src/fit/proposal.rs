//! Where candidates are drawn: around the likely ones, a little wider than they are likely.

use nalgebra::{Cholesky, SMatrix};
use rand::RngExt;
use rand::distr::Distribution;
use rand_distr::{ChiSquared, StandardNormal};
use rand_pcg::Pcg64Mcg;

use crate::problem::Problem;
use crate::solve::Mode;
use crate::unknown::{COUNT, Point, Unknown};

/// Degrees of freedom of the multivariate Student's t that is drawn from, and how much wider than the
/// likely candidates it is: our choice.
const FREEDOM: f64 = 8.0;
const WIDER: f64 = 1.1;

pub type Square = SMatrix<f64, COUNT, COUNT>;

/// One place to draw around.
#[derive(Debug, Clone)]
pub struct Proposal {
    middle: Point,
    /// The lower root of its covariance.
    spread: Square,
    /// Minus the logarithm of its volume.
    log_density: f64,
    told: [bool; COUNT],
    dimensions: f64,
}

/// Which unknowns any mark says something about.
pub fn told(problem: &Problem) -> [bool; COUNT] {
    Unknown::ALL.map(|unknown| problem.is_told(unknown))
}

fn normal(random: &mut Pcg64Mcg) -> Point {
    Point::from_fn(|_, _| random.sample(StandardNormal))
}

impl Proposal {
    /// Around a likely candidate. None where the marks leave its surroundings without bounds.
    pub fn around(mode: &Mode, told: [bool; COUNT]) -> Option<Self> {
        let covariance = Cholesky::new(mode.curvature)?.inverse();
        Self::new(mode.point, covariance, told)
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
        let trust = count / (count + 2.0 * self.dimensions);
        let covariance = covariance * trust + self.covariance() * (1.0 - trust);
        Self::new(
            middle * trust + self.middle * (1.0 - trust),
            covariance,
            self.told,
        )
    }

    fn new(mut middle: Point, mut covariance: Square, told: [bool; COUNT]) -> Option<Self> {
        covariance *= WIDER * WIDER;
        // What no mark tells stays as it was known before, and hangs on nothing else.
        for (i, _) in told.iter().enumerate().filter(|(_, told)| !**told) {
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
            told,
            dimensions: told.iter().filter(|told| **told).count() as f64,
        })
    }

    /// Of what it was made around.
    fn covariance(&self) -> Square {
        self.spread * self.spread.transpose() / (WIDER * WIDER)
    }

    /// Draws from the wide Student's t.
    pub fn draw(&self, random: &mut Pcg64Mcg) -> Point {
        let chi = ChiSquared::new(FREEDOM).expect("there are degrees of freedom");
        let wide = (FREEDOM / chi.sample(random)).sqrt();
        let mut normal = normal(random);
        for (z, _) in normal.iter_mut().zip(self.told).filter(|(_, told)| *told) {
            *z *= wide;
        }
        self.middle + self.spread * normal
    }

    /// The logarithm of how often a point is drawn, but for a constant that all proposals of a problem
    /// share and for what no mark tells.
    pub fn log_density(&self, point: &Point) -> f64 {
        let mut off = self.off(point);
        for (z, _) in off.iter_mut().zip(self.told).filter(|(_, told)| !*told) {
            *z = 0.0;
        }
        let square = off.norm_squared();
        self.log_density - 0.5 * (FREEDOM + self.dimensions) * libm::log1p(square / FREEDOM)
    }

    /// A point further on, by a part of the whole spread (generalised preconditioned Crank-Nicolson: Rudolf &
    /// Sprungk 2018, from memory).
    pub fn near(&self, point: &Point, part: f64, random: &mut Pcg64Mcg) -> Point {
        let kept = (1.0 - part * part).sqrt();
        self.middle + (point - self.middle) * kept + self.spread * normal(random) * part
    }

    /// The logarithm of what those moves alone would leave a point as likely as, but for a constant.
    pub fn log_normal(&self, point: &Point) -> f64 {
        -0.5 * self.off(point).norm_squared()
    }

    fn off(&self, point: &Point) -> Point {
        self.spread
            .solve_lower_triangular_unchecked(&(point - self.middle))
    }
}
