//! What is wrong with a lesson, or with the answers to one, in one sentence each.

use crate::Sentence;
use crate::error::in_backticks;
use crate::number::{plain, shortened, shown};
use turns_aloft_lesson::answer::Meaning;
use turns_aloft_lesson::fault::{Unreadable, Wrong};
use turns_aloft_lesson::figure::NoFigure;
use turns_aloft_lesson::progress_file;
use turns_aloft_lesson::quantity::Quantity;
use turns_aloft_lesson::setup::Refused;
use turns_aloft_lesson::{Unanswerable, file};
use turns_aloft_scenario::starts;
use turns_aloft_words::{Language, say, text};

/// Characters of a list of names at most.
const LONGEST_LIST: usize = 160;

fn list(names: &[&str]) -> String {
    shortened(&in_backticks(names), LONGEST_LIST)
}

/// What a lesson that comes with the program is called.
pub fn title(name: &str) -> &'static str {
    match name {
        "what-stays-the-same" => text("lesson-title-what-stays-the-same"),
        "higher-or-tighter" => text("lesson-title-higher-or-tighter"),
        "can-anybody-do-five" => text("lesson-title-can-anybody-do-five"),
        _ => text("lesson-title-arms-in"),
    }
}

impl Sentence for Unreadable {
    fn sentence(&self) -> String {
        match self {
            Self::TooLarge => text("lesson-too-large").to_owned(),
            Self::NotText(why) => why.sentence(),
            Self::NotJson(why) => say!("lesson-not-json", why = why.sentence()),
            Self::NotALesson => text("lesson-none").to_owned(),
            Self::Newer(version) => {
                say!("lesson-newer", version = *version, known = file::VERSION)
            }
            Self::Wrong(why) => say!("lesson-broken", why = why.sentence()),
            Self::Step { number, why } => {
                say!("lesson-step-broken", number = *number, why = why.sentence())
            }
        }
    }
}

impl Sentence for progress_file::Unreadable {
    fn sentence(&self) -> String {
        match self {
            Self::TooLarge => text("answers-too-large").to_owned(),
            Self::NotJson(why) => say!("answers-not-json", why = why.sentence()),
            Self::NotAnswers => text("answers-none").to_owned(),
            Self::Newer(version) => say!(
                "answers-newer",
                version = *version,
                known = progress_file::VERSION
            ),
            Self::OtherLesson => text("answers-other-lesson").to_owned(),
            Self::Wrong(why) => say!("answers-broken", why = why.sentence()),
            Self::Step { number, why } => {
                say!(
                    "answers-step-broken",
                    number = *number,
                    why = why.sentence()
                )
            }
        }
    }
}

impl Sentence for Wrong {
    fn sentence(&self) -> String {
        match self {
            Self::Broken(why) => why.sentence(),
            Self::NoText(key) => say!("lesson-no-text", key = *key),
            Self::LongText { key, most } => say!("lesson-long-text", key = *key, most = *most),
            Self::UnknownLanguage { key, language } => say!(
                "lesson-unknown-language",
                key = *key,
                language = shown(language),
                known = in_backticks(&Language::ALL.map(Language::tag))
            ),
            Self::TooMany { key, most } => say!("lesson-too-many", key = *key, most = *most),
            Self::TooFew { key, least } => say!("lesson-too-few", key = *key, least = *least),
            Self::OutOfRange { key, value, range } => say!(
                "number-out-of-range",
                key = *key,
                value = plain(*value),
                least = plain(range.0),
                most = plain(range.1)
            ),
            Self::Minutes { parts, lesson } => {
                say!("lesson-minutes", parts = *parts, lesson = *lesson)
            }
            Self::NotOneOf(known) => say!("lesson-not-one-of", known = in_backticks(known)),
            Self::UnknownWord {
                key,
                written,
                known,
            } => say!(
                "word-unknown",
                key = *key,
                value = shown(written),
                known = in_backticks(known)
            ),
            Self::UnknownStart(name) => {
                let known: Vec<&str> = starts::all().iter().map(|start| start.name).collect();
                say!(
                    "lesson-unknown-start",
                    value = shown(name),
                    known = list(&known)
                )
            }
            Self::Jump(why) => why.sentence(),
            Self::Refused(why) => why.sentence(),
            Self::Programme(why) => why.sentence(),
            Self::NotAValue(key) => say!("lesson-not-a-value", key = shown(key)),
            Self::NotRising => text("lesson-not-rising").to_owned(),
            Self::OddName(name) => say!("lesson-odd-name", value = shown(name)),
            Self::UnknownFree { key, known } => say!(
                "lesson-unknown-free",
                value = shown(key),
                known = list(known)
            ),
            Self::FreeTwice(key) => say!("lesson-free-twice", key = *key),
            Self::NothingSetUp(key) => say!("lesson-nothing-set-up", key = *key),
            Self::NoFigure { key, why } => no_figure(key, why),
            Self::NotOfSetup(quantity) => say!("lesson-not-of-setup", key = quantity.key()),
            Self::UnknownCurve { curve, known } => say!(
                "lesson-unknown-curve",
                value = shown(curve),
                known = list(known)
            ),
            Self::SameOption(number) => say!("lesson-same-option", number = *number),
            Self::NotItsAnswer => text("lesson-not-its-answer").to_owned(),
        }
    }
}

fn no_figure(key: &'static str, why: &NoFigure) -> String {
    match why {
        NoFigure::Quantity(name) => {
            let known: Vec<&str> = Quantity::all().map(Quantity::key).collect();
            say!(
                "lesson-no-quantity",
                key = key,
                value = shown(name),
                known = list(&known)
            )
        }
        NoFigure::Variant(name) => say!("lesson-no-variant", key = key, value = shown(name)),
        NoFigure::Brace => say!("lesson-no-brace", key = key),
    }
}

impl Sentence for Refused {
    fn sentence(&self) -> String {
        match self {
            Self::Jump(why) => shortened(&why.sentence(), 2 * LONGEST_LIST),
            Self::Turntable(why) => why.sentence(),
            Self::Plan(why) => why.sentence(),
            Self::WorkedExample => text("lesson-fixed-example").to_owned(),
        }
    }
}

impl Sentence for Unanswerable {
    fn sentence(&self) -> String {
        match self {
            Self::NotFlown => text("lesson-not-flown").to_owned(),
            Self::Tie([first, second]) => {
                say!("lesson-tie", first = *first + 1, second = *second + 1)
            }
            Self::NotAmongOptions(meaning) => text(match meaning {
                Meaning::Rises => "lesson-none-rises",
                Meaning::Falls => "lesson-none-falls",
                Meaning::Stays => "lesson-none-stays",
            })
            .to_owned(),
        }
    }
}
