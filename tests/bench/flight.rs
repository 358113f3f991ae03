//! What a flight costs: `cargo bench --no-default-features`.

use std::hint::black_box;
use std::sync::Arc;

use turns_aloft::analysis::map::{Axis, TurnMap};
use turns_aloft::physics::flight::Flight;
use turns_aloft::physics::momentum::{MassState, inertia_and_momentum};
use turns_aloft::scenario::Scenario;
use turns_aloft::scenario::keys;
use turns_aloft::scenario::starts;

fn main() {
    divan::main();
}

fn scenario() -> Scenario {
    starts::named("four-turns")
        .expect("a starting point")
        .scenario
        .clone()
}

/// Joint angles and rates of one posture of the plan.
#[divan::bench]
fn posture_of_plan(bencher: divan::Bencher) {
    let jump = scenario().fly();
    let plan = jump.flight.table.plan.clone();
    bencher.bench_local(|| plan.at(black_box(0.1), 0.5));
}

/// Inertia and joint-motion momentum of one given posture, and nothing else.
#[divan::bench]
fn two_quantities(bencher: divan::Bencher) {
    let jump = scenario().fly();
    let table = Arc::clone(&jump.flight.table);
    let (posture, rates) = table.plan.at(0.1, 0.5);
    bencher
        .bench_local(|| inertia_and_momentum(&table.tree, black_box(&posture), black_box(&rates)));
}

/// All that a step's end needs of one given posture.
#[divan::bench]
fn mass_state(bencher: divan::Bencher) {
    let jump = scenario().fly();
    let table = Arc::clone(&jump.flight.table);
    let (posture, rates) = table.plan.at(0.1, 0.5);
    bencher.bench_local(|| MassState::new(&table.tree, black_box(&posture), black_box(&rates)));
}

/// A whole jump from its scenario, all readouts included.
#[divan::bench]
fn whole_jump(bencher: divan::Bencher) {
    let scenario = scenario();
    bencher.bench_local(|| black_box(&scenario).fly());
}

/// The same body and plan at another take-off rate, all readouts included.
#[divan::bench]
fn flown_again(bencher: divan::Bencher) {
    let scenario = scenario();
    let last = scenario.fly();
    bencher.bench_local(|| black_box(&scenario).fly_after(Some(&last)));
}

/// The flight alone on a tabulated plan.
#[divan::bench]
fn flight_on_table(bencher: divan::Bencher) {
    let jump = scenario().fly();
    let (table, launch) = (Arc::clone(&jump.flight.table), jump.flight.launch);
    bencher.bench_local(|| Flight::new(Arc::clone(&table), black_box(launch)));
}

/// A map of 61 x 61 jumps over these two numbers, every one flown.
#[divan::bench(sample_count = 10, args = ["takeoff_rate_rad_s", "arm_tuck", "close_delay_s", "close_time_s"])]
fn map_over_height_and(bencher: divan::Bencher, key: &str) {
    let scenario = scenario();
    let axis = |name: &str| {
        let key = keys::key(name).expect("a key");
        Axis::new(name, key.least, key.most, 61).expect("the whole range")
    };
    bencher.bench_local(|| {
        let mut map = TurnMap::new(black_box(&scenario), axis("jump_height_m"), axis(key))
            .expect("two different numbers");
        map.complete();
        map
    });
}
