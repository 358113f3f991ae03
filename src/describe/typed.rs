//! Numbers as people type them: with a unit, or without.

use turns_aloft_scenario::parameter::{Kind, Parameter};
use turns_aloft_scenario::units::{LengthUnit, MassUnit, RateUnit, Unit, Units};
use turns_aloft_words::number;

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

/// The value of a number that somebody typed, SI: in the unit behind it, or else in the user's. A length
/// that is out of range in the user's unit is taken in metres or centimetres if it is in range there: 1.48
/// is a stature in metres, 148 one in centimetres. None if it is no number, or the unit is none of its kind.
pub fn typed(text: &str, parameter: Parameter, units: &Units) -> Option<f64> {
    let text = text.trim();
    let end = text.find(|c: char| !(c.is_ascii_digit() || "+-−.,".contains(c)));
    let (plain, unit) = text.split_at(end.unwrap_or(text.len()));
    let value = number(plain)?;
    let unit = unit.trim();
    if !unit.is_empty() {
        return si_size(parameter.kind(), unit).map(|si| si * value);
    }
    let in_range = |si: f64| (parameter.least()..=parameter.most()).contains(&si);
    let usual = units.of(parameter.kind()).to_si(value);
    if in_range(usual) {
        return Some(usual);
    }
    let metric = [LengthUnit::Cm, LengthUnit::M].map(|unit| unit.unit().to_si(value));
    let meant = metric.into_iter().find(|si| in_range(*si));
    Some(
        meant
            .filter(|_| parameter.kind() == Kind::Length)
            .unwrap_or(usual),
    )
}
