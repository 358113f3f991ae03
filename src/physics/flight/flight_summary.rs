//! A flight of which only turns and rates are asked.

use std::f64::consts::TAU;
use std::sync::Arc;

use crate::flight::launch::Launch;
use crate::flight::planned::Flight;
use crate::flight::readout::Readout;
use crate::flight::step_record::RateRecord;
use crate::flight::table::PlanTable;

/// The few numbers of a flight that a map of many flights needs, each as the whole flight's readout has
/// it, to rounding.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlightSummary {
    /// Turned from take-off to touch-down.
    pub air_turns: f64,
    pub takeoff_rate_rad_s: f64,
    pub peak_rate_rad_s: f64,
}

impl FlightSummary {
    /// Flies like [`Flight::new`].
    pub fn new(table: &Arc<PlanTable>, launch: Launch) -> Self {
        let flown = Flight::fly::<RateRecord>(Arc::clone(table), launch);
        let (first, last) = (flown.steps[0], flown.steps[flown.steps.len() - 1]);
        let sign = flown.table.plan.spec.turning.sign();
        // From end to end: a tilt alone turns the right-left axis by half a turn only if the body lies
        // down in between, and none does.
        let turned_rad = last.attitude.turned_since(&first.attitude);
        let mut spin_rad_s = sign * first.spin_rad_s;
        for step in &flown.steps {
            spin_rad_s = spin_rad_s.max(sign * step.spin_rad_s);
        }
        Self {
            air_turns: sign * turned_rad / TAU,
            takeoff_rate_rad_s: sign * first.spin_rad_s,
            peak_rate_rad_s: spin_rad_s,
        }
    }

    /// Of a readout.
    pub const fn of(readout: &Readout) -> Self {
        Self {
            air_turns: readout.air_turns,
            takeoff_rate_rad_s: readout.takeoff_rate_rad_s,
            peak_rate_rad_s: readout.peak_rate_rad_s,
        }
    }
}
