//! How the entries of an attempt are read: numbers within their ranges, and lists that end.

use std::ops::RangeInclusive;

use serde_json::Value;

use crate::unreadable::Unreadable;
use turns_aloft_scenario::fault::{Entries, Expected, Fault};

/// Entries of one kind at most: far more than anybody marks. Our choice.
const MOST: usize = 500;

/// One object of the file.
pub struct Object(Entries);

impl Object {
    pub fn of(
        key: &'static str,
        value: Value,
        needed: &[&'static str],
        optional: &[&'static str],
    ) -> Result<Self, Unreadable> {
        let entries = Entries::with_optional(key, value, needed, optional);
        entries.map(Self).map_err(Unreadable::Broken)
    }

    pub fn number(
        &mut self,
        key: &'static str,
        range: RangeInclusive<f64>,
    ) -> Result<f64, Unreadable> {
        number(key, &self.take(key)?, range)
    }

    /// None where it is left out.
    pub fn number_if_there(
        &mut self,
        key: &'static str,
        range: RangeInclusive<f64>,
    ) -> Result<Option<f64>, Unreadable> {
        let entry = self.0.take_if_there(key);
        entry.map(|entry| number(key, &entry, range)).transpose()
    }

    pub fn numbers<const N: usize>(
        &mut self,
        key: &'static str,
        range: RangeInclusive<f64>,
    ) -> Result<[f64; N], Unreadable> {
        let list = self.0.list(key).map_err(Unreadable::Broken)?;
        let numbers: Vec<f64> = list
            .iter()
            .map(|entry| number(key, entry, range.clone()))
            .collect::<Result<_, _>>()?;
        let wrong = |_| wrong_kind(key, Expected::List);
        numbers.try_into().map_err(wrong)
    }

    pub fn text(&mut self, key: &'static str) -> Result<String, Unreadable> {
        match self.take(key)? {
            Value::String(text) => Ok(text),
            _ => Err(wrong_kind(key, Expected::Text)),
        }
    }

    /// Every entry of a list.
    pub fn each<T>(
        &mut self,
        key: &'static str,
        read: impl Fn(Value) -> Result<T, Unreadable>,
    ) -> Result<Vec<T>, Unreadable> {
        let list = self.0.list(key).map_err(Unreadable::Broken)?;
        if list.len() > MOST {
            return Err(Unreadable::TooMany { key, most: MOST });
        }
        list.into_iter().map(read).collect()
    }

    pub fn take(&mut self, key: &'static str) -> Result<Value, Unreadable> {
        self.0.take(key).map_err(Unreadable::Broken)
    }

    pub fn take_if_there(&mut self, key: &'static str) -> Option<Value> {
        self.0.take_if_there(key)
    }
}

const fn wrong_kind(key: &'static str, expected: Expected) -> Unreadable {
    Unreadable::Broken(Fault::WrongKind { key, expected })
}

fn number(key: &'static str, entry: &Value, range: RangeInclusive<f64>) -> Result<f64, Unreadable> {
    let value = entry.as_f64().ok_or(wrong_kind(key, Expected::Number))?;
    if range.contains(&value) {
        return Ok(value);
    }
    Err(Unreadable::OutOfRange {
        key,
        value,
        range: range.into_inner().into(),
    })
}
