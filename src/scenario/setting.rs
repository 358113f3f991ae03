//! Setting an input from what somebody has written: the command's `--set`, and the entries of a file.

use std::fmt;

use serde::Deserialize;
use serde::de::IntoDeserializer;
use serde_json::Value;

use super::Scenario;
use super::input::{Choice, Text};
use super::jump::JUMP_TURNS;
use super::parameter::{BLANK, Parameter};
use crate::describe::number::{plain, shown, si};
use crate::say;
use crate::words::with_decimal_sign;

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

impl Parameter {
    /// Sets the number, or says why not.
    pub fn set(self, scenario: &mut Scenario, value: f64) -> Result<(), Refused> {
        self.check(value)?;
        self.hold(scenario, value);
        Ok(())
    }

    /// Whether the number may be, or why not.
    pub fn check(self, value: f64) -> Result<(), Refused> {
        if (self.least()..=self.most()).contains(&value) {
            return Ok(());
        }
        Err(Refused::new(say!(
            "number-out-of-range",
            key = self.key(),
            value = plain(value),
            least = plain(self.least()),
            most = si(self.kind(), self.most())
        )))
    }

    fn no_number(self, text: &str) -> Refused {
        Refused::new(say!(
            "number-not-a-number",
            key = self.key(),
            value = shown(text),
            least = plain(self.least()),
            most = si(self.kind(), self.most())
        ))
    }
}

/// One of a few words, or which they are.
pub(super) fn word<'a, T: Deserialize<'a>>(key: &str, text: &'a str) -> Result<T, Refused> {
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
pub(super) fn turns_in_name(turns: Option<u64>, text: &str) -> Result<u8, Refused> {
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
    if Text::named(name).is_some() && !entry.is_string() {
        return Err(Refused::new(say!(
            "text-not-a-text",
            key = name,
            value = shown(&written)
        )));
    }
    if let Some(choice) = Choice::named(name) {
        return match choice {
            // A whole number, not a word.
            Choice::JumpTurns => turns_in_name(entry.as_u64(), &written).map(drop),
            Choice::Jump | Choice::Table | Choice::Ground | Choice::Turning | Choice::HandsKeep => {
                choice.read(&mut BLANK.clone(), &written)
            }
        };
    }
    match Parameter::named(name) {
        Some(parameter) if !entry.is_number() => Err(parameter.no_number(&entry.to_string())),
        // That an entry is unknown is for the reader of the whole file to say.
        Some(_) | None => Ok(()),
    }
}

impl Scenario {
    /// Whether every number is in its range; the first that is not is named.
    pub fn check(&self) -> Result<(), Refused> {
        for parameter in Parameter::ALL {
            parameter.check(parameter.get(self))?;
        }
        let turns = self.jump_turns;
        turns_in_name(Some(turns.into()), &turns.to_string()).map(drop)
    }

    /// Sets one input from text, as on the command line.
    pub fn set(&mut self, key: &str, text: &str) -> Result<(), Refused> {
        if let Some(one) = Text::named(key) {
            return self.set_text(one, text);
        }
        match Choice::named(key) {
            Some(choice) => choice.read(self, text),
            None => self.set_number(key, text),
        }
    }

    fn set_text(&mut self, one: Text, text: &str) -> Result<(), Refused> {
        let before = std::mem::replace(one.get_mut(self), text.to_owned());
        if self.fits_a_file() {
            return Ok(());
        }
        *one.get_mut(self) = before;
        Err(Refused::new(say!(
            "text-too-long",
            key = one.key(),
            value = shown(text)
        )))
    }

    fn set_number(&mut self, name: &str, text: &str) -> Result<(), Refused> {
        let Some(parameter) = Parameter::named(name) else {
            let texts = Text::ALL.map(Text::key).into_iter();
            let choices = Choice::ALL.map(Choice::key);
            let numbers = Parameter::ALL.map(Parameter::key);
            let known: Vec<&str> = texts.chain(choices).chain(numbers).collect();
            return Err(Refused::new(say!(
                "key-unknown",
                key = shown(name),
                value = shown(text),
                known = known.join(", ")
            )));
        };
        let number = text.parse().ok().filter(|value: &f64| value.is_finite());
        parameter.set(self, number.ok_or_else(|| parameter.no_number(text))?)
    }
}
