//! Who is jumping, and what nobody has been seen to do: marks and verdicts by sex, size and ground,
//! and the jumps that are beyond them.
//!
//! Girls of 10 to 16, off the ice: 29.1 cm, deviation 4.8 cm (Myklebust & Kjellstadli, congress
//! abstract). Women, double Axels landed off the ice: 38.3 cm, 2.6 cm (congress abstract, European
//! College of Sport Science). Boys of 12 to 15: yearly means up to 39.9 cm (Tian et al. 2023,
//! abstract). Men: 0.7 s in the air (press). Peaks of 440 rpm: common practice, no source.

use turns_aloft::analysis::effort_marks;
use turns_aloft::analysis::goal::{GOAL_TURNS, Goal, Single};
use turns_aloft::analysis::judge::marks;
use turns_aloft::analysis::lever::{Lever, Season};
use turns_aloft::analysis::limits::{LimitOf, Limits, Verdict};
use turns_aloft::analysis::steps::ranked;
use turns_aloft::describe::Text;
use turns_aloft::physics::efforts::JointGroup;
use turns_aloft::physics::segments::SegmentTable;
use turns_aloft::scenario::beyond::{Respect, RespectOf};
use turns_aloft::scenario::ground::Ground;
use turns_aloft::scenario::parameter::{Movement, Parameter};
use turns_aloft::scenario::seen::Stand;
use turns_aloft::scenario::units::RateUnit;
use turns_aloft::scenario::{Scenario, starts, strength};
use turns_aloft::session::compare::Which;
use turns_aloft::session::goal::GoalTurns;
use turns_aloft::session::readings::{readings, summary};
use turns_aloft::session::{Question, Session};

const CLOSING: RespectOf = RespectOf::Torque(Movement::Closing);
const OPENING: RespectOf = RespectOf::Torque(Movement::Opening);

fn start(name: &str) -> Scenario {
    starts::named(name).expect("a start").scenario.clone()
}

/// A jumper of the first starting point's jump.
fn jumper(table: SegmentTable, stature_m: f64, jump_height_m: f64) -> Scenario {
    Scenario {
        table,
        stature_m,
        jump_height_m,
        ground: Ground::Ice,
        ..start("half-a-turn-short")
    }
}

/// How a jump's height stands, by the marks on its slider.
fn height_stands(scenario: &Scenario) -> Stand {
    let lever = Lever::named("jump_height_m").expect("a lever");
    let marks = marks(lever, scenario, &scenario.fly());
    marks.stand(scenario.jump_height_m)
}

fn keys(respects: &[Respect]) -> Vec<RespectOf> {
    respects.iter().map(|respect| respect.of).collect()
}

#[test]
fn heights_are_marked_by_sex_and_size() {
    use SegmentTable::{Female, Male};
    use Stand::{Beyond, NotKnown, Seen};
    for (table, stature_m, height_m, stands) in [
        // 29.1 cm and twice 4.8 cm are 38.7 cm.
        (Female, 1.512, 0.386, Seen),
        (Female, 1.512, 0.388, Beyond),
        (Female, 1.512, 0.466, Beyond),
        (Male, 1.512, 0.398, Seen),
        (Male, 1.512, 0.400, Beyond),
        // 38.3 cm and twice 2.6 cm are 43.5 cm.
        (Female, 1.60, 0.434, Seen),
        (Female, 1.60, 0.436, Beyond),
        (Male, 1.75, 0.50, Seen),
        (Male, 1.75, 0.61, Beyond),
        // g (0.7 s)² / 8 is 60 cm, the most of anybody.
        (Female, 1.24, 0.20, NotKnown),
        (Male, 1.24, 0.599, NotKnown),
        (Male, 1.24, 0.61, Beyond),
    ] {
        let scenario = jumper(table, stature_m, height_m);
        let describe = format!("{table:?} {stature_m} {height_m}");
        assert_eq!(height_stands(&scenario), stands, "{describe}");
        let jump = scenario.fly();
        let beyond = keys(&scenario.beyond_seen(&jump)).contains(&RespectOf::Height);
        assert_eq!(beyond, stands == Beyond, "{describe}");
        let not_known = keys(&scenario.not_known_for_size(&jump)).contains(&RespectOf::Height);
        assert_eq!(not_known, stands == NotKnown, "{describe}");
    }
}

/// Lower than anybody has been measured at is no feat.
#[test]
fn everybody_can_jump_lower() {
    for stature_m in [1.40, 1.60] {
        let low = jumper(SegmentTable::Female, stature_m, 0.10);
        assert_eq!(height_stands(&low), Stand::Seen);
    }
}

