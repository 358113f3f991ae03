//! A posture as the flight meets it: how fast it turns, how it tilts.

use glam::{DMat3, DVec3};

use super::momentum::MassState;

/// The pelvis's rate as it follows from the angular momentum: w = I⁻¹ (h - k).
#[derive(Debug, Clone, Copy)]
pub struct RateLaw {
    /// I⁻¹, 1/(kg m²).
    pub ease: DMat3,
    /// Rate without any angular momentum, -I⁻¹ k, rad/s.
    pub without_rad_s: DVec3,
}

impl RateLaw {
    /// For inertia I and joint-motion momentum k, both about the CM in pelvis axes.
    pub fn new(inertia_kg_m2: DMat3, joint_momentum_kg_m2_s: DVec3) -> Self {
        let ease = inertia_kg_m2.inverse();
        Self {
            ease,
            without_rad_s: ease * -joint_momentum_kg_m2_s,
        }
    }

    /// Rate of the pelvis for angular momentum `h` about the CM, both in pelvis axes, rad/s.
    pub fn rate_rad_s(&self, h_kg_m2_s: DVec3) -> DVec3 {
        self.ease * h_kg_m2_s + self.without_rad_s
    }
}

impl From<&MassState> for RateLaw {
    fn from(state: &MassState) -> Self {
        Self::new(state.inertia_kg_m2, state.joint_momentum_kg_m2_s)
    }
}

/// A mass state with what follows from it alone.
#[derive(Debug, Clone, Copy)]
pub struct Stance {
    pub state: MassState,
    pub law: RateLaw,
    /// The body's long axis: the unit principal axis of least inertia, pelvis axes, upwards in
    /// the body.
    pub long_axis: DVec3,
}

impl From<MassState> for Stance {
    #[inline]
    fn from(state: MassState) -> Self {
        let law = RateLaw::from(&state);
        Self {
            state,
            law,
            long_axis: least_axis(law.ease),
        }
    }
}

/// The principal axis of the largest ease, by power iteration.
///
/// The least principal moment of a human body is well apart from the other two in every posture of
/// the plan, so the 64th power leaves nothing of these: four squarings, then four times.
fn least_axis(ease: DMat3) -> DVec3 {
    let mut power = ease * (1.0 / (ease.x_axis.x + ease.y_axis.y + ease.z_axis.z));
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
