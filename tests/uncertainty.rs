//! The range of the turns: against a Monte Carlo of whole flights, and against closed forms.

#[path = "support/space.rs"]
mod space;

use std::sync::Mutex;

use proptest::prelude::*;
use rand::SeedableRng;
use rand::rngs::StdRng;
use rand_distr::{Distribution, Normal};

use turns_aloft::analysis::uncertainty::{
    Range, UncertainInput, Uncertainty, bare, open_and_tight_kg_m2, with_ratio_off,
};
use turns_aloft::physics::body::{Body, BodySpec};
use turns_aloft::physics::plan::Turning;
use turns_aloft::scenario::call::Call;
use turns_aloft::scenario::fly::Jump;
use turns_aloft::scenario::jump::JumpName;
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::starts::{self, Start};
use turns_aloft::scenario::{HandsKeep, Scenario};

const FLIGHTS: usize = 20_000;

/// The 95 % limits of a normal distribution, in standard deviations.
const LIMIT: f64 = 1.959_963_984_540_054;

/// Turns of flights whose four inputs are off at random, sorted. Draws outside an input's range
/// are held at its end, as the page holds them.
fn monte_carlo(scenario: &Scenario, uncertainty: &Uncertainty) -> Vec<f64> {
    let mut random = StdRng::seed_from_u64(1996);
    let error = |half_width: f64| Normal::new(0.0, half_width / LIMIT).expect("a half-width");
    let inputs = [HEIGHT, RATE, CLOSE_TIME].map(|parameter| {
        let half_width = uncertainty.get(UncertainInput::Number(parameter));
        (parameter, error(half_width))
    });
    let inertia = error(uncertainty.get(UncertainInput::InertiaRatio));
    let mut turns: Vec<f64> = (0..FLIGHTS)
        .map(|_| {
            let mut drawn = scenario.clone();
            for (key, error) in &inputs {
                let value = key.get(scenario) + error.sample(&mut random);
                key.hold(&mut drawn, value);
            }
            let (_, body) = with_ratio_off(scenario, inertia.sample(&mut random));
            drawn.fly_as(body, None).turns
        })
        .collect();
    turns.sort_unstable_by(f64::total_cmp);
    turns
}

/// Half the distance between the 2.5 % and the 97.5 % quantile.
fn half_width(sorted: &[f64]) -> f64 {
    let at = |share: f64| sorted[(share * (sorted.len() - 1) as f64).round() as usize];
    0.5 * (at(0.975) - at(0.025))
}

/// Linear propagation against 20,000 flights, for every starting point: the half-widths agree
/// within 5 % (what is demanded of it). The quantiles of so many flights scatter by 0.7 % of it.
#[test]
fn the_range_is_that_of_a_monte_carlo() {
    let waiting: Mutex<Vec<&Start>> = Mutex::new(starts::all().iter().collect());
    let found = Mutex::new(Vec::new());
    std::thread::scope(|scope| {
        for _ in 0..std::thread::available_parallelism().map_or(1, usize::from) {
            scope.spawn(|| {
                loop {
                    let next = waiting.lock().expect("no thread panics here").pop();
                    let Some(start) = next else { break };
                    let scenario = &start.scenario;
                    let nominal = scenario.fly();
                    let uncertainty = Uncertainty::usual(scenario);
                    let range = Range::new(scenario, &nominal, &uncertainty);
                    let linear = 0.5 * (range.high - range.low);
                    let flown = half_width(&monte_carlo(scenario, &uncertainty));
                    found
                        .lock()
                        .expect("no thread panics here")
                        .push((start.name, linear, flown));
                }
            });
        }
    });
    let found = found.into_inner().expect("all threads have ended");
    assert_eq!(found.len(), starts::all().len());
    for (name, linear, flown) in &found {
        println!(
            "{name:20} linear {linear:.4} flown {flown:.4} ratio {:.4}",
            linear / flown
        );
    }
    for (name, linear, flown) in found {
        assert!(
            (linear - flown).abs() <= 0.05 * flown,
            "{name}: {linear} by propagation, {flown} by {FLIGHTS} flights"
        );
    }
}

