//! Lines on the ground: on ice, which has a sheen, the traces of edges that were skated there, arcs
//! with a cusp here and there where somebody turned.

use bevy::math::{Vec2, Vec3};

use crate::level;
use crate::mesh_builder::{MeshBuilder, circle};
use crate::palette::{self, BevyColour as _, Rgb};

/// Distance from the jumper at which lines have faded out, m.
pub const EDGE_M: f32 = 10.0;

/// Radius and strength of the sheen, m.
const SHEEN_M: f32 = 2.6;
const SHEEN: f32 = 0.9;
/// How many traces there are, and their width, m.
const TRACES: u32 = 46;
const WIDTH_M: f32 = 0.014;
/// Least and greatest radius of an edge, and how long one is skated, m.
const RADIUS_M: [f32; 2] = [1.3, 6.5];
const LENGTH_M: [f32; 2] = [1.6, 5.5];
/// Longest part of an arc that is drawn straight, m.
const STEP_M: f32 = 0.16;

/// Smoothstep: 0 at 0, 1 at 1, with zero slope at both ends.
pub fn smooth(x: f32) -> f32 {
    let x = x.clamp(0.0, 1.0);
    x * x * (3.0 - 2.0 * x)
}

/// Adds a line on the ground through points (X, Z), which fades out far from the jumper and where
/// `strength` says, from 0 at its beginning to 1 at its end.
pub fn line(
    mesh_builder: &mut MeshBuilder,
    points: &[Vec2],
    width_m: f32,
    height_m: f32,
    color: Rgb,
    strength: impl Fn(f32) -> f32,
) {
    let last = points.len() - 1;
    let mut before: Option<(u32, u32)> = None;
    for (i, &at) in points.iter().enumerate() {
        let ahead = points[(i + 1).min(last)] - points[i.saturating_sub(1)];
        let side = ahead.perp().normalize_or(Vec2::Y) * 0.5 * width_m;
        let part = i as f32 / last as f32;
        let color = color.linear_alpha(smooth(1.0 - at.length() / EDGE_M) * strength(part));
        let mut corner =
            |at: Vec2| mesh_builder.vertex(Vec3::new(at.x, height_m, at.y), Vec3::Y, color);
        let here = (corner(at + side), corner(at - side));
        if let Some((left, right)) = before {
            mesh_builder.quad(left, here.0, here.1, right);
        }
        before = Some(here);
    }
}

/// The light of a lamp overhead on the ice, brightest under the jumper.
fn sheen(mesh_builder: &mut MeshBuilder) {
    const ROWS: u32 = 8;
    let mut inner: Option<Vec<u32>> = None;
    for i in 0..=ROWS {
        let part = i as f32 / ROWS as f32;
        let color = palette::now()
            .sheen
            .linear_alpha(SHEEN * smooth(1.0 - part));
        let row: Vec<u32> = circle(32)
            .map(|p| {
                let at = Vec3::new(p.x, 0.0, -p.y) * SHEEN_M * part;
                mesh_builder.vertex(at, Vec3::Y, color)
            })
            .collect();
        if let Some(inner) = inner.replace(row.clone()) {
            mesh_builder.join(&inner, &row);
        }
    }
}

/// Numbers that look like chance and are the same in every picture.
struct Chance(u32);

impl Chance {
    /// From 0 to 1.
    fn next(&mut self) -> f32 {
        self.0 = self.0.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        (self.0 >> 8) as f32 / (1 << 24) as f32
    }

    fn between(&mut self, [from, to]: [f32; 2]) -> f32 {
        from + (to - from) * self.next()
    }
}

/// The traces of blades around the jumper.
pub fn traces() -> MeshBuilder {
    let mut mesh_builder = MeshBuilder::default();
    sheen(&mut mesh_builder);
    let mut chance = Chance(17);
    for _ in 0..TRACES {
        let distance = EDGE_M * chance.between([0.06, 0.85]).sqrt();
        let mut at = Vec2::from_angle(std::f32::consts::TAU * chance.next()) * distance;
        let mut heading = std::f32::consts::TAU * chance.next();
        let strong = chance.between([0.4, 1.0]);
        // Every third one has a turn: the next edge leaves its cusp the other way round.
        let edges = if chance.next() < 0.33 { 2 } else { 1 };
        for edge in 0..edges {
            let curve = 1.0 / chance.between(RADIUS_M);
            let curve = if chance.next() < 0.5 { curve } else { -curve };
            let length = chance.between(LENGTH_M);
            let steps = (length / STEP_M).ceil();
            let mut points = vec![at];
            for _ in 0..steps as u32 {
                heading += curve * length / steps;
                at += Vec2::from_angle(heading) * length / steps;
                points.push(at);
            }
            // A blade is set down and lifted gently, but a cusp is sharp.
            let strength = move |part: f32| {
                let begun = if edge == 0 { 6.0 * part } else { 1.0 };
                let ended = if edge + 1 == edges {
                    6.0 * (1.0 - part)
                } else {
                    1.0
                };
                strong * begun.min(ended).min(1.0)
            };
            let scratch = palette::now().scratch;
            line(
                &mut mesh_builder,
                &points,
                WIDTH_M,
                level::SCRATCH,
                scratch,
                strength,
            );
            heading += 0.7 * std::f32::consts::PI;
        }
    }
    mesh_builder
}
