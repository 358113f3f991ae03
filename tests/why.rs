//! The session's answer to "why": what is shown adds up, follows the jump, and can be tried.

#[path = "support/space.rs"]
mod space;

use proptest::prelude::*;

use turns_aloft::analysis::budget::{Budget, Cause};
use turns_aloft::analysis::caution::{self, Caution};
use turns_aloft::analysis::lever::Lever;
use turns_aloft::analysis::steps::{Flown, Gain, ranked};
use turns_aloft::describe::Text;
use turns_aloft::describe::budget::budget_sentence;
use turns_aloft::describe::rounded_budget::Shown;
use turns_aloft::describe::turns::turns_text;
use turns_aloft::scenario::jump::JumpName;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::{Scenario, starts};
use turns_aloft::session::{Question, Session};

fn start(name: &str) -> Scenario {
    starts::named(name).expect("it is there").scenario.clone()
}

/// A session that asks why, its answer complete.
fn asked(scenario: Scenario) -> Session {
    let mut session = Session::default();
    session.open(scenario);
    session.ask(Question::Why);
    poll(&mut session);
    session
}

fn poll(session: &mut Session) {
    session.poll(|| true);
    assert!(session.is_computing(), "there was something to do");
    session.poll(|| true);
    assert!(!session.is_computing(), "it is done");
}

fn gains(session: &Session) -> Vec<Gain> {
    session.gains().cloned().collect()
}

fn order(session: &Session) -> Vec<Lever> {
    session.gains().map(|gain| gain.lever).collect()
}

fn text(session: &Session, quantity: &str) -> Option<String> {
    let lines = session.answers();
    let line = lines.iter().find(|line| line.quantity == quantity);
    line.map(|line| line.text.clone())
}

#[track_caller]
fn holds(session: &Session) {
    let (scenario, jump) = (session.scenario(), session.jump());
    let budget = Budget::new(scenario, jump);
    let budget_answer = session.budget_answer().expect("it has been worked out");
    assert_eq!(budget_answer.budget, budget);
    assert_eq!(gains(session), ranked(scenario, jump));
}

#[test]
fn the_answer_is_that_of_the_analyses() {
    for start in starts::all() {
        holds(&asked(start.scenario.clone()));
    }
}

/// What is shown of a budget: its sum as shown, and how far each part is from the exact one.
#[track_caller]
fn adds_up(budget: &Budget) {
    let shown = Shown::new(budget, None);
    let lost: i64 = shown.losses.iter().sum();
    assert_eq!(shown.ideal - lost + shown.ice, shown.turns, "{budget:?}");
    let parts = [shown.ideal, shown.ice, shown.turns].map(turns_text);
    let describe = Cause::ORDER.map(|cause| Some(cause) == budget.largest);
    assert_eq!(parts[1], format!("{:.2}", budget.pre_rotation_turns));
    assert_eq!(parts[2], format!("{:.2}", budget.turns));
    for ((shown, exact), describe) in shown.losses.iter().zip(budget.losses).zip(describe) {
        let off = (*shown as f64 - 100.0 * exact).abs();
        let most = if describe { 0.5 } else { 1.5 };
        assert!(off <= most + 1e-9, "{shown} for {exact}");
        assert!(*shown == 0 || exact.abs() > 0.0049, "{shown} for {exact}");
        if describe {
            // No jump that owes turns: the loss is told whatever is missing.
            let sentence = budget_sentence(
                &Scenario {
                    jump: JumpName::Free,
                    ..start("half-a-turn-short")
                },
                budget,
            );
            assert!(sentence.contains(&format!("cost {} turns", turns_text(*shown))));
        }
    }
    let off = (shown.ideal as f64 - 100.0 * budget.ideal_turns).abs();
    assert!(off < 3.0, "{} for {}", shown.ideal, budget.ideal_turns);
}

proptest! {
    #![proptest_config(space::cases(60))]

    #[test]
    fn what_is_shown_adds_up(scenario in space::scenario()) {
        adds_up(&Budget::new(&scenario, &scenario.fly()));
    }

    /// Any numbers at all, as fine as the rounding sees them.
    #[test]
    fn any_numbers_shown_add_up(
        losses in [-0.02..0.9, 0.0..0.9, 0.0..0.3, -0.01..0.3f64],
        air_turns in 0.1..6.0f64,
        pre_rotation_turns in 0.0..1.0f64,
    ) {
        let largest = Cause::ORDER.into_iter().zip(losses)
            .max_by(|(_, one), (_, other)| one.total_cmp(other))
            .map(|(cause, _)| cause);
        adds_up(&Budget {
            ideal_turns: air_turns + losses.iter().sum::<f64>(),
            losses,
            air_turns,
            pre_rotation_turns,
            turns: air_turns + pre_rotation_turns,
            largest: largest.filter(|_| losses.iter().any(|&loss| loss >= 0.005)),
            one_change: None,
        });
    }
}

