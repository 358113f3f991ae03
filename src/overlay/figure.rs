//! The points of the figure that are marked in a film.

use glam::DVec3;

use turns_aloft_attempt::film::PointOf;
use turns_aloft_physics::body::Segment;
use turns_aloft_physics::flight::Flight;

/// Where that point is so long after take-off, held at the flight's ends; none of the background.
pub fn point_m(flight: &Flight, of: PointOf, since_s: f64) -> Option<DVec3> {
    let pose = flight.pose_at(since_s);
    let body = &flight.table.body;
    match of {
        PointOf::Head => Some(pose.point_m(Segment::Head, body.link(Segment::Head).end_m)),
        PointOf::Feet => [Segment::LeftFoot, Segment::RightFoot]
            .into_iter()
            .flat_map(|foot| body.sole_m.map(|end_m| pose.point_m(foot, end_m)))
            .min_by(|one, other| one.y.total_cmp(&other.y)),
        PointOf::Hips => {
            let [left, right] = [Segment::LeftThigh, Segment::RightThigh]
                .map(|thigh| pose.point_m(Segment::LowerTrunk, body.link(thigh).joint_m));
            Some(0.5 * (left + right))
        }
        PointOf::Background => None,
    }
}
