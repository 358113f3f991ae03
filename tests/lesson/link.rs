//! A lesson as a link: what is sent is what is opened, and a bad one is said.

use turns_aloft::describe::Sentence;
use turns_aloft::lesson::link::{LONGEST, from_fragment, to_fragment};
use turns_aloft::lesson::{Lesson, Said};

use crate::{one_step, opened, step};

fn short() -> Lesson {
    opened(&one_step(&step()))
}

/// What is said of a bad one.
#[track_caller]
fn said(fragment: &str) -> String {
    let read = from_fragment(fragment).expect("a link to a lesson");
    read.expect_err("a bad one").sentence()
}

#[test]
fn what_is_sent_is_what_is_opened() {
    let lesson = short();
    let link = to_fragment(&lesson).expect("it is short");
    assert_eq!(from_fragment(&link), Some(Ok(lesson)));
    // Only what no program writes differently in an address (RFC 3986, unreserved).
    let plain = |c: char| c.is_ascii_alphanumeric() || "-._~".contains(c);
    assert!(link.chars().all(plain), "{link}");
}

#[test]
fn every_letter_that_is_lost_or_changed_is_noticed() {
    let link = to_fragment(&short()).expect("it is short");
    let (mark, rest) = link.split_at("lesson.".len());
    for place in 0..rest.len() {
        let cut = format!("{mark}{}", &rest[..place]);
        assert!(said(&cut).contains("damaged"), "{cut}");
        let other = if rest.as_bytes()[place] == b'A' {
            "B"
        } else {
            "A"
        };
        let changed = format!("{mark}{}{other}{}", &rest[..place], &rest[place + 1..]);
        assert!(said(&changed).contains("damaged"), "{changed}");
    }
}

#[test]
fn what_cannot_be_opened_is_said() {
    assert!(said(&format!("lesson.{}.1", "A".repeat(LONGEST))).contains("too long"));
    let newer = to_fragment(&short())
        .expect("it is short")
        .replace(".1", ".7");
    assert!(said(&newer).contains('7'), "{}", said(&newer));
    assert_eq!(from_fragment("jump.AAAA.2"), None);
    assert_eq!(from_fragment("lesson"), None);
}

#[test]
fn a_long_lesson_is_no_link() {
    let mut lesson = short();
    let mut step = lesson.steps[0].clone();
    step.explanation = Said::Alike("And so on. ".repeat(40));
    while lesson.steps.len() < 20 {
        lesson.steps.push(step.clone());
    }
    assert_eq!(to_fragment(&lesson), None);
}
