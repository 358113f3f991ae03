//! A jump that turned too far is not full, wherever it is told of. More than a quarter turn beyond
//! what is owed is over-rotated: common practice, no source; the sport's rule has no call for it.

use turns_aloft::describe::call::{mark, verdict_text};
use turns_aloft::describe::report::flight::Report;
use turns_aloft::scenario::call::Call;
use turns_aloft::scenario::facing::Facing;
use turns_aloft::scenario::jump::JumpName;
use turns_aloft::scenario::{Scenario, starts};
use turns_aloft::session::goal::{GoalTurns, words as goal};
use turns_aloft::session::readings::{readings, summary};
use turns_aloft::session::{Question, Session, why};

/// A double Salchow with just so many turns: what the air does not give is turned on the ice.
fn double(turns: f64) -> Scenario {
    let start = starts::named("junior-double").expect("it is there");
    let mut jump = start.scenario.clone();
    (jump.jump, jump.jump_turns) = (JumpName::Salchow, 2);
    jump.pre_rotation_turns = 0.0;
    while turns - jump.fly().turns > 0.9 {
        jump.takeoff_rate_rad_s += 0.5;
    }
    jump.pre_rotation_turns = turns - jump.fly().turns;
    assert_eq!(jump.check(), Ok(()));
    jump
}

fn opened(jump: &Scenario) -> Session {
    let mut session = Session::default();
    session.open(jump.clone());
    session
}

fn reading(session: &Session, quantity: &str) -> Option<String> {
    let mut lines = readings(session).into_iter();
    (lines.find(|line| line.quantity == quantity)).map(|line| line.text)
}

/// By hand: 3.01 turns are 363.6 degrees more than two, and face 3.6 degrees further than the
/// landing has to.
#[test]
fn a_whole_turn_too_many() {
    let jump = double(3.01);
    let owed = jump.fly().owed.expect("a named jump");
    assert_eq!(owed.call, Some(Call::OverRotated));
    assert!((owed.over_rotated_deg.expect("it is") - 363.6).abs() < 1e-6);
    assert!((owed.landing_facing_deg - 3.6).abs() < 1e-6);

    let session = opened(&jump);
    let said = |quantity| reading(&session, quantity).unwrap_or_default();
    assert_eq!(said("shortfall_deg"), "364° too far");
    assert_eq!(said("over_rotated_deg"), "364°, a whole turn more");
    assert_eq!(said("landing_facing_deg"), "the right way, 4°");
    assert_eq!(said("call"), "over-rotated");
    assert_eq!(
        summary(&session),
        "3.01 turns of 2: over-rotated by 364°, a whole turn more; the landing faces the right way, 4°."
    );
    assert_eq!(
        (verdict_text(Some(owed)), mark(Some(owed))),
        ("over-rotated", "too far")
    );
}

/// Half a turn too far lands the opposite way, a third of one sideways; neither is a whole turn.
#[test]
fn what_the_landing_faces_is_said() {
    for (turns, over, faces) in [
        (2.26, "94°", "sideways, 94°"),
        (2.5, "180°", "the wrong way round, 180°"),
        (2.7, "252°", "sideways, -108°"),
        (2.9, "324°, a whole turn more", "the right way, -36°"),
        (3.5, "540°", "the wrong way round, 180°"),
        (4.05, "738°, 2 whole turns more", "the right way, 18°"),
    ] {
        let session = opened(&double(turns));
        assert_eq!(reading(&session, "over_rotated_deg").as_deref(), Some(over));
        // Half a turn is 180 degrees either way.
        let said = reading(&session, "landing_facing_deg").unwrap_or_default();
        assert_eq!(said.replace("-180", "180"), faces, "{turns}");
        assert_eq!(reading(&session, "call").as_deref(), Some("over-rotated"));
    }
    // As far as a quarter turn too far is full still, and nothing is over-rotated.
    let session = opened(&double(2.24));
    assert_eq!(reading(&session, "over_rotated_deg"), None);
    assert_eq!(reading(&session, "call").as_deref(), Some("full rotation"));
    assert_eq!(
        reading(&session, "landing_facing_deg").as_deref(),
        Some("sideways, 86°")
    );
}

