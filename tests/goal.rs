//! What would win it: every answer is flown again, by the key table and the plain flight.

#[path = "support/space.rs"]
mod space;

use proptest::prelude::*;

use turns_aloft::analysis::caution::{self, Caution};
use turns_aloft::analysis::combination::Combination;
use turns_aloft::analysis::goal::{Goal, MET_TURNS, Single};
use turns_aloft::analysis::judge::marks;
use turns_aloft::analysis::lever::{Lever, Season};
use turns_aloft::analysis::limits::{LimitOf, Limits, Verdict};
use turns_aloft::describe::{Sentence, Text};
use turns_aloft::physics::plan::Turning;
use turns_aloft::physics::segments::SegmentTable;
use turns_aloft::scenario::beyond::{Respect, RespectOf};
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::units::RateUnit;
use turns_aloft::scenario::{Scenario, starts};

fn lever(name: &str) -> Lever {
    Lever::named(name).expect("a lever")
}

fn with(scenario: &Scenario, name: &str, value: f64) -> Scenario {
    let mut other = scenario.clone();
    Parameter::named(name)
        .expect("a key")
        .set(&mut other, value)
        .expect("an admissible value");
    other
}

fn turns_with(scenario: &Scenario, name: &str, value: f64) -> f64 {
    with(scenario, name, value).fly().turns
}

fn singles(scenario: &Scenario, goal_turns: f64, limits: &Limits) -> Vec<Single> {
    let (now, season) = (scenario.fly(), Season::default());
    Goal::new(scenario, &now, goal_turns, limits, &season).singles()
}

fn joint(
    scenario: &Scenario,
    goal_turns: f64,
    limits: &Limits,
    season: &Season,
) -> Option<Combination> {
    let now = scenario.fly();
    let goal = Goal::new(scenario, &now, goal_turns, limits, season);
    goal.combination(&goal.singles())
}

fn single<'a>(singles: &'a [Single], name: &str) -> &'a Single {
    singles
        .iter()
        .find(|single| single.lever.key() == name)
        .expect("a lever")
}

/// Every number of the scenario that the mix changes, set.
fn mixed(scenario: &Scenario, joint: &Combination) -> Scenario {
    joint
        .changes
        .iter()
        .fold(scenario.clone(), |other, change| {
            with(&other, change.lever.key(), change.value)
        })
}

/// Points of a lever's range, ends included, that have nothing to do with the product's own.
fn grid(least: f64, most: f64, points: usize) -> impl Iterator<Item = f64> {
    (0..points).map(move |i| least + (most - least) * i as f64 / (points - 1) as f64)
}

/// A proposal has the wanted turns when set and flown, and no value nearer to the present one has
/// them. What cannot do it alone has fewer on a grid of its own, and what the proof says is so.
#[track_caller]
fn holds(scenario: &Scenario, goal_turns: f64, points: usize) {
    let now = scenario.fly();
    for single in singles(scenario, goal_turns, &Limits::default()) {
        let row = Parameter::named(single.lever.key()).expect("a key");
        let said = || format!("{} of {scenario:?}", single.lever.key());
        assert_eq!(single.now, row.get(scenario));
        if let Some(proposal) = &single.proposal {
            let turns = turns_with(scenario, single.lever.key(), proposal.value);
            assert!((turns - goal_turns).abs() < MET_TURNS, "{}", said());
            assert_eq!(turns, proposal.turns, "{}", said());
            assert_eq!(proposal.value - single.now, proposal.change);
            assert!(single.proof.is_none());
            let marks = proposal.change.abs();
            let nearer = grid(single.now - marks, single.now + marks, points)
                .filter(|value| (row.least()..=row.most()).contains(value))
                .filter(|value| (value - single.now).abs() < 0.999 * marks);
            for value in nearer {
                let turns = turns_with(scenario, single.lever.key(), value);
                assert!(turns < goal_turns, "{} at {value}: {}", turns, said());
            }
            continue;
        }
        if !scenario.has_part(single.lever.parameter()) {
            assert_eq!(single.judgement.verdict, Verdict::NoPart);
            assert!(single.proof.is_none());
            continue;
        }
        let proof = single.proof.as_ref().expect("a proof");
        assert_eq!(single.judgement.verdict, Verdict::CannotAlone);
        assert_eq!(proof.range, [row.least(), row.most()]);
        let at_ends = proof
            .range
            .map(|end| turns_with(scenario, single.lever.key(), end));
        assert_eq!(at_ends, proof.turns_at_ends, "{}", said());
        let most = turns_with(scenario, single.lever.key(), proof.most_turns_at);
        assert_eq!(most, proof.most_turns, "{}", said());
        assert!(now.turns <= proof.most_turns && proof.most_turns < goal_turns);
        for value in grid(row.least(), row.most(), points) {
            let turns = turns_with(scenario, single.lever.key(), value);
            assert!(turns < goal_turns, "{turns} at {value}: {}", said());
            // How far the top of a peak may lie above the highest point found on it: our choice.
            assert!(turns < proof.most_turns + 1e-4, "{value}: {}", said());
        }
    }
}

