//! The pose shown at any time: flown between take-off and touch-down, for looks before and after.

use crate::ground_motion::bed_before_takeoff_m;
use crate::landing::Landing;
use crate::pose::FigurePose;
use turns_aloft_physics::flight::Flight;
use turns_aloft_scenario::ground::Ground;

/// The jumper at `t_s` after take-off.
pub fn shown_pose(flight: &Flight, ground: Ground, t_s: f64) -> FigurePose {
    if t_s > flight.touchdown_s {
        return Landing::of(flight, ground).pose(t_s - flight.touchdown_s);
    }
    FigurePose::flown(&flight.pose_at(t_s)).raised(bed_m(flight, ground, t_s))
}

/// Height of a trampoline's bed under the jumper's feet, m; 0 where none is on it.
pub fn bed_m(flight: &Flight, ground: Ground, t_s: f64) -> f64 {
    if ground != Ground::Trampoline {
        0.0
    } else if t_s < 0.0 {
        bed_before_takeoff_m(t_s, flight.takeoff_speed_m_s)
    } else if t_s > flight.touchdown_s {
        Landing::of(flight, ground).bed_m(t_s - flight.touchdown_s)
    } else {
        0.0
    }
}

/// The lowest that a bed is under the jumper's feet, m: before take-off, since the legs take a part of
/// the landing.
pub fn lowest_bed_m(flight: &Flight, ground: Ground) -> f64 {
    bed_m(flight, ground, f64::NEG_INFINITY)
}