#[test]
fn facing_has_its_limits_half_way() {
    for (past_deg, facing) in [
        (0.0, Facing::AsOwed),
        (-45.0, Facing::AsOwed),
        (45.0_f64.next_up(), Facing::Sideways),
        ((-135.0_f64).next_up(), Facing::Sideways),
        (-135.0, Facing::Opposite),
        (180.0, Facing::Opposite),
    ] {
        assert_eq!(Facing::of(past_deg), facing, "{past_deg}");
    }
}

/// Off the ice the rule does not reach, and it is over-rotated all the same.
#[test]
fn off_the_ice_it_is_said_too() {
    let mut jump = double(3.01);
    jump.jump = JumpName::OffIce;
    let session = opened(&jump);
    let owed = session.jump().owed.expect("a named jump");
    assert_eq!(owed.call, None);
    assert_eq!(
        reading(&session, "call").as_deref(),
        Some("over-rotated, no call for this")
    );
    assert_eq!(mark(Some(owed)), "too far");
    assert!(summary(&session).contains("over-rotated by 364°"));
    jump.pre_rotation_turns -= 0.8;
    assert_eq!(
        reading(&opened(&jump), "call").as_deref(),
        Some("no call for this")
    );
}

/// A free jump owes nothing to go beyond.
#[test]
fn a_free_jump_is_never_too_far() {
    let mut jump = double(3.01);
    jump.jump = JumpName::Free;
    let report = Report::new(&jump, &jump.fly());
    assert_eq!(
        (report.over_rotated_deg, report.landing_facing_deg),
        (None, None)
    );
    assert_eq!(verdict_text(jump.fly().owed), "no call for this");
    assert_eq!(mark(jump.fly().owed), "");
}

/// A range that reaches beyond a quarter turn too far has it among the calls possible, first.
#[test]
fn a_range_has_it_among_its_calls() {
    let mut session = opened(&double(2.2));
    session.show_range(true);
    let calls = session
        .range()
        .and_then(|range| range.calls.clone())
        .expect("on ice");
    assert_eq!(calls[..2], [Call::OverRotated, Call::Full]);
    let said = reading(&session, "call").unwrap_or_default();
    assert!(said.starts_with("may be over-rotated"), "{said}");
    assert_eq!(reading(&session, "over_rotated_deg"), None);
    session.change(|jump| jump.jump = JumpName::OffIce);
    let said = reading(&session, "call");
    assert_eq!(
        said.as_deref(),
        Some("may be over-rotated, no call for this")
    );
}

/// Neither Win nor Why nor the kept jumps take it for a jump that is as it has to be.
#[test]
fn the_questions_say_it() {
    let mut session = opened(&double(3.01));
    session.set_goal(GoalTurns::Full);
    assert!(goal::question(&session).contains("over-rotated by 364°"));
    session.ask(Question::Why);
    session.poll(|| true);
    let missing = session
        .budget_answer()
        .and_then(|budget_answer| why::words::missing(&session, budget_answer));
    let expected = "2 turns needed: over-rotated, 1.01 more than that";
    assert_eq!(missing.as_deref(), Some(expected));
    session.keep_jump();
    session.ask(Question::Compare);
    session.poll(|| true);
    let kept = session
        .answers()
        .into_iter()
        .find(|line| line.quantity == "kept:1");
    let said = kept.map(|line| line.text).unwrap_or_default();
    assert!(said.ends_with("3.01 turns, over-rotated"), "{said}");
    // A little too far is not worth a word.
    let session = opened(&double(2.1));
    assert!(!goal::question(&session).contains("over-rotated"));
}
