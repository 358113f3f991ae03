//! Sheets of paper: what stands on them is what was flown, nothing is given away, nothing has to be fetched, and
//! what others have written stays text. How many pages they take is for the browser's tests.

use std::fs;
use std::path::Path;

use resvg::tiny_skia::{Pixmap, Transform};
use resvg::usvg::{self, Tree};
use serde_json::json;

use turns_aloft::describe::outcome::option;
use turns_aloft::describe::quantity::{figure_text, filled};
use turns_aloft::describe::turns::{turns_in_all, turns_text};
use turns_aloft::lesson::names::NAMES;
use turns_aloft::lesson::{Answer, Flights, Lesson, Prediction, Progress, Truth};
use turns_aloft::picture::Picture;
use turns_aloft::scenario::link::from_fragment;
use turns_aloft::scenario::starts;
use turns_aloft::scenario::units::Units;
use turns_aloft::sheet::{answers, coach, plan, pupil, results};
use turns_aloft::words::{Language, set_language};

const ADDRESS: &str = "https://example.org/turns-aloft/#lesson=one";

fn lesson(name: &str) -> Lesson {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("assets/lessons");
    let text = fs::read_to_string(folder.join(format!("{name}.lesson.json")));
    Lesson::open_file(&text.expect("a file of ours")).expect("a lesson in order")
}

fn escaped(text: &str) -> String {
    let html = text.replace('&', "&amp;").replace('<', "&lt;");
    html.replace('>', "&gt;").replace('"', "&quot;")
}

/// Every picture in a page.
fn pictures(html: &str) -> Vec<&str> {
    let starts = html.match_indices("<svg");
    starts
        .map(|(at, _)| {
            let rest = &html[at..];
            let end = rest.find("</svg>").expect("it ends");
            &rest[..end + "</svg>".len()]
        })
        .collect()
}

/// A page that a browser shows as it is: in its language, with one heading, with names for its pictures, and
/// with nothing from elsewhere.
#[track_caller]
fn is_a_page(html: &str, language: Language) {
    assert!(html.starts_with("<!doctype html>"), "{html}");
    assert!(html.contains(&format!("<html lang=\"{}\">", language.tag())));
    assert_eq!(html.matches("<h1>").count(), 1);
    assert_eq!(html.matches("<main>").count(), 1);
    for from_elsewhere in [" src=", " href=", "url(", "@import", "<script", "…", "NaN"] {
        assert!(!html.contains(from_elsewhere), "{from_elsewhere}");
    }
    for picture in pictures(html) {
        assert!(
            picture.contains("role=\"img\"") && picture.contains("aria-label=\""),
            "{picture}"
        );
        let options = usvg::Options::default();
        assert!(Tree::from_str(picture, &options).is_ok(), "{picture}");
    }
}

/// What a QR code says, as another library reads it.
fn read_back(svg: &str) -> String {
    let tree = Tree::from_str(svg, &usvg::Options::default()).expect("an SVG file");
    let mut pixels = Pixmap::new(750, 750).expect("a size");
    pixels.fill(resvg::tiny_skia::Color::WHITE);
    resvg::render(&tree, Transform::from_scale(3.0, 3.0), &mut pixels.as_mut());
    let grey = |x: usize, y: usize| pixels.pixels()[y * 750 + x].green();
    let mut image = rqrr::PreparedImage::prepare_from_greyscale(750, 750, grey);
    let codes = image.detect_grids();
    let [code] = &codes[..] else {
        panic!("{} codes", codes.len());
    };
    code.decode().expect("it is read").1
}

#[test]
fn every_sheet_of_every_lesson_is_a_page_in_both_languages() {
    let units = Units::default();
    for language in Language::ALL {
        set_language(language);
        for name in NAMES {
            let lesson = lesson(name);
            let sheets = [
                pupil(&lesson, &units, Some(ADDRESS)),
                answers(&lesson, &units, Some(ADDRESS)).expect("it has answers"),
                plan(&lesson, Some(ADDRESS)),
                results(&lesson, &Progress::new(&lesson), &units),
            ];
            for sheet in &sheets {
                is_a_page(sheet, language);
                assert!(sheet.contains(&escaped(lesson.title.text())), "{name}");
            }
            for sheet in &sheets[..3] {
                assert_eq!(read_back(pictures(sheet)[0]), ADDRESS, "{name}");
            }
        }
    }
}

