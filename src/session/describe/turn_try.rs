//! The five-turn try as lines of text.

use crate::describe::reading::{Group, Reading, line};
use crate::session::Session;
use turns_aloft_describe::turn_try::{passed, turns, unknown};
use turns_aloft_words::text;

/// All lines; none where no try is on.
pub(crate) fn lines(session: &Session) -> Vec<Reading> {
    let Some(tried) = session.turn_try() else {
        return Vec::new();
    };
    let units = session.units();
    let mut said = passed(tried, units);
    if let Some(unknown) = unknown(tried, units) {
        said = format!("{said} {unknown}");
    }
    let about = || text("try-about").to_owned();
    let label = text("try-title");
    vec![
        line(
            Group::Answer,
            "try:turns".to_owned(),
            label,
            turns(tried),
            about(),
        ),
        line(Group::Answer, "try:passed".to_owned(), label, said, about()),
    ]
}
