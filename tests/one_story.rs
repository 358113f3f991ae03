//! All that is said of a jump tells one story: the turns with their call, what is asked for them, the map,
//! the range and what is beyond what has been seen. Over every starting point and random jumps.

use proptest::prelude::*;

use turns_aloft::analysis::limits::Verdict;
use turns_aloft::analysis::seen::{always_counts, margin};
use turns_aloft::describe::call::{Standing, verdict_text};
use turns_aloft::describe::rounding::shown_shortfall_deg;
use turns_aloft::physics::flight_summary::FlightSummary;
use turns_aloft::scenario::beyond::RespectOf;
use turns_aloft::scenario::call::Call;
use turns_aloft::scenario::parameter::{MapSpan, Parameter};
use turns_aloft::scenario::{Scenario, starts};
use turns_aloft::session::goal::words::question;
use turns_aloft::session::readings::summary;
use turns_aloft::session::{Question, Session};

/// Whether the map of these two numbers marks the jump itself as seen.
fn seen_on_map(scenario: &Scenario, numbers: [Parameter; 2]) -> bool {
    let jump = scenario.fly();
    let summary = FlightSummary::of(&jump.readout);
    margin(scenario, numbers, &summary, || jump.efforts().grip_m_s2) >= 0.0
}

fn holds(scenario: &Scenario) {
    let mut session = Session::default();
    session.open(scenario.clone());
    session.ask(Question::Goal);
    session.poll(|| true);
    let jump = session.jump().clone();
    let beyond = session.beyond_seen().to_vec();
    let asked = question(&session);
    let summary = summary(&session);

    // The goal has the turns just where no degree is shown as missing.
    let Some(owed) = jump.owed else {
        return;
    };
    let missing = shown_shortfall_deg(owed.shortfall_deg) > 0;
    assert_eq!(session.has_goal(), !missing, "{}", owed.shortfall_deg);
    assert_eq!(asked.contains("they are there"), !missing);
    assert_eq!(summary.contains("° short"), missing, "{summary}");

    // What is called full with something missing says so wherever that is told.
    let let_pass = owed.call == Some(Call::Full) && missing;
    assert_eq!(asked.contains("counts as full"), let_pass, "{asked}");
    assert_eq!(
        verdict_text(Some(owed)).contains("counts as full"),
        let_pass
    );
    assert_eq!(summary.contains("counts as full"), let_pass, "{summary}");

    // Beyond what has been seen: in the headline, and never good, whatever is called or asked for.
    let standing = Standing::of([owed.shortfall_deg; 2], &beyond);
    assert_eq!(standing == Standing::Beyond, !beyond.is_empty());
    assert_eq!(
        summary.contains("eyond what has been seen"),
        !beyond.is_empty()
    );
    if session.has_goal() {
        let said = asked.contains("eyond what has been seen");
        assert_eq!(said, !beyond.is_empty(), "{asked}");
    }
    for (single, _) in session.singles() {
        let Some(proposal) = &single.proposal else {
            continue;
        };
        if !proposal.beyond_seen.is_empty() && !session.has_goal() {
            assert_eq!(single.judgement.verdict, Verdict::BeyondMeasured);
        }
    }

    // The map has the jump outside of what has been seen where its rate or its height is.
    let marked = |of: RespectOf| matches!(of, RespectOf::PeakRate | RespectOf::Height);
    let outside = beyond.iter().any(|respect| marked(respect.of));
    let plain = Parameter::ALL.into_iter().filter(|it| {
        it.row().map != MapSpan::None
            && (always_counts(*it) || scenario.marks(*it, &jump).is_none())
    });
    let plain: Vec<Parameter> = plain.collect();
    for pair in plain.windows(2) {
        assert_eq!(seen_on_map(scenario, [pair[0], pair[1]]), !outside);
    }

    // The range has the jump's own call among the possible ones, and is no better than the jump.
    session.show_range(true);
    let range = session.range().expect("it is shown").clone();
    let ends_deg = range.shortfall_deg.expect("a named jump");
    if let (Some(call), Some(calls)) = (owed.call, &range.calls) {
        assert!(calls.contains(&call), "{call:?} in {calls:?}");
    }
    assert!(Standing::of(ends_deg, &beyond) >= standing);
}

#[test]
fn every_starting_point_tells_one_story() {
    for start in starts::all() {
        holds(&start.scenario);
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn random_jumps_tell_one_story(
        start in 0..starts::all().len(),
        short_deg in prop_oneof![-3.0..3.0_f64, -120.0..200.0_f64],
        parts in prop::array::uniform3(0.0..1.0_f64),
    ) {
        let mut scenario = starts::all()[start].scenario.clone();
        for (parameter, part) in [Parameter::JumpHeight, Parameter::ArmTuck, Parameter::CloseTime]
            .into_iter()
            .zip(parts)
        {
            let [least, most] = parameter.row().range;
            // Not so high that every one is beyond.
            let most = if parameter == Parameter::JumpHeight { 0.8 } else { most };
            parameter.hold(&mut scenario, least + part * (most - least));
        }
        // What is turned on the ice adds to the turns: so near the limits of the call.
        if let Some(owed) = scenario.fly().owed {
            let more = (owed.shortfall_deg - short_deg) / 360.0;
            let on_ice = scenario.pre_rotation_turns + more;
            Parameter::PreRotation.hold(&mut scenario, on_ice);
        }
        holds(&scenario);
    }
}

/// Five turns: beyond what has been seen, and the same wherever it is told.
#[test]
fn five_turns_have_one_answer() {
    let five = starts::named("five-turn-attempt").expect("a starting point");
    let mut session = Session::default();
    session.open(five.scenario.clone());
    session.ask(Question::Goal);
    session.poll(|| true);
    assert!(summary(&session).contains("48° short, counts as full below 75°"));
    assert!(summary(&session).contains("Beyond what has been seen: peak rate 484 rpm"));
    let asked = question(&session);
    assert!(asked.contains("0.13 more than now"), "{asked}");
    assert!(asked.contains("It counts as full already"), "{asked}");
    for (single, _) in session.singles() {
        assert!(single.judgement.verdict >= Verdict::BeyondMeasured);
    }
    assert!(five.scenario.note.contains("Nobody has been seen"));
}