/// The range of a scenario with these half-widths.
fn range_of(scenario: &Scenario, half_widths: Uncertainty) -> (Jump, Range) {
    let jump = scenario.fly();
    let range = Range::new(scenario, &jump, &half_widths);
    (jump, range)
}

const SURE: Uncertainty = Uncertainty::NONE;

const HEIGHT: Parameter = Parameter::JumpHeight;
const RATE: Parameter = Parameter::TakeoffRate;
const CLOSE_TIME: Parameter = Parameter::CloseTime;

/// Nothing is uncertain but these.
fn only(inputs: &[(UncertainInput, f64)]) -> Uncertainty {
    let mut of = SURE;
    for &(input, half_width) in inputs {
        of.hold(input, half_width);
    }
    of
}

#[test]
fn without_uncertainty_there_is_no_range() {
    for start in starts::all() {
        let (jump, range) = range_of(&start.scenario, SURE);
        assert_eq!((range.low, range.high), (jump.turns, jump.turns));
        assert_eq!(range.changes, [0.0; 4]);
        assert_eq!(range.foremost(), None);
        let call = jump.owed.and_then(|owed| owed.call);
        assert_eq!(range.calls, call.map(|call| vec![call]), "{}", start.name);
    }
}

/// Higher and faster gives more turns; slower in gives fewer; so does a smaller ratio of
/// inertia.
#[test]
fn every_input_works_the_way_it_must() {
    for start in starts::all() {
        let (_, range) = range_of(&start.scenario, Uncertainty::usual(&start.scenario));
        let [height, rate, close_time, ratio] = range.changes;
        assert!(height > 0.0 && rate > 0.0, "{}", start.name);
        assert!(close_time < 0.0 && ratio > 0.0, "{}", start.name);
    }
}

/// Who stays in one posture turns `rate` times hang time, and the hang time is the square root of
/// 8 h / g: height enters by half its share, the rate by its share, and neither closing nor the
/// ratio of inertia by anything. Tolerance 1e-9 of the air turns: nothing but rounding is between them.
#[test]
fn a_rigid_body_follows_the_closed_forms() {
    let scenario = Scenario {
        takeoff_openness: 0.0,
        arm_tuck: 0.0,
        leg_tuck: 0.0,
        open_lead_s: 0.0,
        lean_rad: 0.0,
        ..starts::named("senior-triple")
            .expect("it is there")
            .scenario
            .clone()
    };
    let usual = Uncertainty::usual(&scenario);
    let (jump, range) = range_of(&scenario, usual);
    let air_turns = jump.readout.air_turns;
    let share = usual.get(UncertainInput::Number(HEIGHT)) / scenario.jump_height_m;
    let root = |share: f64| 0.5 * (libm::sqrt(1.0 + share) - libm::sqrt(1.0 - share));
    let expected = [
        root(share),
        usual.get(UncertainInput::Number(RATE)) / scenario.takeoff_rate_rad_s,
        0.0,
        0.0,
    ];
    for (change, expected) in range.changes.iter().zip(expected) {
        assert!(
            (change / air_turns - expected).abs() < 1e-9,
            "{change} of {air_turns} turns, not {expected} of them"
        );
    }
}

