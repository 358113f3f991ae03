//! A flight for a given time in the air, whatever the ice does.
//!
//! For questions that hold the hang time while something else changes: had the body been tight all
//! along, how far would it have turned in the same time?

use crate::flight::constants::{FlightConstants, TimedProperties};
use crate::flight::launch::Launch;
use crate::flight::planned::is_resolved;
use crate::flight::sample::FlightSample;
use crate::flight::table::PlanTable;

/// What is flown of a plan, and for how long.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FixedTimeFlight {
    /// Leaves the ice in the air position: the closing is over before the flight begins.
    pub closed: bool,
    /// Beginning of the opening, s after take-off; infinite for a body that never opens.
    pub open_s: f64,
    /// Time in the air, s, positive.
    pub hang_s: f64,
}

impl FixedTimeFlight {
    /// The flight step by step, from take-off to its end, in steps as fine as an ordinary flight's.
    ///
    /// Heights over the ice are those of the parabola and may be negative: nothing ends the flight
    /// but its time.
    pub fn fly(&self, table: &PlanTable, launch: &Launch) -> Vec<FlightSample> {
        let samples = self.as_tabulated(table, launch);
        if is_resolved(&samples) {
            return samples;
        }
        self.fly(&table.finer(), launch)
    }

    fn as_tabulated(&self, table: &PlanTable, launch: &Launch) -> Vec<FlightSample> {
        // The plan's own clock runs ahead of the flight's by a closing that is over already.
        let ahead_s = if self.closed {
            table.plan.closed_s()
        } else {
            0.0
        };
        let span = table.overlapping(ahead_s + self.open_s, ahead_s, ahead_s + self.hang_s);
        let takeoff = span.first();
        let constants = FlightConstants::of(takeoff, launch, table.plan.spec.turning);
        let mut samples = Vec::with_capacity(span.properties().len());
        samples.push(constants.begin(takeoff));
        constants.follow(
            &span,
            0.0,
            constants.attitude,
            &mut |t_s, attitude, timed: TimedProperties<'_>| {
                constants.record(t_s, attitude, timed, &mut samples);
            },
        );
        samples
    }
}
