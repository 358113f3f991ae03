//! The trajectory of one joint to a target that is given while the joint moves.

use glam::{DQuat, DVec3};

use crate::math::rotation::{acceleration_of, exp, log, rate_of};
use crate::motion::minimum_jerk::{minimum_jerk, minimum_jerk_acceleration};

/// From a rotation and a rate to a target, at rest there.
///
/// In the rotation vector u from the start: u = U s(x) + w T r(x) with the minimum-jerk blend s
/// (Flash & Hogan 1985) and the quintic r of the same kind that runs out the rate w: value, rate
/// and acceleration are continuous, and from rest this is the blend of a planned flight.
#[derive(Debug, Clone, Copy)]
pub struct JointTrajectory {
    from: DQuat,
    /// Rotation vector to the target, segment axes, rad.
    displacement_rad: DVec3,
    /// Rate at the beginning, segment axes, rad/s.
    rate_rad_s: DVec3,
    start_s: f64,
    time_s: f64,
}

impl JointTrajectory {
    /// Stays where it is.
    pub const fn at_rest(at: DQuat) -> Self {
        Self {
            from: at,
            displacement_rad: DVec3::ZERO,
            rate_rad_s: DVec3::ZERO,
            start_s: 0.0,
            time_s: 0.0,
        }
    }

    /// The trajectory from where the joint is at `now_s` to `target`, reached `within_s` later.
    pub fn redirected(&self, now_s: f64, target: DQuat, within_s: f64) -> Self {
        let (from, rate_rad_s) = self.at(now_s);
        Self {
            from,
            displacement_rad: log(from.conjugate() * target),
            rate_rad_s,
            start_s: now_s,
            time_s: within_s,
        }
    }

    pub const fn start_s(&self) -> f64 {
        self.start_s
    }

    pub const fn time_s(&self) -> f64 {
        self.time_s
    }

    pub const fn end_s(&self) -> f64 {
        self.start_s + self.time_s
    }

    /// Rotation (segment axes to parent's axes) and rate (segment axes, rad/s).
    pub fn at(&self, t_s: f64) -> (DQuat, DVec3) {
        if t_s >= self.end_s() {
            return (self.from * exp(self.displacement_rad), DVec3::ZERO);
        }
        let [u, u_rate, _] = self.vector_at(t_s);
        (self.from * exp(u), rate_of(u, u_rate))
    }

    /// How that rate changes, rad/s².
    pub fn acceleration_at(&self, t_s: f64) -> DVec3 {
        if t_s >= self.end_s() {
            return DVec3::ZERO;
        }
        let [u, u_rate, u_change] = self.vector_at(t_s);
        acceleration_of(u, u_rate, u_change)
    }

    /// The rotation vector and its first two derivatives.
    fn vector_at(&self, t_s: f64) -> [DVec3; 3] {
        let x = ((t_s - self.start_s) / self.time_s).max(0.0);
        let x2 = x * x;
        let (s, s_rate) = minimum_jerk(t_s, self.start_s, self.time_s);
        let s_change = minimum_jerk_acceleration(t_s, self.start_s, self.time_s);
        let r = x + x2 * x * (x * (8.0 - 3.0 * x) - 6.0);
        let r_rate = 1.0 + x2 * (x * (32.0 - 15.0 * x) - 18.0);
        let r_change = x * (x * (96.0 - 60.0 * x) - 36.0) / self.time_s;
        let out = self.rate_rad_s * self.time_s;
        [
            self.displacement_rad * s + out * r,
            self.displacement_rad * s_rate + self.rate_rad_s * r_rate,
            self.displacement_rad * s_change + self.rate_rad_s * r_change,
        ]
    }
}
