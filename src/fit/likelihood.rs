//! How well a candidate agrees with the marks.
//!
//! Every mark counts with Student's t of 4 degrees of freedom, so that one that is grossly wrong hardly
//! counts (Lange, Little & Taylor 1989 use it so, from memory).

use std::f64::consts::TAU;

use crate::candidate::Candidate;

/// Degrees of freedom of Student's t.
const FREEDOM: f64 = 4.0;

/// Something that was measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Mark {
    /// As a camera sees it: any whole turn more is the same.
    Facing {
        t_s: f64,
        angle_rad: f64,
        sigma_rad: f64,
    },
    /// As a sensor says it: every turn counts.
    Turned {
        t_s: f64,
        angle_rad: f64,
        sigma_rad: f64,
    },
    Arms {
        t_s: f64,
        arms: f64,
        sigma: f64,
    },
    Legs {
        t_s: f64,
        legs: f64,
        sigma: f64,
    },
    /// Turns in all.
    TurnsCounted {
        turns: f64,
        sigma: f64,
    },
    /// Turns in all up to any number of whole ones.
    LandingFacing {
        turns: f64,
        sigma: f64,
    },
}

impl Mark {
    pub const fn is_of_facing(&self) -> bool {
        matches!(self, Self::Facing { .. } | Self::Turned { .. })
    }

    pub const fn is_of_turns_in_all(&self) -> bool {
        matches!(self, Self::TurnsCounted { .. } | Self::LandingFacing { .. })
    }

    /// How far off a candidate is, in the mark's own standard deviations.
    pub fn off(&self, candidate: &Candidate) -> f64 {
        let in_all = || candidate.air_turns() + candidate.setting.scenario.pre_rotation_turns;
        match *self {
            Self::Facing {
                t_s,
                angle_rad,
                sigma_rad,
            } => wrapped_rad(candidate.facing_rad(t_s) - angle_rad) / sigma_rad,
            Self::Turned {
                t_s,
                angle_rad,
                sigma_rad,
            } => (candidate.facing_rad(t_s) - angle_rad) / sigma_rad,
            Self::Arms { t_s, arms, sigma } => (candidate.tucks(t_s)[0] - arms) / sigma,
            Self::Legs { t_s, legs, sigma } => (candidate.tucks(t_s)[1] - legs) / sigma,
            Self::TurnsCounted { turns, sigma } => (in_all() - turns) / sigma,
            Self::LandingFacing { turns, sigma } => {
                wrapped_rad(TAU * (in_all() - turns)) / (TAU * sigma)
            }
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

/// The residual whose half square is what Student's t loses by being so far off.
pub fn residual(off: f64) -> f64 {
    let lost = (FREEDOM + 1.0) * libm::log1p(off * off / (SCALE * SCALE * FREEDOM));
    lost.sqrt().copysign(off)
}
