//! What is wrong with the file of an attempt, in one sentence each.

use crate::Sentence;
use crate::error::in_backticks;
use crate::number::{plain, shown};
use turns_aloft_attempt::file::{MEASURED, VERSION};
use turns_aloft_attempt::film::PointOf;
use turns_aloft_attempt::unreadable::Unreadable;
use turns_aloft_words::{say, text};

impl Sentence for Unreadable {
    fn sentence(&self) -> String {
        match self {
            Self::TooLarge => text("attempt-too-large").to_owned(),
            Self::NotText(why) => why.sentence(),
            Self::NotJson(why) => say!("attempt-not-json", why = why.sentence()),
            Self::NotAnAttempt => text("attempt-none").to_owned(),
            Self::Newer(version) => {
                say!("attempt-newer", version = *version, known = VERSION)
            }
            Self::Broken(why) => say!("attempt-broken", why = why.sentence()),
            Self::Jump(why) => say!("attempt-jump", why = why.sentence()),
            Self::NotMeasured => say!("attempt-not-measured", known = in_backticks(&MEASURED)),
            Self::OutOfRange { key, value, range } => say!(
                "attempt-out-of-range",
                key = *key,
                value = plain(*value),
                least = plain(range.0),
                most = plain(range.1)
            ),
            Self::TooMany { key, most } => say!("attempt-too-many", key = *key, most = *most),
            Self::UnknownPoint(name) => say!(
                "attempt-unknown-point",
                value = shown(name),
                known = in_backticks(&PointOf::ALL.map(PointOf::key))
            ),
        }
    }
}
