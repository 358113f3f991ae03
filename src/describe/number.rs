//! Numbers and quoted values as messages have them.

use crate::Text;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_scenario::units::UnitSign;
use turns_aloft_words::with_decimal_sign;

const fn si_sign(kind: Kind) -> Option<UnitSign> {
    match kind {
        Kind::Length => Some(UnitSign::M),
        Kind::Mass => Some(UnitSign::Kg),
        Kind::Rate => Some(UnitSign::RadPerS),
        Kind::Time => Some(UnitSign::S),
        Kind::Angle => Some(UnitSign::Rad),
        Kind::Turns => Some(UnitSign::Turns),
        Kind::Share => None,
    }
}

/// A number in the SI unit.
pub fn si(kind: Kind, number: f64) -> String {
    let number = plain(number);
    match si_sign(kind) {
        Some(sign) => format!("{number} {}", sign.text()),
        None => number,
    }
}

/// As people write it, where that is not hundreds of digits.
pub fn plain(value: f64) -> String {
    let plain = value.to_string();
    with_decimal_sign(if plain.len() > 24 {
        format!("{value:e}")
    } else {
        plain
    })
}

/// A value as a message quotes it, whatever its length.
pub fn shown(value: &str) -> String {
    shortened(value, LONGEST_SHOWN).replace(char::is_control, " ")
}

/// Characters of a value in a message at most.
const LONGEST_SHOWN: usize = 40;

/// The first so many characters, with a sign that there were more.
pub fn shortened(text: &str, most: usize) -> String {
    let mut rest = text.chars();
    let mut first: String = rest.by_ref().take(most).collect();
    if rest.next().is_some() {
        first.push('\u{2026}');
    }
    first
}