#[test]
fn a_childs_trampoline_is_not_known() {
    for (stature_m, stands) in [(1.40, Stand::NotKnown), (1.60, Stand::Seen)] {
        let scenario = Scenario {
            stature_m,
            ..start("trampoline")
        };
        assert_eq!(height_stands(&scenario), stands);
        let jump = scenario.fly();
        assert!(!keys(&scenario.beyond_seen(&jump)).contains(&RespectOf::Height));
        let lever = Lever::named("jump_height_m").expect("a lever");
        let source = marks(lever, &scenario, &jump).source.text();
        let said = source.starts_with("Not known for a jumper of this size");
        assert_eq!(said, stands == Stand::NotKnown, "{source}");
    }
}

/// A twelve-year-old's 46.6 cm were called seen in people once, because of a man's figure.
#[test]
fn the_first_jumps_height_is_no_girls() {
    let girl = start("half-a-turn-short");
    let man = Scenario {
        table: SegmentTable::Male,
        stature_m: 1.75,
        body_mass_kg: 68.0,
        ..girl.clone()
    };
    for (scenario, verdict) in [
        (girl, Verdict::BeyondMeasured),
        (man, Verdict::WithinMeasured),
    ] {
        let then = Scenario {
            jump_height_m: 0.466,
            ..scenario.clone()
        };
        let all = singles(&scenario, then.fly().turns);
        let height = all
            .iter()
            .find(|single| single.lever.key() == "jump_height_m");
        let height = height.expect("a lever");
        let value = height.proposal.as_ref().expect("found").value;
        assert!((value - 0.466).abs() < 1e-4, "{value}");
        assert_eq!(height.judgement.verdict, verdict);
        let limit = height.judgement.limit.as_ref().expect("a limit");
        assert_eq!(limit.of, LimitOf::Seen);
    }
}

fn singles(scenario: &Scenario, goal_turns: f64) -> Vec<Single> {
    let now = scenario.fly();
    let (limits, season) = (Limits::default(), Season::default());
    Goal::new(scenario, &now, goal_turns, &limits, &season).singles()
}

/// What a season may bring is taken for within reach, but where nothing is known of jumpers of this
/// size that is said; farther, nothing else can be said.
#[test]
fn what_is_not_known_is_said() {
    let scenario = start("half-a-turn-short");
    for (change_s, verdict) in [(0.015, Verdict::WithinReach), (0.06, Verdict::NotKnown)] {
        let then = Scenario {
            close_time_s: scenario.close_time_s - change_s,
            ..scenario.clone()
        };
        let all = singles(&scenario, then.fly().turns);
        let closing = all
            .iter()
            .find(|single| single.lever.key() == "close_time_s");
        let judged = &closing.expect("a lever").judgement;
        assert_eq!(judged.verdict, verdict);
        assert!(!judged.known_for_size);
        let said = judged.source.text();
        let known = [
            "not known what jumpers of this size",
            "ot known for a jumper of this size",
        ];
        assert!(known.iter().any(|words| said.contains(words)), "{said}");
    }
    // Of a grown jumper it is.
    let grown = Scenario {
        stature_m: 1.60,
        ..scenario
    };
    let all = singles(&grown, grown.fly().turns + 0.01);
    assert!(all.iter().all(|single| single.judgement.known_for_size));
}

/// Nobody has been seen to turn at its peak; whatever it is asked for, it stays beyond.
#[test]
fn five_turns_are_beyond_what_has_been_seen() {
    let scenario = start("five-turn-attempt");
    let jump = scenario.fly();
    let beyond = scenario.beyond_seen(&jump);
    let peak = beyond
        .iter()
        .find(|respect| respect.of == RespectOf::PeakRate);
    let peak = peak.expect("beyond");
    assert_eq!(peak.value, jump.readout.peak_rate_rad_s);
    let up_to = peak.seen_up_to.expect("a mark");
    assert!((RateUnit::Rpm.unit().from_si(up_to) - 440.0).abs() < 1e-9);
    assert!(peak.source.text().contains("no source"));

    let mut session = Session::default();
    session.open(scenario);
    session.ask(Question::Goal);
    session.set_goal(GoalTurns::Turns(session.jump().turns + 0.1));
    session.poll(|| true);
    assert!(!session.singles().is_empty());
    for (single, _) in session.singles() {
        let verdict = single.judgement.verdict;
        assert!(verdict >= Verdict::BeyondMeasured, "{}", single.lever.key());
    }
    let joint = session.combination().0.expect("found");
    assert_eq!(joint.judgement.verdict, Verdict::BeyondMeasured);
    assert!(keys(&joint.beyond_seen).contains(&RespectOf::PeakRate));
}

