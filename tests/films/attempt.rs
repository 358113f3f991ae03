//! The pictures of an invented attempt, filmed by a camera that follows it not quite: raw RGB to standard
//! output, for ffmpeg, and what is true of them as JSON to a file.
//!
//!     attempt_film START RATE TRUTH >FRAMES
//!
//! The jumper is one of the starting points, as flown; before take-off and after touch-down it glides on in
//! the posture that it has then. All positions are in pixels from the left and from the top.

use std::f64::consts::{FRAC_PI_2, PI, TAU};
use std::io::{self, Write};
use std::{env, fs};

use glam::{DVec2, DVec3};
use resvg::tiny_skia::{Pixmap, Transform};
use resvg::usvg::{Options, Tree};
use serde_json::json;

use turns_aloft::physics::body::Segment;
use turns_aloft::physics::flight::{Flight, Pose};
use turns_aloft::physics::rotation::heading_rad;
use turns_aloft::picture::figure::{Shape, shapes};
use turns_aloft::picture::outline::Side;
use turns_aloft::scenario::starts;

const WIDTH_PX: f64 = 640.0;
const HEIGHT_PX: f64 = 360.0;

/// Before take-off, and after touch-down, s.
const BEFORE_S: f64 = 0.8;
const AFTER_S: f64 = 0.7;

/// Of the camera: how large it sees, from where, and how the jumper passes.
const SCALE_PX_M: f64 = 118.0;
const YAW_RAD: f64 = 0.5;
const TRAVEL_M_S: f64 = 2.6;
/// How fast the background moves through the picture, px/s, and how the camera shakes, px.
const PAN_PX_S: f64 = -215.0;
const SHAKE_PX: f64 = 3.0;
/// Where the ice below the jumper is at take-off.
const ORIGIN_PX: [f64; 2] = [255.0, 318.0];

/// A camera that looks level, far away.
struct Camera {
    side: Side,
}

impl Camera {
    fn moved_px(t_s: f64) -> [f64; 2] {
        [
            PAN_PX_S * t_s + SHAKE_PX * libm::sin(9.0 * t_s),
            SHAKE_PX * libm::sin(7.0 * t_s + 1.0),
        ]
    }

    fn seen_px(&self, seen_m: DVec2, t_s: f64) -> [f64; 2] {
        let [right, down] = Self::moved_px(t_s);
        [
            ORIGIN_PX[0] + SCALE_PX_M * (seen_m.x + TRAVEL_M_S * t_s) + right,
            ORIGIN_PX[1] - SCALE_PX_M * seen_m.y + down,
        ]
    }

    fn at_px(&self, point_m: DVec3, t_s: f64) -> [f64; 2] {
        self.seen_px(self.side.seen_m(point_m), t_s)
    }
}

fn main() {
    let arguments: Vec<String> = env::args().skip(1).collect();
    let [start, rate, truth] = arguments.as_slice() else {
        panic!("attempt_film START RATE TRUTH");
    };
    let rate: f64 = rate.parse().expect("a rate");
    let start = starts::named(start).expect("a starting point");
    let flight = start.scenario.fly().flight;
    let camera = Camera {
        side: Side::new(YAW_RAD, 0.0),
    };
    let frames = ((BEFORE_S + flight.touchdown_s + AFTER_S) * rate) as usize;
    let mut out = io::stdout().lock();
    let mut told = Vec::new();
    for frame in 0..frames {
        let t_s = frame as f64 / rate - BEFORE_S;
        let pose = flight.pose_at(t_s);
        let pixmap = drawn(&svg(&camera, &flight, &pose, t_s));
        for pixel in pixmap.pixels() {
            out.write_all(&[pixel.red(), pixel.green(), pixel.blue()])
                .expect("it is read");
        }
        told.push(of_frame(&camera, &flight, &pose, t_s));
    }
    let readout = start.scenario.fly().readout;
    let whole = json!({
        "rate": rate,
        "takeoff_s": BEFORE_S,
        "landing_s": BEFORE_S + flight.touchdown_s,
        "air_turns": readout.air_turns,
        "peak_rate_rad_s": readout.peak_rate_rad_s,
        "stature_px": SCALE_PX_M * start.scenario.stature_m,
        "frames": told,
    });
    fs::write(truth, whole.to_string()).expect("it can be written");
}

