//! The attitude of the pelvis, split about the direction of the angular momentum (swing-twist
//! decomposition).
//!
//! The angular momentum is constant in the world, so how the body wobbles does not depend on how far it
//! has turned about it: the two are computed one after the other. In axes of the world whose Y points
//! along the momentum, the attitude is R = (twist about Y) (smallest rotation that carries the momentum
//! direction n, as the pelvis sees it, to Y). That rotation is not defined where n points along -y of
//! the pelvis. Well before, the pelvis is looked at in axes turned by half a turn about its x axis, in
//! which n points along +y: two charts that cover every attitude alike.

use glam::{DQuat, DVec3};

use crate::math::angles::wrapped_rad;
use crate::math::rotation::{about, heading_rad, smallest_rotation};

/// The attitude of the pelvis in world axes turned so that Y points along the momentum. Without any
/// momentum any direction does.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Attitude {
    /// Direction of the momentum in pelvis axes, unit.
    pub momentum_axis: DVec3,
    /// Turn about the momentum since the pelvis was only tilted, rad, not wrapped; counted anew where
    /// the chart changes.
    pub twist_rad: f64,
    /// Integral of the pelvis's rate about the momentum since the flight began, rad: regular also where
    /// the body's axes point along the momentum.
    pub about_momentum_rad: f64,
    /// +1 where the twist is counted in the pelvis's axes, -1 in those turned about x.
    pub(crate) chart: f64,
}

/// Half a turn about the pelvis's x axis.
const TURNED_OVER: DQuat = DQuat::from_xyzw(1.0, 0.0, 0.0, 0.0);

/// Cosine of the angle between momentum and the chart's y axis at which the chart changes: far from
/// the pole at -1, and the other chart is entered far from its own limit.
const CHART_LIMIT: f64 = -0.5;

impl Attitude {
    /// From pelvis axes to world axes.
    pub fn of(orientation: DQuat) -> Self {
        let momentum_axis = orientation.conjugate() * DVec3::Y;
        let chart = if momentum_axis.y < CHART_LIMIT {
            -1.0
        } else {
            1.0
        };
        Self::in_chart(orientation, chart)
    }

    fn in_chart(orientation: DQuat, chart: f64) -> Self {
        let attitude = Self {
            momentum_axis: orientation.conjugate() * DVec3::Y,
            twist_rad: 0.0,
            about_momentum_rad: 0.0,
            chart,
        };
        let twist = orientation * attitude.tilt().conjugate();
        Self {
            twist_rad: 2.0 * libm::atan2(twist.y, twist.w),
            ..attitude
        }
    }

    /// The same attitude in the other chart, where this one comes near its pole.
    #[inline]
    pub(crate) fn in_regular_chart(self) -> Self {
        if self.chart * self.momentum_axis.y < CHART_LIMIT {
            Self {
                about_momentum_rad: self.about_momentum_rad,
                ..Self::in_chart(self.orientation(), -self.chart)
            }
        } else {
            self
        }
    }

    /// Pelvis axes to world axes.
    pub fn orientation(&self) -> DQuat {
        (about(DVec3::Y, self.twist_rad) * self.tilt()).normalize()
    }

    /// The orientation without the twist.
    fn tilt(&self) -> DQuat {
        if self.chart > 0.0 {
            smallest_rotation(self.momentum_axis, DVec3::Y)
        } else {
            smallest_rotation(TURNED_OVER * self.momentum_axis, DVec3::Y) * TURNED_OVER
        }
    }

    /// How far the pelvis's right-left axis has turned about the momentum, rad, since an attitude
    /// from which the tilt alone has not turned it by half a turn or more. Where that axis points along
    /// the momentum, it has no heading, and [`Self::about_momentum_rad`] is the count to use.
    pub fn turned_since(&self, before: &Self) -> f64 {
        if self.chart != before.chart {
            let [now, was] = [self, before].map(|attitude| heading_rad(attitude.orientation()));
            return wrapped_rad(now - was);
        }
        let ([z, x], [was_z, was_x]) = (self.tilted_right(), before.tilted_right());
        let tilted = libm::atan2(was_z * x - was_x * z, was_z * z + was_x * x);
        self.twist_rad - before.twist_rad + tilted
    }

    /// Where the tilt alone points the right-left axis (in the second chart its opposite): along the
    /// world's Z and X, to some length.
    fn tilted_right(&self) -> [f64; 2] {
        let (axis, chart) = (self.momentum_axis, self.chart);
        [
            1.0 + chart * axis.y - axis.z * axis.z,
            -axis.x * (chart * axis.z),
        ]
    }
}
