//! Undo and redo: every document comes back exactly, in order, over reloads of the visit.

use proptest::prelude::*;

use turns_aloft::physics::led_tucks::{Knot, LedTucks};
use turns_aloft::physics::plan::Turning;
use turns_aloft::scenario::ground::Ground;
use turns_aloft::scenario::input::{Choice, Input};
use turns_aloft::scenario::jump::JumpName;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::{HandsKeep, Scenario, starts};
use turns_aloft::session::compare::Which;
use turns_aloft::session::{Change, Document, MOST_STEPS, Policy, Session};

fn height() -> Parameter {
    Parameter::named("jump_height_m").expect("a key")
}

/// The session after a reload of the page.
fn reloaded(session: &Session) -> Session {
    let mut later = Session::default();
    later.restore(&session.keep());
    assert_eq!(later.notice(), None);
    later
}

/// Undoes all there is; every document on the way, the first one undone to first.
fn undone(session: &mut Session) -> Vec<Document> {
    let steps = session.history().steps()[0];
    (0..steps)
        .map(|_| {
            session.undo();
            session.document().clone()
        })
        .collect()
}

/// Something that a user does.
#[derive(Debug, Clone)]
enum UserAction {
    Set(usize, f64),
    Reset(usize),
    ResetAll,
    Word(usize),
    Try(usize, f64),
    Open(usize),
    Reference(usize),
    ClearReference,
    Undo,
    Redo,
    Reload,
}

fn actions() -> impl Strategy<Value = UserAction> {
    let number = || (0..Parameter::COUNT, 0.0..=1.0_f64);
    let start = || 0..starts::all().len();
    prop_oneof![
        4 => number().prop_map(|(i, part)| UserAction::Set(i, part)),
        1 => (0..Parameter::COUNT).prop_map(UserAction::Reset),
        1 => Just(UserAction::ResetAll),
        2 => (0..4_usize).prop_map(UserAction::Word),
        1 => number().prop_map(|(i, part)| UserAction::Try(i, part)),
        1 => start().prop_map(UserAction::Open),
        1 => (0..=starts::all().len()).prop_map(UserAction::Reference),
        1 => Just(UserAction::ClearReference),
        4 => Just(UserAction::Undo),
        3 => Just(UserAction::Redo),
        1 => Just(UserAction::Reload),
    ]
}

fn part(key: Parameter, part: f64) -> f64 {
    key.least() + part * (key.most() - key.least())
}

fn change_word(scenario: &mut Scenario, which: usize) {
    match which {
        0 => {
            scenario.ground = match scenario.ground {
                Ground::Ice => Ground::Floor,
                Ground::Floor => Ground::Trampoline,
                Ground::Trampoline => Ground::Ice,
            }
        }
        1 => {
            scenario.turning = match scenario.turning {
                Turning::Anticlockwise => Turning::Clockwise,
                Turning::Clockwise => Turning::Anticlockwise,
            }
        }
        2 => scenario.jump = JumpName::ALL[scenario.jump_turns as usize % JumpName::ALL.len()],
        _ => scenario.jump_turns = 1 + scenario.jump_turns % 5,
    }
}

