//! Times of a flight and its parts: `cargo bench --no-default-features`.

mod fits;

use std::hint::black_box;
use std::sync::Arc;

use fits::Fits;
use turns_aloft::analysis::map::{Axis, TurnMap};
use turns_aloft::physics::centroidal::{CentroidalState, inertia_and_momentum};
use turns_aloft::physics::efforts::Efforts;
use turns_aloft::physics::flight::Flight;
use turns_aloft::physics::flight_summary::FlightSummary;
use turns_aloft::physics::inverse::Loads;
use turns_aloft::scenario::{Scenario, starts};

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

/// Inertia and joint-motion momentum of one given posture only.
#[divan::bench]
fn two_quantities(bencher: divan::Bencher) {
    let jump = scenario().fly();
    let table = Arc::clone(&jump.flight.table);
    let (posture, rates) = table.plan.at(0.1, 0.5);
    bencher
        .bench_local(|| inertia_and_momentum(&table.tree, black_box(&posture), black_box(&rates)));
}

/// The whole centroidal state of one given posture, as needed at the end of a step.
#[divan::bench]
fn centroidal_state(bencher: divan::Bencher) {
    let jump = scenario().fly();
    let table = Arc::clone(&jump.flight.table);
    let (posture, rates) = table.plan.at(0.1, 0.5);
    bencher
        .bench_local(|| CentroidalState::new(&table.tree, black_box(&posture), black_box(&rates)));
}

/// A whole jump from its scenario, all readouts included.
#[divan::bench]
fn whole_jump(bencher: divan::Bencher) {
    let scenario = scenario();
    bencher.bench_local(|| black_box(&scenario).fly());
}

/// A whole jump with its joint torques, powers and forces.
#[divan::bench]
fn whole_jump_with_efforts(bencher: divan::Bencher) {
    let scenario = scenario();
    bencher.bench_local(|| {
        let jump = black_box(&scenario).fly();
        black_box(jump.efforts());
        jump
    });
}

/// Torques, powers and forces of a finished flight.
#[divan::bench]
fn efforts_of_flight(bencher: divan::Bencher) {
    let jump = scenario().fly();
    bencher.bench_local(|| Efforts::new(black_box(&jump.flight)));
}

/// The loads on all joints in one given joint state.
#[divan::bench]
fn loads(bencher: divan::Bencher) {
    let jump = scenario().fly();
    let tree = Arc::clone(&jump.flight.table.tree);
    let motion = jump.flight.joint_state_at(0.1);
    let rate_rad_s = jump.flight.at(0.1).own_rate_rad_s;
    bencher.bench_local(|| Loads::new(&tree, black_box(&motion), black_box(rate_rad_s)));
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

/// The same flight as a summary: turns and peaks only.
#[divan::bench]
fn summary_on_table(bencher: divan::Bencher) {
    let jump = scenario().fly();
    let (table, launch) = (Arc::clone(&jump.flight.table), jump.flight.launch);
    bencher.bench_local(|| FlightSummary::new(&table, black_box(launch)));
}

/// Parameters and the range people have (common practice, no source).
const RANGES: [(&str, f64, f64); 5] = [
    ("jump_height_m", 0.2, 0.6),
    ("takeoff_rate_rad_s", 5.0, 15.0),
    ("arm_tuck", 0.0, 1.0),
    ("leg_tuck", 0.0, 1.0),
    ("close_time_s", 0.1, 0.4),
];

fn empty_map(scenario: &Scenario, over: (usize, usize)) -> TurnMap {
    let axis = |i: usize| {
        let (key, from, to) = RANGES[i];
        Axis::named(key, from, to, 61).expect("within the range")
    };
    TurnMap::new(scenario, axis(over.0), axis(over.1)).expect("two different numbers")
}

/// A map of 61 x 61 jumps over two of these parameters, every one flown.
#[divan::bench(sample_count = 10, args = [(0, 1), (0, 2), (1, 4), (2, 3), (2, 4)])]
fn map(bencher: divan::Bencher, over: (usize, usize)) {
    let scenario = scenario();
    bencher.bench_local(|| {
        let mut map = empty_map(black_box(&scenario), over);
        map.complete();
        map
    });
}

/// The first picture of such a map: its coarsest nodes.
#[divan::bench]
fn first_of_map(bencher: divan::Bencher) {
    let scenario = scenario();
    bencher.bench_local(|| {
        let mut map = empty_map(black_box(&scenario), (2, 3));
        map.refine(25);
        map.turns_so_far()
    });
}

/// The turns of a whole map between its nodes, and the lines of whole turns.
#[divan::bench]
fn lines_of_map(bencher: divan::Bencher) {
    let mut map = empty_map(&scenario(), (0, 1));
    map.complete();
    bencher.bench_local(|| {
        black_box(&map)
            .turns_so_far()
            .map(|turns| turns.whole_lines())
    });
}

/// All that an attempt's marks say.
#[divan::bench(sample_count = 10)]
fn fit(bencher: divan::Bencher) {
    let fits = Fits::new();
    bencher.bench_local(|| black_box(&fits).whole());
}

/// Its likeliest jump, after one mark was moved.
#[divan::bench]
fn first_of_fit(bencher: divan::Bencher) {
    let fits = Fits::new();
    bencher.bench_local(|| black_box(&fits).first());
}
