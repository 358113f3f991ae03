//! Setting an input from what somebody has written: the command's `--set`, and the entries of a file.

use serde_json::Value;

use crate::input::{Choice, Text};
use crate::led;
use crate::parameter::{BLANK, Parameter};
use crate::scenario::Scenario;
use crate::written::{NotAValue, turns_in_name};
use turns_aloft_physics::led_tucks::KnotsError;

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
    /// Knots of a jump led by hand that no body can be led by.
    Knots(KnotsError),
    /// Knots are not set from a text; they can be taken away.
    NotLed {
        written: String,
    },
    /// A number that has no part in a jump that was led by hand.
    NoPart {
        parameter: Parameter,
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

impl Choice {
    /// From what is written in a file.
    pub(super) fn read(self, scenario: &mut Scenario, written: &Value) -> Result<(), Refused> {
        self.put(scenario, written).map_err(|why| match why {
            NotAValue::NotJumpTurns => not_jump_turns(written),
            NotAValue::UnknownWord(known) => Refused::UnknownWord {
                choice: self,
                written: written.clone(),
                known,
            },
        })
    }
}

impl Text {
    /// From what is written in a file.
    pub(super) fn read(self, scenario: &mut Scenario, written: Value) -> Result<(), Refused> {
        match written {
            Value::String(text) => {
                *self.get_mut(scenario) = text;
                Ok(())
            }
            written => Err(Refused::NotAText {
                text: self,
                written,
            }),
        }
    }
}

fn not_jump_turns(written: &Value) -> Refused {
    Refused::NotJumpTurns {
        written: written.clone(),
    }
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
        let turns = self.jump_turns.into();
        (turns_in_name(&turns).map(drop)).map_err(|_| not_jump_turns(&turns))
    }

    /// Sets one input from text, as on the command line.
    pub fn set(&mut self, key: &str, text: &str) -> Result<(), Refused> {
        if let Some(one) = Text::named(key) {
            return self.set_text(one, text);
        }
        if key == led::KEY {
            return self.set_led(text);
        }
        match Choice::named(key) {
            Some(choice) => choice.read(self, &choice.written_as(text)),
            None => self.set_number(key, text),
        }
    }

    fn set_led(&mut self, text: &str) -> Result<(), Refused> {
        if text != led::NONE {
            let written = text.to_owned();
            return Err(Refused::NotLed { written });
        }
        self.led = None;
        Ok(())
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
        if !self.has_part(parameter) {
            let written = text.to_owned();
            return Err(Refused::NoPart { parameter, written });
        }
        let number = text.parse().ok().filter(|value: &f64| value.is_finite());
        parameter.set(self, number.ok_or_else(|| parameter.no_number(text))?)
    }
}
