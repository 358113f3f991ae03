//! Mass properties of a posture that the flight integrates: inverse inertia, long axis.

use glam::{DMat3, DVec3};

use crate::dynamics::centroidal::CentroidalState;

/// Angular velocity of the pelvis as a function of the angular momentum: w = I⁻¹ (h - k).
#[derive(Debug, Clone, Copy)]
pub struct RateFromMomentum {
    /// Inverse inertia tensor I⁻¹, 1/(kg m²).
    pub inverse_inertia: DMat3,
    /// Rate without any angular momentum, -I⁻¹ k, rad/s.
    pub rate_at_zero_momentum_rad_s: DVec3,
}

impl RateFromMomentum {
    /// For inertia I and joint-motion momentum k, both about the CM in pelvis axes.
    pub fn new(inertia_kg_m2: DMat3, joint_momentum_kg_m2_s: DVec3) -> Self {
        let inverse_inertia = inertia_kg_m2.inverse();
        Self {
            inverse_inertia,
            rate_at_zero_momentum_rad_s: inverse_inertia * -joint_momentum_kg_m2_s,
        }
    }

    /// Rate of the pelvis for angular momentum `h` about the CM, both in pelvis axes, rad/s.
    pub fn rate_rad_s(&self, h_kg_m2_s: DVec3) -> DVec3 {
        self.inverse_inertia * h_kg_m2_s + self.rate_at_zero_momentum_rad_s
    }
}

impl From<&CentroidalState> for RateFromMomentum {
    fn from(state: &CentroidalState) -> Self {
        Self::new(state.inertia_kg_m2, state.joint_momentum_kg_m2_s)
    }
}

/// The centroidal state with what follows from it alone.
#[derive(Debug, Clone, Copy)]
pub struct MassProperties {
    pub state: CentroidalState,
    pub rate_from_momentum: RateFromMomentum,
    /// The body's long axis: the unit principal axis of least inertia, pelvis axes, upwards in
    /// the body.
    pub long_axis: DVec3,
}

impl From<CentroidalState> for MassProperties {
    #[inline]
    fn from(state: CentroidalState) -> Self {
        let rate_from_momentum = RateFromMomentum::from(&state);
        Self {
            state,
            rate_from_momentum,
            long_axis: least_axis(rate_from_momentum.inverse_inertia),
        }
    }
}

/// The principal axis of the largest inverse inertia, by power iteration.
///
/// The least principal moment of a human body is well apart from the other two in every posture of
/// the plan, so the 64th power leaves nothing of these: four squarings, then four times.
fn least_axis(inverse_inertia: DMat3) -> DVec3 {
    let mut power = inverse_inertia
        * (1.0 / (inverse_inertia.x_axis.x + inverse_inertia.y_axis.y + inverse_inertia.z_axis.z));
    for _ in 0..4 {
        power *= power;
    }
    let mut axis = DVec3::Y;
    for _ in 0..4 {
        axis = power * axis;
    }
    let axis = axis.normalize();
    if axis.y < 0.0 { -axis } else { axis }
}
