//! The body at equal times of the flight, side by side over one ground, a dial seen from above below each.

use glam::DVec2;
use svg::node::element::path::Data;
use svg::node::element::{Circle, Group, Line, Path};

use crate::figure::{Shape, shapes};
use crate::lettering::Type;
use crate::outline::Side;
use crate::subject::Picture;
use turns_aloft_appearance::DAY;
use turns_aloft_describe::turns::{hundredths_of, turns_text};
use turns_aloft_describe::unit::{SECONDS, UnitText as _};
use turns_aloft_physics::rotation::heading_rad;

/// Bodies side by side, from take-off to touch-down.
const BODIES: usize = 6;

/// Seen from in front and a little above, as the page first shows the jump.
const YAW_RAD: f64 = 1.15;
pub const PITCH_RAD: f64 = 0.12;

/// Room below the ground for dials and captions, and between two bodies, px.
const BELOW_PX: f32 = 170.0;
const GAP_PX: f32 = 14.0;

const DIAL_PX: f32 = 38.0;

/// A body at one instant.
struct Instant {
    t_s: f64,
    turns: f64,
    heading_rad: f64,
    shapes: Vec<Shape>,
}

impl Instant {
    fn of(picture: &Picture<'_>, t_s: f64, side: &Side) -> Self {
        let flight = &picture.jump.flight;
        let pose = flight.pose_at(t_s);
        Self {
            t_s,
            turns: pose.sample.air_turns() + picture.scenario.pre_rotation_turns,
            heading_rad: heading_rad(pose.sample.orientation()),
            shapes: shapes(&flight.table.body, &pose, side),
        }
    }

    /// Farthest left and right, m.
    fn across_m(&self) -> [f64; 2] {
        let across = || {
            self.shapes
                .iter()
                .flat_map(|shape| &shape.corners_m)
                .map(|corner| corner.x)
        };
        [
            across().fold(f64::INFINITY, f64::min),
            across().fold(f64::NEG_INFINITY, f64::max),
        ]
    }
}

/// The strip in the area from `corner_px`.
pub fn draw(picture: &Picture<'_>, corner_px: [f32; 2], size_px: [f32; 2]) -> Group {
    let side = Side::new(YAW_RAD, PITCH_RAD);
    let touchdown_s = picture.jump.flight.touchdown_s;
    let instants: Vec<Instant> = (0..BODIES)
        .map(|i| Instant::of(picture, touchdown_s * i as f64 / (BODIES - 1) as f64, &side))
        .collect();
    let widths_m: f64 = instants
        .iter()
        .map(|at| at.across_m()[1] - at.across_m()[0])
        .sum();
    let top_m = instants
        .iter()
        .flat_map(|at| &at.shapes)
        .flat_map(|shape| &shape.corners_m)
        .map(|corner| corner.y)
        .fold(0.0, f64::max);
    let room_px = [
        f64::from(size_px[0] - GAP_PX * (BODIES - 1) as f32),
        f64::from(size_px[1] - BELOW_PX),
    ];
    let px_per_m = (room_px[0] / widths_m).min(room_px[1] / top_m);
    let ground_px = f64::from(corner_px[1] + size_px[1] - BELOW_PX);
    // What is left of the width is shared out between the bodies.
    let gap_px = (f64::from(size_px[0]) - widths_m * px_per_m) / (BODIES - 1) as f64;
    let mut left_px = f64::from(corner_px[0]);
    let mut group = Group::new().add(ground(corner_px[0], size_px[0], ground_px as f32));
    for instant in &instants {
        let [from_m, to_m] = instant.across_m();
        let middle_px = left_px - from_m * px_per_m;
        let place = |at: DVec2| (middle_px + at.x * px_per_m, ground_px - at.y * px_per_m);
        group = group.add(body(&instant.shapes, place)).add(below(
            picture,
            instant,
            middle_px as f32,
            ground_px as f32,
        ));
        left_px += (to_m - from_m) * px_per_m + gap_px;
    }
    group
}

pub fn ground(left_px: f32, width_px: f32, y_px: f32) -> Line {
    Line::new()
        .set("x1", left_px)
        .set("x2", left_px + width_px)
        .set("y1", y_px)
        .set("y2", y_px)
        .set("stroke", DAY.line.hex())
        .set("stroke-width", 3)
}

pub fn body(shapes: &[Shape], place: impl Fn(DVec2) -> (f64, f64)) -> Group {
    let mut group = Group::new()
        .set("stroke", DAY.card.hex())
        .set("stroke-width", 1.2)
        .set("stroke-linejoin", "round");
    for shape in shapes {
        let tenth = |(x, y): (f64, f64)| ((10.0 * x).round() / 10.0, (10.0 * y).round() / 10.0);
        let mut corners = shape.corners_m.iter().map(|&corner| tenth(place(corner)));
        let Some(first) = corners.next() else {
            continue;
        };
        let data = corners
            .fold(Data::new().move_to(first), Data::line_to)
            .close();
        let path = Path::new().set("d", data).set("fill", shape.colour.hex());
        group = group.add(if shape.is_edged {
            path
        } else {
            path.set("stroke", "none")
        });
    }
    group
}

/// The dial below a body, with where the hips face and where they have to at landing, the time and the
/// turns so far.
fn below(picture: &Picture<'_>, instant: &Instant, middle_px: f32, ground_px: f32) -> Group {
    let centre_px = [middle_px, ground_px + 20.0 + DIAL_PX];
    // Seen from above with the direction of travel to the right; anticlockwise is upwards from there.
    let hand = |heading_rad: f64, from: f32, to: f32| {
        let (sin, cos) = (libm::sin(heading_rad) as f32, libm::cos(heading_rad) as f32);
        Line::new()
            .set("x1", centre_px[0] + from * cos)
            .set("y1", centre_px[1] - from * sin)
            .set("x2", centre_px[0] + to * cos)
            .set("y2", centre_px[1] - to * sin)
            .set("stroke-linecap", "round")
    };
    let mut group = Group::new().add(
        Circle::new()
            .set("cx", centre_px[0])
            .set("cy", centre_px[1])
            .set("r", DIAL_PX)
            .set("fill", DAY.background.hex())
            .set("stroke", DAY.line.hex())
            .set("stroke-width", 2),
    );
    let scenario = picture.scenario;
    let owed = scenario
        .jump
        .landing_heading_rad(scenario.jump_turns, scenario.turning);
    if let Some(owed_rad) = owed {
        let mark = hand(owed_rad, 0.72 * DIAL_PX, 1.16 * DIAL_PX);
        group = group.add(
            mark.set("stroke", DAY.stage.owed.hex())
                .set("stroke-width", 8),
        );
    }
    let pointer = hand(instant.heading_rad, 0.0, 0.84 * DIAL_PX);
    group = group.add(pointer.set("stroke", DAY.text.hex()).set("stroke-width", 5));
    let owed_turns = picture.jump.owed.map(|owed| owed.turns);
    let captions = [
        (
            Type::bold(26.0),
            turns_text(hundredths_of(instant.turns, owed_turns)),
            DAY.text,
        ),
        (Type::usual(21.0), SECONDS.text(instant.t_s), DAY.weak_text),
    ];
    let mut y_px = centre_px[1] + DIAL_PX + 32.0;
    for (size, caption, colour) in captions {
        let line = size.line(caption, [middle_px, y_px], colour);
        group = group.add(line.set("text-anchor", "middle"));
        y_px += 27.0;
    }
    group
}
