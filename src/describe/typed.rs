//! Numbers as people type them: with a unit, or without.

use turns_aloft_scenario::parameter::{Kind, Parameter};
use turns_aloft_scenario::units::{LengthUnit, MassUnit, RateUnit, Unit, Units};
use turns_aloft_words::number;

use crate::unit::UnitText;

/// What a person may write for a unit beside its sign in the language spoken: the kind of number, the
/// spelling, and the SI size. Inch, foot and pound are exact by definition (1959).
const SPELLINGS: [(Kind, &str, f64); 16] = [
    (Kind::Length, "mm", 0.001),
    (Kind::Length, "in", 0.0254),
    (Kind::Length, "inch", 0.0254),
    (Kind::Length, "inches", 0.0254),
    (Kind::Length, "\"", 0.0254),
    (Kind::Length, "″", 0.0254),
    (Kind::Length, "ft", 0.3048),
    (Kind::Mass, "g", 0.001),
    (Kind::Mass, "lbs", 0.453_592_37),
    (Kind::Rate, "rpm", std::f64::consts::TAU / 60.0),
    (Kind::Rate, "1/min", std::f64::consts::TAU / 60.0),
    (Kind::Rate, "deg/s", std::f64::consts::PI / 180.0),
    (Kind::Rate, "°/s", std::f64::consts::PI / 180.0),
    (Kind::Time, "ms", 0.001),
    (Kind::Angle, "deg", std::f64::consts::PI / 180.0),
    (Kind::Angle, "°", std::f64::consts::PI / 180.0),
];

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
    let spelt = SPELLINGS.into_iter().filter(|(of, ..)| *of == kind);
    by_sign
        .chain(spelt.map(|(_, spelling, si)| (spelling.to_owned(), si)))
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
