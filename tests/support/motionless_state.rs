//! Centroidal states without joint motion, from given principal moments of inertia.

use glam::{DMat3, DVec3};

use turns_aloft::physics::centroidal::CentroidalState;

/// A state without joint motion, with these principal moments of inertia about the front-back, long
/// and left-right axes. The soles are 1 m below the CM, the hands 0.5 m to the sides.
pub fn motionless(moments_kg_m2: DVec3) -> CentroidalState {
    let inertia_kg_m2 = DMat3::from_diagonal(moments_kg_m2);
    CentroidalState {
        inertia_kg_m2,
        joint_momentum_kg_m2_s: DVec3::ZERO,
        joint_energy_j: 0.0,
        cm_m: DVec3::ZERO,
        cm_velocity_m_s: DVec3::ZERO,
        soles_m: [DVec3::new(0.0, -1.0, 0.0); 4],
        hands_m: [DVec3::new(0.0, 0.0, -0.5), DVec3::new(0.0, 0.0, 0.5)],
    }
}
