//! What can be wrong in a file of JSON.

use serde_json::error::Category;
use serde_json::{Map, Value};

/// Where in a text, both counted from 1.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Place {
    pub line: usize,
    pub column: usize,
}

impl Place {
    pub(super) fn of(why: &serde_json::Error) -> Self {
        Self {
            line: why.line(),
            column: why.column(),
        }
    }
}

/// Why a text is no JSON, and where that shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NotJson {
    /// It ends before it is complete.
    EndsEarly(Place),
    /// Something stands there that cannot.
    Malformed(Place),
}

impl NotJson {
    pub(super) fn of(why: &serde_json::Error) -> Self {
        match why.classify() {
            Category::Eof => Self::EndsEarly(Place::of(why)),
            Category::Syntax | Category::Data | Category::Io => Self::Malformed(Place::of(why)),
        }
    }
}

/// What is wrong with the entries of JSON that is in order as such.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Fault {
    /// An entry that has to be there is not.
    Missing(&'static str),
    /// There is no such entry.
    Unknown {
        key: String,
        known: Vec<&'static str>,
    },
    /// One object has it twice: which of both was meant nobody can say (RFC 8259, section 4).
    Twice { key: String, at: Place },
    /// An entry, or one of those in its list, is of another kind than it has to be.
    WrongKind {
        key: &'static str,
        expected: Expected,
    },
}

/// The kind that an entry has to be of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Expected {
    Object,
    List,
    /// From 0 on.
    WholeNumber,
    Number,
    Text,
}

/// The entries of an object, all that there have to be and no others than there may be.
#[derive(Debug)]
pub struct Entries(Map<String, Value>);

impl Entries {
    /// Those of the object that stands under a key.
    pub fn of(key: &'static str, value: Value, known: &[&'static str]) -> Result<Self, Fault> {
        Self::with_optional(key, value, known, &[])
    }

    /// The same, with some that may be left out.
    pub fn with_optional(
        key: &'static str,
        value: Value,
        needed: &[&'static str],
        optional: &[&'static str],
    ) -> Result<Self, Fault> {
        let Value::Object(entries) = value else {
            let expected = Expected::Object;
            return Err(Fault::WrongKind { key, expected });
        };
        let known = [needed, optional].concat();
        if let Some(unknown) = entries.keys().find(|key| !known.contains(&key.as_str())) {
            return Err(Fault::Unknown {
                key: unknown.clone(),
                known,
            });
        }
        match needed.iter().find(|key| !entries.contains_key(**key)) {
            Some(missing) => Err(Fault::Missing(missing)),
            None => Ok(Self(entries)),
        }
    }

    /// Takes one of the known entries out.
    pub fn take(&mut self, key: &'static str) -> Result<Value, Fault> {
        self.0.remove(key).ok_or(Fault::Missing(key))
    }

    /// Takes out an entry that may be left out, or be null.
    pub fn take_if_there(&mut self, key: &'static str) -> Option<Value> {
        self.0.remove(key).filter(|entry| !entry.is_null())
    }

    pub fn list(&mut self, key: &'static str) -> Result<Vec<Value>, Fault> {
        match self.take(key)? {
            Value::Array(list) => Ok(list),
            _ => Err(Fault::WrongKind {
                key,
                expected: Expected::List,
            }),
        }
    }

    pub fn whole_number(&mut self, key: &'static str) -> Result<u64, Fault> {
        self.take(key)?.as_u64().ok_or(Fault::WrongKind {
            key,
            expected: Expected::WholeNumber,
        })
    }
}