#[test]
fn the_answers_are_those_of_the_flights() {
    let units = Units::default();
    for name in NAMES {
        let lesson = lesson(name);
        let sheet = answers(&lesson, &units, None).expect("it has answers");
        let sections: Vec<&str> = sheet.split("<section>").skip(1).collect();
        for (step, section) in lesson.steps.iter().zip(sections) {
            let flights = Flights::of(step);
            let said = filled(step.explanation.text(), step, &flights, &units);
            assert!(section.contains(&escaped(&said)), "{section}");
            match (step.truth(&flights).expect("an answer"), &step.answer) {
                (Truth::Number(_), Answer::Number(figure)) => {
                    let value = figure_text(figure, &flights, &units).expect("it is flown");
                    assert!(section.contains(&escaped(&value)), "{section}");
                }
                (Truth::Choice { right, .. }, _) => {
                    let right = escaped(&option(step, right, &flights, &units));
                    let marked = section
                        .split("class=\"right\">")
                        .nth(1)
                        .expect("one is right");
                    let marked = marked.split("</li>").next().expect("it ends");
                    assert!(marked.ends_with(&right), "{marked}");
                    assert_eq!(section.matches("class=\"right\"").count(), 1);
                }
                (Truth::Curve(points), _) => {
                    let line = section
                        .split("<polyline points=\"")
                        .nth(1)
                        .expect("a curve");
                    let line = line.split('"').next().expect("it ends");
                    assert_eq!(line.split(' ').count(), points.len());
                }
                (Truth::Open | Truth::Number(_), _) => {
                    assert!(!section.contains("class=\"right\""), "{section}");
                }
            }
        }
    }
}

/// The pupil's sheet has the questions and nothing that answers them.
#[test]
fn the_worksheet_gives_nothing_away() {
    let units = Units::default();
    for name in NAMES {
        let lesson = lesson(name);
        let sheet = pupil(&lesson, &units, None);
        assert!(
            !sheet.contains("class=\"right\"") && !sheet.contains("<polyline"),
            "{name}"
        );
        for step in &lesson.steps {
            let flights = Flights::of(step);
            let said = |text: &str| escaped(&filled(text, step, &flights, &units));
            assert!(sheet.contains(&said(step.question.text())), "{name}");
            let explanation = said(step.explanation.text());
            assert!(!sheet.contains(&format!("<p>{explanation}</p>")), "{name}");
            if let Answer::Number(figure) = &step.answer {
                let value = figure_text(figure, &flights, &units).expect("it is flown");
                assert!(!sheet.contains(&format!("{value}<")), "{name}: {value}");
            }
        }
    }
}

#[test]
fn the_plan_marks_what_has_no_source() {
    let lesson = lesson("what-stays-the-same");
    set_language(Language::English);
    let english = plan(&lesson, None);
    assert!(english.contains("Common classroom answers (common practice, no source)"));
    // The first part begins with the lesson, the last one ends with it.
    assert!(english.contains("<td>0–5</td>") && english.contains("–45</td>"));
    assert!(english.contains("Leave room all round"));
    set_language(Language::German);
    assert!(plan(&lesson, None).contains("übliche Praxis, ohne Quelle"));
}

/// What was predicted stands beside what happened, once that has been explained; what is typed stays text.
#[test]
fn results_stand_beside_what_happened() {
    let step = json!({
        "title": "Turns", "question": "How many?", "explanation": "So.",
        "setup": { "jump": { "start": "senior-triple" } },
        "answer": { "kind": "number", "of": "turns" }, "reason": true,
    });
    let lesson = json!({
        "turns_aloft_lesson": 1, "title": "<b>A</b>", "for_whom": "us", "minutes": 5,
        "plan": { "parts": [{ "minutes": 5, "doing": "Look." }] },
        "steps": [step],
    });
    let lesson = Lesson::open_file(&lesson.to_string()).expect("in order");
    let mut progress = Progress::new(&lesson);
    progress.set_who("A & B");
    progress.predict(Some(Prediction::Number(2.5)));
    progress.give_reason("<script>alert(1)</script>");
    progress.go_on(&lesson);
    let units = Units::default();
    let before = results(&lesson, &progress, &units);
    is_a_page(&before, Language::English);
    assert!(
        before.contains("2.50 turns") && !before.contains("2.94"),
        "{before}"
    );
    assert!(before.contains("&lt;script&gt;") && before.contains("A &amp; B"));
    assert!(before.contains("<h1>&lt;b&gt;A&lt;/b&gt;</h1>"));
    progress.go_on(&lesson);
    let after = results(&lesson, &progress, &units);
    assert!(
        after.contains("2.94 turns (the prediction was 15 % less)"),
        "{after}"
    );
}

#[test]
fn a_jump_for_the_coach_has_its_turns_its_code_and_the_cautions() {
    let units = Units::default();
    for language in Language::ALL {
        set_language(language);
        for start in starts::all() {
            let (scenario, jump) = (&start.scenario, start.scenario.fly());
            let sheet = coach(&Picture {
                scenario,
                jump: &jump,
                units: &units,
                tried: None,
                address: Some("https://example.org/"),
            });
            is_a_page(&sheet, language);
            assert!(
                sheet.contains(&turns_text(turns_in_all(&jump))),
                "{}",
                start.name
            );
            let cautions = sheet.rsplit("<ul>").next().expect("a list");
            assert!(cautions.matches("<li>").count() >= 3, "{}", start.name);
            let link = read_back(pictures(&sheet)[0]);
            let fragment = link.split_once('#').expect("a link").1;
            let opened = from_fragment(fragment)
                .expect("a jump")
                .expect("it is read");
            assert!(opened.jump.turns_like(scenario), "{}", start.name);
        }
    }
}
