//! Lessons played through: as a pupil, as a class, at every size and in both languages. What is explained is what the
//! flights say, nothing is told before it has been predicted, and nothing is lost.

use egui::accesskit::{ActionData, Role};
use egui::vec2;
use egui_kittest::kittest::NodeT;

use turns_aloft::describe::lesson::title;
use turns_aloft::lesson::names::NAMES;
use turns_aloft::lesson::{Answer, Lesson, Prediction, Setup, Stage};
use turns_aloft::panel::PageCommand;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::starts;
use turns_aloft::session::lesson::{LessonInSight, happened, shown};
use turns_aloft::session::readings::{readings, summary};
use turns_aloft::session::{Question, Session};
use turns_aloft::words::{Language, set_language};

use crate::harness::*;
use crate::letters::faults;
use crate::room::check;

const FILES: [&str; 4] = [
    include_str!("../../assets/lessons/what-stays-the-same.lesson.json"),
    include_str!("../../assets/lessons/higher-or-tighter.lesson.json"),
    include_str!("../../assets/lessons/can-anybody-do-five.lesson.json"),
    include_str!("../../assets/lessons/arms-in.lesson.json"),
];

fn lesson(page: &Page) -> &LessonInSight {
    page.state().session.lesson().expect("a lesson is in sight")
}

fn opened(size: [f32; 2], language: Language, file: &str) -> Page {
    set_language(language);
    let mut session = Session::default();
    session.open_text(file);
    show(size, session)
}

fn look(page: &Page, size: [f32; 2], state: &str) {
    let found = faults(page, &[]);
    assert!(found.is_empty(), "{state}: {found:?}");
    check(page, size, state, None);
}

/// Types into the box with that name.
fn write(page: &mut Page, name: &str, text: &str) {
    let label = at_target(page, name)
        .unwrap_or_else(|| panic!("no {name}"))
        .accesskit_node()
        .label()
        .expect("it has a name");
    let role = if name == "lesson number" {
        Role::NumberInput
    } else {
        Role::TextInput
    };
    let data = ActionData::Value(text.into());
    set(page, role, &label, data);
}

/// Lets what is shown run to its end.
fn watch(page: &mut Page) {
    for _ in 0..3_000 {
        let session = &mut page.state_mut().session;
        if session.lesson().is_some_and(LessonInSight::is_flown) {
            break;
        }
        if session.is_on_turntable() {
            session.advance_turntable(0.05);
        } else {
            session.advance(0.05);
        }
        session.watch_lesson();
    }
    settle(page);
}

/// Predicts, whatever it be, by the controls.
fn predict(page: &mut Page) {
    let step = lesson(page).step().clone();
    match &step.answer {
        Answer::Number(_) => write(page, "lesson number", "1.5"),
        Answer::Choice(_) => press_target(page, "lesson option:1"),
        Answer::Curve(_) => {
            let chart = targets()["lesson curve"];
            let (from, to) = (chart.left_center(), chart.right_center());
            drag(page, from + vec2(4.0, 0.0), to - vec2(4.0, 0.0));
        }
        Answer::Words => write(page, "lesson words", "It depends."),
    }
    if step.reason {
        assert!(!page.state().session.can_go_on(), "a reason is asked for");
        write(page, "lesson reason", "Because of the arms.");
    }
}

/// Plays one step to its end; looks at every stage of it.
fn play_step(page: &mut Page, size: [f32; 2], state: &str) {
    let step = lesson(page).step().clone();
    assert_eq!(lesson(page).progress().stage(), Stage::Predict, "{state}");
    look(page, size, state);
    if step.setup.is_some() {
        let session = &page.state().session;
        assert!(
            readings(session).is_empty(),
            "{state}: nothing is told before"
        );
        assert!(session.playback.t_s <= 0.0, "{state}");
    }
    assert!(!page.state().session.can_go_on(), "{state}");
    predict(page);
    look(page, size, state);
    loop {
        let stage = lesson(page).progress().stage();
        match stage {
            Stage::Predict => {}
            Stage::Fly => watch(page),
            Stage::Observe => write(page, "lesson observation", "It got faster."),
            Stage::Explain => break,
        }
        look(page, size, &format!("{state} {stage:?}"));
        press_target(page, "lesson on");
        assert_ne!(lesson(page).progress().stage(), stage, "{state}");
    }
    look(page, size, &format!("{state} explained"));
}

