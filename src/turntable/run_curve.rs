//! What is drawn over the time of a run.

use crate::run::Sample;

/// A curve over the run.
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

    /// Tells it from the others, whatever is spoken.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Rate => "rate",
            Self::Momentum => "momentum",
            Self::Inertia => "inertia",
            Self::Energy => "energy",
        }
    }

    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|curve| curve.name() == name)
    }

    /// In SI.
    pub const fn value(self, sample: &Sample) -> f64 {
        match self {
            Self::Rate => sample.rate_rad_s,
            Self::Inertia => sample.inertia_kg_m2,
            Self::Momentum => sample.momentum_kg_m2_s,
            Self::Energy => sample.kinetic_j,
        }
    }
}
