//! What the reader of JSON complains of, in the language spoken.
//!
//! The reader speaks English only and names what it complains of in a few forms; each is a message
//! whose English is the reader's own. What has none is told as the reader says it.

use crate::say;
use crate::words::{Language, Message, with_decimal_sign};

/// Characters of a complaint at most.
const LONGEST: usize = 200;

/// What needs no more words: what is wrong with the writing, what stands there or should.
const PHRASES: [Message; 25] = [
    Message("json-list-unended"),
    Message("json-object-unended"),
    Message("json-string-unended"),
    Message("json-value-unended"),
    Message("json-no-colon"),
    Message("json-no-list-comma"),
    Message("json-no-word"),
    Message("json-no-value"),
    Message("json-no-quote"),
    Message("json-bad-escape"),
    Message("json-bad-number"),
    Message("json-large-number"),
    Message("json-bad-character"),
    Message("json-control-character"),
    Message("json-bad-key"),
    Message("json-lone-surrogate"),
    Message("json-trailing-comma"),
    Message("json-trailing-characters"),
    Message("json-escape-unended"),
    Message("json-too-deep"),
    Message("json-null"),
    Message("json-sequence"),
    Message("json-map"),
    Message("json-a-sequence"),
    Message("json-u64"),
];

/// What a reader complains of, short and on one line: it may quote the file, whatever is in it.
pub(crate) fn parse_error(why: &serde_json::Error) -> String {
    let (line, column) = (why.line(), why.column());
    let whole = why.to_string();
    let translated = match whole.strip_suffix(&format!(" at line {line} column {column}")) {
        Some(what) => say!(
            "json-at",
            what = translated(what),
            line = line,
            column = column
        ),
        None => translated(&whole),
    };
    let mut plain = translated
        .chars()
        .map(|c| if c.is_control() { ' ' } else { c });
    let mut line: String = plain.by_ref().take(LONGEST).collect();
    if plain.next().is_some() {
        line.push('\u{2026}');
    }
    line
}

fn translated(what: &str) -> String {
    if let Some(name) = between(what, "missing field `", "`") {
        return say!("json-missing-field", name = name);
    }
    if let Some(name) = between(what, "duplicate field `", "`") {
        return say!("json-duplicate-field", name = name);
    }
    if let Some((what, expected)) = what.rsplit_once(", expected ") {
        if let Some(name) = between(what, "unknown field `", "`") {
            return say!("json-unknown-field", name = name, known = known(expected));
        }
        let (found, expected) = (found, goal(expected));
        if let Some(of_type) = what.strip_prefix("invalid type: ") {
            return say!("json-bad-type", found = found(of_type), goal = expected);
        }
        if let Some(of_value) = what.strip_prefix("invalid value: ") {
            return say!("json-bad-value", found = found(of_value), goal = expected);
        }
    }
    // A message cannot hold a brace.
    if let Some(brace) = what
        .strip_prefix("expected `,` or ")
        .filter(|it| *it == "`}`")
    {
        return say!("json-no-object-comma", brace = brace);
    }
    phrase(what)
}

fn between<'a>(text: &'a str, before: &str, after: &str) -> Option<&'a str> {
    text.strip_prefix(before)?.strip_suffix(after)
}

fn phrase(what: &str) -> String {
    let known = PHRASES
        .iter()
        .find(|phrase| phrase.text_in(Language::English) == what);
    known.map_or(what, |phrase| phrase.text()).to_owned()
}

/// The names that could stand there.
fn known(names: &str) -> String {
    if let Some(names) = names.strip_prefix("one of ") {
        return say!("json-one-of", names = names);
    }
    match names.split_once(" or ") {
        Some((one, other)) => say!("json-either", one = one, other = other),
        None => names.to_owned(),
    }
}

/// What stands there: its kind, and what it is.
fn found(what: &str) -> String {
    let of = |kind| what.strip_prefix(kind);
    if let Some(value) = of("string ") {
        say!("json-found-string", value = value)
    } else if let Some(value) = of("integer ") {
        say!("json-found-integer", value = value)
    } else if let Some(value) = of("floating point ") {
        let value = with_decimal_sign(value.to_owned());
        say!("json-found-number", value = value)
    } else if let Some(value) = of("boolean ") {
        say!("json-found-boolean", value = value)
    } else {
        phrase(what)
    }
}

/// What should stand there.
fn goal(what: &str) -> String {
    match what.strip_prefix("struct ") {
        Some(name) => say!("json-struct", name = name),
        None => phrase(what),
    }
}