/// A body that is closed at once, as tight as it can get, and stays so turns `rate` times hang time
/// times the ratio of inertia, open to tight: a ratio that is off by a share makes as large a share of
/// the turns. Tolerance 5 %: the closing takes 0.05 s of 1.1 s.
#[test]
fn the_ratio_of_inertia_weighs_by_its_share() {
    let scenario = Scenario {
        jump_height_m: 1.5,
        takeoff_openness: 0.6,
        arm_tuck: 1.0,
        leg_tuck: 1.0,
        close_delay_s: 0.0,
        close_time_s: 0.05,
        arm_lag_s: 0.0,
        arm_asymmetry: 0.0,
        open_lead_s: 0.0,
        lean_rad: 0.0,
        boot_mass_kg: 0.0,
        ..starts::named("senior-triple")
            .expect("it is there")
            .scenario
            .clone()
    };
    let inertia_ratio_share = 0.10;
    let half_widths = only(&[(UncertainInput::InertiaRatio, inertia_ratio_share)]);
    let (jump, range) = range_of(&scenario, half_widths);
    let expected = inertia_ratio_share * jump.readout.air_turns;
    assert!(
        (range.changes[3] - expected).abs() < 0.05 * expected,
        "{} instead of {expected}",
        range.changes[3]
    );
}

/// The body that is off has the ratio that was asked for, where its trunk lets it.
#[test]
fn the_ratio_is_off_by_the_share() {
    for start in starts::all() {
        let scenario = &start.scenario;
        let ratio = |spec: BodySpec| {
            let bare = BodySpec {
                core_inertia: spec.core_inertia,
                ..bare(scenario)
            };
            let [open, tight] = open_and_tight_kg_m2(&Body::new(bare));
            open / tight
        };
        let own = ratio(scenario.body_spec());
        // Half of it is what the largest half-width takes: it must stay a ratio.
        assert!(own > 2.2, "{}: {own}", start.name);
        for share in [-0.5, -0.2, 0.1, 0.2] {
            let (reached, body) = with_ratio_off(scenario, share);
            assert!((reached - share).abs() < 1e-12, "{}: {share}", start.name);
            assert!((ratio(body) / own - 1.0 - share).abs() < 1e-12);
        }
    }
}

/// At the end of its range an input can be off to one side only; that side counts for both.
#[test]
fn an_input_at_its_limit_is_flown_to_one_side() {
    let rate = Parameter::named("takeoff_rate_rad_s").expect("a key");
    let mut scenario = starts::all()[0].scenario.clone();
    rate.set(&mut scenario, rate.most()).expect("its limit");
    let half_widths = only(&[(UncertainInput::Number(RATE), 2.0)]);
    let (jump, range) = range_of(&scenario, half_widths);
    let mut slower = scenario.clone();
    rate.set(&mut slower, rate.most() - 2.0).expect("inside");
    let expected = jump.turns - slower.fly().turns;
    assert!((range.changes[1] - expected).abs() < 1e-9);
}

/// No error takes a trunk's inertia away; what could be reached is said.
#[test]
fn a_trunk_keeps_some_inertia() {
    let scenario = &starts::all()[0].scenario;
    let (reached, body) = with_ratio_off(scenario, 5.0);
    assert!(body.core_inertia > 0.0 && reached < 5.0);
    let (reached_again, same) = with_ratio_off(scenario, reached);
    assert!((reached_again - reached).abs() < 1e-12);
    assert!((same.core_inertia - body.core_inertia).abs() < 1e-12);
    let (none, nominal) = with_ratio_off(scenario, 0.0);
    assert_eq!((none, nominal), (0.0, scenario.body_spec()));
}

/// Bodies below 1.55 m, where growth medians put twelve-year-olds (151.19 cm and 149.05 cm, CDC
/// 2000) and not fourteen-year-olds (160.39 cm and 163.84 cm), carry more.
#[test]
fn childrens_bodies_are_less_sure() {
    let of = |stature_m: f64| {
        let scenario = Scenario {
            stature_m,
            ..starts::all()[0].scenario.clone()
        };
        Uncertainty::usual(&scenario).get(UncertainInput::InertiaRatio)
    };
    assert!(of(1.5119) > of(1.6039) && of(1.4905) > of(1.6384));
    assert_eq!((of(1.0), of(2.1)), (of(1.4905), of(1.6384)));
}

