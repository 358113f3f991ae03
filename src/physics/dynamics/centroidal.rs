//! Inertia, joint-motion momentum and foot and hand positions of a body in a posture, about the CM in pelvis axes.

use glam::{DMat3, DVec3};

use crate::body::posture::{JointRates, Posture};
use crate::dynamics::tree::{HalfBody, Tree};

/// Inertia and momentum of a moving posture about the CM, in pelvis axes (centroidal quantities:
/// Orin, Goswami & Lee 2013, Auton Robots 35:161).
#[derive(Debug, Clone, Copy)]
pub struct CentroidalState {
    /// Inertia tensor I(q), kg m².
    pub inertia_kg_m2: DMat3,
    /// Angular momentum k(q, q') of the joint motion alone (pelvis held), kg m²/s.
    pub joint_momentum_kg_m2_s: DVec3,
    /// Kinetic energy of the joint motion alone, relative to the CM, J.
    pub joint_energy_j: f64,
    /// CM as seen from the pelvis's origin (mid-hip), m.
    pub cm_m: DVec3,
    /// Its velocity while the pelvis is held, m/s.
    pub cm_velocity_m_s: DVec3,
    /// Heel and toe of the left, then of the right sole, from the CM, m.
    pub soles_m: [DVec3; 4],
    /// Mass centre of the left and the right hand with what it holds, from the CM, m.
    pub hands_m: [DVec3; 2],
}

/// The inertia tensor I(q), kg m², and the angular momentum k(q, q') of the joint motion alone,
/// kg m²/s, both about the CM in pelvis axes: all that the rate depends on.
pub fn inertia_and_momentum(tree: &Tree, posture: &Posture, rates: &JointRates) -> (DMat3, DVec3) {
    let (_, inertia, momentum) = tree.sums(posture, rates).about_cm();
    (inertia.into(), momentum.into())
}

impl CentroidalState {
    #[inline]
    pub fn new(tree: &Tree, posture: &Posture, rates: &JointRates) -> Self {
        let (upper, lower) = (tree.upper(posture, rates), tree.lower(posture, rates));
        Self::of(&upper, &lower)
    }

    /// Of both halves of the body.
    #[inline]
    pub fn of(upper: &HalfBody<1>, lower: &HalfBody<2>) -> Self {
        let whole = upper.sums + lower.sums;
        let (cm, inertia, momentum) = whole.about_cm();
        let linear = whole.linear_kg_m_s;
        let velocity = linear * (1.0 / whole.mass_kg);
        let place = |point| DVec3::from(point - cm);
        let [[left_heel, right_heel], [left_toe, right_toe]] = lower.points_m.map(|p| p.apart());
        Self {
            inertia_kg_m2: inertia.into(),
            joint_momentum_kg_m2_s: momentum.into(),
            joint_energy_j: 0.5 * (whole.twice_energy_j - linear.dot(velocity)),
            cm_m: cm.into(),
            cm_velocity_m_s: velocity.into(),
            soles_m: [left_heel, left_toe, right_heel, right_toe].map(place),
            hands_m: upper.points_m[0].apart().map(place),
        }
    }

    /// Lowest sole point relative to the CM for a body with this direction (unit, pelvis axes)
    /// upwards, m.
    pub fn lowest_m(&self, up: DVec3) -> f64 {
        let [a, b, c, d] = self.soles_m.map(|sole| sole.dot(up));
        a.min(b).min(c.min(d))
    }
}
