//! Numbers as people type them: with a unit, or without.

use turns_aloft_scenario::parameter::{Kind, Parameter};
use turns_aloft_scenario::units::{LengthUnit, MassUnit, RateUnit, Unit, Units};
use turns_aloft_words::number;

use crate::number::plain;
use crate::unit::UnitText;

/// What a person may write for a unit beside its sign in the language spoken, and its SI size.
fn spellings(kind: Kind) -> Vec<(&'static str, f64)> {
    match kind {
        Kind::Length => {
            let inch = LengthUnit::In.unit().si;
            let inches = ["in", "inch", "inches", "\"", "″"].map(|spelling| (spelling, inch));
            [("mm", 0.001), ("ft", 12.0 * inch)]
                .into_iter()
                .chain(inches)
                .collect()
        }
        Kind::Mass => vec![("g", 0.001), ("lbs", MassUnit::Lb.unit().si)],
        Kind::Rate => {
            let [rpm, deg_per_s] = [RateUnit::Rpm, RateUnit::DegPerS].map(|unit| unit.unit().si);
            vec![
                ("rpm", rpm),
                ("1/min", rpm),
                ("deg/s", deg_per_s),
                ("°/s", deg_per_s),
            ]
        }
        Kind::Time => vec![("ms", 0.001)],
        Kind::Angle => ["deg", "°"]
            .map(|spelling| (spelling, Units::default().of(kind).si))
            .into(),
        Kind::Turns | Kind::Share => Vec::new(),
    }
}

/// The units of a kind that a user may choose.
fn units_of(kind: Kind) -> Vec<Unit> {
    match kind {
        Kind::Length => LengthUnit::ALL.map(LengthUnit::unit).into(),
        Kind::Mass => MassUnit::ALL.map(MassUnit::unit).into(),
        Kind::Rate => RateUnit::ALL.map(RateUnit::unit).into(),
        Kind::Time | Kind::Angle | Kind::Turns | Kind::Share => vec![Units::default().of(kind)],
    }
}

/// The SI size of a unit by what is written for it; none if it is no unit of this kind.
fn si_size(kind: Kind, written: &str) -> Option<f64> {
    let written = written.to_lowercase();
    let by_sign = units_of(kind).into_iter();
    let by_sign = by_sign.map(|unit| (unit.sign().to_lowercase(), unit.si));
    let spelt = spellings(kind).into_iter();
    by_sign
        .chain(spelt.map(|(spelling, si)| (spelling.to_owned(), si)))
        .find(|(spelling, _)| *spelling == written)
        .map(|(_, si)| si)
}

/// What a number that is typed may be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Admissible {
    pub kind: Kind,
    /// The least and the most, SI.
    pub range: [f64; 2],
}

impl Admissible {
    pub const fn of(parameter: Parameter) -> Self {
        Self {
            kind: parameter.kind(),
            range: parameter.row().range,
        }
    }

    fn admits(&self, si: f64) -> bool {
        (self.range[0]..=self.range[1]).contains(&si)
    }

    /// The value of a number that somebody typed, SI: in the unit behind it, or else in the user's. A
    /// length that is out of range in the user's unit is taken in metres or centimetres if it is in range
    /// there: 1.48 is a stature in metres, 148 one in centimetres. None if it is no number, or the unit is
    /// none of its kind.
    pub fn typed(&self, text: &str, units: &Units) -> Option<f64> {
        if let Some(si) = feet_and_inches(text).filter(|_| self.kind == Kind::Length) {
            return Some(si);
        }
        let (value, unit) = number_and_unit(text)?;
        if !unit.is_empty() {
            return si_size(self.kind, unit).map(|si| si * value);
        }
        let usual = units.of(self.kind).to_si(value);
        if self.admits(usual) {
            return Some(usual);
        }
        let metric = [LengthUnit::Cm, LengthUnit::M].map(|unit| unit.unit().to_si(value));
        let meant = metric.into_iter().find(|si| self.admits(*si));
        Some(meant.filter(|_| self.kind == Kind::Length).unwrap_or(usual))
    }

    /// What may have been meant by a number that is out of range as it was typed, the likeliest first: the
    /// same number in another unit, "168 cm (5.5 ft)", or with its decimal sign elsewhere, "148 cm".
    pub fn likely_meant(&self, text: &str, units: &Units) -> Vec<String> {
        let Some((value, unit)) = number_and_unit(text) else {
            return Vec::new();
        };
        let shown = units.of(self.kind);
        let typed_si = si_size(self.kind, unit).unwrap_or(shown.si);
        let mut found: Vec<(f64, String)> = Vec::new();
        if unit.is_empty() {
            let signs = units_of(self.kind)
                .into_iter()
                .map(|unit| (unit.sign(), unit.si));
            for (sign, si) in signs.chain(spellings(self.kind)) {
                let as_typed = format!("{} {sign}", plain(value));
                found.push((
                    si * value,
                    format!("{} ({as_typed})", shown.set_text(si * value)),
                ));
            }
        }
        for shift in [10.0, 0.1, 100.0, 0.01] {
            let si = shift * value * typed_si;
            found.push((si, shown.set_text(si)));
        }
        let mut meant: Vec<(f64, String)> = Vec::new();
        for (si, said) in found {
            let is_new = |(other, _): &(f64, String)| (other - si).abs() > 1e-3 * si.abs();
            if self.admits(si) && meant.iter().all(is_new) {
                meant.push((si, said));
            }
        }
        let said = meant.into_iter().map(|(_, said)| said);
        said.take(MOST_MEANT).collect()
    }
}

/// As many meanings are offered at most.
const MOST_MEANT: usize = 2;

/// Feet with inches behind them, as a length: "4 ft 10 in", "4'10\"", "5 ft".
fn feet_and_inches(text: &str) -> Option<f64> {
    let text = text.trim().to_lowercase();
    let (feet, inches) = text
        .split_once("ft")
        .or_else(|| text.split_once(['\'', '′']))?;
    let inches = inches.trim_end_matches(|c: char| c.is_alphabetic() || "\"″".contains(c));
    let inches = match inches.trim() {
        "" => 0.0,
        inches => number(inches)?,
    };
    let inch = LengthUnit::In.unit();
    Some(inch.to_si(12.0 * number(feet)? + inches))
}

/// A typed number, and what stands behind it. None if it is no number.
fn number_and_unit(text: &str) -> Option<(f64, &str)> {
    let text = text.trim();
    let end = text.find(|c: char| !(c.is_ascii_digit() || "+-−.,".contains(c)));
    let (plain, unit) = text.split_at(end.unwrap_or(text.len()));
    Some((number(plain)?, unit.trim()))
}

/// The value of a number of the jump that somebody typed, SI.
pub fn typed(text: &str, parameter: Parameter, units: &Units) -> Option<f64> {
    Admissible::of(parameter).typed(text, units)
}