/// Rounded one by one these would be 2.51 less 0.30 with 0.30, a hundredth too many. The closing
/// was rounded down most and takes it: the sentence names the tightness, and nothing stays nothing.
#[test]
fn what_was_rounded_most_gives_way() {
    let budget = Budget {
        ideal_turns: 2.512,
        losses: [0.104, 0.204, 0.004, 0.0],
        air_turns: 2.2,
        pre_rotation_turns: 0.3,
        turns: 2.5,
        largest: Some(Cause::Tightness),
        one_change: None,
    };
    let shown = Shown::new(&budget, None);
    assert_eq!(shown.losses, [11, 20, 0, 0]);
    assert_eq!((shown.ideal, shown.ice, shown.turns), (251, 30, 250));
}

#[test]
fn signs_are_shown() {
    let texts = [153, -33, -5, 0, 1000].map(turns_text);
    assert_eq!(texts, ["1.53", "−0.33", "−0.05", "0.00", "10.00"]);
}

/// The numbers follow the finger; the rows stay where they are until it is lifted.
#[test]
fn the_order_settles_when_the_hand_rests() {
    let mut session = asked(start("half-a-turn-short"));
    let before = order(&session);
    let rate = Parameter::named("takeoff_rate_rad_s").expect("a key");
    let height = Parameter::named("jump_height_m").expect("a key");
    session.set_dragging(true);
    session.set(rate, 2.0);
    session.set(height, 0.12);
    poll(&mut session);
    let (scenario, jump) = (session.scenario(), session.jump());
    let fresh = ranked(scenario, jump);
    let keys: Vec<_> = fresh.iter().map(|gain| gain.lever).collect();
    assert_ne!(keys, before, "the drag has changed what matters");
    assert_eq!(order(&session), before);
    for gain in &fresh {
        assert!(
            gains(&session).contains(gain),
            "{} is stale",
            gain.lever.key()
        );
    }
    session.set_dragging(false);
    poll(&mut session);
    holds(&session);
}

/// Who drags without rest on a slow machine still sees every number move.
#[test]
fn no_piece_waits_for_ever() {
    let mut session = asked(start("half-a-turn-short"));
    let before = gains(&session);
    let height = Parameter::named("jump_height_m").expect("a key");
    session.set_dragging(true);
    for i in 0..9 {
        session.set(height, 0.4 + 0.01 * f64::from(i));
        session.poll(|| false);
    }
    for (now, before) in gains(&session).iter().zip(&before) {
        assert_eq!(now.lever.key(), before.lever.key());
        assert_ne!(now, before);
    }
}

/// A step tried gives what it promised, and stays under the finger.
#[test]
fn a_step_can_be_tried_over_and_over() {
    let mut session = asked(start("half-a-turn-short"));
    let first = session.scenario().clone();
    let before = order(&session);
    for key in before.clone() {
        for _ in 0..2 {
            let turns = session.jump().turns;
            let gain = gains(&session).into_iter().find(|gain| gain.lever == key);
            let promised = gain.and_then(|gain| gain.turns_gained);
            session.try_step(key);
            assert_eq!(Some(session.jump().turns - turns), promised, "{key:?}");
            poll(&mut session);
            assert_eq!(order(&session), before);
        }
    }
    for _ in 0..2 * before.len() {
        session.go_back();
        poll(&mut session);
        assert_eq!(order(&session), before);
    }
    assert_eq!((session.scenario(), session.tried()), (&first, 0));
    let rate = Parameter::named("takeoff_rate_rad_s").expect("a key");
    session.try_step(Lever::of(rate).expect("a lever"));
    session.set(rate, 2.0);
    poll(&mut session);
    holds(&session);
}

#[test]
fn what_is_not_possible_is_said_and_not_done() {
    let mut session = asked(Scenario {
        leg_tuck: 1.0,
        ..start("half-a-turn-short")
    });
    let before = session.scenario().clone();
    let legs = gains(&session)
        .into_iter()
        .find(|gain| gain.lever.key() == "leg_tuck");
    assert_eq!(legs.map(|gain| gain.flown), Some(Flown::Back));
    let said = text(&session, "gain:leg_tuck").expect("a line");
    assert!(said.starts_with("back "), "{said}");
    session.try_step(Lever::of(Parameter::LegTuck).expect("a lever"));
    assert_eq!((session.scenario(), session.tried()), (&before, 0));
}

