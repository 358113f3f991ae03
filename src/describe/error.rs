//! What is wrong, in one sentence each.

use serde_json::Value;

use crate::Sentence;
use crate::number::{plain, shortened, shown, si};
use turns_aloft_analysis::hang_time::{self, RefusedHangTime};
use turns_aloft_analysis::lever::{Lever, RefusedLever};
use turns_aloft_analysis::map::{NODES, RefusedAxis};
use turns_aloft_analysis::uncertainty::{RefusedHalfWidth, UncertainInput};
use turns_aloft_physics::led_tucks::{KnotsError, MOST_KNOTS};
use turns_aloft_scenario::collection::saved::JumpFault;
use turns_aloft_scenario::collection::{LARGEST_BYTES, LONGEST_NAME, MOST, Refusal, kept, saved};
use turns_aloft_scenario::fault::{Expected, Fault, NotJson, Place};
use turns_aloft_scenario::input::{Choice, Input, Text};
use turns_aloft_scenario::jump::JUMP_TURNS;
use turns_aloft_scenario::led;
use turns_aloft_scenario::parameter::{Kind, Parameter};
use turns_aloft_scenario::reading::NotText;
use turns_aloft_scenario::setting::Refused;
use turns_aloft_scenario::{file, link};
use turns_aloft_words::{say, text, with_decimal_sign};

/// A value of a file as a message quotes it.
fn quoted(written: &Value) -> String {
    shown(&match written {
        Value::String(text) => text.clone(),
        Value::Number(number) => with_decimal_sign(number.to_string()),
        other => other.to_string(),
    })
}

fn out_of_range(parameter: Parameter, value: f64) -> String {
    say!(
        "number-out-of-range",
        key = parameter.key(),
        value = plain(value),
        least = plain(parameter.least()),
        most = si(parameter.kind(), parameter.most())
    )
}

impl Sentence for Refused {
    fn sentence(&self) -> String {
        match self {
            Self::OutOfRange { parameter, value } => out_of_range(*parameter, *value),
            Self::NotANumber { parameter, written } => say!(
                "number-not-a-number",
                key = parameter.key(),
                value = shown(written),
                least = plain(parameter.least()),
                most = si(parameter.kind(), parameter.most())
            ),
            Self::NotJumpTurns { written } => say!(
                "number-not-whole",
                key = Choice::JumpTurns.key(),
                value = quoted(written),
                least = JUMP_TURNS[0],
                most = JUMP_TURNS[1]
            ),
            Self::UnknownWord {
                choice,
                written,
                known,
            } => say!(
                "word-unknown",
                key = choice.key(),
                value = quoted(written),
                known = in_backticks(known)
            ),
            Self::NotAText { text, written } => {
                say!("text-not-a-text", key = text.key(), value = quoted(written))
            }
            Self::TooLong { text, written } => {
                say!("text-too-long", key = text.key(), value = shown(written))
            }
            Self::Knots(why) => why.sentence(),
            Self::NotLed { written } => say!(
                "led-not-set",
                key = led::KEY,
                value = shown(written),
                none = led::NONE
            ),
            Self::NoPart { parameter, written } => say!(
                "number-no-part",
                key = parameter.key(),
                value = shown(written),
                led = led::KEY,
                none = led::NONE
            ),
            Self::UnknownKey { key, written } => say!(
                "key-unknown",
                key = shown(key),
                value = shown(written),
                known = every_key()
            ),
        }
    }
}

impl Sentence for KnotsError {
    fn sentence(&self) -> String {
        match *self {
            Self::Count(count) => {
                say!(
                    "knots-count",
                    led = led::KEY,
                    count = count,
                    most = MOST_KNOTS
                )
            }
            Self::OutOfRange {
                place,
                key,
                value,
                most,
            } => say!(
                "knots-out-of-range",
                led = led::KEY,
                place = place,
                key = key,
                value = plain(value),
                most = plain(most)
            ),
            Self::OutOfOrder { place, time_s } => say!(
                "knots-out-of-order",
                led = led::KEY,
                place = place,
                value = plain(time_s)
            ),
        }
    }
}

fn every_key() -> String {
    let texts = Text::ALL.map(Text::key).into_iter();
    let keys = texts.chain(Input::all().map(Input::key));
    let keys: Vec<&str> = keys.chain([hang_time::KEY]).collect();
    keys.join(", ")
}