#[test]
fn answers_hold_on_every_starting_point() {
    for start in starts::all() {
        let turns = start.scenario.fly().turns;
        for more in [0.05, 0.4, 1.5] {
            holds(&start.scenario, turns + more, 203);
        }
    }
}

proptest! {
    #![proptest_config(space::cases(5))]

    #[test]
    fn answers_hold_anywhere(scenario in space::scenario(), more in 0.01..2.0) {
        holds(&scenario, scenario.fly().turns + more, 67);
    }

    #[test]
    fn joint_changes_hold_anywhere(scenario in space::scenario(), more in 0.01..2.0) {
        joint_holds(&scenario, scenario.fly().turns + more);
    }
}

/// The last hundred-thousandth of a turn below the most that a peak gives, which no end of the search's
/// parts reaches: still found. A crooked body that snaps open a little before the ice makes that peak.
#[test]
fn a_peak_between_the_points_of_the_search_is_seen() {
    let start = &starts::named("senior-triple").expect("a start").scenario;
    let scenario = &Scenario {
        lean_rad: 0.35,
        arm_asymmetry: 1.0,
        hand_mass_kg: 1.0,
        takeoff_rate_rad_s: 20.0,
        takeoff_openness: 0.3,
        arm_tuck: 0.7,
        leg_tuck: 0.5,
        open_time_s: 0.05,
        ..start.clone()
    };
    let row = Parameter::named("open_lead_s").expect("a key");
    let all = singles(scenario, 9.0, &Limits::default());
    let proof = single(&all, row.key()).proof.as_ref().expect("a proof");
    assert!(proof.most_turns_at > 0.01 && proof.most_turns > scenario.fly().turns + 1e-3);
    let goal_turns = proof.most_turns - 1e-5;
    assert!((0..=40).all(|i| {
        let value = row.least() + (row.most() - row.least()) * f64::from(i) / 40.0;
        turns_with(scenario, row.key(), value) < goal_turns
    }));
    let all = singles(scenario, goal_turns, &Limits::default());
    let proposal = single(&all, row.key()).proposal.as_ref().expect("found");
    assert!((proposal.turns - goal_turns).abs() < 1e-6);
    // On the near side of the peak: the far one has the turns too.
    assert!(turns_with(scenario, row.key(), 0.0) < goal_turns);
    assert!(proposal.value > proof.most_turns_at);
}

/// On the first starting point pulling the arms tighter, to nine tenths, saves the jump from a call
/// (less than 75 degrees missing); the two whole turns they cannot give alone.
#[test]
fn tighter_arms_save_the_first_jump_from_a_call() {
    let scenario = &starts::named("half-a-turn-short")
        .expect("a start")
        .scenario;
    let all = singles(scenario, 2.0 - 75.0 / 360.0, &Limits::default());
    let arms = single(&all, "arm_tuck");
    let value = arms.proposal.as_ref().expect("a proposal").value;
    assert!((0.85..0.93).contains(&value), "{value}");
    // A child's strength of shoulder and hip is not known.
    assert_eq!(arms.judgement.verdict, Verdict::NotKnown);
    let all = singles(scenario, 2.0, &Limits::default());
    assert_eq!(
        single(&all, "arm_tuck").judgement.verdict,
        Verdict::CannotAlone
    );
    assert!(single(&all, "jump_height_m").proposal.is_some());
}