/// Whatever is asked of whichever start: what is called within reach, or seen in people, flies beyond
/// nothing, and what flies beyond something says in which respects.
#[test]
fn nothing_within_reach_flies_beyond() {
    let mut proposals = 0;
    for start in starts::all() {
        let scenario = &start.scenario;
        let turns = scenario.fly().turns;
        for more in [0.05, 0.4] {
            let goal_turns = (turns + more).min(GOAL_TURNS[1]);
            for single in singles(scenario, goal_turns) {
                let Some(proposal) = &single.proposal else {
                    continue;
                };
                let lever = single.lever;
                let then = lever.at(scenario, proposal.value);
                let beyond = then.beyond_seen(&then.fly());
                assert_eq!(
                    proposal.beyond_seen,
                    beyond,
                    "{} {}",
                    start.name,
                    single.lever.key()
                );
                if !beyond.is_empty() {
                    assert_eq!(single.judgement.verdict, Verdict::BeyondMeasured);
                }
                // Nor is it said of what comes to the edge that people have been seen there.
                let at_edge = |of: &Scenario| of.at_edge_of_measured(&of.fly());
                let before = at_edge(scenario);
                if at_edge(&then).iter().any(|one| one.is_worse_than(&before)) {
                    assert_ne!(single.judgement.verdict, Verdict::WithinMeasured);
                }
                proposals += 1;
            }
        }
        for gain in ranked(scenario, &scenario.fly()) {
            let Some(change) = gain.change else { continue };
            let lever = gain.lever;
            let then = lever.at(scenario, lever.value(scenario) + change);
            assert_eq!(gain.beyond_seen, then.beyond_seen(&then.fly()));
        }
    }
    assert!(proposals > 40, "{proposals}");
}

/// Own limits say what a jumper gets to with a lever; not that a body turns as fast as none has.
#[test]
fn own_limits_do_not_outdo_what_has_been_seen() {
    let scenario = start("five-turn-attempt");
    let now = scenario.fly();
    let mut limits = Limits::default();
    let height = Lever::named("jump_height_m").expect("a lever");
    limits.set(height, [0.2, 1.0]).expect("admissible");
    let season = Season::default();
    let goal = Goal::new(&scenario, &now, now.turns + 0.05, &limits, &season);
    let height = goal.single(height);
    assert_eq!(height.judgement.verdict, Verdict::BeyondMeasured);
}

/// It stands with the turns wherever they are told: read out, among the readouts, beside another
/// attempt and in the kept list. A jump that people do has none of it.
#[test]
fn it_is_told_with_the_turns() {
    for (name, beyond) in [("five-turn-attempt", true), ("junior-double", false)] {
        let mut session = Session::default();
        session.open(start(name));
        let said = "eyond what has been seen: peak rate ";
        assert_eq!(summary(&session).contains(said), beyond);
        let lines = readings(&session);
        let line = lines.iter().find(|line| line.quantity == "beyond_seen");
        assert_eq!(line.is_some(), beyond);
        if let Some(line) = line {
            assert!(line.text.starts_with("peak rate ") && line.text.contains(" rpm"));
            assert!(line.about.contains("up to 440 rpm"), "{}", line.about);
        }
        session.keep_jump();
        session.set_reference(Which::Start(name.to_owned()));
        session.open(start("senior-triple"));
        session.ask(Question::Compare);
        session.poll(|| true);
        let reference = session.reference().expect("laid");
        assert_eq!(!reference.beyond_seen.is_empty(), beyond);
        let answers = session.answers();
        let of = |quantity: &str| answers.iter().find(|line| line.quantity == quantity);
        assert_eq!(of("compare:beyond_seen").is_some(), beyond);
        let kept = &of("kept:1").expect("kept").text;
        assert_eq!(kept.contains("beyond what has been seen"), beyond, "{kept}");
    }
}

/// N m for each kilogram of body mass, per joint: the most that has been measured, and what its text
/// says of it. The sources stand in `scenario/strength.rs`.
#[test]
fn strengths_are_marked_by_sex_and_size() {
    use SegmentTable::{Female, Male};
    let of = |table, stature_m, group| {
        let scenario = jumper(table, stature_m, 0.3);
        strength::mark(scenario.jumper(), group)
    };
    for (group, woman, man, child) in [
        (JointGroup::Shoulder, 1.4, 1.85, None),
        (JointGroup::Elbow, 0.95, 1.3, Some(1.0)),
        (JointGroup::Hip, 4.5, 4.5, None),
        (JointGroup::Knee, 3.75, 4.2, Some(3.2)),
        (JointGroup::Spine, 4.0, 6.4, Some(4.0)),
    ] {
        for (table, adult) in [(Female, woman), (Male, man)] {
            for (stature_m, own) in [(1.6, Some(adult)), (1.4, child), (1.2, None)] {
                let mark = of(table, stature_m, group);
                let most = own.unwrap_or(adult);
                assert_eq!(mark.known, own.is_some());
                assert_eq!(mark.edge_from, most);
                // Held against a pull, up to 1.4 times as much.
                assert!((mark.up_to / most - 1.4).abs() < 1e-12);
                let stands = [0.99, 1.01, 1.39, 1.41].map(|times| mark.stand(times * most));
                use Stand::{AtEdge, Beyond, NotKnown, Seen};
                let goal = if own.is_some() {
                    [Seen, AtEdge, AtEdge, Beyond]
                } else {
                    [NotKnown, NotKnown, NotKnown, Beyond]
                };
                assert_eq!(stands, goal);
                let said = mark.source.text();
                let number = if most == 4.0 {
                    "4.0".into()
                } else {
                    most.to_string()
                };
                assert!(own.is_none() || said.contains(&number), "{said}");
            }
        }
    }
}

