//! The five-turn try: begun from the menu of jumps, step by step, with the limits that were passed in sight.

use turns_aloft::analysis::turn_try::TurnTry;
use turns_aloft::session::{Question, Session};
use turns_aloft::words::Language;

use crate::harness::*;

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
