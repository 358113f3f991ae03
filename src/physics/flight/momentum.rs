//! The angular momentum at one instant, summed from the parts of the body, and what it is made of.

use glam::DVec3;

use crate::flight::planned::Flight;

/// The angular momentum about the vertical, positive in the jumper's own turning direction:
/// `momentum = inertia · rate + rest`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MomentumParts {
    pub momentum_kg_m2_s: f64,
    /// About the vertical.
    pub inertia_kg_m2: f64,
    /// Of the hips, about the vertical.
    pub rate_rad_s: f64,
    /// Of the limbs' own motion against the hips, and of the turning of a tilted body about other
    /// axes; none of a rigid body that turns about a principal axis.
    pub rest_kg_m2_s: f64,
}

impl Flight {
    /// About the CM, world, summed from how every part of the body moves at a time.
    pub fn summed_momentum_kg_m2_s(&self, t_s: f64) -> DVec3 {
        let pose = self.pose_at(t_s);
        let parts = self.table.body.parts.iter();
        parts
            .map(|part| {
                let at_m = pose.point_m(part.segment, part.cm_m) - pose.sample.cm_m();
                let velocity_m_s =
                    pose.velocity_m_s(part.segment, part.cm_m) - pose.cm_velocity_m_s;
                let turn = pose.orientation(part.segment);
                let rate_rad_s = turn.conjugate() * pose.segment_rate_rad_s(part.segment);
                turn * (part.moments_kg_m2 * rate_rad_s) + at_m.cross(velocity_m_s) * part.mass_kg
            })
            .sum()
    }

    /// What the angular momentum is made of at a time, held at the flight's ends.
    pub fn momentum_at(&self, t_s: f64) -> MomentumParts {
        let sign = self.table.plan.spec.turning.sign();
        let sample = self.at(t_s);
        let momentum_kg_m2_s = sign * self.summed_momentum_kg_m2_s(sample.t_s).y;
        let rate_rad_s = sign * sample.spin_rad_s;
        MomentumParts {
            momentum_kg_m2_s,
            inertia_kg_m2: sample.inertia_kg_m2,
            rate_rad_s,
            rest_kg_m2_s: momentum_kg_m2_s - sample.inertia_kg_m2 * rate_rad_s,
        }
    }
}
