//! From a sensor's file to the fitted jump: the mechanics that flew the attempt are found again.

use crate::read;
use crate::recorder::{Sensor, record};
use turns_aloft::attempt::{Attempt, Measured};
use turns_aloft::fit::Fitting;
use turns_aloft::fit::quantity::Quantity;
use turns_aloft::physics::plan::Turning;
use turns_aloft::scenario::{Scenario, starts};

/// Ranges are 95 %: of six one may miss, by no more than its own width.
#[test]
fn the_jump_of_a_recorded_flight_is_fitted() {
    let mut missed = 0;
    for (seed, name) in ["half-a-turn-short", "junior-double", "senior-triple"]
        .into_iter()
        .enumerate()
    {
        let flown = starts::named(name).expect("a start").scenario.clone();
        // The jump that it was meant to be is another one.
        let meant = Scenario {
            jump_height_m: flown.jump_height_m + 0.04,
            takeoff_rate_rad_s: 0.9 * flown.takeoff_rate_rad_s,
            ..flown.clone()
        };
        let truth = record(&flown, &Sensor::default(), 40 + seed as u64);
        let trace = read(&truth.csv()).expect("a trace");
        let attempt = Attempt {
            scenario: meant,
            measured: Measured::Sensor(trace.sensor("jump.csv", Turning::Anticlockwise)),
        };
        let fit = Fitting::new(&attempt, None)
            .expect("it can be fitted")
            .complete();
        let turns = truth.turned_rad.abs() / std::f64::consts::TAU;
        for (quantity, truly) in [
            (Quantity::AirTurns, turns),
            (Quantity::PeakRate, truth.peak_rate_rad_s),
        ] {
            let range = fit.range(quantity);
            let width = range.high - range.low;
            assert!(
                (range.low - width..range.high + width).contains(&truly),
                "{name} {quantity:?} {truly} {range:?}"
            );
            missed += usize::from(!(range.low..range.high).contains(&truly));
        }
        // The angles are known to a tenth of a turn and better.
        let range = fit.range(Quantity::AirTurns);
        assert!(range.high - range.low < 0.25, "{name} {range:?}");
    }
    assert!(missed <= 1, "{missed}");
}
