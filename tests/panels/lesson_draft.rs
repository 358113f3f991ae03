//! A lesson is made by its form alone: every kind of answer, at every size and in both languages. What is missing is
//! said, and nothing is lost.

use std::sync::Arc;

use egui::accesskit::{ActionData, Role};
use egui_kittest::kittest::NodeT;

use turns_aloft::documents::{Document, Request, made};
use turns_aloft::lesson::link::from_fragment;
use turns_aloft::lesson::{Answer, Choice, Flights, Lesson, Said, Setup, Stage, Truth};
use turns_aloft::panel::PageCommand;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::starts;
use turns_aloft::scenario::units::Units;
use turns_aloft::session::lesson_draft::{LessonDraft, fault};
use turns_aloft::session::readings::readings;
use turns_aloft::session::{Question, Saved, Session};
use turns_aloft::words::{Language, set_language};

use crate::harness::*;
use crate::letters::faults;
use crate::room::check;

const MADE: &str = include_str!("../../assets/lessons/higher-or-tighter.lesson.json");

/// A screen that shows a whole form: what is out of sight is not drawn.
const TALL: [f32; 2] = [768.0, 4000.0];

fn draft(page: &Page) -> &LessonDraft {
    page.state().session.lesson_draft().expect("one is made")
}

fn look(page: &Page, size: [f32; 2], state: &str) {
    let found = faults(page, &[]);
    assert!(found.is_empty(), "{state}: {found:?}");
    check(page, size, state, None);
}

fn begun(size: [f32; 2], language: Language) -> Page {
    let mut page = open(size, language, Question::Jump);
    press_target(&mut page, "starts");
    press_target(&mut page, "make lesson");
    page
}

/// Types into the field with that name.
fn write(page: &mut Page, name: &str, text: &str) {
    let node = at_target(page, name).unwrap_or_else(|| panic!("no {name}"));
    let own = node.accesskit_node();
    let (role, label) = (own.role(), own.label().expect("it has a name"));
    set(page, role, &label, ActionData::Value(text.into()));
}

/// Picks the option at that place out of a menu.
fn pick(page: &mut Page, name: &str, place: usize) {
    press_target(page, name);
    press_target(page, &format!("{name}:{place}"));
}

/// Fills in what every step needs.
fn tell(page: &mut Page, title: &str) {
    write(page, "draft step title", title);
    write(page, "draft question", "What will happen?");
    write(page, "draft explanation", "That happened.");
}

/// Everything that is missing, the whole's first.
fn missing(page: &Page) -> Vec<String> {
    let draft = draft(page);
    let steps = 0..draft.lesson().steps.len();
    let of_steps = steps.filter_map(|place| draft.fault_of(place)).map(fault);
    draft
        .own_fault()
        .iter()
        .map(fault)
        .chain(of_steps)
        .collect()
}

