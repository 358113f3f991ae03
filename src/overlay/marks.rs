//! Marks of the figure beside where the figure's own points are at that time.

use crate::figure::point_m;
use crate::line_of_sight::LineOfSight;
use crate::pan::Pan;
use turns_aloft_attempt::film::{Point, PointOf};
use turns_aloft_physics::flight::Flight;
use turns_aloft_physics::order::by_number;

/// A mark of the figure in flight.
#[derive(Debug, Clone, Copy)]
pub struct Mark {
    pub of: PointOf,
    /// Since take-off.
    pub since_s: f64,
    /// Where the figure has it across the line of sight: to the right and up, m.
    pub own_m: [f64; 2],
    /// The same of the centre of mass.
    pub cm_m: [f64; 2],
    /// In the picture, as if the camera stood still.
    pub at_px: [f64; 2],
}

/// A mark that is no more than this before or after the flight is of its end, s: a frame at 30 a second.
const BESIDE_S: f64 = 0.034;

/// The marks of the figure in flight, by their times.
pub fn in_flight(
    points: &[Point],
    flight: &Flight,
    takeoff_s: f64,
    sight: &LineOfSight,
    pan: &Pan,
) -> Vec<Mark> {
    let mark = |point: &Point| {
        let since_s = point.t_s - takeoff_s;
        let is_flown = (-BESIDE_S..=flight.touchdown_s + BESIDE_S).contains(&since_s);
        let own_m = point_m(flight, point.of, since_s).filter(|_| is_flown)?;
        let moved_px = pan.at_px(point.t_s);
        Some(Mark {
            of: point.of,
            since_s,
            own_m: sight.across_m(own_m, since_s),
            cm_m: sight.across_m(flight.at(since_s).cm_m(), since_s),
            at_px: [0, 1].map(|i| point.at_px[i] - moved_px[i]),
        })
    };
    by_number(points.iter().filter_map(mark).collect(), |mark| {
        mark.since_s
    })
}