pub(crate) fn in_backticks(words: &[&str]) -> String {
    let words: Vec<String> = words.iter().map(|word| format!("`{word}`")).collect();
    words.join(", ")
}

impl Sentence for RefusedHalfWidth {
    fn sentence(&self) -> String {
        match self {
            Self::OutOfRange { input, value } => say!(
                "half-width-out-of-range",
                key = input.key(),
                value = plain(*value),
                most = si(input.kind(), input.most())
            ),
            Self::NotANumber { input, written } => say!(
                "half-width-not-a-number",
                key = input.key(),
                value = shown(written),
                most = si(input.kind(), input.most())
            ),
            Self::HangTime { written, most_s } => say!(
                "half-width-hang-time",
                key = hang_time::KEY,
                value = shown(written),
                most = seconds(*most_s)
            ),
            Self::Unknown { key, written } => say!(
                "half-width-unknown",
                key = shown(key),
                value = shown(written),
                known = format!(
                    "{}, {}",
                    UncertainInput::ALL.map(UncertainInput::key).join(", "),
                    hang_time::KEY
                )
            ),
        }
    }
}

/// A time that follows from flights: to a thousandth of a second.
fn seconds(time_s: f64) -> String {
    si(Kind::Time, (1000.0 * time_s).round() / 1000.0)
}

impl Sentence for RefusedHangTime {
    fn sentence(&self) -> String {
        match self {
            Self::NotANumber { written } => say!(
                "hang-time-not-a-number",
                key = hang_time::KEY,
                value = shown(written)
            ),
            Self::OutOfRange { value_s, range_s } => say!(
                "hang-time-out-of-range",
                key = hang_time::KEY,
                value = plain(*value_s),
                least = seconds(range_s[0]),
                most = seconds(range_s[1])
            ),
            Self::NotFlown { value_s, nearest_s } => say!(
                "hang-time-not-flown",
                key = hang_time::KEY,
                value = plain(*value_s),
                nearest = seconds(*nearest_s)
            ),
        }
    }
}

impl Sentence for RefusedLever {
    fn sentence(&self) -> String {
        match self {
            Self::Unknown(key) => say!(
                "lever-unknown",
                key = key.as_str(),
                known = Lever::ALL.map(Lever::key).join(", ")
            ),
            Self::Season { lever, value } => {
                let [least, most] = lever.range();
                say!(
                    "season-out-of-range",
                    key = lever.key(),
                    value = plain(*value),
                    most = si(lever.parameter().kind(), most - least)
                )
            }
            Self::Limits { lever, limits } => {
                let [least, most] = lever.range();
                say!(
                    "limits-out-of-range",
                    key = lever.key(),
                    lower = plain(limits[0]),
                    higher = plain(limits[1]),
                    least = plain(least),
                    most = si(lever.parameter().kind(), most)
                )
            }
        }
    }
}

impl Sentence for RefusedAxis {
    fn sentence(&self) -> String {
        match self {
            Self::Unknown(key) => say!(
                "axis-unknown",
                key = key.as_str(),
                known = Parameter::ALL.map(Parameter::key).join(", ")
            ),
            Self::Value(why) => why.sentence(),
            Self::OneValue { parameter, value } => say!(
                "axis-one-value",
                key = parameter.key(),
                from = plain(*value),
                to = plain(*value)
            ),
            Self::Nodes { parameter, nodes } => say!(
                "axis-nodes",
                nodes = *nodes,
                key = parameter.key(),
                least = NODES[0],
                most = NODES[1]
            ),
            Self::Twice(parameter) => say!("axis-twice", key = parameter.key()),
            Self::NoPart(parameter) => say!("axis-no-part", key = parameter.key()),
        }
    }
}

impl Sentence for NotText {
    fn sentence(&self) -> String {
        match self {
            Self::Utf16 => text("file-utf-16").to_owned(),
            Self::Other => text("file-not-text").to_owned(),
        }
    }
}

fn at(what: &str, place: Place) -> String {
    say!(
        "fault-at",
        what = what,
        line = place.line,
        column = place.column
    )
}

impl Sentence for NotJson {
    fn sentence(&self) -> String {
        match *self {
            Self::EndsEarly(place) => at(text("fault-ends-early"), place),
            Self::Malformed(place) => at(text("fault-malformed"), place),
        }
    }
}

