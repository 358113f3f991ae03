//! What the inputs of a jump are called, and what they mean.
//!
//! The names of the messages follow from the inputs' keys, so that a new input needs its words only.

use std::sync::LazyLock;

use fluent_bundle::FluentArgs;

use crate::{About, Inline, Label};
use turns_aloft_analysis::uncertainty::UncertainInput;
use turns_aloft_scenario::input::{Choice, Input};
use turns_aloft_scenario::parameter::Parameter;
use turns_aloft_words::{Message, format, text};

/// The name of a message about an input.
fn name(prefix: &str, key: &str, suffix: &str) -> String {
    let key = key.replace('_', "-");
    format!("{prefix}{key}{suffix}")
}

/// The message, whose name is made once and kept.
fn message(prefix: &str, key: &str, suffix: &str) -> Message {
    Message(name(prefix, key, suffix).leak())
}

/// The messages of a number.
struct OfParameter {
    label: Message,
    inline: Message,
    about: Message,
}

static PARAMETERS: LazyLock<[OfParameter; Parameter::COUNT]> = LazyLock::new(|| {
    Parameter::ALL.map(|parameter| OfParameter {
        label: message("key-", parameter.key(), ""),
        inline: message("key-", parameter.key(), "-inline"),
        about: message("key-", parameter.key(), "-about"),
    })
});

impl Label for Parameter {
    fn label(self) -> &'static str {
        PARAMETERS[self as usize].label.text()
    }
}

impl Inline for Parameter {
    fn inline(self) -> &'static str {
        PARAMETERS[self as usize].inline.text()
    }
}

impl About for Parameter {
    fn about(self) -> &'static str {
        PARAMETERS[self as usize].about.text()
    }
}

/// The messages of an uncertain input.
struct OfUncertain {
    label: Message,
    inline: Message,
    about: Message,
    change: Message,
}

static UNCERTAIN: LazyLock<[OfUncertain; UncertainInput::COUNT]> = LazyLock::new(|| {
    UncertainInput::ALL.map(|input| OfUncertain {
        label: message("key-", input.key(), ""),
        inline: message("key-", input.key(), "-inline"),
        about: message("half-width-", input.key(), "-about"),
        change: message("range-by-", input.kind().without_unit(input.key()), ""),
    })
});

fn uncertain(input: UncertainInput) -> &'static OfUncertain {
    &UNCERTAIN[input.order()]
}

impl Label for UncertainInput {
    fn label(self) -> &'static str {
        uncertain(self).label.text()
    }
}

impl Inline for UncertainInput {
    fn inline(self) -> &'static str {
        uncertain(self).inline.text()
    }
}

/// Where the usual half-width comes from.
impl About for UncertainInput {
    fn about(self) -> &'static str {
        uncertain(self).about.text()
    }
}

/// What the change of the turns by an input's half-width is called.
pub fn change_label(input: UncertainInput) -> &'static str {
    uncertain(input).change.text()
}

impl Label for Choice {
    fn label(self) -> &'static str {
        match self {
            Self::Jump => Message("word-jump"),
            Self::JumpTurns => Message("word-jump-turns"),
            Self::Table => Message("word-table"),
            Self::Ground => Message("word-ground"),
            Self::Turning => Message("word-turning"),
            Self::HandsKeep => Message("word-hands-keep"),
        }
        .text()
    }
}

impl Inline for Choice {
    fn inline(self) -> &'static str {
        match self {
            Self::Jump => Message("word-jump-inline"),
            Self::JumpTurns => Message("word-jump-turns-inline"),
            Self::Table => Message("word-table-inline"),
            Self::Ground => Message("word-ground-inline"),
            Self::Turning => Message("word-turning-inline"),
            Self::HandsKeep => Message("word-hands-keep-inline"),
        }
        .text()
    }
}

impl Label for Input {
    fn label(self) -> &'static str {
        match self {
            Self::Choice(choice) => choice.label(),
            Self::Number(parameter) => parameter.label(),
            Self::Led => text("word-led"),
        }
    }
}

impl Inline for Input {
    fn inline(self) -> &'static str {
        match self {
            Self::Choice(choice) => choice.inline(),
            Self::Number(parameter) => parameter.inline(),
            Self::Led => text("word-led-inline"),
        }
    }
}

/// What one step of a number is, for how large it is.
pub fn step(parameter: Parameter, size: &str) -> String {
    let mut values = FluentArgs::new();
    values.set("step", size);
    format(&name("step-", parameter.key(), ""), &values)
}

/// How a number was, and how another value would have done; stands behind a colon.
pub fn remedy(parameter: Parameter, [from, to]: [&str; 2], turns: &str) -> String {
    let name = name("why-", parameter.kind().without_unit(parameter.key()), "");
    let mut values = FluentArgs::new();
    values.set("from", from);
    values.set("to", to);
    values.set("turns", turns);
    format(&name, &values)
}