#[test]
fn every_lesson_is_played_to_its_end() {
    for (turn, size) in SIZES.into_iter().enumerate() {
        for (i, file) in FILES.into_iter().enumerate() {
            let language = LANGUAGES[(turn + i) % 2];
            let mut page = opened(size, language, file);
            look(&page, size, "introduced");
            press_target(&mut page, "lesson begin");
            let steps = lesson(&page).lesson().steps.len();
            for step in 0..steps {
                let state = format!("{language:?} {size:?} {} {step}", NAMES[i]);
                assert_eq!(lesson(&page).progress().at(), step);
                play_step(&mut page, size, &state);
                let of = lesson(&page);
                let units = *page.state().session.units();
                let explained = shown(&of.step().explanation, of, &units);
                assert!(!explained.contains(['{', '…']), "{state}: {explained}");
                if let Some(right) = happened(of, &units) {
                    assert!(says(&page, &right), "{state}: {right}");
                }
                if step + 1 < steps {
                    press_target(&mut page, "lesson on");
                }
            }
            assert!(lesson(&page).progress().is_done());
        }
    }
    set_language(Language::English);
}

#[test]
fn on_the_board_nothing_is_typed_and_what_is_right_is_hidden_until_it_is_shown() {
    let size = SIZES[0];
    for file in FILES {
        let mut page = opened(size, Language::English, file);
        press_target(&mut page, "lesson class");
        let steps = lesson(&page).lesson().steps.len();
        for step in 0..steps {
            loop {
                look(&page, size, "on the board");
                match lesson(&page).progress().stage() {
                    Stage::Explain => break,
                    Stage::Fly => watch(&mut page),
                    _ => {}
                }
                assert!(targets().keys().all(|it| !it.starts_with("lesson option")));
                press_target(&mut page, "lesson on");
            }
            let of = lesson(&page);
            let units = *page.state().session.units();
            let explained = shown(&of.step().explanation, of, &units);
            assert!(!says(&page, &explained), "hidden");
            assert!(!page.state().session.can_go_on());
            press_target(&mut page, "lesson show");
            assert!(says(&page, &explained), "shown");
            if step + 1 < steps {
                press_target(&mut page, "lesson on");
            }
        }
    }
}

#[test]
fn the_menu_asks_for_a_lesson_by_its_title() {
    for (place, name) in NAMES.into_iter().enumerate() {
        let mut page = open(TABLET, Language::English, Question::Jump);
        press_target(&mut page, "starts");
        let target = format!("lesson:{name}");
        press_target(&mut page, &target);
        assert_eq!(page.state().commands, [PageCommand::Lesson(place)]);
        for language in LANGUAGES {
            set_language(language);
            let lesson = Lesson::open_file(FILES[place]).expect("it comes with the page");
            assert_eq!(lesson.title.text(), title(name));
        }
        set_language(Language::English);
    }
}

