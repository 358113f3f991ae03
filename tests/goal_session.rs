//! What would win it, as a session answers it piece by piece.

use turns_aloft::analysis::caution::Caution;
use turns_aloft::analysis::goal::{Goal, MET_TURNS};
use turns_aloft::analysis::lever::{Lever, Season};
use turns_aloft::analysis::limits::Limits;
use turns_aloft::analysis::weights::{OBSERVED, WeightsNeeded};
use turns_aloft::describe::Text;
use turns_aloft::scenario::call::Call;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::starts;
use turns_aloft::session::goal::GoalTurns;
use turns_aloft::session::{Question, Session};

fn asked() -> Session {
    let mut session = Session::default();
    session.ask(Question::Goal);
    session.poll(|| true);
    session
}

/// The pieces, put together, are the analysis's own answers.
#[test]
fn the_same_answers_as_the_analysis() {
    for start in starts::all() {
        let mut session = Session::default();
        session.open(start.scenario.clone());
        session.ask(Question::Goal);
        session.set_goal(GoalTurns::Turns((session.jump().turns + 0.4).min(10.0)));
        // One piece at a time, as if there were never any more time.
        for _ in 0..1000 {
            session.poll(|| false);
            if !session.is_computing() {
                break;
            }
        }
        assert!(!session.is_computing());
        let (limits, season) = (Limits::default(), Season::default());
        let goal = Goal::new(
            session.scenario(),
            session.jump(),
            session.goal_turns(),
            &limits,
            &season,
        );
        let singles = goal.singles();
        assert_eq!(session.singles().len(), Lever::COUNT);
        for (single, fits) in session.singles() {
            assert!(fits);
            let alone = singles.iter().find(|one| one.lever == single.lever);
            assert_eq!(Some(single), alone);
        }
        let (joint, fits) = session.combination();
        assert!(fits);
        assert_eq!(joint, goal.combination(&singles).as_ref());
    }
}

#[test]
fn the_mildest_verdict_stands_first() {
    let session = asked();
    let verdicts: Vec<_> = (session.singles().iter())
        .map(|(single, _)| single.judgement.verdict)
        .collect();
    assert!(verdicts.is_sorted(), "{verdicts:?}");
}

#[test]
fn what_is_tried_has_the_turns_and_can_be_gone_back_on() {
    let before = Session::default();
    for target in [
        GoalTurns::Full,
        GoalTurns::NotCalled,
        GoalTurns::Turns(1.75),
    ] {
        let mut session = asked();
        session.set_goal(target);
        session.poll(|| true);
        let doable: Vec<Lever> = (session.singles().iter())
            .filter(|(single, _)| single.proposal.is_some())
            .map(|(single, _)| single.lever)
            .collect();
        assert!(!doable.is_empty());
        for name in doable {
            session.apply_single(name);
            assert!((session.jump().turns - session.goal_turns()).abs() < MET_TURNS);
            assert!(session.has_goal());
            session.go_back();
            session.poll(|| true);
            assert_eq!(session.scenario(), before.scenario());
            assert_eq!(session.jump().turns, before.jump().turns);
        }
        session.apply_combination();
        assert!((session.jump().turns - session.goal_turns()).abs() < MET_TURNS);
        session.go_back();
        assert_eq!(session.scenario(), before.scenario());
    }
}

#[test]
fn not_called_is_a_full_rotation_by_the_rule_and_hardly_more() {
    let mut session = asked();
    session.set_goal(GoalTurns::NotCalled);
    let owed = session.jump().owed.expect("a named jump").turns;
    let call_at = |turns: f64| Call::of(360.0 * (owed - turns));
    assert_eq!(call_at(session.goal_turns() - 0.9 * MET_TURNS), Call::Full);
    assert_ne!(call_at(session.goal_turns() - 2.0 * MET_TURNS), Call::Full);
}

#[test]
fn nothing_is_worked_out_while_a_hand_is_at_work() {
    let mut session = asked();
    session.set_dragging(true);
    session.set(Parameter::named("jump_height_m").expect("a key"), 0.3);
    session.poll(|| true);
    assert!(!session.is_computing());
    assert!(session.singles().iter().all(|(_, fits)| !fits));
    session.set_dragging(false);
    session.poll(|| true);
    assert!(session.singles().iter().all(|(_, fits)| *fits));
}

