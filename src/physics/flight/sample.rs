//! A sample of the flight: all that is known at one instant.

use std::f64::consts::TAU;

use glam::{DQuat, DVec3};

use crate::dynamics::attitude::Attitude;
use crate::flight::constants::{FlightConstants, TimedProperties};

/// The flight at one instant.
#[derive(Debug, Clone, Copy)]
pub struct FlightSample {
    pub t_s: f64,
    /// Split about the vertical.
    pub attitude: Attitude,
    /// Angular velocity of the pelvis, pelvis axes, rad/s.
    pub own_rate_rad_s: DVec3,
    /// Angular velocity of the pelvis about the momentum, rad/s; about the vertical, anticlockwise
    /// positive, where that is vertical.
    pub spin_rad_s: f64,
    /// Turned since take-off in the turning direction, rad, unwrapped: the heading of the right-left axis,
    /// seen from above.
    pub turned_rad: f64,
    /// Moment of inertia about h, kg m².
    pub inertia_kg_m2: f64,
    /// The body's long axis (least principal axis), pelvis axes.
    pub own_long_axis: DVec3,
    /// Kinetic energy relative to the CM, J.
    pub energy_j: f64,
    /// Height of the CM of the whole body over the ice, m.
    pub cm_height_m: f64,
    /// Height of the lowest point that may touch the ice, m: of a planned flight that of either foot.
    pub lowest_m: f64,
}

/// Sine of the largest tilt that is none.
const UPRIGHT: f64 = 4.0 * f64::EPSILON;

impl FlightSample {
    /// The sample at one instant; `before` is the sample before it, none at take-off.
    #[inline]
    pub fn of(
        constants: &FlightConstants,
        t_s: f64,
        attitude: Attitude,
        timed: TimedProperties<'_>,
        before: Option<&Self>,
    ) -> Self {
        let (properties, per_s) = (timed.properties, 1.0 / timed.unit_s);
        let (axis, state) = (attitude.axis, &properties.state);
        let own_rate_rad_s = constants.own_rate_rad_s(axis, timed);
        let spin_rad_s = own_rate_rad_s.dot(axis);
        // 2 T = w . I w + 2 w . k + 2 T_joints, and I w = h - k.
        let momenta = axis * constants.h_kg_m2_s + state.joint_momentum_kg_m2_s * per_s;
        let joint_energy_j = state.joint_energy_j * (per_s * per_s);
        Self {
            t_s,
            attitude,
            own_rate_rad_s,
            spin_rad_s,
            turned_rad: before.map_or(0.0, |before| {
                before.turned_rad + constants.sign * attitude.turned_since(&before.attitude)
            }),
            inertia_kg_m2: axis.dot(state.inertia_kg_m2 * axis),
            own_long_axis: properties.long_axis,
            energy_j: 0.5 * own_rate_rad_s.dot(momenta) + joint_energy_j,
            cm_height_m: constants.cm_height_m(t_s),
            lowest_m: constants.lowest_m(t_s, axis, properties),
        }
    }

    /// Turned since take-off, in whole turns.
    pub fn air_turns(&self) -> f64 {
        self.turned_rad / TAU
    }

    /// Pelvis axes to world axes.
    pub fn orientation(&self) -> DQuat {
        self.attitude.orientation()
    }

    /// Angular velocity of the pelvis, world, rad/s.
    pub fn rate_rad_s(&self) -> DVec3 {
        self.orientation() * self.own_rate_rad_s
    }

    /// The body's long axis, world.
    pub fn long_axis(&self) -> DVec3 {
        self.orientation() * self.own_long_axis
    }

    /// CM of the whole body, world, m.
    pub fn cm_m(&self) -> DVec3 {
        DVec3::Y * self.cm_height_m
    }

    /// Cosine of the tilt of the long axis against the vertical.
    pub fn uprightness(&self) -> f64 {
        self.own_long_axis.dot(self.attitude.axis)
    }

    /// Tilt of the long axis against the vertical, rad.
    pub fn tilt_rad(&self) -> f64 {
        let level = self.own_long_axis.cross(self.attitude.axis).length();
        // As near as two unit vectors are rounded, the axis is on the vertical.
        let level = if level < UPRIGHT { 0.0 } else { level };
        libm::atan2(level, self.uprightness())
    }
}
