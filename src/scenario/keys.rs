//! The numbers of a scenario, one row each: key, admissible range, what it is.
//!
//! The command's `--set`, the file's check and the page's sliders all read this one table.

use std::fmt;

use serde::Deserialize;
use serde::de::IntoDeserializer;
use serde_json::Value;

use super::jump::{JUMP_TURNS, JumpName};
use super::named::named;
use super::{HandsKeep, Scenario};
use crate::physics::plan::Turning;
use crate::physics::segments::SegmentTable;
use crate::say;
use crate::scenario::ground::Ground;
use crate::words::{Message, with_decimal_sign};

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

    fn no_number(&self, text: &str) -> Refused {
        Refused::new(say!(
            "number-not-a-number",
            key = self.key,
            value = shown(text),
            least = plain(self.least),
            most = self.kind.si(self.most)
        ))
    }
}

/// As people write it, where that is not hundreds of digits.
pub(crate) fn plain(value: f64) -> String {
    let plain = value.to_string();
    with_decimal_sign(if plain.len() > 24 {
        format!("{value:e}")
    } else {
        plain
    })
}

/// A value as a message quotes it, whatever its length.
pub(super) fn shown(value: &str) -> String {
    let mut rest = value.chars();
    let mut shown: String = rest.by_ref().take(LONGEST_SHOWN).collect();
    if rest.next().is_some() {
        shown.push('\u{2026}');
    }
    shown.replace(char::is_control, " ")
}

/// Characters of a value in a message at most.
const LONGEST_SHOWN: usize = 40;

/// One of a few words, or which they are.
fn word<'a, T: Deserialize<'a>>(key: &str, text: &'a str) -> Result<T, Refused> {
    T::deserialize(text.into_deserializer()).map_err(|NoWord(known)| {
        let known: Vec<String> = known.iter().map(|word| format!("`{word}`")).collect();
        Refused::new(say!(
            "word-unknown",
            key = key,
            value = shown(text),
            known = known.join(", ")
        ))
    })
}

/// A word that is none of those that there are.
#[derive(Debug)]
struct NoWord(&'static [&'static str]);

impl fmt::Display for NoWord {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0.join(", "))
    }
}

impl std::error::Error for NoWord {}

impl serde::de::Error for NoWord {
    fn custom<T: fmt::Display>(_: T) -> Self {
        Self(&[])
    }

    fn unknown_variant(_: &str, known: &'static [&'static str]) -> Self {
        Self(known)
    }
}

/// Turns in a jump's name.
fn turns_in_name(turns: Option<u64>, text: &str) -> Result<u8, Refused> {
    let [least, most] = JUMP_TURNS;
    turns
        .and_then(|turns| u8::try_from(turns).ok())
        .filter(|turns| (least..=most).contains(turns))
        .ok_or_else(|| {
            Refused::new(say!(
                "number-not-whole",
                key = "jump_turns",
                value = shown(text),
                least = least,
                most = most
            ))
        })
}

/// Whether an entry of a file is of the kind that its key has, or why not. Which entries there have
/// to be, and the numbers' ranges, are not looked at.
pub(super) fn check_entry(name: &str, entry: &Value) -> Result<(), Refused> {
    let written = match entry {
        Value::String(text) => text.clone(),
        Value::Number(number) => with_decimal_sign(number.to_string()),
        other => other.to_string(),
    };
    match name {
        "name" | "note" if !entry.is_string() => Err(Refused::new(say!(
            "text-not-a-text",
            key = name,
            value = shown(&written)
        ))),
        "jump" => word::<JumpName>(name, &written).map(drop),
        "jump_turns" => turns_in_name(entry.as_u64(), &written).map(drop),
        "table" => word::<SegmentTable>(name, &written).map(drop),
        "ground" => word::<Ground>(name, &written).map(drop),
        "turning" => word::<Turning>(name, &written).map(drop),
        "hands_keep" => word::<HandsKeep>(name, &written).map(drop),
        _ => match key(name) {
            Some(key) if !entry.is_number() => Err(key.no_number(&entry.to_string())),
            _ => Ok(()),
        },
    }
}

impl Scenario {
    /// Whether every number is in its range; the first that is not is named.
    pub fn check(&self) -> Result<(), Refused> {
        for key in &KEYS {
            key.check((key.get)(self))?;
        }
        let turns = self.jump_turns;
        turns_in_name(Some(turns.into()), &turns.to_string()).map(drop)
    }

    /// Sets one key from text, as on the command line.
    pub fn set(&mut self, name: &str, text: &str) -> Result<(), Refused> {
        match name {
            "name" => self.set_text(name, text, |of| &mut of.name)?,
            "note" => self.set_text(name, text, |of| &mut of.note)?,
            "jump" => self.jump = word(name, text)?,
            "jump_turns" => self.jump_turns = turns_in_name(text.parse().ok(), text)?,
            "table" => self.table = word(name, text)?,
            "ground" => self.ground = word(name, text)?,
            "turning" => self.turning = word(name, text)?,
            "hands_keep" => self.hands_keep = word(name, text)?,
            _ => return self.set_number(name, text),
        }
        Ok(())
    }

    fn set_text(
        &mut self,
        name: &str,
        text: &str,
        of: fn(&mut Self) -> &mut String,
    ) -> Result<(), Refused> {
        let before = std::mem::replace(of(self), text.to_owned());
        if self.fits_a_file() {
            return Ok(());
        }
        *of(self) = before;
        Err(Refused::new(say!(
            "text-too-long",
            key = name,
            value = shown(text)
        )))
    }

    fn set_number(&mut self, name: &str, text: &str) -> Result<(), Refused> {
        let Some(key) = key(name) else {
            let known: Vec<&str> = WORDS.into_iter().chain(KEYS.map(|key| key.key)).collect();
            return Err(Refused::new(say!(
                "key-unknown",
                key = shown(name),
                value = shown(text),
                known = known.join(", ")
            )));
        };
        let number = text.parse().ok().filter(|value: &f64| value.is_finite());
        key.set(self, number.ok_or_else(|| key.no_number(text))?)
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