fn half_widths() -> impl Strategy<Value = Uncertainty> {
    (0.0..=0.25, 0.0..=5.0, 0.0..=0.2, 0.0..=0.5).prop_map(
        |(height_m, rate_rad_s, close_time_s, ratio)| {
            only(&[
                (UncertainInput::Number(HEIGHT), height_m),
                (UncertainInput::Number(RATE), rate_rad_s),
                (UncertainInput::Number(CLOSE_TIME), close_time_s),
                (UncertainInput::InertiaRatio, ratio),
            ])
        },
    )
}

proptest! {
    #![proptest_config(space::cases(150))]

    /// Whatever the jump and the half-widths: numbers, around the turns, with every call between.
    #[test]
    fn every_range_stands_around_its_turns(
        scenario in space::scenario(),
        half_widths in half_widths(),
    ) {
        let (jump, range) = range_of(&scenario, half_widths);
        prop_assert!(range.changes.iter().all(|change| change.is_finite()));
        prop_assert!(range.high.is_finite() && 0.0 <= range.low);
        prop_assert!(range.low <= jump.turns && jump.turns <= range.high);
        match (jump.owed, &range.calls) {
            (Some(owed), Some(calls)) if owed.call.is_some() => {
                // The calls met on the way from one end to the other.
                let mut met: Vec<Call> = (0..=10_000)
                    .map(|i| range.high - f64::from(i) / 10_000.0 * (range.high - range.low))
                    .map(|turns| Call::of(360.0 * (owed.turns - turns)))
                    .collect();
                met.dedup();
                prop_assert_eq!(calls, &met);
                prop_assert!(owed.call.is_some_and(|call| calls.contains(&call)));
            }
            (owed, calls) => {
                prop_assert!(calls.is_none());
                prop_assert_eq!(owed.is_some(), range.shortfall_deg.is_some());
                prop_assert!(!scenario.jump.is_called());
                prop_assert_eq!(scenario.jump == JumpName::Free, owed.is_none());
            }
        }
    }

    /// Turning the other way changes no range. Tolerance as for the flights themselves, 1e-6 turns
    /// at each end, made larger where an end is so near that the change is blown up by it.
    #[test]
    fn both_ways_have_the_same_range(scenario in space::scenario()) {
        let of = |turning: Turning| {
            let scenario = Scenario { turning, ..scenario.clone() };
            range_of(&scenario, Uncertainty::usual(&scenario)).1
        };
        let (left, right) = (of(Turning::Anticlockwise), of(Turning::Clockwise));
        for (one, other) in left.changes.iter().zip(right.changes) {
            prop_assert!((one - other).abs() < 1e-5, "{} {}", one, other);
        }
        prop_assert!((left.low - right.low).abs() < 1e-5);
        prop_assert!((left.high - right.high).abs() < 1e-5);
    }

    /// Heavier hands that keep what the bare ones left with: the bare body is off as well.
    #[test]
    fn kept_momentum_is_that_of_the_body_that_is_off(
        hands_keep in prop::sample::select(vec![HandsKeep::AngularMomentum, HandsKeep::Energy]),
        share in -0.2..0.2_f64,
    ) {
        let heavy = Scenario {
            hands_keep,
            ..starts::named("weighted-hands").expect("it is there").scenario.clone()
        };
        let bare = Scenario { hand_mass_kg: 0.0, ..heavy.clone() };
        let fly = |scenario: &Scenario| {
            scenario.fly_as(with_ratio_off(scenario, share).1, None).readout
        };
        let (heavy, bare) = (fly(&heavy), fly(&bare));
        let (kept, left) = match hands_keep {
            HandsKeep::Energy => (heavy.energy_takeoff_j, bare.energy_takeoff_j),
            _ => (heavy.angular_momentum_kg_m2_s.length(), bare.angular_momentum_kg_m2_s.length()),
        };
        prop_assert!((kept - left).abs() < 1e-9 * left, "{} {}", kept, left);
    }
}
