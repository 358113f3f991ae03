//! The values of inputs that are one of a few, read from what is written in a file.

use std::fmt;

use serde::Deserialize;
use serde::de::IntoDeserializer;
use serde_json::Value;

use crate::jump::JUMP_TURNS;

/// Why something written is not a value of an input.
#[derive(Debug)]
pub(crate) enum NotAValue {
    /// Turns in a jump's name that are no whole number from the least to the most.
    NotJumpTurns,
    /// None of these words.
    UnknownWord(&'static [&'static str]),
}

impl fmt::Display for NotAValue {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Debug::fmt(self, f)
    }
}

impl std::error::Error for NotAValue {}

impl serde::de::Error for NotAValue {
    fn custom<T: fmt::Display>(_: T) -> Self {
        Self::UnknownWord(&[])
    }

    fn unknown_variant(_: &str, known: &'static [&'static str]) -> Self {
        Self::UnknownWord(known)
    }
}

/// One of a few words, or which they are.
pub(crate) fn word<T>(written: &Value) -> Result<T, NotAValue>
where
    T: for<'a> Deserialize<'a>,
{
    // What is no text is none of the words either.
    T::deserialize(written.as_str().unwrap_or_default().into_deserializer())
}

/// Turns in a jump's name.
pub(crate) fn turns_in_name(written: &Value) -> Result<u8, NotAValue> {
    let [least, most] = JUMP_TURNS;
    let turns = written.as_u64().and_then(|turns| u8::try_from(turns).ok());
    turns
        .filter(|turns| (least..=most).contains(turns))
        .ok_or(NotAValue::NotJumpTurns)
}
