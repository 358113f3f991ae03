//! How well a candidate agrees with the marks.
//!
//! Every mark counts with Student's t of 4 degrees of freedom, so that one that is grossly wrong hardly
//! counts (Lange, Little & Taylor 1989 use it so, from memory).

use std::f64::consts::TAU;

use crate::candidate::Candidate;
use crate::mark::Mark;

/// Degrees of freedom of Student's t.
const FREEDOM: f64 = 4.0;

/// How far off a candidate is, in the mark's own standard deviations.
pub fn off(mark: &Mark, candidate: &Candidate) -> f64 {
    let in_all = || candidate.air_turns() + candidate.setting.scenario.pre_rotation_turns;
    match *mark {
        Mark::Facing {
            t_s,
            angle_rad,
            sigma_rad,
        } => wrapped_rad(candidate.facing_rad(t_s) - angle_rad) / sigma_rad,
        Mark::Turned {
            t_s,
            angle_rad,
            sigma_rad,
        } => (candidate.facing_rad(t_s) - angle_rad) / sigma_rad,
        Mark::Arms { t_s, arms, sigma } => (candidate.tucks(t_s)[0] - arms) / sigma,
        Mark::Legs { t_s, legs, sigma } => (candidate.tucks(t_s)[1] - legs) / sigma,
        Mark::TurnsCounted { turns, sigma } => (in_all() - turns) / sigma,
        Mark::LandingFacing { turns, sigma } => {
            wrapped_rad(TAU * (in_all() - turns)) / (TAU * sigma)
        }
    }
}

/// An angle in [-pi, pi].
pub fn wrapped_rad(angle_rad: f64) -> f64 {
    angle_rad - TAU * libm::rint(angle_rad / TAU)
}

/// The scale of Student's t, as a part of a mark's standard deviation: so large that of marks whose errors are
/// normal the range is as wide as it has to be (derived: the width that the curvature says is that
/// of the estimate, 1.05 standard deviations).
const SCALE: f64 = 0.9;

/// How much a mark that is so far off counts in weighted least squares.
pub fn weight(off: f64) -> f64 {
    (FREEDOM + 1.0) / (FREEDOM * SCALE * SCALE + off * off)
}

/// The residual whose half square is what Student's t loses by being so far off.
pub fn residual(off: f64) -> f64 {
    let lost = (FREEDOM + 1.0) * libm::log1p(off * off / (SCALE * SCALE * FREEDOM));
    lost.sqrt().copysign(off)
}
