//! A flight for a given time in the air, whatever the ice does.
//!
//! For questions that hold the hang time while something else changes: had the body been tight all
//! along, how far would it have turned in the same time?

use crate::dynamics::gravity::GRAVITY_M_S2;
use crate::flight::constants::{FlightConstants, TimedProperties};
use crate::flight::launch::Launch;
use crate::flight::sample::FlightSample;
use crate::flight::step_record::is_resolved;
use crate::flight::table::PlanTable;

/// What is flown of a plan, and for how long.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FixedTimeFlight {
    /// Leaves the ice in the air position: the closing is over before the flight begins. Of what is led by
    /// hand its knots say so themselves.
    pub closed: bool,
    /// Beginning of the opening, s after take-off; infinite for a body that never opens.
    pub open_s: f64,
    /// Time in the air, s, positive.
    pub hang_s: f64,
}

/// How far the time from the beginning of the opening to the end may be off from the plan's own lead for the
/// plan's own opening to be flown, s.
const SAME_LEAD_S: f64 = 1e-9;

impl FixedTimeFlight {
    /// A plan's own flight for a given time in the air, whatever height that takes: the opening is timed
    /// back from its end. It is the flight that ends by itself after that time, but for the heights over the ice: how
    /// the body turns does not depend on them.
    pub fn of_plan(table: &PlanTable, hang_s: f64) -> Self {
        let spec = &table.plan.spec;
        let open_s = spec.led.as_ref().map_or_else(
            || (hang_s - spec.open_lead_s).max(0.0),
            |led| led.open_s().unwrap_or(hang_s).min(hang_s),
        );
        Self {
            closed: false,
            open_s,
            hang_s,
        }
    }

    /// The flight step by step, from take-off to its end, in steps as fine as an ordinary flight's.
    ///
    /// Heights over the ice are those of the parabola and may be negative: nothing ends the flight
    /// but its time.
    pub fn fly(&self, table: &PlanTable, launch: &Launch) -> Vec<FlightSample> {
        let samples = self.fly_in_steps(table, launch);
        if is_resolved(&samples) {
            return samples;
        }
        self.fly(&table.finer(), launch)
    }

    /// The same in the table's own steps, however fast the body turns.
    pub fn fly_in_steps(&self, table: &PlanTable, launch: &Launch) -> Vec<FlightSample> {
        if self.blends_are_apart(table) {
            self.blend_by_blend(table, launch)
        } else {
            self.as_one_span(table, launch)
        }
    }

    /// Whether the closing is over before the opening begins, and the opening is the plan's own or none. Of
    /// what is led by hand neither is known.
    fn blends_are_apart(&self, table: &PlanTable) -> bool {
        let lead_s = self.hang_s - self.open_s;
        let is_own = lead_s <= 0.0 || (lead_s - table.plan.spec.open_lead_s).abs() < SAME_LEAD_S;
        let closed_s = if self.closed {
            0.0
        } else {
            table.plan.closed_s()
        };
        let is_led = table.plan.spec.led.is_some();
        !is_led && is_own && closed_s <= self.open_s.min(self.hang_s)
    }

    fn blend_by_blend(&self, table: &PlanTable, launch: &Launch) -> Vec<FlightSample> {
        let takeoff = if self.closed {
            table.air()
        } else {
            table.takeoff()
        };
        let constants = FlightConstants::of(takeoff, launch, table.plan.spec.turning);
        let mut samples = Vec::with_capacity(table.most_samples(self.hang_s));
        samples.push(constants.begin(takeoff));
        let mut record = |t_s, attitude, timed: TimedProperties<'_>| {
            constants.record(t_s, attitude, timed, &mut samples);
        };
        let (closed_s, mut attitude) = if self.closed {
            (0.0, constants.attitude)
        } else {
            (table.plan.closed_s(), constants.close(table, &mut record))
        };
        let (held_s, air) = (self.open_s.min(self.hang_s) - closed_s, table.air());
        let steps = table.resolution.plain_steps(held_s);
        let step_s = held_s / steps.max(1) as f64;
        for i in 1..=steps {
            attitude = constants.step(attitude, step_s, [&air.rate_from_momentum; 3]);
            let t_s = closed_s + step_s * i as f64;
            record(t_s, attitude, TimedProperties::in_seconds(air));
        }
        if self.open_s < self.hang_s {
            constants.open(table, self.open_s, attitude, record);
        }
        samples
    }

    fn as_one_span(&self, table: &PlanTable, launch: &Launch) -> Vec<FlightSample> {
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

/// The height of the jump, m, whose flight ends with these samples by itself; none where a body would have
/// to leave the ice downwards. `launch` is the one that they were flown with.
pub fn height_for_m(samples: &[FlightSample], launch: &Launch) -> Option<f64> {
    let last = samples.last()?;
    // The height over the ice at a given time grows with the speed of take-off by that time.
    let speed_m_s = launch.speed_m_s() - last.lowest_m / last.t_s;
    (speed_m_s > 0.0).then(|| speed_m_s * speed_m_s / (2.0 * GRAVITY_M_S2))
}
