//! Shapes that do not move, made up from their principal moments.

use glam::{DMat3, DVec3};
use turns_aloft::physics::centroidal::CentroidalState;

/// A shape that does not move, with these principal moments about front-back, long and left-right
/// axis, on soles 1 m below its CM; its hands, 1 kg each, 0.5 m to the sides.
pub fn still(moments_kg_m2: DVec3) -> CentroidalState {
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
