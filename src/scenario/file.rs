//! The saved form of a scenario: a small, versioned JSON file.

use std::fmt;

use serde::{Deserialize, Serialize};
use serde_json::Value;

use super::Scenario;
use super::parse_error::parse_error;
use super::reading::{NotText, Read, read};
use super::setting::{Refused, check_entry};
use crate::say;
use crate::words::text;

/// Version written by this build. Version 1 has the same fields and is read for ever.
pub const VERSION: u64 = 2;

/// First version whose jumps were flown with the body as it is now: limbs that have a thickness.
const PRESENT_BODY: u64 = 2;

/// A scenario takes well under a kilobyte; anything this large is something else.
pub const LARGEST_BYTES: usize = 100_000;

/// Room in a file for all but name and note, whatever the numbers are.
const NUMBERS_BYTES: usize = 2_000;

/// A scenario as it stands in a file, alone or among others.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Saved<T> {
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

/// Why a file was not opened: one sentence that says what is wrong and what to do.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Unreadable {
    TooLarge,
    NotText(NotText),
    NotJson(String),
    NotAScenario,
    Newer(u64),
    Broken(String),
    OutOfRange(Refused),
}

impl fmt::Display for Unreadable {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&match self {
            Self::TooLarge => text("file-too-large").to_owned(),
            Self::NotText(why) => why.to_string(),
            Self::NotJson(why) => say!("file-not-json", why = why.as_str()),
            Self::NotAScenario => text("file-no-scenario").to_owned(),
            Self::Newer(version) => say!("file-newer", version = *version, known = VERSION),
            Self::Broken(why) => say!("file-broken", why = why.as_str()),
            Self::OutOfRange(why) => say!("file-out-of-range", why = why.to_string()),
        })
    }
}

impl std::error::Error for Unreadable {}

impl Scenario {
    pub(crate) const fn saved(&self) -> Saved<&Self> {
        Saved {
            turns_aloft_scenario: VERSION,
            scenario: self,
        }
    }

    /// Whether name and note are short enough for a file, so that it can be read back whatever is
    /// done to the numbers.
    pub(crate) fn fits_a_file(&self) -> bool {
        let texts = serde_json::to_string(&[&self.name, &self.note])
            .expect("texts hold nothing that JSON cannot say");
        texts.len() + NUMBERS_BYTES <= LARGEST_BYTES
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
        let Read { value, twice } =
            read(text).map_err(|why| Unreadable::NotJson(parse_error(&why)))?;
        let opened = Self::from_saved(value)?;
        match twice {
            Some(twice) => Err(Unreadable::Broken(twice)),
            None => Ok(opened),
        }
    }

    /// Reads what [`Saved`] wrote.
    pub(crate) fn from_saved(value: Value) -> Result<Opened<Self>, Unreadable> {
        let version = value
            .get("turns_aloft_scenario")
            .and_then(Value::as_u64)
            .ok_or(Unreadable::NotAScenario)?;
        if version > VERSION {
            return Err(Unreadable::Newer(version));
        }
        if version == 0 {
            return Err(Unreadable::NotAScenario);
        }
        if let Some(entries) = value.get("scenario").and_then(Value::as_object) {
            for (name, entry) in entries {
                check_entry(name, entry).map_err(Unreadable::OutOfRange)?;
            }
        }
        let saved: Saved<Self> =
            serde_json::from_value(value).map_err(|why| Unreadable::Broken(parse_error(&why)))?;
        saved.scenario.check().map_err(Unreadable::OutOfRange)?;
        if !saved.scenario.fits_a_file() {
            return Err(Unreadable::TooLarge);
        }
        Ok(Opened {
            read: saved.scenario,
            earlier_body: version < PRESENT_BODY,
        })
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
