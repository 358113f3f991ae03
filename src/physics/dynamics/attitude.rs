//! The attitude of the pelvis, split about an axis (swing-twist decomposition).
//!
//! The angular momentum is constant in the world, so how the body wobbles does not depend on how far it
//! has turned about it: split about its direction, the two are computed one after the other. With Y along
//! the axis, the attitude is R = (twist about Y) (smallest rotation that carries the axis n, as the pelvis
//! sees it, to Y). That rotation is not defined where n points along -y of the pelvis. Well before, the
//! pelvis is looked at in axes turned by half a turn about its x axis, in which n points along +y: two
//! charts that cover every attitude alike.

use glam::{DQuat, DVec3};

use crate::math::angles::wrapped_rad;
use crate::math::rotation::{about, heading_rad, smallest_rotation};

/// The attitude of the pelvis in axes whose Y is the one it is split about: the world's, or, where the
/// momentum is not vertical, axes turned so that Y points along it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Attitude {
    /// The axis that it is split about, in pelvis axes, unit.
    pub axis: DVec3,
    /// Turn about that axis since the pelvis was only tilted, rad, not wrapped; counted anew where
    /// the chart changes.
    pub twist_rad: f64,
    /// +1 where the twist is counted in the pelvis's axes, -1 in those turned about x.
    pub(crate) chart: f64,
}

/// Half a turn about the pelvis's x axis.
const TURNED_OVER: DQuat = DQuat::from_xyzw(1.0, 0.0, 0.0, 0.0);

/// Cosine of the angle between the axis and the chart's y axis at which the chart changes: far from
/// the pole at -1, and the other chart is entered far from its own limit.
const CHART_LIMIT: f64 = -0.5;

impl Attitude {
    /// Of an orientation, from pelvis axes.
    pub fn of(orientation: DQuat) -> Self {
        let axis = orientation.conjugate() * DVec3::Y;
        let chart = if axis.y < CHART_LIMIT { -1.0 } else { 1.0 };
        Self::in_chart(orientation, chart)
    }

    fn in_chart(orientation: DQuat, chart: f64) -> Self {
        let attitude = Self {
            axis: orientation.conjugate() * DVec3::Y,
            twist_rad: 0.0,
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
        if self.chart * self.axis.y < CHART_LIMIT {
            self.in_other_chart()
        } else {
            self
        }
    }

    #[cold]
    fn in_other_chart(self) -> Self {
        Self::in_chart(self.orientation(), -self.chart)
    }

    /// From pelvis axes.
    pub fn orientation(&self) -> DQuat {
        (about(DVec3::Y, self.twist_rad) * self.tilt()).normalize()
    }

    /// The orientation without the twist.
    fn tilt(&self) -> DQuat {
        if self.chart > 0.0 {
            smallest_rotation(self.axis, DVec3::Y)
        } else {
            smallest_rotation(TURNED_OVER * self.axis, DVec3::Y) * TURNED_OVER
        }
    }

    /// How far the pelvis's right-left axis has turned about the axis of the split, rad, since an attitude
    /// from which the tilt alone has not turned it by half a turn or more. Parallel to that axis, it has no
    /// heading.
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
        let (axis, chart) = (self.axis, self.chart);
        [
            1.0 + chart * axis.y - axis.z * axis.z,
            -axis.x * (chart * axis.z),
        ]
    }
}