#[test]
fn limits_move_by_steps_and_are_this_jumpers() {
    let mut session = asked();
    let height = Lever::named("jump_height_m").expect("a lever");
    let now_m = session.scenario().jump_height_m;
    let marks = session.limit_of(height).expect("a season");
    assert!(!marks.own);
    assert!((marks.range[1] - (now_m + 0.03)).abs() < 1e-12);
    session.step_limit(height, 1, 1.0);
    let marks = session.limit_of(height).expect("own");
    assert!(marks.own);
    assert!((marks.range[1] - (now_m + 0.04)).abs() < 1e-9);
    // The lower end pushes the higher one.
    for _ in 0..20 {
        session.step_limit(height, 0, 1.0);
    }
    let [least_m, most_m] = session.limit_of(height).expect("own").range;
    assert!(least_m > now_m + 0.1 && most_m == least_m);

    let mut again = Session::default();
    again.restore(&session.keep());
    assert_eq!(again.limit_of(height), session.limit_of(height));
    again.open(starts::all()[1].scenario.clone());
    assert!(!again.has_own_limits());
}

#[test]
fn seasons_and_the_target_survive_a_reload() {
    let mut session = asked();
    let height = Lever::named("jump_height_m").expect("a lever");
    session.step_season(height, 1.0);
    session.step_goal(1.0);
    assert_eq!(session.goal_turns(), 2.25);
    let mut again = Session::default();
    again.restore(&session.keep());
    assert_eq!(again.season_of(height), session.season_of(height));
    assert_eq!(again.goal_turns(), 2.25);
    for _ in 0..100 {
        again.step_season(height, -1.0);
        again.step_goal(-1.0);
    }
    assert_eq!(again.season_of(height), None);
    assert_eq!(again.goal_turns(), 0.5);
}

/// Visits from when the hand mass was a lever kept limits and seasons of it: the rest is taken up.
#[test]
fn what_was_kept_of_the_hand_mass_is_passed_over() {
    let mut session = asked();
    session.step_goal(1.0);
    let kept = session.keep();
    let old = kept
        .replace(
            r#""limits":{}"#,
            r#""limits":{"hand_mass_kg":[0.0,0.2],"jump_height_m":[0.2,0.4]}"#,
        )
        .replace(
            r#""season":{}"#,
            r#""season":{"hand_mass_kg":0.1,"leg_tuck":0.2}"#,
        );
    let mut again = Session::default();
    again.restore(&old);
    assert_eq!(again.notice(), None);
    assert_eq!(again.goal_turns(), session.goal_turns());
    let [height, legs] =
        ["jump_height_m", "leg_tuck"].map(|name| Lever::named(name).expect("a lever"));
    assert_eq!(again.limit_of(height).expect("own").range, [0.2, 0.4]);
    assert_eq!(again.season_of(legs), Some(0.2));
    assert!(!again.keep().contains(r#""hand_mass_kg":["#));
}

/// Beside the answers, not among them: nothing to be tried, whatever is kept.
#[test]
fn weights_stand_beside_the_answers() {
    let mut session = asked();
    session.set_goal(GoalTurns::Turns(1.75));
    session.poll(|| true);
    let goal = |session: &Session| {
        let (limits, season) = (Limits::default(), Season::default());
        let target = session.goal_turns();
        WeightsNeeded::new(&Goal::new(
            session.scenario(),
            session.jump(),
            target,
            &limits,
            &season,
        ))
    };
    let needed: Vec<_> = session.weights_needed().map(|(it, _)| it.clone()).collect();
    assert_eq!(needed, goal(&session).outcomes);
    assert!(session.weights_needed().all(|(_, fits)| fits));
    let before = session.scenario().clone();
    assert_eq!(Lever::of(Parameter::HandMass), None);
    assert_eq!((session.scenario(), session.tried()), (&before, 0));
    let lines = session.answers();
    assert!(
        lines
            .iter()
            .all(|line| line.quantity != "goal:hand_mass_kg")
    );
    let said = |quantity: &str| {
        let line = lines.iter().find(|line| line.quantity == quantity);
        line.expect("a line").text.clone()
    };
    assert!(said("weights:rate").ends_with("kg in each hand"));
    for kept in ["energy", "angular_momentum"] {
        assert!(said(&format!("weights:{kept}")).starts_with("not enough: "));
    }
    assert!(said("caution:weights").contains(Caution::Hands.text()));
    assert!(said("caution:weights").contains(OBSERVED.text()));
    session.step_goal(1.0);
    assert!(session.weights_needed().all(|(_, fits)| !fits));
}

#[test]
fn kept_rubbish_is_refused_whole() {
    let good = asked().keep();
    for (from, to) in [
        (r#""target":"full""#, r#""target":{"turns":99.0}"#),
        (r#""limits":{}"#, r#""limits":{"jump_height_m":[0.5,0.2]}"#),
        (r#""season":{}"#, r#""season":{"jump_height_m":-1.0}"#),
        (r#""season":{}"#, r#""season":{"name":1.0}"#),
    ] {
        let bad = good.replace(from, to);
        assert_ne!(bad, good, "{from}");
        let mut session = Session::default();
        session.restore(&bad);
        assert!(
            session
                .notice()
                .is_some_and(|said| said.contains("could not be read"))
        );
    }
}
