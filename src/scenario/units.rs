//! The units a user may choose, at the edge only.

use std::f64::consts::{PI, TAU};

use serde::{Deserialize, Serialize};

use crate::parameter::Kind;

#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum RateUnit {
    Rpm,
    TurnsPerS,
    DegPerS,
    RadPerS,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum LengthUnit {
    Cm,
    M,
    In,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum MassUnit {
    Kg,
    Lb,
}

/// The user's choice.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Units {
    pub rate: RateUnit,
    pub length: LengthUnit,
    pub mass: MassUnit,
}

impl Default for Units {
    fn default() -> Self {
        Self {
            rate: RateUnit::Rpm,
            length: LengthUnit::Cm,
            mass: MassUnit::Kg,
        }
    }
}

/// What stands behind a number.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum UnitSign {
    Rpm,
    TurnsPerS,
    DegPerS,
    RadPerS,
    Cm,
    M,
    In,
    Kg,
    Lb,
    S,
    Deg,
    Rad,
    Turns,
    Percent,
    KgM2,
    KgM2PerS,
    J,
    W,
    N,
    NM,
    NMS,
    NMPerKg,
    Degrees,
}

/// A unit as shown: its SI size, its sign and the decimals worth showing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Unit {
    /// SI units in one of this.
    pub si: f64,
    pub sign: UnitSign,
    pub decimals: usize,
}

const fn unit(si: f64, sign: UnitSign, decimals: usize) -> Unit {
    Unit { si, sign, decimals }
}

impl RateUnit {
    pub const ALL: [Self; 4] = [Self::Rpm, Self::TurnsPerS, Self::DegPerS, Self::RadPerS];

    pub const fn unit(self) -> Unit {
        match self {
            Self::Rpm => unit(TAU / 60.0, UnitSign::Rpm, 0),
            Self::TurnsPerS => unit(TAU, UnitSign::TurnsPerS, 2),
            Self::DegPerS => unit(PI / 180.0, UnitSign::DegPerS, 0),
            Self::RadPerS => unit(1.0, UnitSign::RadPerS, 1),
        }
    }
}

impl LengthUnit {
    pub const ALL: [Self; 3] = [Self::Cm, Self::M, Self::In];

    pub const fn unit(self) -> Unit {
        match self {
            Self::Cm => unit(0.01, UnitSign::Cm, 0),
            Self::M => unit(1.0, UnitSign::M, 2),
            // International inch, exact by definition (1959).
            Self::In => unit(0.0254, UnitSign::In, 1),
        }
    }
}

impl MassUnit {
    pub const ALL: [Self; 2] = [Self::Kg, Self::Lb];

    pub const fn unit(self) -> Unit {
        match self {
            Self::Kg => unit(1.0, UnitSign::Kg, 2),
            // International avoirdupois pound, exact by definition (1959).
            Self::Lb => unit(0.453_592_37, UnitSign::Lb, 2),
        }
    }
}

impl Units {
    /// The unit in which a kind of number is shown.
    pub const fn of(&self, kind: Kind) -> Unit {
        match kind {
            Kind::Length => self.length.unit(),
            Kind::Mass => self.mass.unit(),
            Kind::Rate => self.rate.unit(),
            Kind::Time => unit(1.0, UnitSign::S, 2),
            Kind::Angle => unit(PI / 180.0, UnitSign::Deg, 1),
            Kind::Turns => unit(1.0, UnitSign::Turns, 2),
            Kind::Share => unit(0.01, UnitSign::Percent, 0),
        }
    }
}

impl Unit {
    pub fn from_si(&self, si: f64) -> f64 {
        si / self.si
    }

    pub fn to_si(&self, shown: f64) -> f64 {
        shown * self.si
    }
}
