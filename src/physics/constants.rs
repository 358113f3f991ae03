//! What take-off fixes for the whole flight, and what follows from it at any instant.

use glam::DVec3;

use super::GRAVITY_M_S2;
use super::attitude::Attitude;
use super::centroidal::CentroidalState;
use super::integrate;
use super::launch::Launch;
use super::mass_properties::{MassProperties, RateFromMomentum};
use super::plan::Turning;
use super::sample::FlightSample;
use super::sample_table::SampleTable;
use super::step_record::StepRecord;
use super::table::PlanTable;

/// Mass properties whose rates count in a unit of time of their own.
#[derive(Debug, Clone, Copy)]
pub struct TimedProperties<'a> {
    pub properties: &'a MassProperties,
    pub unit_s: f64,
}

impl<'a> TimedProperties<'a> {
    /// Rates count in seconds, or nothing moves.
    pub const fn in_seconds(properties: &'a MassProperties) -> Self {
        Self {
            properties,
            unit_s: 1.0,
        }
    }
}

/// Called after each integration step with time (s), attitude and mass properties.
pub trait StepObserver: FnMut(f64, Attitude, TimedProperties<'_>) {}
impl<F: FnMut(f64, Attitude, TimedProperties<'_>)> StepObserver for F {}

/// What take-off fixes for the whole flight.
#[derive(Debug, Clone, Copy)]
pub struct FlightConstants {
    /// Angular momentum about the CM, upwards.
    pub h_kg_m2_s: f64,
    /// Attitude at take-off.
    pub attitude: Attitude,
    /// Vertical speed of the CM at take-off.
    pub speed_m_s: f64,
    /// Height of the CM at take-off.
    pub cm_m: f64,
    /// +1 for a jumper who turns anticlockwise, -1 clockwise.
    pub sign: f64,
}

impl FlightConstants {
    /// Of a body that leaves the ice in this posture.
    pub fn of(takeoff: &MassProperties, launch: &Launch, turning: Turning) -> Self {
        let (h_kg_m2_s, orientation) = launch.of(takeoff, turning);
        let attitude = Attitude::of(orientation);
        Self {
            h_kg_m2_s,
            attitude,
            speed_m_s: launch.speed_m_s(),
            cm_m: -takeoff.state.lowest_m(attitude.up),
            sign: turning.sign(),
        }
    }

    pub fn cm_height_m(&self, t_s: f64) -> f64 {
        self.cm_m + t_s * (self.speed_m_s - 0.5 * GRAVITY_M_S2 * t_s)
    }

    /// Speed of the CM downwards, m/s.
    pub fn falling_m_s(&self, t_s: f64) -> f64 {
        GRAVITY_M_S2 * t_s - self.speed_m_s
    }

    /// The time at which the CM comes down to a height, s; the top of the flight if it never gets
    /// that high.
    pub fn falls_to_s(&self, height_m: f64) -> f64 {
        let drop_m = self.cm_m - height_m;
        let square = self.speed_m_s * self.speed_m_s + 2.0 * GRAVITY_M_S2 * drop_m;
        (self.speed_m_s + square.max(0.0).sqrt()) / GRAVITY_M_S2
    }

    /// Height of the lower foot, m.
    pub fn lowest_m(&self, t_s: f64, up: DVec3, properties: &MassProperties) -> f64 {
        self.cm_height_m(t_s) + properties.state.lowest_m(up)
    }

    /// One step on.
    pub fn step(
        &self,
        from: Attitude,
        step_s: f64,
        rates_from_momentum: [&RateFromMomentum; 3],
    ) -> Attitude {
        integrate::step(from, self.h_kg_m2_s, step_s, rates_from_momentum)
    }

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

    /// Angular velocity of the pelvis, pelvis axes, rad/s.
    #[inline]
    pub fn own_rate_rad_s(
        &self,
        up: DVec3,
        TimedProperties { properties, unit_s }: TimedProperties<'_>,
    ) -> DVec3 {
        properties
            .rate_from_momentum
            .rate_rad_s(up * (self.h_kg_m2_s * unit_s))
            * (1.0 / unit_s)
    }

    /// The sample at one instant; `before` is the sample before it, none at take-off.
    #[inline]
    pub fn sample(
        &self,
        t_s: f64,
        attitude: Attitude,
        timed: TimedProperties<'_>,
        before: Option<&FlightSample>,
    ) -> FlightSample {
        let (properties, per_s) = (timed.properties, 1.0 / timed.unit_s);
        let (up, state) = (attitude.up, &properties.state);
        let own_rate_rad_s = self.own_rate_rad_s(up, timed);
        let spin_rad_s = own_rate_rad_s.dot(up);
        // 2 T = w . I w + 2 w . k + 2 T_joints, and I w = h - k.
        let momenta = up * self.h_kg_m2_s + state.joint_momentum_kg_m2_s * per_s;
        let joint_energy_j = state.joint_energy_j * (per_s * per_s);
        FlightSample {
            t_s,
            attitude,
            own_rate_rad_s,
            spin_rad_s,
            turned_rad: before.map_or(0.0, |before| {
                before.turned_rad + self.sign * attitude.turned_since(&before.attitude)
            }),
            inertia_kg_m2: up.dot(state.inertia_kg_m2 * up),
            own_long_axis: properties.long_axis,
            energy_j: 0.5 * own_rate_rad_s.dot(momenta) + joint_energy_j,
            cm_height_m: self.cm_height_m(t_s),
            lowest_m: self.lowest_m(t_s, up, properties),
        }
    }
}
