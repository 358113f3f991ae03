//! Facts about the texts: both languages have the same messages, every message used exists and
//! every message is used, and in German no English text is left.

mod words {
    pub mod messages;
    pub mod shown_texts;
    pub mod source;
}

use std::collections::{BTreeMap, BTreeSet};

use words::messages::{Message, all_messages};
use words::shown_texts::{BROKEN_JSON, ShownText, all_texts, has_word, texts_after};
use words::source::{Use, uses};

use turns_aloft::analysis::uncertainty::UncertainInput;
use turns_aloft::describe::start::{shown_name, shown_note};
use turns_aloft::describe::unit::UnitText;
use turns_aloft::describe::{About, Label, Sentence};
use turns_aloft::lesson::Quantity;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::{Scenario, link, starts};
use turns_aloft::session::Session;
use turns_aloft::session::compare::Which;
use turns_aloft::session::readings::readings;
use turns_aloft::words::{Language, decimal, number, set_language, text, with_decimal_sign};

fn messages(language: Language) -> BTreeMap<String, Message> {
    all_messages(language).expect("the messages are read")
}

fn kebab(key: &str) -> String {
    key.replace('_', "-")
}

/// The ids that the source puts together from a name: those of the numbers, of their half-widths and
/// of the starting points.
fn families() -> BTreeSet<String> {
    let numbers = Parameter::ALL.map(Parameter::key).into_iter();
    let inputs = UncertainInput::ALL.map(UncertainInput::key).into_iter();
    let mut ids = BTreeSet::new();
    for name in numbers.clone().chain(inputs.clone()).map(kebab) {
        ids.insert(format!("key-{name}"));
        ids.insert(format!("key-{name}-inline"));
    }
    ids.extend(Quantity::all().map(|it| format!("quantity-{}", kebab(it.key()))));
    ids.extend(numbers.map(|name| format!("key-{}-about", kebab(name))));
    ids.extend(inputs.map(|name| format!("half-width-{}-about", kebab(name))));
    ids.extend(UncertainInput::ALL.map(|input| {
        let name = input.kind().without_unit(input.key());
        format!("range-by-{}", kebab(name))
    }));
    ids.extend(
        starts::all()
            .iter()
            .flat_map(|start| ["name", "note"].map(|of| format!("start-{}-{of}", start.name))),
    );
    ids
}

/// The same of those that are said with values, which are some of these.
fn families_with_values() -> BTreeMap<String, &'static [&'static str]> {
    let mut ids = BTreeMap::<String, &'static [&'static str]>::new();
    for parameter in Parameter::ALL {
        let row = parameter.row();
        if row.lever.is_some() {
            ids.insert(format!("step-{}", kebab(row.key)), &["step"]);
        }
        if row.remedy.is_some() {
            let name = kebab(row.kind.without_unit(row.key));
            ids.insert(format!("why-{name}"), &["from", "to", "turns"]);
        }
    }
    ids
}

/// What one language says with these values, the other does too.
#[test]
fn both_languages_have_the_same_messages_with_the_same_values() {
    let [english, german] = Language::ALL.map(messages);
    let names = |of: &BTreeMap<String, Message>| of.keys().cloned().collect::<BTreeSet<_>>();
    assert_eq!(names(&english), names(&german));
    assert!(english.len() > 300, "{}", english.len());
    for (id, one) in &english {
        let other = &german[id];
        assert_eq!(one.values, other.values, "{id}");
        assert_eq!(one.attributes, other.attributes, "{id}");
        // Plurals are chosen by the same value.
        assert_eq!(one.chosen_by, other.chosen_by, "{id}");
    }
}

/// A message is written in kebab case, and what refers to another one finds it.
#[test]
fn names_are_in_kebab_case() {
    for language in Language::ALL {
        for (id, message) in messages(language) {
            let plain = id.chars().all(|c| c.is_ascii_alphanumeric() || c == '-');
            assert!(plain && !id.contains("--"), "{id}");
            assert!(message.refers_to.is_empty(), "{id}");
        }
    }
}

/// Every id in the source has a message, which has just the values that it is given.
#[test]
fn every_id_in_the_source_has_its_message() {
    let known = messages(Language::English);
    let uses = uses();
    assert!(uses.len() > 300, "{}", uses.len());
    for Use { at, id, values } in uses {
        let message = known.get(&id);
        let message = message.unwrap_or_else(|| panic!("{at}: no message {id}"));
        assert_eq!(message.values, values, "{at}: {id}");
    }
    for id in families() {
        let message = known.get(&id);
        let message = message.unwrap_or_else(|| panic!("no message {id}"));
        assert!(message.values.is_empty(), "{id}");
    }
    for (id, values) in families_with_values() {
        let message = known.get(&id);
        let message = message.unwrap_or_else(|| panic!("no message {id}"));
        let given = |value: &String| values.contains(&value.as_str());
        assert!(
            !message.values.is_empty() && message.values.iter().all(given),
            "{id}"
        );
    }
}

