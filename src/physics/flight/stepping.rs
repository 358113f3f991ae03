//! From one recorded step to the next.

use crate::dynamics::attitude::Attitude;
use crate::dynamics::centroidal::CentroidalState;
use crate::dynamics::mass_properties::{MassProperties, RateFromMomentum};
use crate::flight::constants::{FlightConstants, TimedProperties};
use crate::flight::step_record::StepRecord;

impl FlightConstants {
    /// From an instant on to a time within the same step, by a step of its own through the mass
    /// states of these times.
    pub fn advanced_to<K: StepRecord>(
        &self,
        from: &K,
        t_s: f64,
        state_at: impl Fn(f64) -> CentroidalState,
    ) -> K {
        let step_s = t_s - from.t_s();
        let end = MassProperties::from(state_at(t_s));
        let attitude = if step_s == 0.0 {
            from.attitude()
        } else {
            let [start, middle] = [from.t_s(), from.t_s() + 0.5 * step_s]
                .map(|t_s| RateFromMomentum::from(&state_at(t_s)));
            self.step(
                from.attitude(),
                step_s,
                [&start, &middle, &end.rate_from_momentum],
            )
        };
        K::of(
            self,
            t_s,
            attitude,
            TimedProperties::in_seconds(&end),
            Some(from),
        )
    }

    /// The instant of take-off.
    pub fn begin<K: StepRecord>(&self, takeoff: &MassProperties) -> K {
        K::of(
            self,
            0.0,
            self.attitude,
            TimedProperties::in_seconds(takeoff),
            None,
        )
    }

    /// Adds the record of the next instant, unless no time has passed.
    #[inline]
    pub fn record<K: StepRecord>(
        &self,
        t_s: f64,
        attitude: Attitude,
        timed: TimedProperties<'_>,
        steps: &mut Vec<K>,
    ) {
        let before = &steps[steps.len() - 1];
        if t_s > before.t_s() {
            let next = K::of(self, t_s, attitude, timed, Some(before));
            steps.push(next);
        }
    }
}