#[test]
fn what_was_at_hand_is_back_when_a_lesson_is_left_and_its_answers_stay() {
    set_language(Language::English);
    let mut session = Session::default();
    session.open(starts::all()[2].scenario.clone());
    session.change(|scenario| scenario.note = "mine".to_owned());
    let (before, steps) = (session.scenario().clone(), session.history().steps());
    session.open_text(FILES[1]);
    let mut page = show(TABLET, session);
    press_target(&mut page, "lesson begin");
    predict(&mut page);
    let predicted = lesson(&page).progress().record().prediction.clone();
    assert!(predicted.is_some());
    press_target(&mut page, "leave lesson");
    let session = &mut page.state_mut().session;
    assert!(session.lesson().is_none());
    assert_eq!(session.scenario(), &before);
    assert_eq!(session.history().steps(), steps);
    session.open_text(FILES[1]);
    settle(&mut page);
    assert_eq!(lesson(&page).progress().record().prediction, predicted);
    // Another jump from the menu leaves it, too.
    page.state_mut()
        .session
        .open(starts::all()[1].scenario.clone());
    settle(&mut page);
    assert!(page.state().session.lesson().is_none());
    page.state_mut().session.undo();
    assert_eq!(page.state().session.scenario(), &before);
}

#[test]
fn a_reload_comes_back_to_the_same_place() {
    let mut page = opened(TABLET, Language::English, FILES[1]);
    press_target(&mut page, "lesson begin");
    // The third step leaves inputs free.
    for step in 0..3 {
        play_step(&mut page, TABLET, "before the reload");
        if step < 2 {
            press_target(&mut page, "lesson on");
        }
    }
    let free = page.state().session.free_numbers();
    assert!(free.contains(&Parameter::JumpHeight));
    let session = &mut page.state_mut().session;
    session.change(|scenario| scenario.jump_height_m = 0.42);
    let kept = session.keep();
    let mut again = Session::default();
    again.restore(&kept);
    let (one, other) = (page.state().session.lesson(), again.lesson());
    let (one, other) = (one.expect("it is on"), other.expect("it is back"));
    assert_eq!(one.progress(), other.progress());
    assert!(other.is_begun());
    assert_eq!(again.scenario().jump_height_m, 0.42);
    again.leave_lesson();
    assert_eq!(again.scenario(), Session::default().scenario());
}

#[test]
fn what_a_step_does_not_leave_free_is_locked_and_that_is_said() {
    let mut page = opened(TABLET, Language::English, FILES[1]);
    press_target(&mut page, "lesson begin");
    let before = page.state().session.scenario().clone();
    let session = &mut page.state_mut().session;
    session.change(|scenario| scenario.jump_height_m += 0.01);
    assert_eq!(session.scenario(), &before);
    assert!(session.notice().is_some_and(|said| said.contains("ocked")));
    assert!(summary(session).starts_with("Predict first"));
    // Nor can it be played.
    session.play_or_pause();
    settle(&mut page);
    let session = &page.state().session;
    assert!(!session.playback.playing && session.playback.t_s < 0.0);
    let of = lesson(&page);
    assert!(matches!(of.step().setup, Some(Setup::Jump(_))));
    assert!(of.progress().record().prediction.is_none());
}

#[test]
fn a_curve_can_be_set_by_sliders() {
    let has_curve = |lesson: &Lesson| {
        let steps = lesson.steps.iter();
        steps
            .clone()
            .position(|step| matches!(step.answer, Answer::Curve(_)))
    };
    let (file, place) = FILES
        .into_iter()
        .find_map(|file| Some((file, has_curve(&Lesson::open_file(file).ok()?)?)))
        .expect("a lesson asks for a curve");
    let mut page = opened(TABLET, Language::English, file);
    press_target(&mut page, "lesson begin");
    for _ in 0..place {
        play_step(&mut page, TABLET, "before the curve");
        press_target(&mut page, "lesson on");
    }
    press(&mut page, "Set it by sliders");
    let sliders = named(&page, "At ");
    assert_eq!(sliders.len(), 5);
    set(
        &mut page,
        Role::Slider,
        &sliders[2],
        ActionData::NumericValue(1.0),
    );
    let Some(Prediction::Curve(points)) = &lesson(&page).progress().record().prediction else {
        panic!("a curve is predicted");
    };
    assert_eq!(points.len(), 5);
    assert!(points[2][1] > 0.0 && points[0][1] == 0.0);
}
