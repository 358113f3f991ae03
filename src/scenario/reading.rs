//! How a file is read: its bytes as text, and the text as JSON in which nothing stands twice.

use std::collections::BTreeSet;
use std::fmt;

use serde::de::{Error, MapAccess, SeqAccess, Visitor};
use serde::{Deserialize, Deserializer};
use serde_json::Value;

use super::parse_error::parse_error;
use crate::words::text;

/// The byte-order mark that some programs put before a text. Whoever reads JSON may pass over it
/// (RFC 8259, section 8.1).
const MARK: char = '\u{feff}';

/// Why bytes are no text: one sentence that says what is wrong and what to do.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NotText {
    Utf16,
    Other,
}

impl fmt::Display for NotText {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Utf16 => text("file-utf-16"),
            Self::Other => text("file-not-text"),
        })
    }
}

impl std::error::Error for NotText {}

/// The text of a file.
pub fn text_of(bytes: Vec<u8>) -> Result<String, NotText> {
    // With a byte-order mark, or without: one of JSON's first two bytes is 0 then.
    let utf_16 = match bytes[..] {
        [0xff, 0xfe, ..] | [0xfe, 0xff, ..] => true,
        [one, other, ..] => (one == 0) != (other == 0),
        _ => false,
    };
    if utf_16 {
        return Err(NotText::Utf16);
    }
    String::from_utf8(bytes).map_err(|_| NotText::Other)
}

/// A text without its byte-order mark.
pub(crate) fn unmarked(text: &str) -> &str {
    text.strip_prefix(MARK).unwrap_or(text)
}

/// What stands in a text.
pub(crate) struct Read {
    pub value: Value,
    /// A complaint of the first entry that stands twice in one object: which of both was meant
    /// nobody can say (RFC 8259, section 4), and `value` has the last.
    pub twice: Option<String>,
}

/// Reads a text as JSON.
pub(crate) fn read(text: &str) -> Result<Read, serde_json::Error> {
    let text = unmarked(text);
    let value = serde_json::from_str(text)?;
    let once: Result<Once, _> = serde_json::from_str(text);
    Ok(Read {
        value,
        twice: once.err().map(|why| parse_error(&why)),
    })
}

/// JSON in which no object has an entry twice.
struct Once;

impl<'de> Deserialize<'de> for Once {
    fn deserialize<D: Deserializer<'de>>(of: D) -> Result<Self, D::Error> {
        of.deserialize_any(Self)
    }
}

impl<'de> Visitor<'de> for Once {
    type Value = Self;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("anything")
    }

    fn visit_unit<E>(self) -> Result<Self, E> {
        Ok(self)
    }

    fn visit_bool<E>(self, _: bool) -> Result<Self, E> {
        Ok(self)
    }

    fn visit_i64<E>(self, _: i64) -> Result<Self, E> {
        Ok(self)
    }

    fn visit_u64<E>(self, _: u64) -> Result<Self, E> {
        Ok(self)
    }

    fn visit_f64<E>(self, _: f64) -> Result<Self, E> {
        Ok(self)
    }

    fn visit_str<E>(self, _: &str) -> Result<Self, E> {
        Ok(self)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Self, A::Error> {
        while items.next_element::<Self>()?.is_some() {}
        Ok(self)
    }

    fn visit_map<A: MapAccess<'de>>(self, mut entries: A) -> Result<Self, A::Error> {
        let mut names = BTreeSet::new();
        while let Some(name) = entries.next_key::<String>()? {
            if names.contains(&name) {
                return Err(A::Error::custom(format_args!("duplicate field `{name}`")));
            }
            names.insert(name);
            entries.next_value::<Self>()?;
        }
        Ok(self)
    }
}
