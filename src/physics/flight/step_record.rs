//! What is recorded of each integration step: a whole sample, or only what it takes to end the
//! flight and to say how far and how fast the body turned.

use crate::dynamics::attitude::Attitude;
use crate::flight::constants::{FlightConstants, TimedProperties};
use crate::flight::sample::FlightSample;

use glam::DVec3;

/// What is recorded of an instant.
pub trait StepRecord: Copy {
    /// Without an instant before, that of take-off.
    fn of(
        constants: &FlightConstants,
        t_s: f64,
        attitude: Attitude,
        timed: TimedProperties<'_>,
        before: Option<&Self>,
    ) -> Self;
    fn t_s(&self) -> f64;
    fn attitude(&self) -> Attitude;
    /// Angular velocity of the pelvis, pelvis axes, rad/s.
    fn own_rate_rad_s(&self) -> DVec3;
    /// Height of the lowest point of either foot over the ice, m.
    fn lowest_m(&self) -> f64;
}

impl StepRecord for FlightSample {
    #[inline]
    fn of(
        constants: &FlightConstants,
        t_s: f64,
        attitude: Attitude,
        timed: TimedProperties<'_>,
        before: Option<&Self>,
    ) -> Self {
        Self::of(constants, t_s, attitude, timed, before)
    }

    fn t_s(&self) -> f64 {
        self.t_s
    }

    fn attitude(&self) -> Attitude {
        self.attitude
    }

    fn own_rate_rad_s(&self) -> DVec3 {
        self.own_rate_rad_s
    }

    fn lowest_m(&self) -> f64 {
        self.lowest_m
    }
}

/// The least that is recorded.
#[derive(Debug, Clone, Copy)]
pub struct RateRecord {
    pub t_s: f64,
    pub attitude: Attitude,
    pub own_rate_rad_s: DVec3,
    pub lowest_m: f64,
    /// Angular velocity of the pelvis about the vertical, anticlockwise positive, rad/s.
    pub spin_rad_s: f64,
}

impl StepRecord for RateRecord {
    #[inline]
    fn of(
        constants: &FlightConstants,
        t_s: f64,
        attitude: Attitude,
        timed: TimedProperties<'_>,
        _: Option<&Self>,
    ) -> Self {
        let axis = attitude.axis;
        let own_rate_rad_s = constants.own_rate_rad_s(axis, timed);
        let spin_rad_s = own_rate_rad_s.dot(axis);
        Self {
            t_s,
            attitude,
            own_rate_rad_s,
            lowest_m: constants.lowest_m(t_s, axis, timed.properties),
            spin_rad_s,
        }
    }

    fn t_s(&self) -> f64 {
        self.t_s
    }

    fn attitude(&self) -> Attitude {
        self.attitude
    }

    fn own_rate_rad_s(&self) -> DVec3 {
        self.own_rate_rad_s
    }

    fn lowest_m(&self) -> f64 {
        self.lowest_m
    }
}

/// How large the fifth powers of the angles (rad) turned in each step may grow in sum; with less,
/// halving the steps changes the turns of any admissible flight by less than 1e-5.
const MOST_ADDED_UP: f64 = 0.7;

/// Whether the steps of a flight were short enough for how fast the body turned: the error of a step
/// grows with the fifth power of the angle turned in it, and the errors add up on the way.
pub(crate) fn is_resolved<K: StepRecord>(steps: &[K]) -> bool {
    let added_up: f64 = steps
        .windows(2)
        .map(|pair| {
            let step_s = pair[1].t_s() - pair[0].t_s();
            let square = pair[0].own_rate_rad_s().length_squared() * step_s * step_s;
            square * square * square.sqrt()
        })
        .sum();
    added_up <= MOST_ADDED_UP
}
