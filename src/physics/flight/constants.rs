//! What take-off fixes for the whole flight, and what follows from it at any instant.

use glam::DVec3;

use crate::dynamics::attitude::Attitude;
use crate::dynamics::gravity::GRAVITY_M_S2;
use crate::dynamics::integrate;
use crate::dynamics::mass_properties::{MassProperties, RateFromMomentum};
use crate::flight::launch::Launch;
use crate::motion::plan::Turning;

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

/// What take-off fixes for the whole flight.
#[derive(Debug, Clone, Copy)]
pub struct FlightConstants {
    /// Angular momentum about the CM along the axis of the attitude; upwards in a planned flight.
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
            cm_m: -takeoff.state.lowest_m(attitude.axis),
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

    /// Height of the lower foot, m; `up` is the vertical in pelvis axes.
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

    /// Angular velocity of the pelvis, pelvis axes, rad/s.
    #[inline]
    pub fn own_rate_rad_s(
        &self,
        axis: DVec3,
        TimedProperties { properties, unit_s }: TimedProperties<'_>,
    ) -> DVec3 {
        properties
            .rate_from_momentum
            .rate_rad_s(axis * (self.h_kg_m2_s * unit_s))
            * (1.0 / unit_s)
    }
}
