//! A flight of which only turns, rates and the pull on the hands are asked.

use std::f64::consts::TAU;
use std::sync::Arc;

use super::flight::{Flight, Launch};
use super::kept::Bare;
use super::readout::Readout;
use super::table::PlanTable;

/// The few numbers of a flight that a map of many asks for, each as the whole flight's readout has
/// it, to rounding.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Glance {
    /// Turned from take-off to touch-down.
    pub air_turns: f64,
    pub takeoff_rate_rad_s: f64,
    pub peak_rate_rad_s: f64,
    /// Mass of one hand with what it holds.
    pub hand_kg: f64,
    /// The larger of both hands.
    pub hand_pull_peak_n: f64,
}

impl Glance {
    /// Flies like [`Flight::new`].
    pub fn new(table: &Arc<PlanTable>, launch: Launch) -> Self {
        let flown = Flight::kept::<Bare>(Arc::clone(table), launch);
        let (first, last) = (flown.steps[0], flown.steps[flown.steps.len() - 1]);
        let sign = flown.table.plan.spec.turning.sign();
        // From end to end: a tilt alone turns the right-left axis by half a turn only if the body lies
        // down in between, and none does.
        let turned_rad = last.attitude.turned_since(&first.attitude);
        let (mut spin_rad_s, mut hand_pull_m2_s4) = (sign * first.spin_rad_s, 0.0_f64);
        for step in &flown.steps {
            spin_rad_s = spin_rad_s.max(sign * step.spin_rad_s);
            hand_pull_m2_s4 = hand_pull_m2_s4.max(step.hand_pull_m2_s4);
        }
        let hand_kg = table.takeoff().state.hand_kg;
        Self {
            air_turns: sign * turned_rad / TAU,
            takeoff_rate_rad_s: sign * first.spin_rad_s,
            peak_rate_rad_s: spin_rad_s,
            hand_kg,
            hand_pull_peak_n: hand_kg * hand_pull_m2_s4.sqrt(),
        }
    }

    /// Of a flight that has its readout.
    pub fn of(flight: &Flight, readout: &Readout) -> Self {
        Self {
            air_turns: readout.air_turns,
            takeoff_rate_rad_s: readout.takeoff_rate_rad_s,
            peak_rate_rad_s: readout.peak_rate_rad_s,
            hand_kg: flight.table.takeoff().state.hand_kg,
            hand_pull_peak_n: readout.hand_pull_peak_n,
        }
    }
}