/// A jumper who moves nothing: a rigid body on a principal axis, down at the height it left.
fn rigid() -> Scenario {
    Scenario {
        arm_tuck: 0.0,
        leg_tuck: 0.0,
        open_lead_s: 0.0,
        lean_rad: 0.0,
        arm_asymmetry: 0.0,
        arm_lag_s: 0.0,
        ..starts::all()[0].scenario.clone()
    }
}

/// In the air it turns by rate times 2 sqrt(2 h / g): the rate needed goes with the turns, the
/// height with their square. To 1e-6: what a root is found to, and the step's error.
#[test]
fn a_rigid_body_needs_what_the_closed_form_says() {
    let scenario = rigid();
    let now = scenario.fly();
    for goal_turns in [1.3, 1.5, 2.0] {
        let ratio = (goal_turns - scenario.pre_rotation_turns) / now.readout.air_turns;
        let all = singles(&scenario, goal_turns, &Limits::default());
        let value = |name| single(&all, name).proposal.as_ref().expect("found").value;
        let rate = value("takeoff_rate_rad_s") / (scenario.takeoff_rate_rad_s * ratio);
        let height = value("jump_height_m") / (scenario.jump_height_m * ratio * ratio);
        assert!((rate - 1.0).abs() < 1e-6, "{rate}");
        assert!((height - 1.0).abs() < 1e-6, "{height}");
    }
}

/// Rate and height of a rigid body alone: the least effort on the closed form's own line of equal
/// turns, walked finely.
#[test]
fn a_rigid_bodys_joint_change_is_the_closed_forms() {
    let scenario = rigid();
    let mut season = Season::default();
    for lever in Lever::ALL {
        if !["jump_height_m", "takeoff_rate_rad_s"].contains(&lever.key()) {
            season.set(lever, 0.0).expect("a lever is held");
        }
    }
    let [height_unit, rate_unit] = ["jump_height_m", "takeoff_rate_rad_s"].map(|name| {
        season
            .unit(Lever::named(name).expect("a lever"))
            .expect("a unit")
    });
    let air_turns = scenario.fly().readout.air_turns;
    for goal_turns in [1.3, 1.8, 2.6] {
        let ratio = (goal_turns - scenario.pre_rotation_turns) / air_turns;
        let effort = |share: f64| {
            let rate = (share - 1.0) * scenario.takeoff_rate_rad_s / rate_unit;
            let height = ((ratio / share).powi(2) - 1.0) * scenario.jump_height_m / height_unit;
            rate.hypot(height)
        };
        let least = grid(1.0, ratio, 20_001)
            .map(effort)
            .fold(f64::MAX, f64::min);
        let found = joint(&scenario, goal_turns, &Limits::default(), &season).expect("found");
        assert_eq!(found.changes.len(), 2);
        // Steps that win less than 1e-4 of the effort are not taken.
        let share = found.effort_seasons / least;
        assert!((1.0 - 1e-6..1.001).contains(&share), "{share}");
    }
}

/// The mix has the wanted turns when set and flown, inside every range; its effort is what it says,
/// and no larger than that of any single lever.
#[track_caller]
fn joint_holds(scenario: &Scenario, goal_turns: f64) {
    let (limits, season) = (Limits::default(), Season::default());
    let alone = singles(scenario, goal_turns, &limits);
    let efforts = alone.iter().filter_map(|single| {
        let unit = season.unit(single.lever)?;
        Some((single.proposal.as_ref()?.change / unit).abs())
    });
    let least_alone = efforts.fold(f64::INFINITY, f64::min);
    let Some(found) = joint(scenario, goal_turns, &limits, &season) else {
        assert_eq!(least_alone, f64::INFINITY, "{scenario:?}");
        return;
    };
    let turns = mixed(scenario, &found).fly().turns;
    assert!((turns - goal_turns).abs() < MET_TURNS, "{scenario:?}");
    assert_eq!(turns, found.turns);
    let square: f64 = found
        .changes
        .iter()
        .map(|change| {
            let unit = season.unit(change.lever);
            (change.change / unit.expect("a unit")).powi(2)
        })
        .sum();
    assert!((square.sqrt() - found.effort_seasons).abs() < 1e-9 * (1.0 + square));
    assert!(found.effort_seasons <= least_alone + 1e-9, "{scenario:?}");
    assert_eq!(
        found.single_effort_seasons.unwrap_or(f64::INFINITY),
        least_alone
    );
}