/// What a jump is said to ask of a joint is its largest net torque by the body's mass, of the joint
/// that stands worst; twice the closing time asks for less, a hundredth is beyond everybody.
#[test]
fn torques_are_held_against_strength() {
    let grown = Scenario {
        stature_m: 1.60,
        ..start("half-a-turn-short")
    };
    let closing = |scenario: &Scenario| {
        let jump = scenario.fly();
        let all = [
            scenario.beyond_seen(&jump),
            scenario.at_edge_of_measured(&jump),
        ];
        let all = all.concat();
        let respect = all.into_iter().find(|one| one.of == CLOSING);
        if let Some(respect) = respect {
            let group = respect.joint.expect("a torque is a joint's");
            let demand = jump.efforts().closing[group as usize];
            assert_eq!(respect.value, demand.torque.value / scenario.body_mass_kg);
        }
        respect.map(|respect| respect.stand)
    };
    assert_eq!(closing(&grown), None);
    let fast = Scenario {
        close_time_s: 0.08,
        ..grown.clone()
    };
    assert_eq!(closing(&fast), Some(Stand::Beyond));
    // Of a child's shoulder and hip nothing is known.
    let child = start("half-a-turn-short");
    let not_known = keys(&child.not_known_for_size(&child.fly()));
    assert!(not_known.contains(&CLOSING) && not_known.contains(&OPENING));
}

/// The marks by strength are where a flight at them says: the strength itself where what is seen ends,
/// 1.4 times as much where nobody has been measured. To half a hundredth: what can be seen on a slider.
#[test]
fn numbers_are_marked_where_strength_is_met() {
    let scenario = start("four-turns");
    let jump = scenario.fly();
    let mut met = 0;
    for name in ["arm_tuck", "leg_tuck", "close_time_s", "open_time_s"] {
        let row = Parameter::named(name).expect("a key");
        let marks = effort_marks::marks(row, &scenario, &jump).expect("marked");
        let share = |value: f64| {
            let mut then = scenario.clone();
            row.hold(&mut then, value);
            let flown = then.fly();
            let demands = match name {
                "open_time_s" => flown.efforts().opening,
                _ => flown.efforts().closing,
            };
            strength::share(then.jumper(), then.body_mass_kg, &demands)
        };
        let seen = marks.seen.expect("known of a grown man");
        let ends = [row.least(), row.most()];
        let of_seen = seen.into_iter().map(|end| (end, 1.0));
        let of_beyond = [marks.beyond, marks.beyond_below].into_iter().flatten();
        for (end, times) in of_seen.chain(of_beyond.map(|end| (end, strength::HELD))) {
            if !ends.contains(&end) {
                let share = share(end);
                assert!((share / times - 1.0).abs() < 5e-3, "{name} {end} {share}");
                met += 1;
            }
        }
    }
    assert!(met >= 2, "{met}");
}

/// They follow the jump once the hand rests, and not before; the other marks follow at once.
#[test]
fn marks_by_strength_wait_for_the_hand() {
    let close_time = Parameter::named("close_time_s").expect("a key");
    let mut session = Session::default();
    session.open(start("senior-triple"));
    assert_eq!(session.marks(close_time).expect("a row").seen, None);
    session.poll(|| true);
    let before = session.marks(close_time).expect("marked");
    assert!(before.seen.is_some());
    session.set_dragging(true);
    session.set(Parameter::named("takeoff_rate_rad_s").expect("a key"), 16.0);
    session.poll(|| true);
    assert_eq!(session.marks(close_time).as_ref(), Some(&before));
    session.set_dragging(false);
    session.poll(|| true);
    assert_ne!(session.marks(close_time), Some(before));
    // Of a child not all strength is known: no end of what is seen.
    session.open(start("half-a-turn-short"));
    session.poll(|| true);
    let of_child = session.marks(close_time).expect("marked");
    assert_eq!(of_child.seen, None);
    assert!(
        of_child
            .source
            .text()
            .starts_with("Not known for a jumper of this size")
    );
}
