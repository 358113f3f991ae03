//! Gravity in the marks: in flight the centre of mass falls with 9.8 m/s2, whoever jumps. A film that is k
//! times slower than it is taken for shows it k squared times too small.

use nalgebra::{DMatrix, DVector};
use turns_aloft_physics::order::sorted;

use crate::line_of_sight::LineOfSight;
use crate::marks::{Mark, in_flight};
use crate::pan::Pan;
use crate::upright::{MARK_SIGMA, Upright};
use turns_aloft_attempt::film::{Point, PointOf};
use turns_aloft_physics::GRAVITY_M_S2;
use turns_aloft_physics::flight::Flight;

/// A height at a time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Height {
    pub t_s: f64,
    pub height_m: f64,
    /// Heights of the same kind have what is wrong with all of them in common.
    pub kind: usize,
}

/// How fast heights fall.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fall {
    pub g_m_s2: f64,
    /// Standard deviation.
    pub sigma_m_s2: f64,
}

/// What the fall says of the frames taken in a second.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum RateCheck {
    /// It is as it should be.
    Right,
    /// Another usual rate is the likely one.
    Other { frames_a_second: f64 },
    /// It is not, and nor is any other usual rate.
    None,
    /// The marks do not tell.
    CannotTell,
}

/// Rates at which films are taken, frames a second.
pub const USUAL_RATES: [f64; 4] = [30.0, 60.0, 120.0, 240.0];

/// Stature and postures are not known better than so, as a share; our estimate.
const SIZE_SIGMA: f64 = 0.03;

/// Standard deviations by which a rate has to miss to be wrong, and may miss to be likely.
const WRONG: f64 = 3.0;
const LIKELY: f64 = 2.0;

impl Fall {
    /// From heights, each with this standard deviation; none where there are too few of them.
    pub fn of(heights: &[Height], sigma_m: f64) -> Option<Self> {
        let kinds = heights.iter().map(|height| height.kind).max()? + 1;
        let counts = |kind: usize| heights.iter().filter(|height| height.kind == kind).count();
        // A kind of height that there is one of says nothing.
        let told: Vec<&Height> = heights
            .iter()
            .filter(|height| counts(height.kind) > 1)
            .collect();
        let unknowns: Vec<usize> = (0..kinds).filter(|&kind| counts(kind) > 1).collect();
        let columns = unknowns.len() + 2;
        let mut times = sorted(told.iter().map(|height| height.t_s).collect());
        times.dedup();
        // A curve goes through any two heights.
        if times.len() < 3 || told.len() < columns {
            return None;
        }
        let mean_s = told.iter().map(|height| height.t_s).sum::<f64>() / told.len() as f64;
        let design = DMatrix::from_fn(told.len(), columns, |row, column| {
            let since_s = told[row].t_s - mean_s;
            match column.checked_sub(unknowns.len()) {
                None => f64::from(told[row].kind == unknowns[column]),
                Some(0) => since_s,
                Some(_) => -0.5 * since_s * since_s,
            }
        });
        let values = DVector::from_iterator(told.len(), told.iter().map(|height| height.height_m));
        let inverse = (design.transpose() * &design).try_inverse()?;
        let solved = &inverse * (design.transpose() * &values);
        let left = (&design * &solved - &values).norm_squared();
        let spare = told.len() - columns;
        // What is left over may be more than the marks' own error, and by chance less.
        let scatter_m = match spare {
            0 => sigma_m,
            spare => sigma_m.max((left / spare as f64).sqrt()),
        };
        let fall = Self {
            g_m_s2: solved[columns - 1],
            sigma_m_s2: scatter_m * inverse[(columns - 1, columns - 1)].max(0.0).sqrt(),
        };
        (fall.g_m_s2.is_finite() && fall.sigma_m_s2.is_finite()).then_some(fall)
    }

    /// From the marks of a film in which the flight lasts that long. The flight gives the postures alone:
    /// where head, hips and feet are from the centre of mass, and how far apart. Its own duration does not
    /// count, since that may be the wrong one.
    pub fn of_marks(
        points: &[Point],
        flight: &Flight,
        [takeoff_s, landing_s]: [f64; 2],
        sight: LineOfSight,
    ) -> Option<Self> {
        let faster = flight.touchdown_s / (landing_s - takeoff_s);
        let on_flights_clock = |point: &Point| Point {
            t_s: takeoff_s + faster * (point.t_s - takeoff_s),
            ..*point
        };
        let points: Vec<Point> = points.iter().map(on_flights_clock).collect();
        let stature_m = flight.table.body.spec.stature_m;
        let marks = in_flight(&points, flight, takeoff_s, &sight, &Pan::of(&points));
        let upright = Upright::of(&marks, stature_m)?;
        let height = |mark: &Mark| {
            let [right, up] = [0, 1].map(|i| mark.own_m[i] - mark.cm_m[i]);
            // What the picture has of the way from the centre of mass to the point is taken away.
            let way_px = [
                upright.along * right + upright.across * up,
                upright.across * right - upright.along * up,
            ];
            Height {
                t_s: mark.since_s / faster,
                height_m: upright.up_m([0, 1].map(|i| mark.at_px[i] - way_px[i])),
                kind: match mark.of {
                    PointOf::Head => 0,
                    PointOf::Hips => 1,
                    PointOf::Feet | PointOf::Background => 2,
                },
            }
        };
        let heights: Vec<Height> = marks.iter().map(height).collect();
        let fall = Self::of(&heights, MARK_SIGMA * stature_m)?;
        let size = fall.g_m_s2 * libm::hypot(upright.sigma, SIZE_SIGMA);
        Some(Self {
            sigma_m_s2: libm::hypot(fall.sigma_m_s2, size),
            ..fall
        })
    }

    /// What a fall says that was seen in a film taken for one of so many frames a second.
    pub fn check(&self, frames_a_second: f64) -> RateCheck {
        // By how many standard deviations it misses what a film would show that was taken at another rate.
        let missed = |rate: f64| {
            let share = frames_a_second / rate;
            let shown_m_s2 = GRAVITY_M_S2 * share * share;
            (self.g_m_s2 - shown_m_s2).abs() / libm::hypot(self.sigma_m_s2, SIZE_SIGMA * shown_m_s2)
        };
        let others = USUAL_RATES
            .into_iter()
            .filter(|rate| (rate / frames_a_second - 1.0).abs() > 0.1);
        let possible: Vec<f64> = others.filter(|&rate| missed(rate) < WRONG).collect();
        match (missed(frames_a_second) < WRONG, &possible[..]) {
            (true, []) => RateCheck::Right,
            (false, &[rate]) if missed(rate) < LIKELY => RateCheck::Other {
                frames_a_second: rate,
            },
            (false, []) => RateCheck::None,
            _ => RateCheck::CannotTell,
        }
    }
}
