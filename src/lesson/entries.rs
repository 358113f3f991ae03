//! How the entries of a lesson are read: texts and lists that end, numbers within their ranges; and how texts are
//! written.

use std::ops::RangeInclusive;

use serde_json::Value;

use crate::fault::Wrong;
use crate::said::{LONGEST, Said};
use turns_aloft_scenario::fault::{Entries, Expected, Fault};
use turns_aloft_words::Language;

/// One object of the file.
pub struct Object(Entries);

impl Object {
    pub fn of(
        key: &'static str,
        value: Value,
        needed: &[&'static str],
        optional: &[&'static str],
    ) -> Result<Self, Wrong> {
        Ok(Self(Entries::with_optional(key, value, needed, optional)?))
    }

    pub fn take(&mut self, key: &'static str) -> Result<Value, Wrong> {
        Ok(self.0.take(key)?)
    }

    pub fn take_if_there(&mut self, key: &'static str) -> Option<Value> {
        self.0.take_if_there(key)
    }

    pub fn whole_number(
        &mut self,
        key: &'static str,
        range: RangeInclusive<u64>,
    ) -> Result<u64, Wrong> {
        let number = self.0.whole_number(key)?;
        if range.contains(&number) {
            return Ok(number);
        }
        Err(Wrong::OutOfRange {
            key,
            value: number as f64,
            range: (*range.start() as f64, *range.end() as f64),
        })
    }

    pub fn number(&mut self, key: &'static str, range: RangeInclusive<f64>) -> Result<f64, Wrong> {
        number(key, &self.take(key)?, range)
    }

    /// False where it is left out.
    pub fn is(&mut self, key: &'static str) -> Result<bool, Wrong> {
        match self.take_if_there(key) {
            None => Ok(false),
            Some(Value::Bool(is)) => Ok(is),
            Some(other) => Err(Wrong::UnknownWord {
                key,
                written: other.to_string(),
                known: vec!["true", "false"],
            }),
        }
    }

    /// A word that means something.
    pub fn word(&mut self, key: &'static str) -> Result<String, Wrong> {
        word(key, self.take(key)?)
    }

    pub fn said(&mut self, key: &'static str) -> Result<Said, Wrong> {
        said(key, self.take(key)?)
    }

    /// Every entry of a list, which may be left out.
    pub fn each<T>(
        &mut self,
        key: &'static str,
        most: usize,
        read: impl Fn(Value) -> Result<T, Wrong>,
    ) -> Result<Vec<T>, Wrong> {
        let list = match self.take_if_there(key) {
            None => return Ok(Vec::new()),
            Some(Value::Array(list)) => list,
            Some(_) => return Err(wrong_kind(key, Expected::List)),
        };
        if list.len() > most {
            return Err(Wrong::TooMany { key, most });
        }
        list.into_iter().map(read).collect()
    }
}

pub const fn wrong_kind(key: &'static str, expected: Expected) -> Wrong {
    Wrong::Broken(Fault::WrongKind { key, expected })
}

pub fn number(key: &'static str, value: &Value, range: RangeInclusive<f64>) -> Result<f64, Wrong> {
    let value = value.as_f64().ok_or(wrong_kind(key, Expected::Number))?;
    if range.contains(&value) {
        return Ok(value);
    }
    Err(Wrong::OutOfRange {
        key,
        value,
        range: range.into_inner(),
    })
}

pub fn word(key: &'static str, value: Value) -> Result<String, Wrong> {
    match value {
        Value::String(word) if word.len() <= LONGEST => Ok(word),
        Value::String(_) => Err(Wrong::LongText { key, most: LONGEST }),
        _ => Err(wrong_kind(key, Expected::Text)),
    }
}

/// A text, or one for each language.
pub fn said(key: &'static str, value: Value) -> Result<Said, Wrong> {
    let Value::Object(each) = value else {
        return plain(key, value).map(Said::Alike);
    };
    let mut texts = Language::ALL.map(|_| None);
    for (tag, text) in each {
        let language = Language::ALL.into_iter().find(|it| it.tag() == tag);
        let Some(language) = language else {
            return Err(Wrong::UnknownLanguage { key, language: tag });
        };
        texts[language as usize] = Some(plain(key, text)?);
    }
    if texts.iter().all(Option::is_none) {
        return Err(Wrong::NoText(key));
    }
    Ok(Said::Each(texts))
}

/// A text that says something, in one paragraph.
fn plain(key: &'static str, value: Value) -> Result<String, Wrong> {
    let Value::String(text) = value else {
        return Err(wrong_kind(key, Expected::Text));
    };
    if text.trim().is_empty() || text.contains(char::is_control) {
        return Err(Wrong::NoText(key));
    }
    if text.chars().count() > LONGEST {
        return Err(Wrong::LongText { key, most: LONGEST });
    }
    Ok(text)
}

/// A text as it stands in a file.
pub fn written(text: &Said) -> Value {
    match text {
        Said::Alike(text) => text.as_str().into(),
        Said::Each(texts) => {
            let each = Language::ALL.into_iter().zip(texts);
            let entry = |(language, text): (Language, &Option<String>)| {
                Some((language.tag().to_owned(), text.as_deref()?.into()))
            };
            Value::Object(each.filter_map(entry).collect())
        }
    }
}