#[test]
fn joint_changes_hold_on_every_starting_point() {
    for start in starts::all() {
        let turns = start.scenario.fly().turns;
        for more in [0.05, 0.4, 1.5] {
            joint_holds(&start.scenario, turns + more);
        }
    }
}

/// At the least effort no lever can be traded for another: a little more of one, as much less of
/// another as keeps the turns, is more effort.
#[test]
fn no_trade_between_two_levers_is_less_effort() {
    for start in starts::all() {
        let scenario = &start.scenario;
        let goal_turns = scenario.fly().turns + 0.4;
        let season = Season::default();
        let found = joint(scenario, goal_turns, &Limits::default(), &season).expect("found");
        assert!(found.settled, "{}", start.name);
        let start_at = mixed(scenario, &found);
        let unit = |name| {
            season
                .unit(Lever::named(name).expect("a lever"))
                .expect("a unit")
        };
        for more in &found.changes {
            for less in &found.changes {
                for trade in [-0.1, 0.1] {
                    let row = Parameter::named(more.lever.key()).expect("a key");
                    let value = more.value + trade * unit(more.lever.key());
                    if more.lever.key() == less.lever.key()
                        || !(row.least()..=row.most()).contains(&value)
                    {
                        continue;
                    }
                    let traded = with(&start_at, more.lever.key(), value);
                    let turns = traded.fly().turns;
                    // Back to the target by the other lever, along a line through two flights.
                    let step = 0.05 * unit(less.lever.key()).copysign(-less.change);
                    let slope =
                        (turns_with(&traded, less.lever.key(), less.value + step) - turns) / step;
                    let back = (goal_turns - turns) / slope / unit(less.lever.key());
                    let row = Parameter::named(less.lever.key()).expect("a key");
                    let value = less.value + back * unit(less.lever.key());
                    if !(row.least()..=row.most()).contains(&value) {
                        continue;
                    }
                    let square =
                        found.effort_seasons.powi(2) - more.seasons.powi(2) - less.seasons.powi(2)
                            + (more.seasons + trade).powi(2)
                            + (less.seasons + back).powi(2);
                    assert!(
                        square.sqrt() > 0.999 * found.effort_seasons,
                        "{}: {} for {}",
                        start.name,
                        more.lever.key(),
                        less.lever.key()
                    );
                }
            }
        }
    }
}

#[test]
fn what_is_reached_needs_no_change() {
    let scenario = &starts::named("four-turns").expect("a start").scenario;
    let turns = scenario.fly().turns;
    for goal_turns in [turns, turns - 0.7] {
        for single in singles(scenario, goal_turns, &Limits::default()) {
            assert_eq!(single.judgement.verdict, Verdict::AlreadyReached);
            assert_eq!(single.proposal.expect("nothing to do").change, 0.0);
        }
        let found = joint(scenario, goal_turns, &Limits::default(), &Season::default())
            .expect("nothing to do");
        assert_eq!((found.effort_seasons, found.turns), (0.0, turns));
        assert_eq!(found.judgement.verdict, Verdict::AlreadyReached);
        assert!(found.cautions.is_empty());
    }
}

/// More turns than every lever together gives: said, not invented.
#[test]
fn what_nothing_reaches_is_said() {
    let scenario = Scenario {
        takeoff_rate_rad_s: 0.5,
        ..starts::named("child-single")
            .expect("a start")
            .scenario
            .clone()
    };
    let mut season = Season::default();
    season.set(lever("takeoff_rate_rad_s"), 0.0).expect("held");
    let found = joint(&scenario, 9.0, &Limits::default(), &season);
    assert_eq!(found, None);
    for lever in Lever::ALL {
        season.set(lever, 0.0).expect("held");
    }
    let held = joint(
        &scenario,
        scenario.fly().turns + 0.1,
        &Limits::default(),
        &season,
    );
    assert_eq!(held, None);
}

