//! Numbers with their units.

use crate::Text;
use turns_aloft_scenario::units::{Unit, UnitSign};
use turns_aloft_words::{text, with_decimal_sign};

impl Text for UnitSign {
    fn text(self) -> &'static str {
        match self {
            Self::Rpm => text("unit-rpm"),
            Self::TurnsPerS => text("unit-turns-per-s"),
            Self::DegPerS => text("unit-deg-per-s"),
            Self::RadPerS => text("unit-rad-per-s"),
            Self::Cm => text("unit-cm"),
            Self::M => text("unit-m"),
            Self::In => text("unit-in"),
            Self::Kg => text("unit-kg"),
            Self::Lb => text("unit-lb"),
            Self::S => text("unit-s"),
            Self::Deg => text("unit-deg"),
            Self::Rad => text("unit-rad"),
            Self::Turns => text("unit-turns"),
            Self::Percent => text("unit-percent"),
            Self::KgM2 => text("unit-kg-m2"),
            Self::KgM2PerS => text("unit-kg-m2-per-s"),
            Self::J => text("unit-j"),
            Self::W => text("unit-w"),
            Self::N => text("unit-n"),
            Self::NM => text("unit-n-m"),
            Self::NMS => text("unit-n-m-s"),
            Self::NMPerKg => text("unit-n-m-per-kg"),
            Self::Degrees => text("unit-degrees"),
        }
    }
}

/// Turns as they are shown.
pub const TURNS: Unit = fixed(UnitSign::Turns, 2);

/// Angles whose unit is no choice of the user's, in degrees.
pub const DEGREES: Unit = fixed(UnitSign::Degrees, 0);

/// Torques.
pub const NEWTON_METRES: Unit = fixed(UnitSign::NM, 0);

/// Readouts whose unit is no choice of the user's.
pub const SECONDS: Unit = fixed(UnitSign::S, 2);
pub const INERTIA: Unit = fixed(UnitSign::KgM2, 2);
pub const MOMENTUM: Unit = fixed(UnitSign::KgM2PerS, 1);
pub const JOULES: Unit = fixed(UnitSign::J, 0);
pub const TENTHS_OF_JOULES: Unit = fixed(UnitSign::J, 1);
pub const WATTS: Unit = fixed(UnitSign::W, 0);
pub const NEWTONS: Unit = fixed(UnitSign::N, 0);

/// A unit that is no choice of the user's, for numbers that are in it already.
pub const fn fixed(sign: UnitSign, decimals: usize) -> Unit {
    Unit {
        si: 1.0,
        sign,
        decimals,
    }
}

/// Numbers in a unit.
pub trait UnitText {
    /// The unit as it stands behind a number.
    fn sign(&self) -> &'static str;

    /// The number alone, without a negative zero.
    fn number(&self, si: f64) -> String;

    /// Number and sign.
    fn text(&self, si: f64) -> String;

    /// The unit with as many decimals as it takes to show values that somebody may have typed just as they
    /// were typed, all of them alike; no more than usual where that would take too many.
    #[must_use]
    fn fine_enough_for(&self, values_si: &[f64]) -> Self;

    /// Number and sign of a value that is set, as it was typed.
    fn set_text(&self, si: f64) -> String
    where
        Self: Sized,
    {
        self.fine_enough_for(&[si]).text(si)
    }

    /// The number alone of a value that is set, as it was typed.
    fn set_number(&self, si: f64) -> String
    where
        Self: Sized,
    {
        self.fine_enough_for(&[si]).number(si)
    }
}

/// Decimals beyond the usual ones that a typed value is shown with at most: 24.125 cm, 110.125 rpm.
const MOST_MORE_DECIMALS: usize = 3;

/// What a value may be off by to count as typed with so many decimals, in the last of them: more than
/// rounding and a search make of it, and so little that a value nobody typed is hardly ever taken for one.
const AS_TYPED: f64 = 1e-5;

impl UnitText for Unit {
    fn sign(&self) -> &'static str {
        self.sign.text()
    }

    fn number(&self, si: f64) -> String {
        let shown = format!("{:.*}", self.decimals, self.from_si(si));
        let zero = shown.trim_start_matches(['-', '0', '.']).is_empty();
        with_decimal_sign(if zero {
            shown.trim_start_matches('-').to_owned()
        } else {
            shown
        })
    }

    fn fine_enough_for(&self, values_si: &[f64]) -> Self {
        let needed = |&si: &f64| {
            let most = self.decimals + MOST_MORE_DECIMALS;
            (self.decimals..=most).find(|&decimals| {
                let last = self.from_si(si) * 10.0_f64.powi(decimals as i32);
                (last - last.round()).abs() < AS_TYPED
            })
        };
        let all = values_si.iter().filter_map(needed);
        Self {
            decimals: all.fold(self.decimals, usize::max),
            ..*self
        }
    }

    fn text(&self, si: f64) -> String {
        let (number, sign) = (self.number(si), self.sign());
        // The sign of an angle stands at the number.
        if sign == "°" {
            number + sign
        } else {
            format!("{number} {sign}")
        }
    }
}
