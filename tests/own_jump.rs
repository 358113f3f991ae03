//! A jump of the user's own: begun anew or made of a starting point, what it is called and what is said of
//! it, and that nothing done to it is lost in silence.

use serde_json::Value;

use turns_aloft::analysis::lever::Lever;
use turns_aloft::analysis::uncertainty::UncertainInput;
use turns_aloft::scenario::jump::JumpName;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::{Scenario, link, starts};
use turns_aloft::session::compare::Which;
use turns_aloft::session::{Question, Session};

fn number(key: &str) -> Parameter {
    Parameter::named(key).expect("a key")
}

fn set(session: &mut Session, key: &str, value: f64) {
    session.set(number(key), value);
}

/// The session after a reload of the page.
fn reloaded(session: &Session) -> Session {
    let mut later = Session::default();
    later.restore(&session.keep());
    assert_eq!(later.notice(), None);
    later
}

fn kept_names(session: &Session) -> Vec<String> {
    let entries = session.library().collection().entries();
    entries.iter().map(|it| it.scenario.name.clone()).collect()
}

/// The jump that somebody gets who follows the link.
fn linked(session: &Session) -> Scenario {
    let link = link::from_fragment(&session.link()).expect("a link of ours");
    link.expect("a sound one").jump
}

fn filed(session: &Session) -> Scenario {
    let [_, text] = session.file();
    Scenario::from_file(&text).expect("it opens")
}

/// Every way in which a jump leaves the session.
fn given_away(session: &mut Session) -> [Scenario; 3] {
    session.keep_jump();
    let entries = session.library().collection().entries();
    let kept = entries.last().expect("it has been kept").scenario.clone();
    [linked(session), filed(session), kept]
}

#[test]
fn a_starting_point_says_nothing_about_a_jump_made_of_it() {
    for start in starts::all() {
        let mut session = Session::default();
        session.open(start.scenario.clone());
        assert_eq!(session.shown_note(), start.scenario.note);
        for whole in given_away(&mut session) {
            assert_eq!(whole, start.scenario, "as it was it keeps its words");
        }
        let height_m = session.scenario().jump_height_m + 0.01;
        set(&mut session, "jump_height_m", height_m);
        assert_eq!(session.scenario().note, "");
        assert_eq!(
            session.shown_note(),
            format!("Begun from “{}”.", start.scenario.name)
        );
        for given in given_away(&mut session) {
            assert_eq!(given.note, "");
            assert_ne!(given.name, start.scenario.name);
            assert_eq!(given.jump_height_m, height_m);
        }
        session.reset_all();
        assert_eq!(*session.scenario(), start.scenario, "its own again");
    }
}

/// Also one that was given away before notes were settled.
#[test]
fn a_note_about_another_jump_is_dropped_when_it_is_opened() {
    let first = &starts::all()[0].scenario;
    let another = Scenario {
        jump_height_m: 0.31,
        ..first.clone()
    };
    let mut session = Session::default();
    session.open_link(&link::to_fragment(&another, Some(&another)));
    assert_eq!(session.scenario().note, "");
    let reference = session.reference().expect("it came along");
    assert_eq!(reference.scenario.note, "");
    session.open_text(&another.to_file());
    assert_eq!(session.scenario().note, "");
}

/// Visits kept before notes were settled have a starting point's note beside a changed jump, and steps
/// that know nothing of notes.
#[test]
fn an_earlier_visit_drops_a_note_about_another_jump_too() {
    let mut session = Session::default();
    set(&mut session, "jump_height_m", 0.3);
    let mut visit: Value = serde_json::from_str(&session.keep()).expect("JSON");
    let mut file: Value =
        serde_json::from_str(visit["scenario"].as_str().expect("a text")).expect("JSON");
    file["scenario"]["note"] = starts::all()[0].scenario.note.clone().into();
    visit["scenario"] = file.to_string().into();
    let step = &mut visit["history"]["undo"][0]["patch"]["scenario"];
    step.as_object_mut().expect("an object").remove("note");

    let mut later = Session::default();
    later.restore(&visit.to_string());
    assert_eq!(later.history().steps(), [1, 0]);
    assert_eq!(later.shown_note(), "Begun from “Half a turn short”.");
    later.undo();
    assert_eq!(*later.scenario(), starts::all()[0].scenario);
    later.redo();
    assert_eq!(later.scenario(), session.scenario());
}