/// A mirrored jumper needs the same. To 1e-6: what a root is found to.
#[test]
fn the_turning_direction_changes_nothing() {
    for name in ["half-a-turn-short", "crooked-takeoff"] {
        let scenario = &starts::named(name).expect("a start").scenario;
        let mirrored = Scenario {
            turning: Turning::Clockwise,
            ..scenario.clone()
        };
        assert_ne!(scenario.turning, mirrored.turning);
        let goal_turns = scenario.fly().turns + 0.4;
        let both = [scenario, &mirrored].map(|of| singles(of, goal_turns, &Limits::default()));
        for (one, other) in both[0].iter().zip(&both[1]) {
            assert_eq!(one.judgement.verdict, other.judgement.verdict);
            let value = |single: &Single| single.proposal.as_ref().map_or(0.0, |p| p.value);
            assert!(
                (value(one) - value(other)).abs() < 1e-6,
                "{}",
                one.lever.key()
            );
        }
        let [one, other] = [scenario, &mirrored].map(|of| {
            joint(of, goal_turns, &Limits::default(), &Season::default()).expect("found")
        });
        assert!((one.effort_seasons / other.effort_seasons - 1.0).abs() < 1e-3);
    }
}

/// A jump whose peak grows beyond the 440 rpm that have been seen (common practice, no source) is
/// beyond what has been measured, whichever lever made it.
#[test]
fn nobody_has_been_seen_to_turn_that_fast() {
    let fastest = &starts::named("five-turn-attempt")
        .expect("a start")
        .scenario;
    let scenario = with(fastest, "arm_tuck", 0.6);
    let peak_rpm = |of: &Scenario| {
        let peak_rad_s = of.fly().readout.peak_rate_rad_s;
        RateUnit::Rpm.unit().from_si(peak_rad_s)
    };
    assert!(peak_rpm(&scenario) < 440.0);
    for (tuck, too_fast) in [(0.65, false), (1.0, true)] {
        let then = with(&scenario, "arm_tuck", tuck);
        assert_eq!(peak_rpm(&then) > 440.0, too_fast);
        let all = singles(&scenario, then.fly().turns - 1e-6, &Limits::default());
        let arms = single(&all, "arm_tuck");
        let proposal = arms.proposal.as_ref().expect("found");
        assert!((proposal.value - tuck).abs() < 1e-4);
        let beyond = |one: &Respect| one.of == RespectOf::PeakRate;
        assert_eq!(proposal.beyond_seen.iter().any(beyond), too_fast);
        if too_fast {
            assert_eq!(arms.judgement.verdict, Verdict::BeyondMeasured);
            let limited = arms.judgement.limit.as_ref().expect("a limit").parameter;
            assert_eq!(limited, Parameter::TakeoffRate);
        }
    }
}

/// A grown man in the first starting point's jump: of him it is known what has been seen.
fn man() -> Scenario {
    Scenario {
        table: SegmentTable::Male,
        stature_m: 1.75,
        body_mass_kg: 68.0,
        ..starts::all()[0].scenario.clone()
    }
}

#[test]
fn own_limits_decide_what_is_within_reach() {
    let scenario = &man();
    let height = |limits: &Limits| {
        let all = singles(scenario, 2.0, limits);
        single(&all, "jump_height_m").judgement.clone()
    };
    let usual = height(&Limits::default());
    assert_eq!(usual.verdict, Verdict::WithinMeasured);
    assert_eq!(usual.limit.expect("a limit").of, LimitOf::Seen);

    let mut wide = Limits::default();
    wide.set(lever("jump_height_m"), [0.2, 0.6])
        .expect("admissible");
    let wide = height(&wide);
    assert_eq!(wide.verdict, Verdict::WithinReach);
    assert_eq!(wide.limit.expect("a limit").of, LimitOf::Jumper);

    let mut narrow = Limits::default();
    narrow
        .set(lever("jump_height_m"), [0.25, 0.3])
        .expect("admissible");
    assert_eq!(height(&narrow).verdict, Verdict::WithinMeasured);
    let found = joint(scenario, 2.0, &narrow, &Season::default()).expect("found");
    let mixed_m = mixed(scenario, &found).jump_height_m;
    assert!((0.25..=0.3).contains(&mixed_m), "{mixed_m}");
    // The usual answer goes higher: the limit was met.
    let usual = joint(scenario, 2.0, &Limits::default(), &Season::default()).expect("found");
    assert!(mixed(scenario, &usual).jump_height_m > 0.3);
    assert!(found.effort_seasons > usual.effort_seasons);
}

