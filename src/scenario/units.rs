//! The units a user may choose, at the edge only.

use std::f64::consts::{PI, TAU};

use serde::{Deserialize, Serialize};

use super::parameter::Kind;
use crate::words::{Message, with_decimal_sign};

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

/// A unit as shown: its SI size, its sign and the decimals worth showing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Unit {
    /// SI units in one of this.
    pub si: f64,
    pub(crate) sign: Message,
    pub decimals: usize,
}

const fn unit(si: f64, sign: &'static str, decimals: usize) -> Unit {
    let sign = Message(sign);
    Unit { si, sign, decimals }
}

impl RateUnit {
    pub const ALL: [Self; 4] = [Self::Rpm, Self::TurnsPerS, Self::DegPerS, Self::RadPerS];

    pub const fn unit(self) -> Unit {
        match self {
            Self::Rpm => unit(TAU / 60.0, "unit-rpm", 0),
            Self::TurnsPerS => unit(TAU, "unit-turns-per-s", 2),
            Self::DegPerS => unit(PI / 180.0, "unit-deg-per-s", 0),
            Self::RadPerS => unit(1.0, "unit-rad-per-s", 1),
        }
    }
}

impl LengthUnit {
    pub const ALL: [Self; 3] = [Self::Cm, Self::M, Self::In];

    pub const fn unit(self) -> Unit {
        match self {
            Self::Cm => unit(0.01, "unit-cm", 0),
            Self::M => unit(1.0, "unit-m", 2),
            // International inch, exact by definition (1959).
            Self::In => unit(0.0254, "unit-in", 1),
        }
    }
}

impl MassUnit {
    pub const ALL: [Self; 2] = [Self::Kg, Self::Lb];

    pub const fn unit(self) -> Unit {
        match self {
            Self::Kg => unit(1.0, "unit-kg", 2),
            // International avoirdupois pound, exact by definition (1959).
            Self::Lb => unit(0.453_592_37, "unit-lb", 2),
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
            Kind::Time => unit(1.0, "unit-s", 2),
            Kind::Angle => unit(PI / 180.0, "unit-deg", 1),
            Kind::Turns => unit(1.0, "unit-turns", 2),
            Kind::Share => unit(0.01, "unit-percent", 0),
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

    /// As it stands behind a number.
    pub fn sign(&self) -> &'static str {
        self.sign.text()
    }

    /// The number alone, without a negative zero.
    pub fn number(&self, si: f64) -> String {
        let shown = format!("{:.*}", self.decimals, self.from_si(si));
        let zero = shown.trim_start_matches(['-', '0', '.']).is_empty();
        with_decimal_sign(if zero {
            shown.trim_start_matches('-').to_owned()
        } else {
            shown
        })
    }

    /// Number and sign.
    pub fn text(&self, si: f64) -> String {
        let (number, sign) = (self.number(si), self.sign());
        // The sign of an angle stands at the number.
        if sign == "°" {
            number + sign
        } else {
            format!("{number} {sign}")
        }
    }
}
