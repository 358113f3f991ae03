//! Parts of the picture on their own, for other pages: each a complete SVG element, without fonts.

use std::f64::consts::FRAC_PI_2;

use glam::DVec2;
use svg::Document;

use crate::figure::shapes;
use crate::outline::Side;
use crate::strip::{PITCH_RAD, body, ground};
use crate::subject::Picture;
use crate::{qr, strip};
use turns_aloft_physics::rotation::heading_rad;
use turns_aloft_scenario::fly::Jump;

const CODE_PX: f32 = 250.0;
const STRIP_PX: [f32; 2] = [960.0, 460.0];

/// Room to either side of a body in the air, arms out, and its scale.
const MOMENT_WIDTH_M: f64 = 1.5;
const MOMENT_PX_PER_M: f64 = 100.0;

/// From how far to the side of its front it is seen, rad.
const ASIDE_RAD: f64 = 0.35;

fn document([width_px, height_px]: [f32; 2], label: &str) -> Document {
    Document::new()
        .set("viewBox", (0, 0, width_px, height_px))
        .set("role", "img")
        .set("aria-label", label)
}

/// An address as a QR code. None where it is too long for one that can be read.
pub fn code_svg(address: &str, label: &str) -> Option<String> {
    let code = qr::draw(address, [0.0; 2], CODE_PX)?;
    Some(document([CODE_PX; 2], label).add(code).to_string())
}

/// The code that opens a jump on the page.
pub fn jump_code_svg(picture: &Picture<'_>, label: &str) -> Option<String> {
    code_svg(&qr::address(picture)?, label)
}

/// The body at equal times of the flight.
pub fn strip_svg(picture: &Picture<'_>, label: &str) -> String {
    let strip = strip::draw(picture, [0.0; 2], STRIP_PX);
    document(STRIP_PX, label).add(strip).to_string()
}

/// The body halfway through the flight, over the ground, seen from its front; up to a height of `top_m`.
pub fn moment_svg(jump: &Jump, top_m: f64, label: &str) -> String {
    let flight = &jump.flight;
    let pose = flight.pose_at(0.5 * flight.touchdown_s);
    let facing_rad = heading_rad(pose.sample.orientation());
    let side = Side::new(FRAC_PI_2 + facing_rad - ASIDE_RAD, PITCH_RAD);
    let shapes = shapes(&flight.table.body, &pose, &side);
    let size_px = [MOMENT_WIDTH_M, top_m].map(|side_m| (side_m * MOMENT_PX_PER_M) as f32);
    let ground_px = f64::from(size_px[1]) - 6.0;
    let across = || {
        let corners = shapes.iter().flat_map(|shape| &shape.corners_m);
        corners.map(|corner| corner.x)
    };
    let (least_m, most_m) = across()
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(least, most), x| {
            (least.min(x), most.max(x))
        });
    let middle_m = 0.5 * (least_m + most_m);
    let place = |at: DVec2| {
        let x = f64::from(0.5 * size_px[0]) + (at.x - middle_m) * MOMENT_PX_PER_M;
        (x, ground_px - at.y * MOMENT_PX_PER_M)
    };
    document(size_px, label)
        .add(ground(0.0, size_px[0], ground_px as f32))
        .add(body(&shapes, place))
        .to_string()
}