/// No message is left over: each is named in the source or the page, or belongs to a family.
#[test]
fn every_message_is_said_somewhere() {
    let mut said = families();
    said.extend(families_with_values().into_keys());
    said.extend(words::source::quoted());
    for id in messages(Language::English).keys() {
        assert!(said.contains(id), "{id} is said nowhere");
    }
}

/// A message without values is said as it stands, in both languages; its name would be said where
/// that fails.
#[test]
fn messages_without_values_have_a_text() {
    for language in Language::ALL {
        set_language(language);
        for (id, message) in messages(language) {
            if message.values.is_empty() && message.chosen_by.is_empty() {
                let id: &'static str = id.leak();
                assert_eq!(Some(text(id)), message.plain.as_deref(), "{id}");
            }
        }
    }
}

/// What a starting point is called in English is what its file says.
#[test]
fn starting_points_are_called_as_in_their_files() {
    for start in starts::all() {
        set_language(Language::English);
        assert_eq!(start.label(), start.scenario.name);
        assert_eq!(shown_name(&start.scenario.name), start.label());
        assert_eq!(start.about(), start.scenario.note);
        set_language(Language::German);
        assert_ne!(start.label(), start.scenario.name);
        assert_eq!(shown_name(&start.scenario.name), start.label());
        assert_ne!(start.about(), start.scenario.note);
        assert_eq!(shown_note(&start.scenario.note), start.about());
    }
    assert_eq!(shown_name("Monday"), "Monday");
    assert_eq!(shown_note("Monday"), "Monday");
}

/// Words that are the same in both languages: units, names of jumps and the sport's own signs.
const ALIKE: [&str; 27] = [
    "cm", "m", "kg", "lb", "s", "ms", "rad", "J", "N", "W", "kB", "MB", "x", "q", "t", "Salchow",
    "Flip", "Lutz", "Axel", "Phase", "Ideal", "in", "A", "B", "Turns", "Aloft", "Monday",
];

/// Words that no German text has.
const ENGLISH: [&str; 19] = [
    "the",
    "of",
    "and",
    "is",
    "to",
    "or",
    "at",
    "by",
    "with",
    "from",
    "this",
    "that",
    "not",
    "has",
    "turns",
    "duplicate",
    "no",
    "it",
    "one",
];

/// Without what stands in files, which is quoted as it stands there.
fn without_quotations(text: &str) -> String {
    text.split('`').step_by(2).collect()
}

fn letters(text: &str) -> Vec<&str> {
    text.split(|c: char| !c.is_alphabetic())
        .filter(|word| !word.is_empty())
        .collect()
}

/// Every text that a visit brings up, in the order in which it does: none is the English one, none
/// has an English sentence in it or the name of a message, and none a decimal point.
#[test]
fn with_german_spoken_nothing_english_is_left() {
    set_language(Language::English);
    let english = all_texts();
    set_language(Language::German);
    let german = all_texts();
    assert_eq!(english.len(), german.len());
    assert!(german.len() > 700, "{}", german.len());
    let messages = messages(Language::English);
    let said: Vec<&str> = messages
        .values()
        .filter_map(|message| message.plain.as_deref())
        .filter(|plain| plain.len() > 4 && letters(plain).iter().any(|it| !ALIKE.contains(it)))
        .collect();
    for (english, german) in english.iter().zip(&german) {
        let ShownText { place, text } = german;
        assert_eq!(&english.place, place);
        let describe = letters(text);
        if describe.iter().any(|word| !ALIKE.contains(word)) {
            assert_ne!(describe, letters(&english.text), "{place}: {text}");
        }
        for word in ENGLISH {
            assert!(!has_word(text, word), "{word}: {place}: {text}");
        }
        let own = without_quotations(text);
        for words in &said {
            assert!(!has_word(&own, words), "{words}: {place}: {text}");
        }
        for id in messages.keys() {
            assert!(!has_word(text, id), "{place}: {text}");
        }
        assert!(!has_point(text), "{place}: {text}");
        assert!(
            !text.contains("{$") && !text.contains("{ $"),
            "{place}: {text}"
        );
    }
    // The same look at English finds what it looks for.
    assert!(english.iter().any(|it| has_point(&it.text)));
    for word in ENGLISH {
        assert!(english.iter().any(|it| has_word(&it.text, word)), "{word}");
    }
    let all: String = english.iter().map(|it| it.text.clone() + " ").collect();
    assert!(said.iter().filter(|it| has_word(&all, it)).count() > 200);
}

/// A point between two digits.
fn has_point(text: &str) -> bool {
    let bytes = text.as_bytes();
    bytes
        .windows(3)
        .any(|three| three[0].is_ascii_digit() && three[1] == b'.' && three[2].is_ascii_digit())
}

/// Where a text is no JSON is said in either language, as the reader of JSON has it, and whether it is
/// for ending early.
#[test]
fn where_a_file_is_broken_is_said() {
    for json in BROKEN_JSON {
        let why = serde_json::from_str::<serde_json::Value>(json).expect_err("it is broken");
        let (line, column) = (why.line(), why.column());
        for (language, place, early) in [
            (
                Language::English,
                format!("at line {line} column {column}"),
                "it ends before it is complete",
            ),
            (
                Language::German,
                format!("Zeile {line}, Spalte {column}"),
                "hört mittendrin auf",
            ),
        ] {
            set_language(language);
            let said = Scenario::from_file(json)
                .expect_err("it is broken")
                .sentence();
            assert!(said.contains(&place), "{said}");
            assert_eq!(said.contains(early), why.is_eof(), "{said}");
        }
    }
}