impl Sentence for Fault {
    fn sentence(&self) -> String {
        match self {
            Self::Missing(key) => say!("fault-missing", key = *key),
            Self::Unknown { key, known } => say!(
                "fault-unknown",
                key = shown(key),
                known = shortened(&in_backticks(known), LONGEST_LIST)
            ),
            Self::Twice { key, at: place } => at(&say!("fault-twice", key = shown(key)), *place),
            Self::WrongKind { key, expected } => match expected {
                Expected::Object => say!("fault-no-object", key = *key),
                Expected::List => say!("fault-no-list", key = *key),
                Expected::WholeNumber => say!("fault-no-whole-number", key = *key),
                Expected::Number => say!("fault-no-number", key = *key),
                Expected::Text => say!("fault-no-text", key = *key),
            },
        }
    }
}

/// Characters of a list of entries at most.
const LONGEST_LIST: usize = 100;

impl Sentence for file::Unreadable {
    fn sentence(&self) -> String {
        match self {
            Self::TooLarge => text("file-too-large").to_owned(),
            Self::NotText(why) => why.sentence(),
            Self::NotJson(why) => say!("file-not-json", why = why.sentence()),
            Self::NotAScenario => text("file-no-scenario").to_owned(),
            Self::Newer(version) => {
                say!("file-newer", version = *version, known = file::VERSION)
            }
            Self::Broken(why) => say!("file-broken", why = why.sentence()),
            Self::OutOfRange(why) => say!("file-out-of-range", why = why.sentence()),
        }
    }
}

impl Sentence for link::Unreadable {
    fn sentence(&self) -> String {
        match self {
            Self::TooLong => text("link-too-long").to_owned(),
            Self::Damaged => text("link-damaged").to_owned(),
            Self::Newer(version) => {
                say!("link-newer", version = *version, known = link::VERSION)
            }
            Self::OutOfRange(why) => say!("link-out-of-range", why = why.sentence()),
        }
    }
}

impl Sentence for Refusal {
    fn sentence(&self) -> String {
        match self {
            Self::NoName => text("kept-no-name").to_owned(),
            Self::LongName => say!("kept-long-name", most = LONGEST_NAME),
            Self::TooMany => say!("kept-too-many", most = MOST),
            Self::TooLarge => say!(
                "kept-too-large",
                each = file::LARGEST_BYTES / 1_000,
                all = LARGEST_BYTES / 1_000_000
            ),
            Self::Gone => text("kept-gone").to_owned(),
            Self::NothingDeleted => text("kept-nothing-deleted").to_owned(),
        }
    }
}

impl Sentence for kept::Unreadable {
    fn sentence(&self) -> String {
        let why = match self {
            Self::Newer(_) => return text("kept-newer").to_owned(),
            Self::TooLong => text("kept-too-long").to_owned(),
            Self::NotJson(why) => why.sentence(),
            Self::NoVersion => text("kept-no-version").to_owned(),
            Self::Broken(why) => why.sentence(),
            Self::TooOften => text("kept-too-often").to_owned(),
            Self::Scenario(why) => why.sentence(),
            Self::Refused(why) => why.sentence(),
            Self::OddName => text("kept-odd-name").to_owned(),
            Self::Twice => text("kept-twice").to_owned(),
        };
        say!("kept-broken", why = why)
    }
}

impl Sentence for saved::Unreadable {
    fn sentence(&self) -> String {
        match self {
            Self::TooLarge => text("collection-too-large").to_owned(),
            Self::NotJson(why) => say!("collection-not-json", why = why.sentence()),
            Self::NotACollection => text("collection-none").to_owned(),
            Self::Newer(version) => {
                say!(
                    "collection-newer",
                    version = *version,
                    known = saved::VERSION
                )
            }
            Self::Broken(why) => say!("collection-broken", why = why.sentence()),
            Self::Jump { number, name, why } => say!(
                "collection-jump",
                number = *number,
                name = name.as_deref().unwrap_or(text("collection-jump-unnamed")),
                why = why.sentence()
            ),
            Self::Scenario(why) => why.sentence(),
            Self::Refused(why) => why.sentence(),
        }
    }
}

impl Sentence for JumpFault {
    fn sentence(&self) -> String {
        match self {
            Self::Scenario(why) => why.sentence(),
            Self::Refused(why) => why.sentence(),
        }
    }
}
