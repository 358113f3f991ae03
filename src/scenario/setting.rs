//! Setting an input from what somebody has written: the command's `--set`, and the entries of a file.

use std::fmt;

use serde::Deserialize;
use serde::de::IntoDeserializer;
use serde_json::Value;

use crate::input::{Choice, Text};
use crate::jump::JUMP_TURNS;
use crate::parameter::{BLANK, Parameter};
use crate::scenario::Scenario;

/// Why a setting was refused.
#[derive(Debug, Clone, PartialEq)]
pub enum Refused {
    OutOfRange {
        parameter: Parameter,
        value: f64,
    },
    NotANumber {
        parameter: Parameter,
        written: String,
    },
    /// Turns in a jump's name that are no whole number from the least to the most.
    NotJumpTurns {
        written: Value,
    },
    /// None of the words that there are.
    UnknownWord {
        choice: Choice,
        written: Value,
        known: &'static [&'static str],
    },
    NotAText {
        text: Text,
        written: Value,
    },
    /// A file would not hold it.
    TooLong {
        text: Text,
        written: String,
    },
    /// There is no such input.
    UnknownKey {
        key: String,
        written: String,
    },
}

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
        Err(Refused::OutOfRange {
            parameter: self,
            value,
        })
    }

    /// From what is written in a file; its range is not looked at.
    pub(super) fn read(self, scenario: &mut Scenario, written: &Value) -> Result<(), Refused> {
        let number = written.as_f64();
        let number = number.ok_or_else(|| self.no_number(&written.to_string()))?;
        self.put(scenario, number);
        Ok(())
    }

    fn no_number(self, written: &str) -> Refused {
        Refused::NotANumber {
            parameter: self,
            written: written.to_owned(),
        }
    }
}

/// One of a few words, or which they are.
pub(super) fn word<T>(choice: Choice, written: &Value) -> Result<T, Refused>
where
    T: for<'a> Deserialize<'a>,
{
    // What is no text is none of the words either.
    let text = written.as_str().unwrap_or_default();
    T::deserialize(text.into_deserializer()).map_err(|NoWord(known)| Refused::UnknownWord {
        choice,
        written: written.clone(),
        known,
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
pub(super) fn turns_in_name(written: &Value) -> Result<u8, Refused> {
    let [least, most] = JUMP_TURNS;
    let turns = written.as_u64().and_then(|turns| u8::try_from(turns).ok());
    turns
        .filter(|turns| (least..=most).contains(turns))
        .ok_or_else(|| Refused::NotJumpTurns {
            written: written.clone(),
        })
}

/// Whether an entry of a file is of the kind that its key has, or why not. Which entries there have
/// to be, and the numbers' ranges, are not looked at.
pub(super) fn check_entry(key: &str, entry: &Value) -> Result<(), Refused> {
    if let Some(text) = Text::named(key).filter(|_| !entry.is_string()) {
        let written = entry.clone();
        return Err(Refused::NotAText { text, written });
    }
    if let Some(choice) = Choice::named(key) {
        return choice.read(&mut BLANK.clone(), entry);
    }
    match Parameter::named(key) {
        Some(parameter) if !entry.is_number() => Err(parameter.no_number(&entry.to_string())),
        // That an entry is unknown is said of the whole file.
        Some(_) | None => Ok(()),
    }
}

impl Scenario {
    /// Whether every number is in its range; the first that is not is named.
    pub fn check(&self) -> Result<(), Refused> {
        for parameter in Parameter::ALL {
            parameter.check(parameter.get(self))?;
        }
        turns_in_name(&self.jump_turns.into()).map(drop)
    }

    /// Sets one input from text, as on the command line.
    pub fn set(&mut self, key: &str, text: &str) -> Result<(), Refused> {
        if let Some(one) = Text::named(key) {
            return self.set_text(one, text);
        }
        match Choice::named(key) {
            Some(choice) => choice.read(self, &choice.written_as(text)),
            None => self.set_number(key, text),
        }
    }

    fn set_text(&mut self, one: Text, text: &str) -> Result<(), Refused> {
        let before = std::mem::replace(one.get_mut(self), text.to_owned());
        if self.fits_a_file() {
            return Ok(());
        }
        *one.get_mut(self) = before;
        Err(Refused::TooLong {
            text: one,
            written: text.to_owned(),
        })
    }

    fn set_number(&mut self, key: &str, text: &str) -> Result<(), Refused> {
        let parameter = Parameter::named(key).ok_or_else(|| Refused::UnknownKey {
            key: key.to_owned(),
            written: text.to_owned(),
        })?;
        let number = text.parse().ok().filter(|value: &f64| value.is_finite());
        parameter.set(self, number.ok_or_else(|| parameter.no_number(text))?)
    }
}
