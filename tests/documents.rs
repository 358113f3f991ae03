//! Documents made on request are those that the same jump and the same lesson make directly.

use turns_aloft::analysis::turn_try::TurnTry;
use turns_aloft::documents::{Document, Request, made};
use turns_aloft::lesson::names::NAMES;
use turns_aloft::lesson::{Lesson, Progress};
use turns_aloft::picture::{Picture, to_svg};
use turns_aloft::scenario::starts;
use turns_aloft::scenario::units::Units;
use turns_aloft::sheet;
use turns_aloft::words::{Language, set_language};

const ADDRESS: &str = "https://example.org/";

fn request(document: Document, language: Language, jump: &str) -> Request {
    Request {
        document,
        language: language.tag().to_owned(),
        units: Units::default(),
        address: Some(ADDRESS.to_owned()),
        jump: jump.to_owned(),
        is_try: false,
        lesson: None,
    }
}

#[test]
fn of_a_jump() {
    for (start, language) in starts::all().iter().zip(Language::ALL.into_iter().cycle()) {
        let (scenario, jump) = (&start.scenario, start.scenario.fly());
        let tried = TurnTry::new(scenario, &jump, scenario.jump_turns);
        for tried in [None, Some(&tried)] {
            let picture = Picture {
                scenario,
                jump: &jump,
                units: &Units::default(),
                tried,
                address: Some(ADDRESS),
            };
            let of_picture = Request {
                is_try: tried.is_some(),
                ..request(Document::Picture, language, &scenario.to_file())
            };
            let of_sheet = request(Document::Coach, language, &scenario.to_file());
            set_language(language);
            let (svg, html) = (to_svg(&picture), sheet::coach(&picture));
            assert_eq!(made(&of_picture.to_text()), Ok(svg), "{}", start.name);
            if tried.is_none() {
                assert_eq!(made(&of_sheet.to_text()), Ok(html), "{}", start.name);
            }
        }
    }
    set_language(Language::English);
}

#[test]
fn of_a_lesson() {
    let jump = starts::all()[0].scenario.to_file();
    for name in NAMES {
        let path = format!("assets/lessons/{name}.lesson.json");
        let file = std::fs::read_to_string(path).expect("a lesson");
        let lesson = Lesson::open_file(&file).expect("it comes with the page");
        let progress = Progress::new(&lesson);
        let units = Units::default();
        set_language(Language::German);
        let direct = [
            (
                Document::Pupil,
                sheet::pupil(&lesson, &units, Some(ADDRESS)),
            ),
            (
                Document::Answers,
                sheet::answers(&lesson, &units, Some(ADDRESS)).expect("it has answers"),
            ),
            (Document::Plan, sheet::plan(&lesson, Some(ADDRESS))),
            (
                Document::Results,
                sheet::results(&lesson, &progress, &units),
            ),
        ];
        for (document, html) in direct {
            let asked = Request {
                lesson: Some([file.clone(), progress.to_file(&lesson)]),
                ..request(document, Language::German, &jump)
            };
            assert_eq!(made(&asked.to_text()), Ok(html), "{name} {document:?}");
        }
    }
    set_language(Language::English);
}

#[test]
fn what_cannot_be_made_is_one_sentence() {
    let lesson = request(Document::Pupil, Language::English, "");
    let jump = request(Document::Coach, Language::English, "{}");
    for asked in [lesson.to_text(), jump.to_text(), "no request".to_owned()] {
        let why = made(&asked).expect_err("nothing is made of it");
        assert!(!why.is_empty() && !why.contains('\n'), "{why}");
    }
}
