//! How a file is read: its bytes as text, and the text as JSON in which nothing stands twice.

use std::cell::RefCell;
use std::collections::BTreeSet;
use std::fmt;

use serde::Deserializer;
use serde::de::{DeserializeSeed, Error, MapAccess, SeqAccess, Visitor};
use serde_json::Value;

use crate::fault::{Fault, NotJson, Place};

/// The byte-order mark that some programs put before a text. Whoever reads JSON may pass over it
/// (RFC 8259, section 8.1).
const MARK: char = '\u{feff}';

/// Why bytes are no text.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NotText {
    Utf16,
    Other,
}

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
pub fn unmarked(text: &str) -> &str {
    text.strip_prefix(MARK).unwrap_or(text)
}

/// What stands in a text.
pub struct Read {
    pub value: Value,
    /// The first entry that stands twice in one object; `value` has the last of both.
    pub twice: Option<Fault>,
}

/// Reads a text as JSON.
pub fn read(text: &str) -> Result<Read, NotJson> {
    let text = unmarked(text);
    let value = serde_json::from_str(text).map_err(|why| NotJson::of(&why))?;
    Ok(Read {
        value,
        twice: twice(text),
    })
}

/// The first entry that stands twice in one object of a text that is JSON.
fn twice(text: &str) -> Option<Fault> {
    let found = RefCell::default();
    let mut json = serde_json::Deserializer::from_str(text);
    let why = Once(&found).deserialize(&mut json).err()?;
    Some(Fault::Twice {
        key: found.take()?,
        at: Place::of(&why),
    })
}

/// JSON in which no object has an entry twice; else the key of that entry is put there.
#[derive(Clone, Copy)]
struct Once<'a>(&'a RefCell<Option<String>>);

impl<'de> DeserializeSeed<'de> for Once<'_> {
    type Value = ();

    fn deserialize<D: Deserializer<'de>>(self, of: D) -> Result<(), D::Error> {
        of.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Once<'_> {
    type Value = ();

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("anything")
    }

    fn visit_unit<E>(self) -> Result<(), E> {
        Ok(())
    }

    fn visit_bool<E>(self, _: bool) -> Result<(), E> {
        Ok(())
    }

    fn visit_i64<E>(self, _: i64) -> Result<(), E> {
        Ok(())
    }

    fn visit_u64<E>(self, _: u64) -> Result<(), E> {
        Ok(())
    }

    fn visit_f64<E>(self, _: f64) -> Result<(), E> {
        Ok(())
    }

    fn visit_str<E>(self, _: &str) -> Result<(), E> {
        Ok(())
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<(), A::Error> {
        while items.next_element_seed(self)?.is_some() {}
        Ok(())
    }

    fn visit_map<A: MapAccess<'de>>(self, mut entries: A) -> Result<(), A::Error> {
        let mut keys = BTreeSet::new();
        while let Some(key) = entries.next_key::<String>()? {
            if keys.contains(&key) {
                self.0.replace(Some(key));
                return Err(A::Error::custom("an entry stands twice"));
            }
            keys.insert(key);
            entries.next_value_seed(self)?;
        }
        Ok(())
    }
}
