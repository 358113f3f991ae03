//! No step of a flight asks for memory: counted by an allocator that counts.

use std::sync::Arc;

use turns_aloft::physics::body::Body;
use turns_aloft::physics::efforts::Efforts;
use turns_aloft::physics::flight::{Flight, Launch};
use turns_aloft::physics::live_flight::LiveFlight;
use turns_aloft::physics::plan::{Plan, PlanSpec};
use turns_aloft::physics::posture::Posture;
use turns_aloft::physics::readout::Readout;
use turns_aloft::physics::table::{PlanTable, Resolution};
use turns_aloft::scenario::ground::Ground;
use turns_aloft::scenario::starts;

fn counted<T>(work: impl FnOnce() -> T) -> (u64, T) {
    let mut made = None;
    let count = allocation_counter::measure(|| made = Some(work())).count_total;
    (count, made.expect("the work has been done"))
}

/// Steps half as long, again and again.
fn finer(times: u32) -> Resolution {
    (0..times).fold(Resolution::STANDARD, |resolution, _| resolution.halved())
}

/// Requests of a table and of a flight with its readouts, and how many moments that flight has.
fn requests(plan: PlanSpec, launch: Launch, resolution: Resolution) -> (u64, u64, usize) {
    let body = Body::new(starts::all()[0].scenario.body_spec());
    let (table, made) = counted(|| PlanTable::new(body, Plan::new(plan), resolution));
    let made = Arc::new(made);
    let (flight, samples) = counted(|| {
        let flight = Flight::new(made, launch);
        let _readout = Readout::new(&flight, Ground::Ice.stopping_time_s());
        let _efforts = Efforts::new(&flight);
        flight.samples.len()
    });
    (table, flight, samples)
}

/// Sixteen times the steps, not one request more: neither for the table nor for the flight, its
/// search for the touch-down, its readouts and its efforts.
#[test]
fn finer_steps_ask_for_no_more() {
    for start in starts::all() {
        let (plan, launch) = (start.scenario.plan_spec(), start.scenario.launch());
        let coarse = requests(plan.clone(), launch, finer(1));
        let fine = requests(plan, launch, finer(5));
        assert!(fine.2 > 10 * coarse.2, "{}", start.name);
        assert_eq!((coarse.0, coarse.1), (fine.0, fine.1), "{}", start.name);
        assert!(fine.0 + fine.1 < 30, "{}: {fine:?}", start.name);
    }
}

/// A live flight asks for nothing at all once it has begun.
#[test]
fn stepping_asks_for_nothing() {
    let scenario = &starts::all()[0].scenario;
    let (takeoff, _) = Plan::new(scenario.plan_spec()).at(0.0, f64::INFINITY);
    let body = Body::new(scenario.body_spec());
    let mut live = LiveFlight::launched(body, &takeoff, &scenario.launch(), scenario.turning);
    let (asked, landed) = counted(|| {
        live.aim_all(&Posture::STANDING, 0.2)
            .expect("a posture and a fair time");
        for _ in 0..120 {
            live.step(0.01);
        }
        live.has_landed()
    });
    assert!(landed);
    assert_eq!(asked, 0);
}

/// The count sees a request where there is one.
#[test]
fn requests_are_counted() {
    let (asked, made) = counted(|| vec![1.0; 3]);
    assert_eq!((asked, made.len()), (1, 3));
}
