//! Sums over the parts of a body in flight, from the pose of each part.

use glam::{DQuat, DVec3};

use turns_aloft::physics::body::Body;
use turns_aloft::physics::flight::Pose;

/// CM of the whole body, m, world frame.
pub fn cm(body: &Body, pose: &Pose) -> DVec3 {
    let moment: DVec3 = body
        .parts
        .iter()
        .map(|part| pose.point_m(part.segment, part.cm_m) * part.mass_kg)
        .sum();
    moment / body.parts.iter().map(|part| part.mass_kg).sum::<f64>()
}

/// Velocity of the CM, m/s, world frame.
pub fn cm_velocity(body: &Body, pose: &Pose) -> DVec3 {
    let momentum: DVec3 = body
        .parts
        .iter()
        .map(|part| pose.velocity_m_s(part.segment, part.cm_m) * part.mass_kg)
        .sum();
    momentum / body.parts.iter().map(|part| part.mass_kg).sum::<f64>()
}

/// Angular momentum about the CM, kg m²/s, world frame, of parts with these velocities (given a
/// part's index and position from the CM) and angular rates.
pub fn angular_momentum(
    body: &Body,
    pose: &Pose,
    velocity: impl Fn(usize, DVec3) -> DVec3,
    rate: impl Fn(usize) -> DVec3,
) -> DVec3 {
    let centre = cm(body, pose);
    body.parts
        .iter()
        .enumerate()
        .map(|(i, part)| {
            let at = pose.point_m(part.segment, part.cm_m) - centre;
            let q: DQuat = pose.orientation(part.segment);
            let spin = q * (part.moments_kg_m2 * (q.conjugate() * rate(i)));
            spin + at.cross(velocity(i, at)) * part.mass_kg
        })
        .sum()
}
