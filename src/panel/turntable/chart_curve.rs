//! The curves of a run: names, units, colours and values.

use crate::style::{INERTIA as INERTIA_COLOUR, TEXT, ThemeColour};
use turns_aloft_describe::unit::{INERTIA, MOMENTUM};
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_scenario::units::Unit;
use turns_aloft_session::Session;
use turns_aloft_session::turntable::ENERGY;
use turns_aloft_turntable::Sample;
use turns_aloft_words::text;

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RunCurve {
    Rate,
    Momentum,
    Inertia,
    Energy,
}

impl RunCurve {
    /// The first ones are those that are shown where there is little room.
    pub const ALL: [Self; 4] = [Self::Rate, Self::Momentum, Self::Inertia, Self::Energy];

    pub fn label(self) -> &'static str {
        match self {
            Self::Rate => text("panel-curve-rate"),
            Self::Inertia => text("panel-curve-inertia"),
            Self::Momentum => text("panel-curve-momentum"),
            Self::Energy => text("panel-curve-energy"),
        }
    }

    pub const fn unit(self, session: &Session) -> Unit {
        match self {
            Self::Rate => session.units().of(Kind::Rate),
            Self::Inertia => INERTIA,
            Self::Momentum => MOMENTUM,
            Self::Energy => ENERGY,
        }
    }

    pub const fn colour(self) -> ThemeColour {
        match self {
            Self::Inertia => INERTIA_COLOUR,
            _ => TEXT,
        }
    }

    pub const fn of(self, sample: &Sample) -> f64 {
        match self {
            Self::Rate => sample.rate_rad_s,
            Self::Inertia => sample.inertia_kg_m2,
            Self::Momentum => sample.momentum_kg_m2_s,
            Self::Energy => sample.kinetic_j,
        }
    }
}