/// What is true in one picture.
fn of_frame(camera: &Camera, flight: &Flight, pose: &Pose, t_s: f64) -> serde_json::Value {
    let body = &flight.table.body;
    let head = pose.point_m(Segment::Head, body.link(Segment::Head).end_m);
    let hips = [Segment::LeftThigh, Segment::RightThigh]
        .map(|thigh| pose.point_m(Segment::LowerTrunk, body.link(thigh).joint_m));
    let feet = [Segment::LeftFoot, Segment::RightFoot]
        .into_iter()
        .flat_map(|foot| body.sole_m.map(|sole_m| pose.point_m(foot, sole_m)))
        .min_by(|one, other| one.y.total_cmp(&other.y))
        .expect("two feet");
    // The direction from the jumper to the eye, from X, anticlockwise seen from above.
    let sight_rad = YAW_RAD - FRAC_PI_2;
    let facing_rad = heading_rad(pose.sample.orientation()) - sight_rad;
    json!({
        "in_air": (0.0..flight.touchdown_s).contains(&t_s),
        "facing_rad": PI - (PI - facing_rad).rem_euclid(TAU),
        "head_px": camera.at_px(head, t_s),
        "hips_px": camera.at_px(0.5 * (hips[0] + hips[1]), t_s),
        "feet_px": camera.at_px(feet, t_s),
        "background_px": post_px(t_s, 2),
    })
}

/// Where the foot of a post of the boards behind the ice is.
fn post_px(t_s: f64, post: usize) -> [f64; 2] {
    let [right, down] = Camera::moved_px(t_s);
    [
        140.0 + 180.0 * post as f64 + right - PAN_PX_S * 0.9,
        190.0 + down,
    ]
}

/// The hall and the jumper.
fn svg(camera: &Camera, flight: &Flight, pose: &Pose, t_s: f64) -> String {
    let [_, down] = Camera::moved_px(t_s);
    let mut svg = format!(
        "<svg xmlns='http://www.w3.org/2000/svg' width='{WIDTH_PX}' height='{HEIGHT_PX}'>\
         <rect width='100%' height='100%' fill='#c7d4de'/>\
         <rect y='{}' width='100%' height='60' fill='#f4f6f8'/>\
         <rect y='{}' width='100%' height='8' fill='#d9a400'/>\
         <rect y='{}' width='100%' height='200' fill='#e6eef4'/>",
        130.0 + down,
        182.0 + down,
        190.0 + down
    );
    for post in 0..12 {
        let [x, y] = post_px(t_s, post);
        svg += &format!(
            "<rect x='{}' y='{}' width='5' height='60' fill='#7a8b9a'/>",
            x - 2.5,
            y - 60.0
        );
    }
    let ground = camera.at_px(DVec3::ZERO, t_s);
    svg += &format!(
        "<ellipse cx='{}' cy='{}' rx='34' ry='6' fill='#b9c8d4'/>",
        ground[0], ground[1]
    );
    for Shape {
        corners_m, colour, ..
    } in shapes(&flight.table.body, pose, &camera.side)
    {
        let corners: Vec<String> = corners_m
            .iter()
            .map(|&corner_m| camera.seen_px(corner_m, t_s))
            .map(|[x, y]| format!("{x:.2},{y:.2}"))
            .collect();
        svg += &format!(
            "<polygon points='{}' fill='{}'/>",
            corners.join(" "),
            colour.hex()
        );
    }
    svg + "</svg>"
}

fn drawn(svg: &str) -> Pixmap {
    let tree = Tree::from_str(svg, &Options::default()).expect("it is drawn here");
    let mut pixmap = Pixmap::new(WIDTH_PX as u32, HEIGHT_PX as u32).expect("a size");
    resvg::render(&tree, Transform::identity(), &mut pixmap.as_mut());
    pixmap
}
