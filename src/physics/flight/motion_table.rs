//! The flight written out: where every part of the body is at even times.

use std::fmt::Write as _;

use crate::flight::planned::Flight;

/// Columns of the motion table.
pub const HEADER: &str =
    "time_s,segment,mass_kg,x_m,y_m,z_m,qw,qx,qy,qz,ix_kg_m2,iy_kg_m2,iz_kg_m2";

/// One row per part and time: CM position and orientation (segment axes to world) in the world,
/// principal moments about the part's CM in the segment's own axes. Times run from take-off in
/// steps of `step_s` and end with touch-down itself.
///
/// From these rows alone mass, the CM's parabola, angular momentum and turns can be recomputed.
pub fn table(flight: &Flight, step_s: f64) -> String {
    let whole_steps = libm::ceil(flight.touchdown_s / step_s - 1e-9).max(1.0) as usize;
    let mut text = format!("{HEADER}\n");
    for i in 0..=whole_steps {
        let t_s = (step_s * i as f64).min(flight.touchdown_s);
        rows(flight, t_s, &mut text);
    }
    text
}

fn rows(flight: &Flight, t_s: f64, text: &mut String) {
    let pose = flight.pose_at(t_s);
    for part in &flight.table.body.parts {
        let at = pose.point_m(part.segment, part.cm_m);
        let q = pose.orientation(part.segment);
        let moments = part.moments_kg_m2;
        writeln!(
            text,
            "{t_s},{},{},{},{},{},{},{},{},{},{},{},{}",
            part.name,
            part.mass_kg,
            at.x,
            at.y,
            at.z,
            q.w,
            q.x,
            q.y,
            q.z,
            moments.x,
            moments.y,
            moments.z
        )
        .expect("writing to a string does not fail");
    }
}
