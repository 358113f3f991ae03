//! The help: reached from the settings, closed by touch and by Escape, and readable at every size.

use egui::{Key, Rect, pos2, vec2};

use crate::harness::{
    Page, SIZES, controls, has, open, press, press_target, says, settle, targets, texts,
};
use turns_aloft::appearance;
use turns_aloft::session::Question;
use turns_aloft::words::Language;

fn opened(size: [f32; 2], language: Language) -> Page {
    let mut page = open(size, language, Question::Map);
    press_target(&mut page, "Units");
    press_target(&mut page, "help");
    page
}

/// Two touches open it, one closes it, and the question in sight is still there.
#[test]
fn it_opens_from_the_settings_and_closes() {
    for size in SIZES {
        let mut page = opened(size, Language::English);
        assert!(!has(&page, "Map"), "{size:?}: nothing is behind it");
        press(&mut page, "Close");
        assert!(has(&page, "Map"), "{size:?}");
        assert_eq!(page.state().session.question(), Question::Map);
        let mut page = opened(size, Language::German);
        page.key_press(Key::Escape);
        settle(&mut page);
        assert!(has(&page, "Karte"), "{size:?}");
    }
}

#[test]
fn it_names_the_questions_the_estimates_and_who_decides() {
    for (language, words) in [
        (Language::English, ["estimate", "coach", "Uncertainty"]),
        (Language::German, ["Schätzung", "Trainer", "Unsicherheit"]),
    ] {
        let page = opened(SIZES[0], language);
        for question in Question::ALL {
            assert!(says(&page, &format!("{}: ", question.label())));
        }
        for word in words {
            assert!(says(&page, word), "{word}");
        }
        // A screen reader hears all of it with the button that closes it.
        let [close] = &controls(&page)[..] else {
            panic!("one control");
        };
        let read = close.about.as_deref().expect("it is described");
        for text in texts(&page) {
            // Headings end without a sign there and with one here.
            let said = text.text == close.name || read.contains(text.text.as_str());
            let is_title = text.text.starts_with("Help") || text.text.starts_with("Hilfe");
            let is_heading = !text.text.ends_with(['.', '?', '!']);
            assert!(said || is_title || is_heading, "{}", text.text);
        }
    }
}

#[test]
fn it_has_room_at_every_size() {
    for large in [false, true] {
        for language in [Language::English, Language::German] {
            for size in SIZES {
                let choose = |large| {
                    let mut choice = appearance::chosen();
                    choice.large = large;
                    appearance::choose(choice);
                };
                choose(false);
                let mut page = opened(size, language);
                choose(large);
                settle(&mut page);
                let zoom = page.ctx.zoom_factor();
                let screen = Rect::from_min_size(pos2(0.0, 0.0), vec2(size[0], size[1]));
                let state = format!("{language:?} {size:?} large {large}");
                let close = targets()["help close"];
                assert!(screen.contains_rect(close), "{state}: {close:?}");
                assert!(close.height() >= 44.0 && close.width() >= 44.0);
                let all = texts(&page);
                assert!(all.len() >= 7, "{state}: {}", all.len());
                for text in all {
                    assert!(!text.elided && text.size >= 13.0, "{state}: {text:?}");
                    let letters = text.letters * zoom;
                    assert!(
                        letters.left() >= 0.0 && letters.right() <= size[0],
                        "{state}: {text:?}"
                    );
                }
            }
        }
    }
}
