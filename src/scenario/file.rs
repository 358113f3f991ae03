//! The saved form of a scenario: a small, versioned JSON file.

use serde::Serialize;
use serde_json::Value;

use crate::fault::{Entries, Expected, Fault, NotJson};
use crate::input::{Choice, Text};
use crate::led;
use crate::parameter::{BLANK, Parameter};
use crate::reading::{NotText, Read, read};
use crate::scenario::Scenario;
use crate::setting::{Refused, check_entry};
use turns_aloft_physics::led_tucks::{Knot, LedTucks};

/// What says in a file that it is a scenario, and where the scenario is.
const MARK: &str = "turns_aloft_scenario";
const SCENARIO: &str = "scenario";

/// Newest version that is read, written for jumps that were led by hand; all others are written in version 2.
/// Version 1 has the same fields as that and is read for ever.
pub const VERSION: u64 = 3;

/// First version whose jumps were flown with the body as it is now: limbs that have a thickness.
pub const PRESENT_BODY: u64 = 2;

/// A scenario takes well under a kilobyte; anything this large is something else.
pub const LARGEST_BYTES: usize = 100_000;

/// Room in a file for all but name and note, whatever the numbers are.
const NUMBERS_BYTES: usize = 2_000;

/// A scenario as it stands in a file, alone or among others.
#[derive(Debug, Serialize)]
pub struct Saved<T> {
    turns_aloft_scenario: u64,
    scenario: T,
}

/// What was read, and how old it is.
#[derive(Debug, Clone, PartialEq)]
pub struct Opened<T> {
    pub read: T,
    /// Saved before the body was refined: its turns may have been others then.
    pub earlier_body: bool,
}

/// Why a file was not opened.
#[derive(Debug, Clone, PartialEq)]
pub enum Unreadable {
    TooLarge,
    NotText(NotText),
    NotJson(NotJson),
    NotAScenario,
    Newer(u64),
    Broken(Fault),
    OutOfRange(Refused),
}

impl Scenario {
    /// As it is written, alone or among others.
    pub const fn saved(&self) -> Saved<&Self> {
        Saved {
            turns_aloft_scenario: if self.led.is_some() {
                VERSION
            } else {
                PRESENT_BODY
            },
            scenario: self,
        }
    }

    /// Whether name and note are short enough for a file, so that it can be read back whatever is
    /// done to the numbers.
    pub fn fits_a_file(&self) -> bool {
        let texts = serde_json::to_string(&[&self.name, &self.note])
            .expect("texts hold nothing that JSON cannot say");
        let knots = if self.led.is_some() { led::BYTES } else { 0 };
        texts.len() + NUMBERS_BYTES + knots <= LARGEST_BYTES
    }

    /// The file's text.
    pub fn to_file(&self) -> String {
        let mut text = serde_json::to_string_pretty(&self.saved())
            .expect("a scenario holds nothing that JSON cannot say");
        text.push('\n');
        text
    }

    /// Reads a file's text, whatever its age.
    pub fn from_file(text: &str) -> Result<Self, Unreadable> {
        Self::open_file(text).map(|opened| opened.read)
    }

    /// Reads a file's text, and how old it is.
    pub fn open_file(text: &str) -> Result<Opened<Self>, Unreadable> {
        if text.len() > LARGEST_BYTES {
            return Err(Unreadable::TooLarge);
        }
        let Read { value, twice } = read(text).map_err(Unreadable::NotJson)?;
        let opened = Self::from_saved(value)?;
        match twice {
            Some(twice) => Err(Unreadable::Broken(twice)),
            None => Ok(opened),
        }
    }

