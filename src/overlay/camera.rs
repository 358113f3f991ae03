//! A distant camera fitted to the marks: everything across the line of sight has the same scale, near or far.

use glam::DVec3;
use nalgebra::{SMatrix, SVector};

use crate::line_of_sight::LineOfSight;
use crate::marks::{Mark, in_flight};
use crate::pan::Pan;
use crate::upright::{MARK_SIGMA, Upright};
use turns_aloft_attempt::film::Point;
use turns_aloft_physics::flight::Flight;

/// Where points of a flight's world are in the picture.
#[derive(Debug, Clone, PartialEq)]
pub struct Camera {
    upright: Upright,
    /// Of the point of the ice below the CM at take-off, at take-off.
    origin_px: [f64; 2],
    /// How the jumper travels through the picture.
    travel_px_s: [f64; 2],
    takeoff_s: f64,
    sight: LineOfSight,
    pan: Pan,
    /// Root of the mean square by which the marks miss the figure's points.
    pub missed_px: f64,
}

/// Why no camera can be fitted.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoCamera {
    /// No frame of the flight has two marks of the figure, by which its size is told.
    NoPair,
}

/// Standard deviations of what is known beforehand, our estimates: jumpers travel at up to 10 m/s, level, and
/// people hold a camera upright to some degrees.
const TRAVEL_M_S: f64 = 6.0;
const LEVEL_M_S: f64 = 0.3;
const ROLL_RAD: f64 = 0.1;

/// Unknowns: along, across, origin and travel in x and y.
type Unknowns = SVector<f64, 6>;

/// What a mark says: two rows of an equation in the unknowns.
fn rows(mark: &Mark) -> [([f64; 6], f64); 2] {
    let ([right, up], since_s, [x, y]) = (mark.own_m, mark.since_s, mark.at_px);
    [
        ([right, up, 1.0, 0.0, since_s, 0.0], x),
        ([-up, right, 0.0, 1.0, 0.0, since_s], y),
    ]
}

impl Camera {
    /// The camera in whose picture a flight that begins at this time fits the marks best.
    pub fn fit(
        points: &[Point],
        flight: &Flight,
        takeoff_s: f64,
        sight: LineOfSight,
    ) -> Result<Self, NoCamera> {
        let stature_m = flight.table.body.spec.stature_m;
        let pan = Pan::of(points);
        let marks = in_flight(points, flight, takeoff_s, &sight, &pan);
        let upright = Upright::of(&marks, stature_m).ok_or(NoCamera::NoPair)?;
        let scale_px_m = upright.scale_px_m();

        let mut normal = SMatrix::<f64, 6, 6>::zeros();
        let mut right = Unknowns::zeros();
        let mut add = |row: [f64; 6], value: f64, sigma: f64| {
            let row = Unknowns::from(row) / sigma;
            normal += row * row.transpose();
            right += row * (value / sigma);
        };
        for mark in &marks {
            for (row, value) in rows(mark) {
                add(row, value, MARK_SIGMA * stature_m * scale_px_m);
            }
        }
        add([0.0, 1.0, 0.0, 0.0, 0.0, 0.0], 0.0, ROLL_RAD * scale_px_m);
        // Travel is level in the world: in the picture along the figure's own right.
        let [cos, sin] = [upright.along, upright.across].map(|part| part / scale_px_m);
        add([0.0, 0.0, 0.0, 0.0, cos, sin], 0.0, TRAVEL_M_S * scale_px_m);
        add([0.0, 0.0, 0.0, 0.0, -sin, cos], 0.0, LEVEL_M_S * scale_px_m);

        let solved = normal.cholesky().ok_or(NoCamera::NoPair)?.solve(&right);
        let missed = marks.iter().flat_map(rows).map(|(row, value)| {
            let left = Unknowns::from(row).dot(&solved) - value;
            left * left
        });
        Ok(Self {
            upright: Upright {
                along: solved[0],
                across: solved[1],
                ..upright
            },
            origin_px: [solved[2], solved[3]],
            travel_px_s: [solved[4], solved[5]],
            takeoff_s,
            sight,
            missed_px: (missed.sum::<f64>() / marks.len() as f64).sqrt(),
            pan,
        })
    }

    /// Where a point of the flight's world is in the picture at a time of the film, in flight or not.
    pub fn project(&self, point_m: DVec3, t_s: f64) -> [f64; 2] {
        let since_s = t_s - self.takeoff_s;
        let [right, up] = self.sight.across_m(point_m, since_s);
        let Upright { along, across, .. } = self.upright;
        let own_px = [along * right + across * up, across * right - along * up];
        let moved_px = self.pan.at_px(t_s);
        [0, 1].map(|i| self.origin_px[i] + own_px[i] + self.travel_px_s[i] * since_s + moved_px[i])
    }

    /// Pixels a metre.
    pub fn scale_px_m(&self) -> f64 {
        self.upright.scale_px_m()
    }

    /// How far the picture is turned: positive where what is upright leans to the right in it.
    pub fn roll_rad(&self) -> f64 {
        libm::atan2(self.upright.across, self.upright.along)
    }
}