#[test]
fn a_lesson_with_every_kind_of_answer_is_made_and_tried() {
    for size in SIZES {
        for language in LANGUAGES {
            let state = format!("{language:?} {size:?}");
            let mut page = begun(size, language);
            look(&page, size, &format!("{state} begun"));
            assert_eq!(missing(&page).len(), 2, "{state}: {:?}", missing(&page));
            assert!(says(&page, &missing(&page)[0]), "{state}");
            write(&mut page, "draft title", "Arms");
            write(&mut page, "draft for whom", "Class 9");
            write(&mut page, "draft minutes:1", "20");
            // A number.
            press_target(&mut page, "draft step:1");
            look(&page, size, &format!("{state} step"));
            tell(&mut page, "First");
            pick(&mut page, "draft quantity", 4);
            press_target(&mut page, "draft observes");
            look(&page, size, &format!("{state} number"));
            for kind in ["change", "curve", "words", "opinion"] {
                press_target(&mut page, "draft all steps");
                press_target(&mut page, "draft add jump");
                tell(&mut page, kind);
                press_target(&mut page, &format!("draft kind:{kind}"));
                match kind {
                    "change" => {
                        assert!(says(&page, &missing(&page)[0]), "{state}");
                        pick(&mut page, "draft input", 2);
                        write(&mut page, "draft changed to", "0.6");
                    }
                    "curve" => pick(&mut page, "draft curve", 2),
                    "opinion" => {
                        press_target(&mut page, "draft add option");
                        for place in 1..=3 {
                            let name = format!("draft option:{place}");
                            write(&mut page, &name, &format!("Perhaps {place}"));
                        }
                    }
                    _ => {}
                }
                look(&page, size, &format!("{state} {kind}"));
                assert_eq!(missing(&page), Vec::<String>::new(), "{state} {kind}");
            }
            press_target(&mut page, "draft all steps");
            look(&page, size, &format!("{state} whole"));
            let lesson = draft(&page).lesson().clone();
            assert_eq!(lesson.minutes, 20);
            assert!(lesson.steps[0].observe.is_some());
            let truths = lesson.steps.iter().map(|it| it.truth(&Flights::of(it)));
            let truths: Vec<Truth> = truths.map(|it| it.expect("it has one")).collect();
            assert!(matches!(truths[0], Truth::Number(_)), "{state}");
            assert!(matches!(truths[1], Truth::Choice { .. }), "{state}");
            assert!(matches!(truths[2], Truth::Curve(_)), "{state}");
            assert_eq!(truths[3..], [Truth::Open, Truth::Open], "{state}");
            press_target(&mut page, "draft try");
            look(&page, size, &format!("{state} tried"));
            press_target(&mut page, "lesson begin");
            assert_eq!(
                page.state().session.lesson().map(|it| it.lesson()),
                Some(&lesson)
            );
            press_target(&mut page, "leave lesson");
            assert!(page.state().session.lesson().is_none(), "{state}");
            assert_eq!(draft(&page).lesson(), &lesson);
            look(&page, size, &format!("{state} back"));
        }
    }
    set_language(Language::English);
}

#[test]
fn a_step_flies_the_jump_that_was_at_hand() {
    let mut page = begun(TABLET, Language::English);
    let first = page.state().session.scenario().clone();
    press_target(&mut page, "draft to jump");
    assert!(!page.state().session.is_making_lesson());
    let other = starts::all()[1].scenario.clone();
    page.state_mut().session.open(other.clone());
    press_target(&mut page, "starts");
    press_target(&mut page, "make lesson");
    press_target(&mut page, "draft add jump");
    let jumps = |page: &Page| {
        let steps = draft(page).lesson().steps.iter();
        let jump = steps.map(|step| match &step.setup {
            Some(Setup::Jump(jump)) => jump.name.clone(),
            _ => panic!("a jump is set up"),
        });
        jump.collect::<Vec<_>>()
    };
    assert_eq!(jumps(&page), [first.name.clone(), other.name.clone()]);
    press_target(&mut page, "draft move:earlier");
    assert_eq!(jumps(&page), [other.name.clone(), first.name]);
    press_target(&mut page, "draft move:later");
    press_target(&mut page, "draft all steps");
    press_target(&mut page, "draft step:1");
    press_target(&mut page, "draft take jump");
    assert_eq!(jumps(&page), [other.name.clone(), other.name]);
}

#[test]
fn what_is_free_is_what_the_pupil_can_change() {
    let mut page = begun(TALL, Language::English);
    press_target(&mut page, "draft step:1");
    tell(&mut page, "One");
    press_target(&mut page, "fold:What is free");
    let name = format!("draft free:{}", Parameter::JumpHeight.key());
    press_target(&mut page, &name);
    look(&page, TALL, "free");
    // Who may go higher is warned, and so is who makes the lesson.
    let step = draft(&page).step().expect("it is shown").clone();
    assert!(!step.cautions().is_empty());
    for caution in step.cautions() {
        let said = turns_aloft::describe::Text::text(caution);
        assert!(says(&page, said), "{said}");
    }
    press_target(&mut page, "draft all steps");
    write(&mut page, "draft title", "One");
    write(&mut page, "draft for whom", "All");
    press_target(&mut page, "draft try");
    press_target(&mut page, "lesson begin");
    let session = &page.state().session;
    assert_eq!(session.free_numbers(), [Parameter::JumpHeight]);
    assert_eq!(
        session.lesson().map(|it| it.progress().stage()),
        Some(Stage::Predict)
    );
}