#[test]
fn a_note_of_the_users_own_stays_whatever_is_changed() {
    let mut session = Session::default();
    session.rename("  Lena, \n Tuesday ");
    assert_eq!(session.scenario().name, "Lena, Tuesday");
    assert_eq!(session.scenario().note, "", "it is not about her");
    session.set_note("Left foot sore.");
    set(&mut session, "jump_height_m", 0.3);
    assert_eq!(session.shown_note(), "Left foot sore.");
    assert!(!session.is_changed_version(), "it has a name of its own");
    for given in given_away(&mut session) {
        assert_eq!(given.name, "Lena, Tuesday");
        assert_eq!(given.note, "Left foot sore.");
    }
    session.reset_all();
    assert_eq!(session.scenario().name, "Lena, Tuesday");
    assert_eq!(session.scenario().note, "Left foot sore.");
    session.undo();
    session.undo();
    session.undo();
    session.undo();
    assert_eq!(*session.scenario(), starts::all()[0].scenario);
}

#[test]
fn a_name_or_note_that_cannot_be_is_said_and_changes_nothing() {
    let mut session = Session::default();
    let before = session.scenario().clone();
    session.rename(&"x".repeat(81));
    assert!(session.notice().is_some_and(|it| it.contains("80")));
    session.dismiss();
    session.set_note(&"x".repeat(200_000));
    assert!(
        session
            .notice()
            .is_some_and(|it| it.starts_with("Not noted"))
    );
    session.rename("   ");
    assert_eq!(*session.scenario(), before);
}

/// Without a name of its own it has that of what it was begun from and what was changed, no two the same.
#[test]
fn what_is_kept_has_a_name_that_tells_it_from_others() {
    let mut session = Session::default();
    session.keep_jump();
    assert_eq!(
        session.notice(),
        Some("Kept on this device as “Half a turn short”.")
    );
    set(&mut session, "arm_tuck", 0.7);
    session.keep_jump();
    session.keep_jump();
    set(&mut session, "jump_height_m", 0.3);
    session.keep_jump();
    session.change(|scenario| scenario.jump = JumpName::Axel);
    set(&mut session, "leg_tuck", 0.9);
    session.keep_jump();
    session.rename("Lena");
    session.keep_jump();
    session.begin_jump();
    session.keep_jump();
    assert_eq!(
        kept_names(&session),
        [
            "Half a turn short",
            "Half a turn short, arm tuck 70 %",
            "Half a turn short, arm tuck 70 % 2",
            "Half a turn short, arm tuck 70 %, jump height 30 cm",
            "Half a turn short, jump Axel, arm tuck 70 %, 2 more",
            "Lena",
            "New jump (2F)",
        ]
    );
}

#[test]
fn a_jump_is_begun_without_anything_of_somebody_else() {
    let mut session = Session::default();
    session.ask(Question::Map);
    session.begin_jump();
    assert!(session.is_setting_up());
    assert_eq!(session.question(), Question::Jump);
    let begun = session.scenario();
    assert!(begun.name.is_empty() && begun.note.is_empty());
    assert_eq!(begun.check(), Ok(()));
    assert_eq!(session.shown_name(), "New jump (2F)");
    assert_eq!(session.shown_note(), "");
    session.change(|scenario| scenario.jump = JumpName::Axel);
    assert_eq!(session.shown_name(), "New jump (2A)");
    assert!(!session.is_changed_version());
    assert_eq!(session.shown_note(), "");
    assert!(reloaded(&session).is_setting_up());
    session.ask(Question::Why);
    assert!(!session.is_setting_up());
    assert_eq!(filed(&session).name, "New jump (2A)");
}

