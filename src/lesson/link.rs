//! A lesson as the text behind the `#` of an address: `lesson.PAYLOAD.1`.
//!
//! The payload is the lesson's file without spaces, with what stands in every lesson replaced by single control
//! characters, which no such file has in it.

use crate::fault::Unreadable;
use crate::lesson::Lesson;
use turns_aloft_scenario::link::sealed::{seal, unseal};
use turns_aloft_scenario::link::unreadable::Unreadable as BadLink;

/// Version written by this build.
pub const VERSION: u64 = 1;

/// Characters of a link's text at most: messages carry so many. Our choice.
pub const LONGEST: usize = 8_000;

/// What every link to a lesson begins with.
const OURS: &str = "lesson.";

/// What stands in many lessons, the longest of pieces that begin alike first; the first is written as the character
/// 1. Those of a version never change.
const OFTEN: [&str; 31] = [
    r#","plan":{"classroom_answers":[],"curricula":[],"fetch":[],"goes_wrong":[],"parts":[{"doing":""#,
    r#","plan":{"classroom_answers":["#,
    r#"],"curricula":["#,
    r#"],"fetch":["#,
    r#"],"goes_wrong":["#,
    r#"],"parts":[{"doing":""#,
    r#"{"answer":{"kind":"choice","open":true,"options":[{"text":""#,
    r#"{"answer":{"kind":"number","of":""#,
    r#"{"answer":{"kind":"curve","of":""#,
    r#"{"answer":{"kind":"words"},"explanation":""#,
    r#"{"answer":{"from":""#,
    r#"","kind":"choice","options":[{"is":""#,
    r#"rises","text":""#,
    r#""},{"is":"falls","text":""#,
    r#""},{"is":"stays","text":""#,
    r#""},{"text":""#,
    r#""},"explanation":""#,
    r#"","free":[""#,
    r#""],"observe":""#,
    r#"","observe":""#,
    r#""],"question":""#,
    r#"","question":""#,
    r#"","reason":true,"setup":{"jump":{"set":{"#,
    r#"","setup":{"jump":{"set":{"#,
    r#""start":""#,
    r#""}},"title":""#,
    r#"","variants":{"changed":{"#,
    r#"changed."#,
    r#"{"for_whom":""#,
    r#""minutes":"#,
    r#""turns_aloft_lesson":1}"#,
];

/// The character that stands for a piece.
fn stands_for(place: usize) -> char {
    char::from(place as u8 + 1)
}

/// The text for behind the `#`, without it; none where it would be too long.
pub fn to_fragment(lesson: &Lesson) -> Option<String> {
    let mut text = lesson.to_json().to_string();
    for (place, piece) in OFTEN.iter().enumerate() {
        text = text.replace(piece, stands_for(place).encode_utf8(&mut [0; 4]));
    }
    let link = seal(OURS, text.into_bytes(), VERSION);
    (link.len() <= LONGEST).then_some(link)
}

/// Reads what stands behind the `#`; none if that is no link to a lesson at all.
pub fn from_fragment(fragment: &str) -> Option<Result<Lesson, Unreadable>> {
    fragment.strip_prefix(OURS).map(read)
}

fn read(rest: &str) -> Result<Lesson, Unreadable> {
    let bytes = unseal(rest, LONGEST, VERSION).map_err(Unreadable::Link)?.0;
    let damaged = |_| Unreadable::Link(BadLink::Damaged);
    let mut text = String::from_utf8(bytes).map_err(damaged)?;
    for (place, piece) in OFTEN.iter().enumerate() {
        text = text.replace(stands_for(place), piece);
    }
    Lesson::open_file(&text)
}
