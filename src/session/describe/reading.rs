//! One line of text about the jump: its name, its value in the user's units, and what it means.
//!
//! The panels and the page's own text show these very lines.

use std::borrow::Cow;

use turns_aloft_words::text;

/// One line.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// The readout's published key.
    pub quantity: Cow<'static, str>,
    pub group: Group,
    pub label: Cow<'static, str>,
    pub text: String,
    /// One sentence.
    pub about: String,
}

/// Readings that belong together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Group {
    Turns,
    /// What the range comes from; empty when none is shown.
    UncertaintyInputs,
    Time,
    Rate,
    Inertia,
    Energy,
    Hands,
    Efforts,
    Axis,
    Landing,
    /// The answer to the question in sight.
    Answer,
}

impl Group {
    pub const ALL: [Self; 11] = [
        Self::Turns,
        Self::UncertaintyInputs,
        Self::Time,
        Self::Rate,
        Self::Inertia,
        Self::Energy,
        Self::Hands,
        Self::Efforts,
        Self::Axis,
        Self::Landing,
        Self::Answer,
    ];

    pub fn label(self) -> &'static str {
        match self {
            Self::Turns => text("group-turns"),
            Self::UncertaintyInputs => text("group-uncertainty"),
            Self::Time => text("group-time"),
            Self::Rate => text("group-rate"),
            Self::Inertia => text("group-inertia"),
            Self::Energy => text("group-energy"),
            Self::Hands => text("group-hands"),
            Self::Efforts => text("group-efforts"),
            Self::Axis => text("group-axis"),
            Self::Landing => text("group-landing"),
            Self::Answer => text("group-answer"),
        }
    }
}

pub(crate) fn line(
    group: Group,
    quantity: impl Into<Cow<'static, str>>,
    label: impl Into<Cow<'static, str>>,
    text: String,
    about: impl Into<String>,
) -> Reading {
    Reading {
        quantity: quantity.into(),
        group,
        label: label.into(),
        text,
        about: about.into(),
    }
}
