//! The numbers of a scenario, one row each: key, admissible range, what it is.
//!
//! The command's `--set`, the file's check and the page's sliders all read this one table.

use std::fmt;

use super::Scenario;
use super::complaint::complaint;
use super::jump::JUMP_TURNS;
use super::named::named;
use crate::say;
use crate::words::{Message, signed_as_spoken};

/// What a number measures; decides the units the user may choose.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    Length,
    Mass,
    Rate,
    Time,
    Angle,
    Turns,
    /// A share from 0 to 1.
    Share,
}

impl Kind {
    const fn si_sign(self) -> Option<Message> {
        match self {
            Self::Length => Some(Message("unit-m")),
            Self::Mass => Some(Message("unit-kg")),
            Self::Rate => Some(Message("unit-rad-per-s")),
            Self::Time => Some(Message("unit-s")),
            Self::Angle => Some(Message("unit-rad")),
            Self::Turns => Some(Message("unit-turns")),
            Self::Share => None,
        }
    }

    /// A number in the SI unit, as messages write it.
    pub fn si(self, number: f64) -> String {
        let number = plain(number);
        match self.si_sign() {
            Some(sign) => format!("{number} {}", sign.text()),
            None => number,
        }
    }
}

/// One settable number.
pub struct Key {
    pub key: &'static str,
    pub(crate) label: Message,
    inline: Message,
    about: Message,
    pub kind: Kind,
    pub least: f64,
    pub most: f64,
    pub get: fn(&Scenario) -> f64,
    set: fn(&mut Scenario, f64),
}

impl fmt::Debug for Key {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.key)
    }
}

impl PartialEq for Key {
    fn eq(&self, other: &Self) -> bool {
        self.key == other.key
    }
}

macro_rules! key {
    ($field:ident, $name:literal, $kind:ident, $least:literal ..= $most:literal) => {
        Key {
            key: stringify!($field),
            label: Message(concat!("key-", $name)),
            inline: Message(concat!("key-", $name, "-inline")),
            about: Message(concat!("key-", $name, "-about")),
            kind: Kind::$kind,
            least: $least,
            most: $most,
            get: |scenario| scenario.$field,
            set: |scenario, value| scenario.$field = value,
        }
    };
}

/// Every settable number, the five main ones first.
pub const KEYS: [Key; 17] = [
    key!(takeoff_rate_rad_s, "takeoff-rate-rad-s", Rate, 0.5..=25.0),
    key!(arm_tuck, "arm-tuck", Share, 0.0..=1.0),
    key!(leg_tuck, "leg-tuck", Share, 0.0..=1.0),
    key!(hand_mass_kg, "hand-mass-kg", Mass, 0.0..=2.5),
    key!(jump_height_m, "jump-height-m", Length, 0.1..=2.5),
    key!(stature_m, "stature-m", Length, 1.0..=2.1),
    key!(body_mass_kg, "body-mass-kg", Mass, 15.0..=130.0),
    key!(boot_mass_kg, "boot-mass-kg", Mass, 0.0..=2.5),
    key!(takeoff_openness, "takeoff-openness", Share, 0.0..=1.0),
    key!(lean_rad, "lean-rad", Angle, -0.35..=0.35),
    key!(pre_rotation_turns, "pre-rotation-turns", Turns, 0.0..=1.0),
    key!(arm_asymmetry, "arm-asymmetry", Share, 0.0..=1.0),
    key!(close_delay_s, "close-delay-s", Time, 0.0..=0.5),
    key!(close_time_s, "close-time-s", Time, 0.05..=0.8),
    key!(arm_lag_s, "arm-lag-s", Time, 0.0..=0.3),
    key!(open_lead_s, "open-lead-s", Time, 0.0..=0.6),
    key!(open_time_s, "open-time-s", Time, 0.05..=0.8),
];

/// How many of them, from the first, have a slider always in sight.
pub const MAIN: usize = 5;

