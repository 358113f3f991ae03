//! Changes tried on the jump at hand, and gone back on one at a time.

use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::{Scenario, starts};
use turns_aloft::session::Session;

/// What of a session a try may change.
fn jump(session: &Session) -> (Scenario, f64) {
    (session.scenario().clone(), session.jump().turns)
}

#[test]
fn tries_go_back_one_at_a_time() {
    let mut session = Session::default();
    let first = jump(&session);
    session.try_on(|scenario| scenario.jump_height_m += 0.01);
    let second = jump(&session);
    assert!(second.1 > first.1, "it has been flown");
    session.try_on(|scenario| scenario.close_delay_s = 0.0);
    assert_eq!(session.tried(), 2);
    session.go_back();
    assert_eq!((jump(&session), session.tried()), (second, 1));
    session.go_back();
    assert_eq!((jump(&session), session.tried()), (first.clone(), 0));
    session.go_back();
    assert_eq!(jump(&session), first, "there is nothing further back");
}

/// The way back leads to before the try, whatever the hand has done since.
#[test]
fn what_was_set_by_hand_goes_back_with_the_try() {
    let mut session = Session::default();
    let height = Parameter::named("jump_height_m").expect("a key");
    session.set(height, 0.35);
    let before = jump(&session);
    session.try_on(|scenario| scenario.arm_tuck = 1.0);
    session.set(height, 0.45);
    session.go_back();
    assert_eq!(jump(&session), before);
}

#[test]
fn what_changes_nothing_is_no_try() {
    let mut session = Session::default();
    let generation = session.generation();
    session.try_on(|_| ());
    assert_eq!((session.tried(), session.generation()), (0, generation));
}

#[test]
fn another_jump_and_putting_everything_back_end_the_tries() {
    let mut session = Session::default();
    session.try_on(|scenario| scenario.arm_tuck = 1.0);
    session.open(starts::all()[1].scenario.clone());
    assert_eq!(session.tried(), 0);
    session.try_on(|scenario| scenario.arm_tuck = 0.5);
    session.reset_all();
    assert_eq!(session.tried(), 0);
    session.go_back();
    assert_eq!(session.scenario(), &starts::all()[1].scenario);
}
