//! What can be wrong with the file of an attempt.

use turns_aloft_scenario::fault::{Fault, NotJson};
use turns_aloft_scenario::file;
use turns_aloft_scenario::reading::NotText;

/// Why a file was not opened.
#[derive(Debug, Clone, PartialEq)]
pub enum Unreadable {
    TooLarge,
    NotText(NotText),
    NotJson(NotJson),
    NotAnAttempt,
    Newer(u64),
    Broken(Fault),
    /// What is wrong with the jump that it was meant to be.
    Jump(file::Unreadable),
    /// It is not said how it was measured, or in more than one way.
    NotMeasured,
    OutOfRange {
        key: &'static str,
        value: f64,
        range: (f64, f64),
    },
    TooMany {
        key: &'static str,
        most: usize,
    },
    /// Nothing that is marked in a picture.
    UnknownPoint(String),
}