/// The row of a key.
pub fn key(name: &str) -> Option<&'static Key> {
    KEYS.iter().find(|key| key.key == name)
}

/// A setting that was refused: one line naming the key, the value and what is admissible.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Refused(String);

impl Refused {
    pub(crate) fn new(text: impl Into<String>) -> Self {
        Self(text.into())
    }
}

impl fmt::Display for Refused {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl std::error::Error for Refused {}

named!(Key);

impl Key {
    /// Sets the number, or says why not.
    pub fn set(&self, scenario: &mut Scenario, value: f64) -> Result<(), Refused> {
        self.check(value)?;
        (self.set)(scenario, value);
        Ok(())
    }

    /// Sets the number, held inside the admissible range; returns what it was held at if it was.
    pub fn hold(&self, scenario: &mut Scenario, value: f64) -> Option<f64> {
        let held = value.clamp(self.least, self.most);
        (self.set)(scenario, held);
        (held != value).then_some(held)
    }

    /// Whether the number may be, or why not.
    pub fn check(&self, value: f64) -> Result<(), Refused> {
        if (self.least..=self.most).contains(&value) {
            return Ok(());
        }
        Err(Refused::new(say!(
            "number-out-of-range",
            key = self.key,
            value = plain(value),
            least = plain(self.least),
            most = self.kind.si(self.most)
        )))
    }
}

/// As people write it, where that is not hundreds of digits.
pub(crate) fn plain(value: f64) -> String {
    let plain = value.to_string();
    signed_as_spoken(if plain.len() > 24 {
        format!("{value:e}")
    } else {
        plain
    })
}

impl Scenario {
    /// Whether every number is in its range; the first that is not is named.
    pub fn check(&self) -> Result<(), Refused> {
        for key in &KEYS {
            key.check((key.get)(self))?;
        }
        if (JUMP_TURNS[0]..=JUMP_TURNS[1]).contains(&self.jump_turns) {
            return Ok(());
        }
        Err(Refused::new(say!(
            "number-out-of-range",
            key = "jump_turns",
            value = self.jump_turns,
            least = JUMP_TURNS[0],
            most = JUMP_TURNS[1]
        )))
    }

    /// Sets one key from text, as on the command line.
    pub fn set(&mut self, name: &str, text: &str) -> Result<(), Refused> {
        if let Some(key) = key(name) {
            let number = text.parse().ok().filter(|value: &f64| value.is_finite());
            let value = number.ok_or_else(|| {
                Refused::new(say!(
                    "number-not-a-number",
                    key = name,
                    value = text,
                    least = plain(key.least),
                    most = key.kind.si(key.most)
                ))
            })?;
            return key.set(self, value);
        }
        self.set_word(name, text)
    }

    /// Sets one of the keys that are not numbers, through the saved form itself.
    fn set_word(&mut self, name: &str, text: &str) -> Result<(), Refused> {
        let refuse =
            |why: serde_json::Error| Refused::new(format!("{name} = {text}: {}", complaint(&why)));
        let mut whole = serde_json::to_value(&*self).map_err(refuse)?;
        let Some(field) = whole.get_mut(name) else {
            let known: Vec<&str> = WORDS.into_iter().chain(KEYS.map(|key| key.key)).collect();
            return Err(Refused::new(say!(
                "key-unknown",
                key = name,
                value = text,
                known = known.join(", ")
            )));
        };
        *field = if field.is_number() {
            serde_json::from_str(text).unwrap_or_else(|_| text.into())
        } else {
            text.into()
        };
        let changed: Self = serde_json::from_value(whole).map_err(refuse)?;
        changed.check()?;
        *self = changed;
        Ok(())
    }
}

/// The keys that are not numbers with a range of their own in [`KEYS`].
const WORDS: [&str; 8] = [
    "name",
    "note",
    "jump",
    "jump_turns",
    "table",
    "ground",
    "turning",
    "hands_keep",
];