    /// Reads what [`Saved`] wrote.
    pub fn from_saved(value: Value) -> Result<Opened<Self>, Unreadable> {
        let version = value
            .get(MARK)
            .and_then(Value::as_u64)
            .ok_or(Unreadable::NotAScenario)?;
        if version > VERSION {
            return Err(Unreadable::Newer(version));
        }
        if version == 0 {
            return Err(Unreadable::NotAScenario);
        }
        if let Some(entries) = value.get(SCENARIO).and_then(Value::as_object) {
            for (key, entry) in entries {
                check_entry(key, entry).map_err(Unreadable::OutOfRange)?;
            }
        }
        let mut saved = Entries::of(MARK, value, &[MARK, SCENARIO]).map_err(Unreadable::Broken)?;
        let scenario = saved.take(SCENARIO).map_err(Unreadable::Broken)?;
        let scenario = Self::from_entries(scenario)?;
        scenario.check().map_err(Unreadable::OutOfRange)?;
        if !scenario.fits_a_file() {
            return Err(Unreadable::TooLarge);
        }
        Ok(Opened {
            read: scenario,
            earlier_body: version < PRESENT_BODY,
        })
    }

    /// Reads the entries of a scenario, each of which is of the kind that it has to be; ranges are not
    /// looked at.
    fn from_entries(entries: Value) -> Result<Self, Unreadable> {
        let texts = Text::ALL.map(Text::key).into_iter();
        let choices = Choice::ALL.map(Choice::key);
        let numbers = Parameter::ALL.map(Parameter::key);
        let needed: Vec<&str> = texts.chain(choices).chain(numbers).collect();
        let mut entries = Entries::with_optional(SCENARIO, entries, &needed, &[led::KEY])
            .map_err(Unreadable::Broken)?;
        let mut scenario = BLANK;
        for text in Text::ALL {
            let entry = entries.take(text.key()).map_err(Unreadable::Broken)?;
            text.read(&mut scenario, entry)
                .map_err(Unreadable::OutOfRange)?;
        }
        for choice in Choice::ALL {
            let entry = entries.take(choice.key()).map_err(Unreadable::Broken)?;
            choice
                .read(&mut scenario, &entry)
                .map_err(Unreadable::OutOfRange)?;
        }
        for parameter in Parameter::ALL {
            let entry = entries.take(parameter.key()).map_err(Unreadable::Broken)?;
            parameter
                .read(&mut scenario, &entry)
                .map_err(Unreadable::OutOfRange)?;
        }
        scenario.led = entries.take_if_there(led::KEY).map(led_tucks).transpose()?;
        Ok(scenario)
    }

    /// A name for the file: the scenario's own, in letters every file system takes.
    pub fn file_name(&self) -> String {
        let words: Vec<String> = self
            .name
            .to_lowercase()
            .split(|c: char| !c.is_ascii_alphanumeric())
            .filter(|word| !word.is_empty())
            .map(str::to_owned)
            .collect();
        let stem = if words.is_empty() {
            "jump".to_owned()
        } else {
            words.join("-")
        };
        format!("{stem}.aloft.json")
    }
}

const KNOT: [&str; 3] = ["time_s", "arms", "legs"];

/// How a jump was led by hand.
fn led_tucks(written: Value) -> Result<LedTucks, Unreadable> {
    let broken = |why| Unreadable::Broken(why);
    let Value::Array(list) = written else {
        let expected = Expected::List;
        return Err(broken(Fault::WrongKind {
            key: led::KEY,
            expected,
        }));
    };
    let knots: Result<Vec<Knot>, Fault> = list.into_iter().map(knot).collect();
    LedTucks::new(&knots.map_err(broken)?)
        .map_err(|why| Unreadable::OutOfRange(Refused::Knots(why)))
}

fn knot(written: Value) -> Result<Knot, Fault> {
    let mut entries = Entries::of(led::KEY, written, &KNOT)?;
    let mut number = |key: &'static str| {
        let expected = Expected::Number;
        let number = entries.take(key)?.as_f64();
        number.ok_or(Fault::WrongKind { key, expected })
    };
    let [time_s, arms, legs] = KNOT.map(&mut number);
    Ok(Knot {
        time_s: time_s?,
        arms: arms?,
        legs: legs?,
    })
}