fn perform(session: &mut Session, action: &UserAction) {
    match *action {
        UserAction::Set(i, at) => session.set(Parameter::ALL[i], part(Parameter::ALL[i], at)),
        UserAction::Reset(i) => session.reset(Parameter::ALL[i]),
        UserAction::ResetAll => session.reset_all(),
        UserAction::Word(which) => session.change(|scenario| change_word(scenario, which)),
        UserAction::Try(i, at) => {
            session.try_change(Parameter::ALL[i], part(Parameter::ALL[i], at))
        }
        UserAction::Open(i) => session.open(starts::all()[i].scenario.clone()),
        UserAction::Reference(i) => {
            let start = starts::all().get(i);
            session.set_reference(
                start.map_or(Which::AsOpened, |start| Which::Start(start.name.to_owned())),
            );
        }
        UserAction::ClearReference => session.clear_reference(),
        UserAction::Undo => session.undo(),
        UserAction::Redo => session.redo(),
        UserAction::Reload => *session = reloaded(session),
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// Against a plain list of documents with a place in it.
    #[test]
    fn every_document_comes_back_exactly(actions in prop::collection::vec(actions(), 1..40)) {
        let mut session = Session::default();
        let mut documents = vec![session.document().clone()];
        let mut at = 0;
        for action in &actions {
            perform(&mut session, action);
            match action {
                UserAction::Undo => at = usize::saturating_sub(at, 1),
                UserAction::Redo => at = (at + 1).min(documents.len() - 1),
                _ if *session.document() != documents[at] => {
                    documents.truncate(at + 1);
                    documents.push(session.document().clone());
                    at += 1;
                }
                _ => (),
            }
            prop_assert_eq!(session.document(), &documents[at], "after {:?}", action);
            prop_assert_eq!(session.history().steps(), [at, documents.len() - 1 - at]);
            // What is computed follows.
            let reference = session.reference().map(|reference| &reference.scenario);
            prop_assert_eq!(
                reference,
                session.document().reference.as_ref().map(|attempt| &attempt.scenario)
            );
        }
        prop_assert_eq!(session.jump().turns, session.scenario().fly().turns);
        while at > 0 {
            at -= 1;
            session.undo();
            prop_assert_eq!(session.document(), &documents[at]);
        }
        for document in &documents[1..] {
            session.redo();
            prop_assert_eq!(session.document(), document);
        }
        session.redo();
        prop_assert_eq!(Some(session.document()), documents.last());
    }
}

#[test]
fn a_hundred_steps_come_back_also_after_a_reload() {
    let mut session = Session::default();
    let mut documents = vec![session.document().clone()];
    for i in 0..MOST_STEPS + 50 {
        session.set(height(), 0.2 + 0.001 * i as f64);
        documents.push(session.document().clone());
    }
    documents.pop();
    documents.reverse();
    const { assert!(MOST_STEPS >= 100) };
    for mut session in [reloaded(&session), session] {
        let undone = undone(&mut session);
        assert_eq!(undone.len(), MOST_STEPS);
        assert!(undone == documents[..MOST_STEPS]);
        assert_eq!(session.history().steps(), [0, MOST_STEPS]);
    }
}

/// A hundred jumps opened one after the other are the steps that need most room.
#[test]
fn a_hundred_opened_jumps_come_back_after_a_reload() {
    let mut session = Session::default();
    for i in 0..=100 {
        session.open(starts::all()[i % starts::all().len()].scenario.clone());
    }
    assert!(reloaded(&session).history().steps()[0] >= 100);
}

#[test]
fn what_a_visit_keeps_is_bounded() {
    let mut session = Session::default();
    for i in 0..MOST_STEPS {
        session.open(Scenario {
            note: format!("{i} {}", "x".repeat(90_000)),
            ..starts::all()[0].scenario.clone()
        });
    }
    let kept = session.keep();
    assert!(kept.len() < 1_000_000, "{} bytes", kept.len());
    let mut later = reloaded(&session);
    later.undo();
    let note = &later.scenario().note;
    assert!(note.starts_with(&format!("{} x", MOST_STEPS - 2)));
}

#[test]
fn an_opened_jump_gives_way_to_the_one_worked_on_before() {
    let mut session = Session::default();
    session.open(starts::all()[2].scenario.clone());
    session.set(height(), 0.4);
    let worked_on = session.document().clone();
    session.open(starts::all()[1].scenario.clone());
    session.undo();
    assert_eq!(session.document(), &worked_on);
    assert_eq!(session.scenario().name, starts::all()[2].scenario.name);
    session.reset_all();
    assert_eq!(session.scenario(), &starts::all()[2].scenario);
}

#[test]
fn a_link_with_two_jumps_is_one_step() {
    let mut sender = Session::default();
    sender.set(height(), 0.4);
    sender.set_reference(Which::AsOpened);
    let mut session = Session::default();
    session.open(starts::all()[3].scenario.clone());
    let before = session.document().clone();
    session.open_link(&sender.link());
    assert!(session.reference().is_some());
    session.undo();
    assert_eq!(session.document(), &before);
}

#[test]
fn a_drag_is_one_step_and_the_next_drag_another() {
    let mut session = Session::default();
    let first = session.document().clone();
    let drag = |session: &mut Session, to: [f64; 3]| {
        // The panels tell of a drag after they have dealt with its first movement.
        session.set_dragging(false);
        for value in to {
            session.set(height(), value);
            session.set_dragging(true);
        }
        session.set_dragging(false);
    };
    drag(&mut session, [0.3, 0.35, 0.4]);
    let second = session.document().clone();
    drag(&mut session, [0.45, 0.5, 0.55]);
    assert_eq!(session.history().steps(), [2, 0]);
    session.undo();
    assert_eq!(session.document(), &second);
    session.undo();
    assert_eq!(session.document(), &first);
    session.redo();
    assert_eq!(session.document(), &second);

    // A drag that ends where it began is none, but what was undone is gone.
    let start_m = second.scenario.jump_height_m;
    drag(&mut session, [0.2, 0.25, start_m]);
    assert_eq!(session.history().steps(), [1, 0]);
}

#[test]
fn a_new_change_drops_what_was_undone() {
    let mut session = Session::default();
    session.set(height(), 0.4);
    session.undo();
    assert_eq!(session.history().next(), [None, Some(Change::Inputs)]);
    session.set(height(), session.scenario().jump_height_m);
    assert_eq!(session.history().steps(), [0, 1], "that changed nothing");
    session.set(height(), 0.35);
    assert_eq!(session.history().steps(), [1, 0]);
    let document = session.document().clone();
    session.redo();
    assert_eq!(session.document(), &document);
}

/// A kept jump that gets another name has it wherever it comes back.
#[test]
fn a_renamed_attempt_comes_back_by_its_new_name() {
    let mut session = Session::default();
    session.keep_jump();
    let id = session.library().collection().entries()[0].id;
    session.set_reference(Which::Kept(id));
    session.clear_reference();
    session.rename_kept(id, "Monday");
    session.undo();
    let reference = session.reference().expect("it is back");
    assert_eq!(
        (&*reference.name, &*reference.scenario.name),
        ("Monday", "Monday")
    );
}

/// A session with three steps back and one forward, as it is saved.
fn visit() -> (Session, serde_json::Value) {
    let mut session = Session::default();
    session.set(height(), 0.4);
    session.open(starts::all()[2].scenario.clone());
    session.set_reference(Which::AsOpened);
    session.set(height(), 0.5);
    session.undo();
    let kept = serde_json::from_str(&session.keep()).expect("JSON");
    (session, kept)
}

#[test]
fn a_spoilt_history_loses_only_the_history() {
    let (session, kept) = visit();
    let whole = &kept["history"];
    let with = |place: &str, value: serde_json::Value| {
        let mut history = whole.clone();
        *history.pointer_mut(place).expect("it is there") = value;
        history
    };
    let spoilt = [
        serde_json::json!("rubbish"),
        serde_json::json!(7),
        serde_json::json!([]),
        serde_json::json!({}),
        with("/version", 99.into()),
        with("/undo", serde_json::json!([1, 2])),
        with("/redo/0/change", "luck".into()),
        with("/redo/0/patch/scenario/jump_height_m", 99.0.into()),
        with("/redo/0/patch/scenario/jump_height_m", "high".into()),
        with("/redo/0/patch/scenario", serde_json::json!({"luck": 1})),
        with(
            "/undo/0/patch",
            serde_json::json!({"scenario": {"note": "x".repeat(200_000)}}),
        ),
        with("/undo/2/patch/reference", 3.into()),
    ];
    for history in spoilt {
        let mut visit = kept.clone();
        visit["history"] = history;
        let mut later = Session::default();
        later.restore(&visit.to_string());
        assert_eq!(later.notice(), None);
        assert_eq!(later.document(), session.document());
        assert_eq!(later.history().steps(), [0, 0], "{}", visit["history"]);
        later.undo();
        assert_eq!(later.document(), session.document());
    }
    let mut later = Session::default();
    later.restore(&kept.to_string());
    assert_eq!(later.history(), session.history());
}

/// The history and the curves shown are the entries that earlier visits don't have, and programs that
/// kept those pass over entries that they don't know.
#[test]
fn earlier_visits_open_without_a_history() {
    let (session, mut kept) = visit();
    for later in ["history", "curves", "turntable"] {
        let entry = kept.as_object_mut().expect("an object").remove(later);
        assert!(entry.is_some(), "{later}");
    }
    let mut names: Vec<&str> = kept
        .as_object()
        .expect("an object")
        .keys()
        .map(|it| &**it)
        .collect();
    names.sort_unstable();
    assert_eq!(
        names,
        [
            "base", "beside", "greeted", "how_sure", "map", "question", "scenario", "units", "win"
        ]
    );
    let mut later = Session::default();
    later.restore(&kept.to_string());
    assert_eq!(later.notice(), None);
    assert_eq!(later.document(), session.document());
    assert_eq!(later.history().steps(), [0, 0]);

    let mut old = Session::default();
    old.restore(include_str!("version_1/visit.json"));
    assert_eq!(old.history().steps(), [0, 0]);
}

#[test]
fn nothing_is_saved_of_a_session_without_steps() {
    assert!(!Session::default().keep().contains("history"));
}

#[test]
fn a_locked_input_refuses_in_one_sentence() {
    let mut session = Session::default();
    session.set(height(), 0.4);
    session.set_policy(Policy::locking([
        Input::Number(height()),
        Input::Choice(Choice::Ground),
    ]));
    let document = session.document().clone();
    let locked = |session: &mut Session, what: &str| {
        assert_eq!(session.document(), &document);
        assert_eq!(session.history().steps(), [1, 0]);
        let says = format!("Locked, so not changed: {what}.");
        assert_eq!(session.notice(), Some(&*says));
        session.dismiss();
    };
    session.set(height(), 0.5);
    locked(&mut session, "jump height");
    session.reset(height());
    locked(&mut session, "jump height");
    session.reset_all();
    locked(&mut session, "jump height");
    session.undo();
    locked(&mut session, "jump height");
    session.change(|scenario| scenario.ground = Ground::Trampoline);
    locked(&mut session, "jumps on");
    session.try_on(|scenario| {
        scenario.arm_tuck = 1.0;
        scenario.jump_height_m += 0.1;
    });
    locked(&mut session, "jump height");
    session.open(starts::all()[1].scenario.clone());
    locked(&mut session, "jump height");

    // Everything else is free, and so is all of it by default.
    session.change(|scenario| scenario.hands_keep = HandsKeep::Energy);
    assert_eq!(session.notice(), None);
    assert_eq!(session.history().steps(), [2, 0]);
    session.undo();
    session.set_policy(Policy::default());
    session.undo();
    assert_eq!(session.document(), Session::default().document());
}

/// A jump that was led by hand is undone and done again like any other, over a reload as well.
#[test]
fn a_led_jump_is_undone() {
    let mut session = Session::default();
    let planned = session.scenario().clone();
    let knots = [
        Knot {
            time_s: 0.05,
            arms: 1.0,
            legs: 1.0,
        },
        Knot {
            time_s: 0.5,
            arms: 0.0,
            legs: 0.0,
        },
    ];
    let led = LedTucks::new(&knots).expect("knots in order");
    session.change(|scenario| scenario.led = Some(led.clone()));
    assert_eq!(session.scenario().led, Some(led));
    let by_hand = session.scenario().clone();
    session.undo();
    assert_eq!(*session.scenario(), planned);
    let mut again = reloaded(&session);
    again.redo();
    assert_eq!(*again.scenario(), by_hand);
    again.undo();
    assert_eq!(*again.scenario(), planned);
}
