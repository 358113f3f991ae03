//! What can be wrong with the file of a lesson, or with that of what a pupil has answered.

use turns_aloft_scenario::fault::{Fault, NotJson};
use turns_aloft_scenario::file;
use turns_aloft_scenario::reading::NotText;
use turns_aloft_turntable::programme::ProgrammeFault;

use crate::figure::NoFigure;
use crate::quantity::Quantity;
use crate::setup::Refused;

/// Why a lesson was not opened.
#[derive(Debug, Clone, PartialEq)]
pub enum Unreadable {
    TooLarge,
    NotText(NotText),
    NotJson(NotJson),
    NotALesson,
    Newer(u64),
    Wrong(Wrong),
    /// In one of its steps, counted from 1.
    Step {
        number: usize,
        why: Wrong,
    },
}

/// What is wrong in it.
#[derive(Debug, Clone, PartialEq)]
pub enum Wrong {
    Broken(Fault),
    /// A text without anything in it.
    NoText(&'static str),
    LongText {
        key: &'static str,
        most: usize,
    },
    /// None of the languages that are spoken.
    UnknownLanguage {
        key: &'static str,
        language: String,
    },
    TooMany {
        key: &'static str,
        most: usize,
    },
    TooFew {
        key: &'static str,
        least: usize,
    },
    OutOfRange {
        key: &'static str,
        value: f64,
        range: (f64, f64),
    },
    /// The parts of the plan take so many minutes, and the lesson so many.
    Minutes {
        parts: u64,
        lesson: u64,
    },
    /// Not exactly one of these entries is there.
    NotOneOf(Vec<&'static str>),
    UnknownWord {
        key: &'static str,
        written: String,
        known: Vec<&'static str>,
    },
    UnknownStart(String),
    /// What is wrong with the jump of a setup.
    Jump(file::Unreadable),
    /// The setup, or a variant of it, cannot be.
    Refused(Refused),
    Programme(ProgrammeFault),
    /// A value of a change is neither a number nor a word.
    NotAValue(String),
    /// The times of a worked example do not rise.
    NotRising,
    /// A variant's name that would not be told from a key.
    OddName(String),
    /// Nothing that can be free in what is set up.
    UnknownFree {
        key: String,
        known: Vec<&'static str>,
    },
    /// Named twice among the free inputs.
    FreeTwice(&'static str),
    /// Free inputs or variants, where nothing is set up.
    NothingSetUp(&'static str),
    NoFigure {
        key: &'static str,
        why: NoFigure,
    },
    /// What is set up has no such quantity.
    NotOfSetup(Quantity),
    UnknownCurve {
        curve: String,
        known: Vec<&'static str>,
    },
    /// Two options that mean the same.
    SameOption(usize),
    /// A prediction that does not fit its step.
    NotItsAnswer,
}

impl From<Fault> for Wrong {
    fn from(why: Fault) -> Self {
        Self::Broken(why)
    }
}

impl From<Refused> for Wrong {
    fn from(why: Refused) -> Self {
        Self::Refused(why)
    }
}
