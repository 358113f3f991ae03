//! How the joints move: blends, plans, joints led to targets.

pub mod joint_trajectory;
pub mod minimum_jerk;
pub mod plan;
pub mod resolution;
pub mod takeoff_landing;
pub mod tight_posture;