/// The change that the sentence tells of gives what the sentence says. Of a jump that has all its turns it
/// tells of none, and nothing is tried.
#[test]
fn the_sentences_change_can_be_tried() {
    for start in starts::all() {
        let mut session = asked(start.scenario.clone());
        let turns = session.jump().turns;
        let missing = session
            .jump()
            .owed
            .is_none_or(|owed| owed.shortfall_deg > 0.5);
        let answer = session.budget_answer().expect("it has been worked out");
        let change = answer.budget.one_change;
        let change = change.expect("every starting point could do better");
        session.try_one_change();
        if !missing {
            assert_eq!(session.scenario(), &start.scenario);
            continue;
        }
        assert_eq!(session.jump().turns - turns, change.turns_change);
        assert_eq!(session.tried(), 1);
        session.go_back();
        assert_eq!(session.scenario(), &start.scenario);
    }
}

/// Opening earlier than anything else costs this jump: its change is to open later.
fn opens_early() -> Scenario {
    Scenario {
        arm_tuck: 1.0,
        leg_tuck: 1.0,
        close_time_s: 0.1,
        close_delay_s: 0.0,
        open_lead_s: 0.4,
        ..start("half-a-turn-short")
    }
}

/// Opening later is not proposed without its caution and the landing load before and after.
#[test]
fn opening_later_carries_its_caution() {
    let session = asked(opens_early());
    let budget_answer = session.budget_answer().expect("it has been worked out");
    let change = budget_answer
        .budget
        .one_change
        .expect("it could open later");
    assert_eq!(change.parameter, Parameter::OpenLead);
    let said = text(&session, "caution:one_change").expect("a caution");
    let mut then = session.scenario().clone();
    then.open_lead_s = change.to;
    let loads = [session.jump().readout, then.fly().readout].map(|readout| {
        let [low, high] = readout.landing_load_bw;
        format!("{low:.1} to {high:.1}")
    });
    assert!(
        said.contains(&format!("{} now; with it, {}.", loads[0], loads[1])),
        "{said}"
    );
    assert!(said.contains(Caution::Later.text()) && said.contains(Caution::Ask.text()));
    assert!(!said.contains(Caution::Hands.text()));
}

/// That more turning is left to stop: the rate at touch-down, of every starting point.
#[test]
fn who_opens_later_lands_turning_faster() {
    for start in starts::all() {
        let mut later = start.scenario.clone();
        later.open_lead_s -= 0.01;
        let rates =
            [start.scenario.fly(), later.fly()].map(|jump| jump.readout.touchdown_rate_rad_s);
        assert!(rates[1] > rates[0], "{}", start.name);
        assert!(caution::of(&start.scenario, &later).contains(&Caution::Later));
    }
}

/// Each caution of a step stands below the steps, once.
#[test]
fn the_steps_cautions_stand_once() {
    let session = asked(start("half-a-turn-short"));
    let said = text(&session, "caution:steps").expect("cautions");
    let of_steps: Vec<_> = gains(&session)
        .into_iter()
        .flat_map(|gain| gain.cautions)
        .collect();
    assert!(of_steps.contains(&Caution::Ask) && of_steps.contains(&Caution::Later));
    for caution in of_steps {
        assert_eq!(said.matches(caution.text()).count(), 1, "{caution:?}");
    }
    let higher = Scenario {
        jump_height_m: 0.29,
        ..session.scenario().clone()
    };
    let [low, high] = higher.fly().readout.landing_load_bw;
    assert!(
        said.contains(&format!("1 cm higher, {low:.1} to {high:.1}")),
        "{said}"
    );
}

/// Where the sentence asks for more than people have been seen to do, that is said beside it.
#[test]
fn beyond_what_has_been_seen_is_said() {
    let fast = Scenario {
        jump: JumpName::Axel,
        close_time_s: 0.14,
        ..start("five-turn-attempt")
    };
    let session = asked(fast);
    let said = text(&session, "caution:one_change").expect("something to know");
    assert!(
        said.starts_with("With it the jump is beyond what has been seen: peak rate "),
        "{said}"
    );
    assert_eq!(
        text(&asked(start("junior-double")), "caution:one_change"),
        None
    );
}

#[test]
fn what_is_missing_adds_up_too() {
    let session = asked(start("half-a-turn-short"));
    assert_eq!(
        text(&session, "missing_turns").as_deref(),
        Some("2 turns needed: 0.47 missing")
    );
    let session = asked(start("four-turns"));
    assert_eq!(
        text(&session, "missing_turns").as_deref(),
        Some("4 turns needed: 0.04 more than that")
    );
}

/// A line of the answer must not take the name of a line that is always there.
#[test]
fn no_line_has_anothers_name() {
    let session = asked(start("crooked-takeoff"));
    let mut lines = turns_aloft::session::readings::readings(&session);
    lines.extend(session.answers());
    let mut names: Vec<_> = lines.iter().map(|line| &line.quantity).collect();
    let all = names.len();
    names.sort();
    names.dedup();
    assert_eq!(names.len(), all);
}