#[test]
fn a_figure_is_put_into_the_explanation_and_shown_as_it_will_be_read() {
    let mut page = begun(TALL, Language::English);
    press_target(&mut page, "draft step:1");
    tell(&mut page, "One");
    pick(&mut page, "draft insert", 1);
    let step = draft(&page).step().expect("it is shown");
    assert_eq!(step.explanation.text(), "That happened. {turns}");
    let turns = turns_aloft::session::readings::summary(&page.state().session);
    let turns = turns
        .split_whitespace()
        .next()
        .expect("it begins with them");
    assert!(
        says(&page, &format!("That happened. {turns} turns")),
        "{turns}"
    );
    // A brace that is left alone is said, and is no reason to lose anything.
    write(&mut page, "draft explanation", "There are {turns");
    assert!(missing(&page).iter().any(|said| said.contains("brace")));
    write(&mut page, "draft explanation", "There are {wings}");
    assert!(missing(&page).iter().any(|said| said.contains("wings")));
}

#[test]
fn what_is_removed_can_be_brought_back() {
    let mut page = begun(TABLET, Language::English);
    press_target(&mut page, "draft add question");
    write(&mut page, "draft question", "Why?");
    let before = draft(&page).lesson().clone();
    press_target(&mut page, "draft remove step");
    assert_eq!(draft(&page).lesson().steps.len(), 1);
    let found = faults(&page, &[]);
    assert!(found.is_empty(), "{found:?}");
    press_target(&mut page, "bring back");
    assert_eq!(draft(&page).lesson(), &before);
    press_target(&mut page, "draft all steps");
    press_target(&mut page, "draft discard");
    assert!(page.state().session.lesson_draft().is_none());
    press_target(&mut page, "bring back");
    assert_eq!(draft(&page).lesson(), &before);
    assert!(page.state().session.is_making_lesson());
}

#[test]
fn a_reload_comes_back_to_the_lesson_that_is_made() {
    let mut page = begun(TABLET, Language::English);
    write(&mut page, "draft title", "Unfinished");
    let session = &mut page.state_mut().session;
    let state = session.visit_state();
    session.edit_draft(|lesson| lesson.minutes += 0);
    assert!(session.visit_state() == state);
    let mut again = Session::default();
    again.restore(&session.keep());
    assert!(again.is_making_lesson());
    let (one, other) = (session.lesson_draft(), again.lesson_draft());
    assert_eq!(one.map(LessonDraft::lesson), other.map(LessonDraft::lesson));
    // Left for the jump, it waits there.
    session.leave_lesson_draft();
    assert!(session.visit_state() != state);
    let mut again = Session::default();
    again.restore(&session.keep());
    assert!(!again.is_making_lesson() && again.lesson_draft().is_some());
}