/// Without own limits this jumper's reach is one season's change from now, no more.
#[test]
fn a_season_decides_where_there_are_no_own_limits() {
    let scenario = &man();
    for (lever, change, verdict) in [
        ("jump_height_m", 0.029, Verdict::WithinReach),
        ("jump_height_m", 0.031, Verdict::WithinMeasured),
        ("close_time_s", -0.019, Verdict::WithinReach),
        ("close_time_s", -0.021, Verdict::WithinMeasured),
    ] {
        let value = Parameter::named(lever).expect("a key").get(scenario) + change;
        let goal_turns = turns_with(scenario, lever, value);
        if goal_turns <= scenario.fly().turns {
            panic!("{lever} by {change} wins nothing");
        }
        let all = singles(scenario, goal_turns, &Limits::default());
        let judged = &single(&all, lever).judgement;
        assert_eq!(judged.verdict, verdict, "{lever} {change}");
        let of = judged.limit.as_ref().map(|limit| limit.of);
        let season = of == Some(LimitOf::Season);
        assert_eq!(season, verdict == Verdict::WithinReach);
    }
}

#[test]
fn limits_and_seasons_that_cannot_be_are_refused() {
    let mut limits = Limits::default();
    for own in [[0.5, 0.2], [0.0, 0.3], [0.2, 3.0], [f64::NAN, 0.3]] {
        let said = limits
            .set(lever("jump_height_m"), own)
            .expect_err("refused")
            .sentence();
        assert!(
            said.contains("jump_height_m") && said.contains("from 0.1 to 2.5 m"),
            "{said}"
        );
    }
    let mut season = Season::default();
    assert!(season.set(lever("jump_height_m"), -0.1).is_err());
    assert!(season.set(lever("jump_height_m"), f64::NAN).is_err());
    let why = Lever::named("lean_rad").expect_err("no lever").sentence();
    assert!(why.contains("jump_height_m"), "{why}");
    assert_eq!((limits, season), (Limits::default(), Season::default()));
}

/// Higher is not proposed without its cautions; the load is that of the flight.
#[test]
fn cautions_stand_beside_what_can_hurt() {
    let scenario = &starts::named("senior-triple").expect("a start").scenario;
    let goal_turns = scenario.fly().turns + 0.1;
    let all = singles(scenario, goal_turns, &Limits::default());
    let proposal = |name| single(&all, name).proposal.as_ref().expect("found");
    let higher = proposal("jump_height_m");
    assert!(higher.cautions.contains(&Caution::NoSafeNumber));
    assert!(higher.cautions.contains(&Caution::Ask));
    assert!(!higher.cautions.contains(&Caution::Hands));
    let then = with(scenario, "jump_height_m", higher.value).fly();
    assert_eq!(higher.landing_load_bw, then.readout.landing_load_bw);
    assert!(higher.landing_load_bw[0] > scenario.fly().readout.landing_load_bw[0]);
    assert!(proposal("arm_tuck").cautions.is_empty());
    let longer = with(scenario, "open_lead_s", 0.2);
    assert!(caution::of(scenario, &longer).contains(&Caution::Ask));
}

#[test]
fn every_lever_has_marks() {
    for start in starts::all() {
        let jump = start.scenario.fly();
        for lever in Lever::ALL {
            assert!(
                marks(lever, &start.scenario, &jump)
                    .source
                    .text()
                    .ends_with('.')
            );
        }
    }
}
