//! An attempt to look at and to begin from.

use crate::Attempt;

/// An invented one: the marks of a film that was never made.
pub fn example() -> Attempt {
    let text = include_str!("../../assets/attempts/example.attempt.json");
    let opened = Attempt::open_file(text).expect("the example is tested to open");
    opened.read
}