#[test]
fn a_copy_of_a_lesson_is_changed_and_has_one_language() {
    set_language(Language::German);
    let mut session = Session::default();
    session.open_text(MADE);
    for size in SIZES {
        let mut opened = Session::default();
        opened.open_text(MADE);
        let mut page = show(size, opened);
        press_target(&mut page, "copy lesson");
        look(&page, size, "a copy");
        let steps = draft(&page).lesson().steps.len();
        for place in 1..=steps {
            press_target(&mut page, &format!("draft step:{place}"));
            look(&page, size, &format!("step {place} of a copy"));
            press_target(&mut page, "draft all steps");
        }
    }
    session.copy_lesson();
    let copy = session.lesson_draft().expect("it is changed");
    assert!(copy.is_whole());
    let file = copy.lesson().to_file();
    assert!(!file.contains("\"en\""), "{file}");
    let original = Lesson::open_file(MADE).expect("it comes with the page");
    assert_eq!(copy.lesson().title.text(), original.title.text());
    assert_eq!(copy.lesson().steps.len(), original.steps.len());
    // The one that was made before is not lost.
    session.open_text(MADE);
    session.copy_lesson();
    assert!(session.notice_brings_back());
    set_language(Language::English);
}

/// A lesson of one short step.
fn short() -> Page {
    let mut page = begun(TALL, Language::English);
    write(&mut page, "draft title", "Short & simple");
    write(&mut page, "draft for whom", "Anybody");
    press_target(&mut page, "draft step:1");
    tell(&mut page, "One");
    press_target(&mut page, "draft all steps");
    page
}

#[test]
fn the_file_and_the_link_open_what_was_made() {
    let mut page = short();
    let lesson = draft(&page).lesson().clone();
    press_target(&mut page, "draft save");
    press_target(&mut page, "draft link");
    let commands = [
        PageCommand::Save(Saved::LessonDraft),
        PageCommand::LessonLink,
    ];
    assert_eq!(page.state().commands, commands);
    let session = &page.state().session;
    let [name, file] = session.file_of(Saved::LessonDraft).expect("there is one");
    assert_eq!(name, "short-simple.lesson.json");
    assert_eq!(Lesson::open_file(&file).as_ref(), Ok(&lesson));
    let link = session.draft_link().expect("it is short");
    assert_eq!(from_fragment(&link), Some(Ok(lesson.clone())));
    // A reload with the link in the address stays where it was; somebody else plays the lesson.
    let mut again = Session::default();
    again.restore(&session.keep());
    again.open_link(&link);
    assert!(again.is_making_lesson() && again.lesson().is_none());
    let mut other = Session::default();
    other.open_link(&link);
    assert_eq!(other.lesson().map(|it| it.lesson()), Some(&lesson));
    // A damaged one is said, and changes nothing.
    other.leave_lesson();
    other.open_link(&link.replace("lesson.", "lesson.A"));
    assert!(other.lesson().is_none());
    assert!(other.notice().is_some_and(|said| said.contains("damaged")));
}

#[test]
fn an_unfinished_file_is_opened_to_be_changed() {
    let mut page = begun(TABLET, Language::English);
    write(&mut page, "draft title", "Unfinished");
    assert!(at_target(&page, "draft save").is_some());
    assert!(!targets().contains_key("draft link"), "it is not whole");
    let file = page.state().session.file_of(Saved::LessonDraft);
    let mut other = Session::default();
    other.open_text(&file.expect("it can be saved")[1]);
    assert!(other.lesson().is_none() && other.is_making_lesson());
    assert_eq!(
        other.lesson_draft().map(LessonDraft::lesson),
        Some(draft(&page).lesson())
    );
}

/// Asks for the code, which the page has made by another module.
fn show_code(page: &mut Page) -> String {
    press_target(page, "draft code");
    assert_eq!(
        page.state_mut().commands.pop(),
        Some(PageCommand::LessonCode)
    );
    let request = Request {
        document: Document::LessonCode,
        language: "en".to_owned(),
        units: Units::default(),
        address: page.state().panels.given.address.clone(),
        jump: String::new(),
        is_try: false,
        lesson: Some([draft(page).lesson().to_file(), String::new()]),
    };
    let rows = made(&request.to_text()).expect("it is made");
    let lesson = Arc::clone(draft(page).version());
    page.state_mut().panels.given.take_code(lesson, &rows);
    settle(page);
    rows
}

