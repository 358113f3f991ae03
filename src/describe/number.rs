//! Numbers and quoted values as messages have them.

use crate::scenario::parameter::Kind;
use crate::words::{Message, with_decimal_sign};

const fn si_sign(kind: Kind) -> Option<Message> {
    match kind {
        Kind::Length => Some(Message("unit-m")),
        Kind::Mass => Some(Message("unit-kg")),
        Kind::Rate => Some(Message("unit-rad-per-s")),
        Kind::Time => Some(Message("unit-s")),
        Kind::Angle => Some(Message("unit-rad")),
        Kind::Turns => Some(Message("unit-turns")),
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
    let mut rest = value.chars();
    let mut shown: String = rest.by_ref().take(LONGEST_SHOWN).collect();
    if rest.next().is_some() {
        shown.push('\u{2026}');
    }
    shown.replace(char::is_control, " ")
}

/// Characters of a value in a message at most.
const LONGEST_SHOWN: usize = 40;
