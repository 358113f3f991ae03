//! What take-off fixes for the whole flight, and what follows from it at any instant.

use glam::{DQuat, DVec3};

use crate::dynamics::attitude::Attitude;
use crate::dynamics::gravity::GRAVITY_M_S2;
use crate::dynamics::integrate;
use crate::dynamics::mass_properties::{MassProperties, RateFromMomentum};
use crate::flight::launch::Launch;
use crate::flight::release::Release;
use crate::math::rotation::smallest_rotation;
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
    /// Angular momentum about the CM along Y of `momentum_frame`; of a clockwise jumper negative.
    pub h_kg_m2_s: f64,
    /// From axes whose Y points along the angular momentum to world axes; the world's own where the
    /// momentum is vertical, or zero.
    pub momentum_frame: DQuat,
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
            momentum_frame: DQuat::IDENTITY,
            attitude,
            speed_m_s: launch.speed_m_s(),
            cm_m: -takeoff.state.lowest_m(attitude.momentum_axis),
            sign: turning.sign(),
        }
    }

    /// Of a body that is let go.
    pub fn released(release: &Release) -> Self {
        let h = release.angular_momentum_kg_m2_s;
        let momentum_frame = smallest_rotation(DVec3::Y, h.normalize_or(DVec3::Y));
        Self {
            h_kg_m2_s: h.length(),
            momentum_frame,
            attitude: Attitude::of(momentum_frame.conjugate() * release.orientation),
            speed_m_s: release.speed_m_s,
            cm_m: release.cm_height_m,
            sign: 1.0,
        }
    }

    /// The world's vertical in pelvis axes.
    #[inline]
    pub fn own_vertical(&self, attitude: &Attitude) -> DVec3 {
        own_vertical(self.momentum_frame, attitude)
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
    #[inline]
    pub fn lowest_m(&self, t_s: f64, attitude: &Attitude, properties: &MassProperties) -> f64 {
        self.cm_height_m(t_s) + properties.state.lowest_m(self.own_vertical(attitude))
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
        momentum_axis: DVec3,
        TimedProperties { properties, unit_s }: TimedProperties<'_>,
    ) -> DVec3 {
        properties
            .rate_from_momentum
            .rate_rad_s(momentum_axis * (self.h_kg_m2_s * unit_s))
            * (1.0 / unit_s)
    }
}

/// The world's vertical in pelvis axes, for an attitude in the axes that `momentum_frame` carries to the
/// world's.
#[inline]
pub fn own_vertical(momentum_frame: DQuat, attitude: &Attitude) -> DVec3 {
    if momentum_frame == DQuat::IDENTITY {
        attitude.momentum_axis
    } else {
        (momentum_frame * attitude.orientation()).conjugate() * DVec3::Y
    }
}