/// What another library (rqrr) reads from the rows of a code, each module four pixels wide.
fn read_back(rows: &str) -> String {
    let rows: Vec<&[u8]> = rows.lines().map(str::as_bytes).collect();
    let side = 4 * (rows.len() + 8);
    let grey = |x: usize, y: usize| {
        let [column, row] = [x, y].map(|at| (at / 4).checked_sub(4));
        let module = row
            .zip(column)
            .and_then(|(row, column)| rows.get(row)?.get(column));
        if module == Some(&b'#') { 0 } else { 255 }
    };
    let mut image = rqrr::PreparedImage::prepare_from_greyscale(side, side, grey);
    let grids = image.detect_grids();
    grids[0].decode().expect("it is read").1
}

#[test]
fn the_code_on_the_screen_opens_the_lesson() {
    let mut page = short();
    let has_code = |_: &Page| targets().contains_key("draft code");
    assert!(!has_code(&page), "nobody can open a file's address");
    let address = "https://example.org/jumps/";
    page.state_mut().panels.given.address = Some(address.to_owned());
    settle(&mut page);
    look(&page, TALL, "a code can be asked for");
    let rows = show_code(&mut page);
    look(&page, TALL, "code");
    assert!(says(&page, "Who scans this") && !has_code(&page));
    let link = page.state().session.draft_link().expect("it is short");
    assert_eq!(read_back(&rows), format!("{address}#{link}"));
    // It is asked for again after a change; too long, there is none.
    let session = &mut page.state_mut().session;
    session.show_draft_step(Some(0));
    session.edit_draft_step(|step| step.explanation = Said::typed(&"Well. ".repeat(300)));
    session.show_draft_step(None);
    settle(&mut page);
    assert_eq!(show_code(&mut page), "");
    assert!(says(&page, "too long for a QR code"));
    assert!(at_target(&page, "draft link").is_some());
    for _ in 0..8 {
        let step = draft(&page).lesson().steps[0].clone();
        let session = &mut page.state_mut().session;
        session.edit_draft(|lesson| lesson.steps.push(step));
    }
    page.state_mut().session.show_draft_step(None);
    settle(&mut page);
    assert!(says(&page, "too long for a link") && !has_code(&page));
}

#[test]
fn a_typed_value_is_held_in_its_range_and_nonsense_is_said() {
    let mut page = begun(TABLET, Language::English);
    press_target(&mut page, "draft step:1");
    tell(&mut page, "One");
    press_target(&mut page, "draft kind:change");
    write(&mut page, "draft changed to", "much");
    assert!(page.state().session.notice().is_some());
    assert_eq!(
        missing(&page).len(),
        2,
        "nothing is changed, and the whole is unfinished"
    );
    write(&mut page, "draft changed to", "1000000");
    let step = draft(&page).step().expect("it is shown");
    let flights = Flights::of(step);
    assert!(step.truth(&flights).is_ok());
    let Answer::Choice(Choice::Change { options, .. }) = &step.answer else {
        panic!("more or less is asked");
    };
    assert_eq!(options.len(), 3);
    press_target(&mut page, "draft kind:words");
    let step = draft(&page).step().expect("it is shown");
    assert!(step.variants.is_empty(), "what is not asked is not flown");
    press_target(&mut page, "draft all steps");
    write(&mut page, "draft minutes:1", "a while");
    assert_eq!(draft(&page).lesson().minutes, 45);
    assert!(
        page.state()
            .session
            .notice()
            .is_some_and(|said| said.contains("240"))
    );
}

#[test]
fn who_hears_the_page_hears_what_is_made_and_what_is_missing() {
    let page = begun(TABLET, Language::English);
    let lines = page.state().session.answers();
    assert_eq!(lines.len(), 2, "{lines:?}");
    assert!(lines[1].text.contains("title is missing"), "{lines:?}");
    assert!(!readings(&page.state().session).is_empty());
    assert!(controls(&page).iter().any(|it| it.role == Role::TextInput));
}
