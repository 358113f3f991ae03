//! The names of the controls for screen readers, and of the touch targets for scripts.

use std::collections::BTreeSet;

use egui::Rect;
use egui::accesskit::Role;

use crate::harness::{Control, SIZES, TABLET, at_target, controls, open, press_target, targets};
use crate::slow_flight;
use turns_aloft::session::Question;
use turns_aloft::words::Language;

const LANGUAGES: [Language; 2] = [Language::English, Language::German];

/// Not a control: its touch target is for reading a value off the screen, or AccessKit has sliders
/// instead.
fn is_not_control(target: &str) -> bool {
    target == "map" || target.starts_with("half-width:")
}

/// Opens all sections and shows the range.
fn unfold(page: &mut crate::harness::Page) {
    if targets().contains_key("uncertainty") {
        press_target(page, "uncertainty");
    }
    let folds: Vec<String> = targets().into_keys().collect();
    for fold in folds.iter().filter(|name| name.starts_with("fold:")) {
        if *fold != "fold:All readouts" && *fold != "fold:Charts over the flight" {
            press_target(page, fold);
        }
    }
}

#[test]
fn every_touch_target_is_a_control_and_every_control_a_touch_target() {
    for language in LANGUAGES {
        for size in SIZES {
            for question in Question::ALL {
                let mut page = open(size, language, question);
                unfold(&mut page);
                let controls = controls(&page);
                assert!(
                    controls.len() > 20,
                    "{question:?}: {} controls",
                    controls.len()
                );
                check_names(&controls);
                let targets = targets();
                let at =
                    |a: Rect, b: Rect| a.min.distance(b.min) < 1.0 && a.max.distance(b.max) < 1.0;
                for (target, place) in &targets {
                    let found = controls.iter().any(|control| at(control.rect, *place));
                    assert!(
                        found || is_not_control(target),
                        "{size:?} {question:?} {target}"
                    );
                }
                for control in &controls {
                    let found = targets.values().any(|place| at(control.rect, *place));
                    assert!(found, "{size:?} {question:?} {control:?}");
                }
            }
        }
    }
}

/// So are those of a flight by hand, with the same names in both languages.
#[test]
fn a_flight_by_hand_is_operated_by_names() {
    for size in SIZES {
        let names = LANGUAGES.map(|language| {
            let mut page = slow_flight::begin(size, language, true);
            let mut names = Vec::new();
            for _ in 0..3 {
                check_names(&controls(&page));
                for target in targets().into_keys() {
                    let found = at_target(&page, &target);
                    assert!(found.is_some(), "{size:?} {language:?} {target}");
                    names.push(target);
                }
                if targets().contains_key("take off") {
                    press_target(&mut page, "take off");
                } else {
                    slow_flight::land(&mut page);
                }
            }
            names
        });
        assert_eq!(names[0], names[1], "{size:?}");
    }
}

fn check_names(controls: &[Control]) {
    let mut names = BTreeSet::new();
    for control in controls {
        assert!(!control.name.trim().is_empty(), "{control:?}");
        assert!(names.insert(&control.name), "two of one name: {control:?}");
        if control.role != Role::Button {
            let value = control.value.as_deref().unwrap_or_default();
            assert!(!value.is_empty(), "says its value: {control:?}");
        }
    }
}

#[test]
fn targets_have_the_same_names_in_both_languages() {
    for size in SIZES {
        for question in Question::ALL {
            let names = LANGUAGES.map(|language| {
                let mut page = open(size, language, question);
                unfold(&mut page);
                targets().into_keys().collect::<BTreeSet<_>>()
            });
            assert_eq!(names[0], names[1], "{size:?} {question:?}");
        }
    }
}

#[test]
fn every_explanation_is_a_sentence() {
    let page = open(TABLET, Language::English, Question::Jump);
    let all = controls(&page);
    let explained: Vec<&Control> = all
        .iter()
        .filter(|control| control.name.starts_with("What is meant by "))
        .collect();
    assert!(explained.len() > 20);
    for control in explained {
        let about = control.about.as_deref().unwrap_or_default();
        assert!(about.ends_with('.'), "{control:?}");
    }
}

/// Names that are the same in both languages: of jumps, and of the languages themselves.
const SAME: [&str; 8] = [
    "Axel",
    "Salchow",
    "Flip",
    "Lutz",
    "English",
    "Deutsch",
    "Ideal",
    "L = I · ω",
];

/// Names without words, such as numbers and unit symbols, are the same in both languages.
#[test]
fn every_control_is_named_in_german() {
    for question in Question::ALL {
        let [english, german] = LANGUAGES.map(|language| {
            let mut page = open(TABLET, language, question);
            unfold(&mut page);
            controls(&page)
        });
        assert_eq!(english.len(), german.len());
        for (english, german) in english.iter().zip(&german) {
            let has_words = german.name.chars().filter(|c| c.is_alphabetic()).count() > 2;
            if has_words && !SAME.contains(&german.name.as_str()) {
                assert_ne!(english.name, german.name);
            }
        }
    }
}
