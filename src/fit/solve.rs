//! The likeliest candidate near another: nonlinear least squares over standard normal variables.

use levenberg_marquardt::{LeastSquaresProblem, LevenbergMarquardt};
use nalgebra::storage::Owned;
use nalgebra::{Const, DVector, Dyn, OMatrix, SMatrix};

use crate::candidate::Candidate;
use crate::likelihood::{off, residual};
use crate::problem::Problem;
use crate::unknown::{COUNT, Point, Unknown};

/// What a variable is changed by to see what that does, in standard deviations.
const STEP: f64 = 0.02;

/// When the sum of squares, or the point, no longer changes by more than this share.
const SETTLED: f64 = 1e-3;

/// No residual changes by so much in such a step but one that leaps to its other side.
const LEAP: f64 = 3.0;

/// Tries of a search, in times of the number of unknowns and one.
const PATIENCE: usize = 2;

/// A point, its candidate and how far that is off.
#[derive(Debug, Clone)]
pub struct Trial<'a> {
    problem: &'a Problem,
    pub point: Point,
    pub candidate: Candidate,
}

/// The likeliest candidate near another.
#[derive(Debug, Clone)]
pub struct Mode {
    pub point: Point,
    pub air_turns: f64,
    /// Half the sum of squares: minus the logarithm of how likely it is.
    pub lost: f64,
    /// How fast that grows around the point, as the squares' second derivatives.
    pub curvature: SMatrix<f64, COUNT, COUNT>,
}

/// Residuals of the marks.
pub fn of_marks(problem: &Problem, candidate: &Candidate) -> impl Iterator<Item = f64> {
    let marks = problem.marks.iter();
    marks.map(|mark| residual(off(mark, candidate)))
}

impl<'a> Trial<'a> {
    pub fn new(problem: &'a Problem, point: Point) -> Self {
        Self {
            candidate: Candidate::fly(problem, &point, None),
            problem,
            point,
        }
    }

    fn all(&self, point: &Point, candidate: &Candidate) -> DVector<f64> {
        let prior = self.problem.prior_residuals(point);
        let all = prior.chain(of_marks(self.problem, candidate));
        DVector::from_iterator(COUNT + self.problem.marks.len(), all)
    }

    /// The likeliest candidate near this one.
    pub fn solve(self) -> Mode {
        let (found, _) = LevenbergMarquardt::new()
            .with_tol(SETTLED)
            .with_patience(PATIENCE)
            .with_stepbound(2.0)
            .minimize(self);
        let jacobian = found.jacobian().expect("every point can be flown");
        let lost = 0.5 * found.all(&found.point, &found.candidate).norm_squared();
        Mode {
            point: found.point,
            air_turns: found.candidate.air_turns(),
            lost,
            curvature: jacobian.tr_mul(&jacobian),
        }
    }
}

impl LeastSquaresProblem<f64, Dyn, Const<COUNT>> for Trial<'_> {
    type ResidualStorage = Owned<f64, Dyn>;
    type JacobianStorage = Owned<f64, Dyn, Const<COUNT>>;
    type ParameterStorage = Owned<f64, Const<COUNT>>;

    fn set_params(&mut self, point: &Point) {
        self.point = *point;
        self.candidate = Candidate::fly(self.problem, point, Some(&self.candidate));
    }

    fn params(&self) -> Point {
        self.point
    }

    fn residuals(&self) -> Option<DVector<f64>> {
        Some(self.all(&self.point, &self.candidate))
    }

    fn jacobian(&self) -> Option<OMatrix<f64, Dyn, Const<COUNT>>> {
        let here = self.all(&self.point, &self.candidate);
        let mut jacobian = OMatrix::<f64, Dyn, Const<COUNT>>::zeros(here.len());
        for i in 0..COUNT {
            if !self.problem.is_told(Unknown::ALL[i]) {
                jacobian[(i, i)] = 1.0;
                continue;
            }
            let mut point = self.point;
            point[i] += STEP;
            let candidate = Candidate::fly(self.problem, &point, Some(&self.candidate));
            let there = self.all(&point, &candidate);
            // A facing half a turn off may come in from the other side: it says nothing then.
            let change = (there - &here).map(|by| if by.abs() > LEAP { 0.0 } else { by / STEP });
            jacobian.set_column(i, &change);
        }
        Some(jacobian)
    }
}
