//! How the joints move: blends, plans, joints led to targets.

pub mod joint_motion;
pub mod joint_trajectory;
pub(crate) mod led_knots;
pub mod led_motion;
mod led_plan;
pub mod led_tucks;
pub mod measured_motion;
pub mod minimum_jerk;
pub mod plan;
pub mod planned_motion;
pub mod resolution;
pub mod takeoff_landing;
pub mod tight_posture;
