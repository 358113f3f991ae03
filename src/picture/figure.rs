//! The body at one instant, as flat shapes: the segments as thick as they are flown, the farthest first.

use glam::{DVec2, DVec3};
use turns_aloft_physics::order::by_number;

use crate::outline::{End, Side, around};
use turns_aloft_appearance::{DAY, Rgb};
use turns_aloft_physics::body::{Body, Segment};
use turns_aloft_physics::flight::Pose;
use turns_aloft_physics::thickness::{Solid, solids};

/// The stature that the sizes of hair, nose and blade below belong to, m; they scale with stature.
const DRAWN_STATURE_M: f64 = 1.735;

/// A flat shape of one colour: its corners, right and up, m.
pub struct Shape {
    pub corners_m: Vec<DVec2>,
    pub colour: Rgb,
    /// Whether a light line parts it from its neighbours: not the parts of the trunk, which are one to the
    /// eye, and not what is too thin for a line.
    pub is_edged: bool,
    nearness_m: f64,
}

/// The body's shapes in one pose, the farthest first.
pub fn shapes(body: &Body, pose: &Pose, side: &Side) -> Vec<Shape> {
    let mut shapes: Vec<Shape> = Segment::ALL
        .into_iter()
        .zip(solids(body))
        .map(|(segment, solid)| Shape {
            is_edged: !matches!(solid, Solid::Board { .. }),
            ..of_solid(
                solid,
                colour(segment),
                |own_m| pose.point_m(segment, own_m),
                side,
            )
        })
        .collect();
    shapes.extend(details(body, pose, side));
    by_number(shapes, |shape| shape.nearness_m)
}

fn of_solid(solid: Solid, colour: Rgb, place: impl Fn(DVec3) -> DVec3, side: &Side) -> Shape {
    let ends: Vec<(DVec3, f64)> = match solid {
        Solid::Cone { ends_m, radii_m } => ends_m.into_iter().zip(radii_m).collect(),
        Solid::Board {
            heights_m,
            half_width_m,
            radius_m,
        } => heights_m
            .into_iter()
            .flat_map(|y| [-1.0, 1.0].map(|z| (DVec3::new(0.0, y, z * half_width_m), radius_m)))
            .collect(),
    };
    shape(&ends, colour, place, side)
}

/// The shape around balls in a segment's own frame.
fn shape(
    balls: &[(DVec3, f64)],
    colour: Rgb,
    place: impl Fn(DVec3) -> DVec3,
    side: &Side,
) -> Shape {
    let placed: Vec<(DVec3, f64)> = balls
        .iter()
        .map(|&(at, radius_m)| (place(at), radius_m))
        .collect();
    let ends: Vec<End> = placed
        .iter()
        .map(|&(at, radius_m)| End {
            middle_m: side.seen_m(at),
            radius_m,
        })
        .collect();
    let middle_m = placed.iter().map(|(at, _)| *at).sum::<DVec3>() / placed.len() as f64;
    Shape {
        corners_m: around(&ends),
        colour,
        is_edged: true,
        nearness_m: side.nearness_m(middle_m),
    }
}

/// What shows which way head and feet point, and what the hands hold. For looks only.
fn details(body: &Body, pose: &Pose, side: &Side) -> Vec<Shape> {
    let scale = body.spec.stature_m / DRAWN_STATURE_M;
    let crown_m = body.link(Segment::Head).end_m;
    let head = |own_m: DVec3| pose.point_m(Segment::Head, own_m);
    let of_head = |x: f64, below_crown: f64, radius: f64, colour: Rgb| {
        let at = DVec3::new(x * scale, crown_m.y - below_crown * scale, 0.0);
        shape(&[(at, radius * scale)], colour, head, side)
    };
    let mut details = vec![
        of_head(-0.030, 0.072, 0.088, DAY.stage.dark),
        of_head(-0.125, 0.060, 0.040, DAY.stage.dark),
        of_head(0.088, 0.135, 0.018, DAY.stage.skin),
    ];
    for foot in [Segment::LeftFoot, Segment::RightFoot] {
        let blade = body.sole_m.map(|end| (end, 0.009 * scale));
        let place = |own_m: DVec3| pose.point_m(foot, own_m);
        details.push(Shape {
            is_edged: false,
            ..shape(&blade, DAY.stage.steel, place, side)
        });
    }
    for held in body
        .parts
        .iter()
        .filter(|part| part.name != part.segment.name())
    {
        // Moment of inertia of a solid ball: 0.4 m r².
        if matches!(held.segment, Segment::LeftHand | Segment::RightHand) {
            let radius_m = (held.moments_kg_m2.x / (0.4 * held.mass_kg)).sqrt();
            let place = |own_m: DVec3| pose.point_m(held.segment, own_m);
            details.push(shape(
                &[(held.cm_m, radius_m)],
                DAY.stage.hand_mass,
                place,
                side,
            ));
        }
    }
    details
}

/// Left and right limbs have different colours.
const fn colour(segment: Segment) -> Rgb {
    use Segment::{
        Head, LeftFoot, LeftForearm, LeftHand, LeftShank, LeftThigh, LeftUpperArm, RightFoot,
        RightHand,
    };
    match segment {
        Head | LeftHand | RightHand => DAY.stage.skin,
        LeftUpperArm | LeftForearm | LeftThigh | LeftShank => DAY.stage.left_side,
        LeftFoot | RightFoot => DAY.stage.dark,
        _ => DAY.stage.suit,
    }
}
