//! The five-turn try: begun from the menu of jumps, step by step, with the limits that were passed in sight.

use std::cmp::Ordering;

use turns_aloft::analysis::turn_try::TurnTry;
use turns_aloft::describe::turn_try::turns;
use turns_aloft::session::slow_flight::against;
use turns_aloft::session::{Question, Session};
use turns_aloft::words::{Language, text};

use crate::harness::*;
use crate::slow_flight::{begin, land};

#[test]
fn it_is_tried_step_by_step() {
    for size in SIZES {
        let mut page = open(size, Language::English, Question::Why);
        press_target(&mut page, "starts");
        press_target(&mut page, "five-turn try");
        let tried = |page: &Page| page.state().session.turn_try().expect("a try").clone();
        assert_eq!(tried(&page).step, 2, "the turns of the jump's name");
        press_target(&mut page, "try step:5");
        assert_eq!(tried(&page).step, 5);
        let session = &page.state().session;
        assert_eq!(session.scenario().jump_turns, 5);
        let (scenario, jump) = (session.scenario(), session.jump());
        assert_eq!(
            *session.turn_try().expect("a try"),
            TurnTry::new(scenario, jump, 5)
        );
        assert!(
            says(&page, "No limit seen in people was passed."),
            "{size:?}"
        );
        // Faster than anybody has been seen.
        let session = &mut page.state_mut().session;
        session.change(|scenario| scenario.takeoff_rate_rad_s *= 1.9);
        settle(&mut page);
        assert!(!tried(&page).passed.is_empty());
        assert!(says(&page, "Limits passed: "), "{size:?}");
        press_target(&mut page, "leave try");
        assert_eq!(page.state().session.turn_try(), None);
    }
}

/// Each has the place of what was there before.
#[test]
fn one_mode_leaves_another() {
    let mut session = Session::default();
    let modes = |session: &Session| {
        [
            session.is_measuring(),
            session.is_on_turntable(),
            session.is_flown_by_hand(),
        ]
    };
    session.measure_by_stop_watch();
    session.fly_by_hand();
    assert_eq!(modes(&session), [false, false, true]);
    session.begin_turntable();
    assert_eq!(modes(&session), [false, true, false]);
    session.measure_in_film();
    assert_eq!(modes(&session), [true, false, false]);
    session.begin_try();
    assert_eq!(modes(&session), [false; 3]);
    assert!(session.turn_try().is_some());
}

/// It survives a reload; undo takes the steps back.
#[test]
fn it_goes_on_after_a_reload() {
    let mut session = Session::default();
    session.begin_try();
    session.set_try_step(4);
    let mut again = Session::default();
    again.restore(&session.keep());
    assert_eq!(again.turn_try(), session.turn_try());
    assert_eq!(again.turn_try().map(|tried| tried.step), Some(4));
    again.undo();
    assert_eq!(again.turn_try().map(|tried| tried.step), Some(2));
    assert!(
        again
            .answers()
            .iter()
            .any(|line| line.quantity == "try:turns")
    );
}

/// From a step of the try it is flown by hand; what that came to counts for the step, or is left, and the try goes on.
#[test]
fn a_step_is_flown_by_hand_and_counts() {
    for size in SIZES {
        let mut page = open(size, Language::English, Question::Jump);
        page.state_mut().session.begin_try();
        page.state_mut().session.set_try_step(2);
        settle(&mut page);
        let before = page.state().session.turn_try().cloned();
        let planned = page.state().session.scenario().clone();
        press_target(&mut page, "try by hand");
        assert!(says(&page, "The five-turn try: 2 turns"), "{size:?}");
        press_target(&mut page, "take off");
        page.state_mut().session.lead(1.0);
        land(&mut page);
        let session = &page.state().session;
        let landed = session.slow_flight().and_then(|it| it.landed());
        let landed = landed.expect("it has landed").clone();
        let tried = landed.tried.clone().expect("it is a try");
        assert_eq!(tried, TurnTry::new(&landed.scenario, &landed.jump, 2));
        let against = against(session, &tried).expect("the jump at hand");
        let lines = session.answers();
        let line = lines.iter().find(|line| line.quantity == "slow:try");
        let said = &line.expect("a line").text;
        assert!(said.contains(against) && said.starts_with(&turns(&tried)));
        let take = at_target(&page, "take this jump").expect("it can be taken");
        take.scroll_to_me();
        settle(&mut page);
        assert!(says(&page, against), "{size:?}");
        // Left, nothing counts, and the try is where it was.
        press_target(&mut page, "leave slow flight");
        assert_eq!(page.state().session.turn_try().cloned(), before);
        press_target(&mut page, "try by hand");
        press_target(&mut page, "take off");
        page.state_mut().session.lead(1.0);
        land(&mut page);
        press_target(&mut page, "take this jump");
        let session = &page.state().session;
        assert!(!session.is_flown_by_hand() && session.scenario().led.is_some());
        assert_eq!(session.turn_try(), Some(&tried));
        assert!(targets().contains_key("try step:5"), "{size:?}");
        page.state_mut().session.undo();
        assert_eq!(*page.state().session.scenario(), planned);
        assert_eq!(page.state().session.turn_try().cloned(), before);
    }
    // Without the try it is a jump like any other.
    let mut page = begin(TABLET, Language::English, true);
    press_target(&mut page, "take off");
    land(&mut page);
    let slow = page.state().session.slow_flight();
    assert_eq!(
        slow.and_then(|it| it.landed())
            .and_then(|it| it.tried.clone()),
        None
    );
}

/// What makes one try better than another is said of the jump that was flown: all turns there, then fewer limits.
#[test]
fn a_try_by_hand_is_held_against_the_jump_before() {
    let mut session = Session::default();
    session.begin_try();
    session.set_try_step(2);
    let tried = session.turn_try().expect("a try").clone();
    assert_eq!(against(&session, &tried), Some(text("try-as-good")));
    let mut faster = session.scenario().clone();
    faster.takeoff_rate_rad_s *= 2.0;
    let passed = TurnTry::new(&faster, &faster.fly(), 2);
    assert!(passed.passed.len() > tried.passed.len());
    let expected = match passed.is_full().cmp(&tried.is_full()) {
        Ordering::Greater => "try-better",
        _ => "try-worse",
    };
    assert_eq!(against(&session, &passed), Some(text(expected)));
    session.leave_try();
    assert_eq!(against(&session, &passed), None);
}
