//! proptest strategies for the whole admissible input space.

use proptest::prelude::*;
use proptest::test_runner::RngSeed;

use turns_aloft::physics::led_tucks::{Knot, LATEST_S, LedTucks};
use turns_aloft::physics::plan::Turning;
use turns_aloft::physics::segments::SegmentTable;
use turns_aloft::scenario::ground::Ground;
use turns_aloft::scenario::jump::{JUMP_TURNS, JumpName};
use turns_aloft::scenario::parameter::Parameter;
use turns_aloft::scenario::{HandsKeep, Scenario, starts};

/// The number of cases, with a fixed seed. The environment variables `PROPTEST_CASES` and
/// `PROPTEST_RNG_SEED` override number and seed.
pub fn cases(cases: u32) -> ProptestConfig {
    let given = |name| std::env::var_os(name).is_some();
    let mut config = ProptestConfig {
        failure_persistence: None,
        max_shrink_iters: 200,
        ..ProptestConfig::default()
    };
    if !given("PROPTEST_CASES") {
        config.cases = cases;
    }
    if !given("PROPTEST_RNG_SEED") {
        config.rng_seed = RngSeed::Fixed(1996);
    }
    config
}

/// A value of one parameter: anywhere in its range, with its limits more often.
fn value(key: Parameter) -> impl Strategy<Value = f64> + use<> {
    let (least, most) = (key.least(), key.most());
    prop_oneof![3 => least..=most, 1 => Just(least), 1 => Just(most)]
}

/// Any way to lead arms and legs by hand: at once, all the way and back again more often.
pub fn led() -> impl Strategy<Value = LedTucks> {
    let tuck = || prop_oneof![2 => 0.0..=1.0_f64, 1 => Just(0.0), 1 => Just(1.0)];
    let wait_s = prop_oneof![2 => 0.001..0.2_f64, 1 => 0.001..0.01_f64];
    prop::collection::vec((wait_s, tuck(), tuck()), 1..12).prop_map(|led| {
        let mut time_s = -0.001;
        let knots: Vec<Knot> = led
            .into_iter()
            .map(|(wait_s, arms, legs)| {
                time_s += wait_s;
                Knot { time_s, arms, legs }
            })
            .collect();
        let admissible = knots.iter().take_while(|knot| knot.time_s <= LATEST_S);
        let knots: Vec<Knot> = admissible.copied().collect();
        LedTucks::new(&knots).expect("knots in order")
    })
}

/// Any admissible scenario: some as planned, some led by hand.
pub fn scenario() -> impl Strategy<Value = Scenario> {
    prop_oneof![3 => planned(), 1 => led_by_hand()]
}

/// Any that is led by hand.
pub fn led_by_hand() -> impl Strategy<Value = Scenario> {
    (planned(), led()).prop_map(|(scenario, led)| Scenario {
        led: Some(led),
        ..scenario
    })
}

/// Any that is as planned: each number from its range, each choice from its list.
pub fn planned() -> impl Strategy<Value = Scenario> {
    let numbers: Vec<_> = Parameter::ALL.into_iter().map(value).collect();
    let words = (
        prop::sample::select(JumpName::ALL.to_vec()),
        JUMP_TURNS[0]..=JUMP_TURNS[1],
        prop::sample::select(vec![SegmentTable::Female, SegmentTable::Male]),
        prop::sample::select(vec![Ground::Ice, Ground::Floor, Ground::Trampoline]),
        prop::sample::select(vec![Turning::Anticlockwise, Turning::Clockwise]),
        prop::sample::select(vec![
            HandsKeep::Rate,
            HandsKeep::AngularMomentum,
            HandsKeep::Energy,
        ]),
    );
    (numbers, words).prop_map(|(numbers, words)| {
        let mut drawn = starts::all()[0].scenario.clone();
        for (key, number) in Parameter::ALL.iter().zip(numbers) {
            key.set(&mut drawn, number)
                .expect("it was drawn from the key's own range");
        }
        (
            drawn.jump,
            drawn.jump_turns,
            drawn.table,
            drawn.ground,
            drawn.turning,
            drawn.hands_keep,
        ) = words;
        drawn
    })
}
