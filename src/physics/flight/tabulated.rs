//! Integration of the attitude over the spans of a tabulated plan.

use crate::dynamics::attitude::Attitude;
use crate::dynamics::integrate;
use crate::flight::constants::{FlightConstants, TimedProperties};
use crate::flight::sample_table::SampleTable;
use crate::flight::table::PlanTable;

/// Called after each integration step with time (s), attitude and mass properties.
pub trait StepObserver: FnMut(f64, Attitude, TimedProperties<'_>) {}
impl<F: FnMut(f64, Attitude, TimedProperties<'_>)> StepObserver for F {}

impl FlightConstants {
    /// From take-off to the end of the closing.
    pub fn close(&self, table: &PlanTable, mut visit: impl StepObserver) -> Attitude {
        let start_s = table.closing.start_s;
        let attitude = self.hold_takeoff_posture(table, start_s, &mut visit);
        self.follow(&table.closing, start_s, attitude, &mut visit)
    }

    /// The opening, from `open_s` on.
    pub fn open(
        &self,
        table: &PlanTable,
        open_s: f64,
        from: Attitude,
        mut visit: impl StepObserver,
    ) {
        match &table.opening {
            Some(opening) => {
                self.follow(opening, open_s, from, &mut visit);
            }
            None => visit(open_s, from, TimedProperties::in_seconds(table.air())),
        }
    }

    /// From take-off to `end_s` for an opening that begins before the closing is over.
    pub fn close_and_open(
        &self,
        table: &PlanTable,
        open_s: f64,
        end_s: f64,
        mut visit: impl StepObserver,
    ) {
        let moving_s = table.closing.start_s.min(open_s).min(end_s);
        let attitude = self.hold_takeoff_posture(table, moving_s, &mut visit);
        if moving_s < end_s {
            let span = table.overlapping(open_s, moving_s, end_s);
            self.follow(&span, moving_s, attitude, &mut visit);
        }
    }

    /// From take-off on in its posture.
    fn hold_takeoff_posture(
        &self,
        table: &PlanTable,
        until_s: f64,
        visit: &mut impl StepObserver,
    ) -> Attitude {
        let steps = table.resolution.plain_steps(until_s);
        let (step_s, takeoff) = (until_s / steps.max(1) as f64, table.takeoff());
        let mut attitude = self.attitude;
        for i in 1..=steps {
            attitude = self.step(attitude, step_s, [&takeoff.rate_from_momentum; 3]);
            visit(
                step_s * i as f64,
                attitude,
                TimedProperties::in_seconds(takeoff),
            );
        }
        attitude
    }

    /// From `start_s` after take-off on, as tabulated.
    pub fn follow(
        &self,
        span: &SampleTable,
        start_s: f64,
        from: Attitude,
        visit: &mut impl StepObserver,
    ) -> Attitude {
        let mut attitude = from;
        let (unit_s, step_s) = (span.unit_s, span.step * span.unit_s);
        let momentum = self.h_kg_m2_s * unit_s;
        for (i, (start, middle, properties)) in span.steps().enumerate() {
            attitude = integrate::step(
                attitude,
                momentum,
                span.step,
                [start, middle, &properties.rate_from_momentum],
            );
            let t_s = start_s + step_s * (i + 1) as f64;
            visit(t_s, attitude, TimedProperties { properties, unit_s });
        }
        attitude
    }
}