/// What has been worked out before the language changes is told in the new one.
#[test]
fn another_language_is_spoken_at_once() {
    set_language(Language::German);
    let german = texts_after(|_| ());
    set_language(Language::English);
    let turned = texts_after(|session: &mut Session| {
        set_language(Language::German);
        session.retranslate();
    });
    assert_eq!(german, turned);
}

/// The last visit may have spoken another language.
#[test]
fn what_was_kept_over_a_reload_is_told_in_the_language_spoken() {
    let link = link::to_fragment(&starts::all()[2].scenario, Some(&starts::all()[3].scenario));
    let name = |reference: &dyn Fn(&mut Session), again: Language| {
        set_language(Language::German);
        let mut session = Session::default();
        reference(&mut session);
        let kept = session.keep();
        set_language(again);
        let mut session = Session::default();
        session.restore(&kept);
        session.reference().expect("it was laid").name.clone()
    };
    let start =
        |session: &mut Session| session.set_reference(Which::Start("trampoline".to_owned()));
    let opened = |session: &mut Session| session.set_reference(Which::AsOpened);
    let linked = |session: &mut Session| session.open_link(&link);
    assert_eq!(name(&start, Language::English), "Trampoline turn");
    assert_eq!(name(&start, Language::German), "Auf dem Trampolin");
    let first = "Half a turn short, as opened";
    assert_eq!(name(&opened, Language::English), first);
    assert_eq!(name(&linked, Language::English), "Senior triple");
    assert_ne!(name(&linked, Language::German), "Senior triple");
}

/// Signs of the Unicode CLDR for de: decimal ",".
#[test]
fn numbers_have_the_languages_decimal_sign() {
    set_language(Language::English);
    assert_eq!(decimal(3.456, 2), "3.46");
    set_language(Language::German);
    assert_eq!(decimal(3.456, 2), "3,46");
    assert_eq!(decimal(-0.5, 1), "-0,5");
    assert_eq!(decimal(12.0, 0), "12");
    assert_eq!(with_decimal_sign("0.65 s".to_owned()), "0,65 s");
    for language in Language::ALL {
        set_language(language);
        for typed in ["0,65", "0.65", " 0.65 "] {
            assert_eq!(number(typed), Some(0.65), "{typed}");
        }
        assert_eq!(number("−3,5"), Some(-3.5));
        for typed in ["", "drei", "1,2,3", "inf", "nan", "1e999"] {
            assert_eq!(number(typed), None, "{typed}");
        }
    }
}

/// A unit's number, its sign and both.
#[test]
fn units_follow_the_language() {
    let mut session = Session::default();
    let rate = Parameter::named("takeoff_rate_rad_s").expect("a number");
    let lean = Parameter::named("lean_rad").expect("a number");
    let shown = |session: &Session, kind, si| session.units().of(kind).text(si);
    session.set_units(turns_aloft::scenario::units::Units {
        rate: turns_aloft::scenario::units::RateUnit::TurnsPerS,
        ..*session.units()
    });
    set_language(Language::English);
    assert_eq!(shown(&session, rate.kind(), 6.4), "1.02 turns/s");
    assert_eq!(shown(&session, lean.kind(), 0.1), "5.7 deg");
    assert_eq!(shown(&session, lean.kind(), -1e-9), "0.0 deg");
    set_language(Language::German);
    assert_eq!(shown(&session, rate.kind(), 6.4), "1,02 U/s");
    assert_eq!(shown(&session, lean.kind(), 0.1), "5,7°");
    assert_eq!(shown(&session, lean.kind(), -1e-9), "0,0°");
}

#[test]
fn the_first_wish_that_is_written_here_is_spoken() {
    let of = |wished: &[&str]| Language::of_tags(wished.iter().copied());
    assert_eq!(of(&["fr-CA", "de-AT", "en"]), Language::German);
    assert_eq!(of(&["fr", "en-GB", "de"]), Language::English);
    assert_eq!(of(&["de-Latn-CH-1996"]), Language::German);
    assert_eq!(of(&["DE"]), Language::German);
    assert_eq!(of(&["", "*", "x_!", "de"]), Language::German);
    assert_eq!(of(&["fr", "it"]), Language::English);
    assert_eq!(of(&[]), Language::English);
    for language in Language::ALL {
        assert_eq!(of(&[language.tag()]), language);
    }
}

/// The command's answers are English, whatever its files hold: nobody speaks another language there.
#[test]
fn english_is_spoken_from_the_start() {
    assert_eq!(turns_aloft::words::language(), Language::English);
    let lines = readings(&Session::default());
    assert!(lines.iter().any(|line| line.label == "Turns in all"));
}