/// Whatever another jump makes way for: said where it happens, and back at one touch.
#[test]
fn a_changed_jump_that_makes_way_is_told_of_and_comes_back_whole() {
    type Opening = fn(&mut Session);
    let openings: [Opening; 4] = [
        |session| session.open(starts::all()[3].scenario.clone()),
        |session| session.open_text(&starts::all()[3].scenario.to_file()),
        Session::begin_jump,
        |session| {
            let id = session.library().collection().entries()[0].id;
            session.open_kept(id);
        },
    ];
    for open in openings {
        let mut session = Session::default();
        session.open(starts::all()[1].scenario.clone());
        session.keep_jump();
        session.open(starts::all()[2].scenario.clone());
        assert!(!session.notice_brings_back(), "nothing was changed");
        session.set_reference(Which::Start("four-turns".to_owned()));
        set(&mut session, "arm_tuck", 0.7);
        session.rename("Lena");
        session.set_note("Tuesday");
        session.step_limit(Lever::ALL[0], 1, 1.0);
        session.step_half_width(UncertainInput::ALL[0], 2.0);
        let left = session.keep();

        open(&mut session);
        assert_ne!(session.scenario().name, "Lena");
        assert!(!session.has_own_limits() && !session.has_own_half_widths());
        let said = session.notice().expect("it is said").to_owned();
        assert!(said.contains("“Lena”"), "{said}");
        assert!(session.notice_brings_back());
        let mut later = reloaded(&session);
        for session in [&mut session, &mut later] {
            session.undo();
            let mut back: Value = serde_json::from_str(&session.keep()).unwrap();
            let mut left: Value = serde_json::from_str(&left).unwrap();
            // The step that has been undone can be redone now.
            back["history"]["redo"] = serde_json::json!([]);
            left["history"]["redo"] = serde_json::json!([]);
            assert_eq!(back, left);
        }
        session.redo();
        assert!(!session.has_own_limits() && !session.has_own_half_widths());
        assert_ne!(session.scenario().name, "Lena");
    }
}

#[test]
fn what_is_kept_makes_way_without_a_word() {
    let mut session = Session::default();
    set(&mut session, "arm_tuck", 0.7);
    session.keep_jump();
    session.open(starts::all()[3].scenario.clone());
    assert_eq!(session.notice(), None);
}

#[test]
fn the_jump_before_a_try_is_there_to_compare_with() {
    let mut session = Session::default();
    set(&mut session, "jump_height_m", 0.3);
    assert_eq!(session.before_try(), None);
    let before = session.scenario().clone();
    session.try_change(number("arm_tuck"), 0.9);
    assert_eq!(session.before_try().as_deref(), Some("arm tuck 60 %"));
    set(&mut session, "leg_tuck", 0.8);
    for mut session in [reloaded(&session), session] {
        assert_eq!(
            session.before_try().as_deref(),
            Some("arm tuck 60 %, 1 more")
        );
        session.set_reference(Which::BeforeTry);
        assert!(session.is_before_try_beside());
        let reference = session.reference().expect("it was chosen");
        assert_eq!(reference.scenario, before);
        assert_eq!(reference.name, "Before the change");
        // The next try leaves it there, and offers the jump before that one.
        session.try_change(number("jump_height_m"), 0.35);
        assert!(!session.is_before_try_beside());
        assert_eq!(session.before_try().as_deref(), Some("jump height 30 cm"));
        session.go_back();
        session.go_back();
        assert_eq!(session.before_try(), None);
        session.open(starts::all()[3].scenario.clone());
        assert_eq!(session.before_try(), None);
    }
}

#[test]
fn what_was_changed_is_still_told_after_a_reload() {
    let mut session = Session::default();
    set(&mut session, "arm_tuck", 0.7);
    session.try_change(number("jump_height_m"), 0.3);
    session.set_side_by_side(true);
    let mut later = reloaded(&session);
    assert!(later.is_changed_version() && later.inputs_differ());
    assert_eq!(later.shown_note(), "Begun from “Half a turn short”.");
    assert_eq!((later.tried(), later.history().steps()), (1, [2, 0]));
    assert_eq!(later.history().next_texts()[0], Some("tried change"));
    assert!(later.is_side_by_side());
    later.go_back();
    assert_eq!(later.history().next_texts()[0], Some("arm tuck"));
    later.reset(number("arm_tuck"));
    assert_eq!(*later.scenario(), starts::all()[0].scenario);
}
