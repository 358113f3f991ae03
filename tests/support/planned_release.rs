//! Releases any joint motion with the take-off of a planned flight.

use turns_aloft::physics::body::Body;
use turns_aloft::physics::flight::Flight;
use turns_aloft::physics::joint_motion::JointMotion;
use turns_aloft::physics::motion_flight::MotionFlight;
use turns_aloft::physics::release::Release;

/// A flight of the planned body with the planned take-off, whose joints move by `motion`.
pub fn released<M: JointMotion>(planned: &Flight, motion: M) -> MotionFlight<M> {
    let release = Release {
        orientation: planned.takeoff().orientation(),
        angular_momentum_kg_m2_s: planned.h_kg_m2_s,
        cm_height_m: planned.takeoff_cm_m,
        speed_m_s: planned.takeoff_speed_m_s,
    };
    let body = Body::clone(&planned.table.body);
    MotionFlight::released(body, motion, &release).expect("a release")
}
