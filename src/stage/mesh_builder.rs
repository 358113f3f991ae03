//! Builds small meshes from coloured solids.
//!
//! All meshes have positions, normals and vertex colours only, so that entities can share
//! materials.

use std::f32::consts::{FRAC_PI_2, TAU};

use bevy::asset::RenderAssetUsages;
use bevy::math::{Vec2, Vec3};
use bevy::mesh::{Indices, Mesh, PrimitiveTopology};

/// Points around a solid, and rows of points over one rounded end.
const AROUND: usize = 16;
const END_ROWS: usize = 5;

/// A mesh under construction.
#[derive(Debug, Default)]
pub struct MeshBuilder {
    positions: Vec<[f32; 3]>,
    normals: Vec<[f32; 3]>,
    colors: Vec<[f32; 4]>,
    indices: Vec<u32>,
}

/// An elliptical section across a lofted body, centred on `middle_m`.
#[derive(Debug, Clone, Copy)]
pub struct Section {
    pub middle_m: Vec3,
    /// Along X.
    pub half_depth_m: f32,
    /// Along Z.
    pub half_width_m: f32,
}

impl MeshBuilder {
    pub fn vertex(&mut self, at: Vec3, normal: Vec3, color: [f32; 4]) -> u32 {
        self.positions.push(at.to_array());
        self.normals.push(normal.to_array());
        self.colors.push(color);
        self.positions.len() as u32 - 1
    }

    /// Vertices anticlockwise seen from the front.
    pub fn triangle(&mut self, a: u32, b: u32, c: u32) {
        self.indices.extend([a, b, c]);
    }

    pub fn quad(&mut self, a: u32, b: u32, c: u32, d: u32) {
        self.triangle(a, b, c);
        self.triangle(a, c, d);
    }

    /// A surface between two closed rows of equally many vertices.
    pub fn join(&mut self, from: &[u32], to: &[u32]) {
        for a in 0..from.len() {
            let b = (a + 1) % from.len();
            self.quad(from[a], to[a], to[b], from[b]);
        }
    }

    /// A surface over closed rows of (point, normal).
    fn surface(&mut self, rows: &[Vec<(Vec3, Vec3)>], color: [f32; 4]) {
        let first = self.positions.len() as u32;
        for &(at, normal) in rows.iter().flatten() {
            self.vertex(at, normal, color);
        }
        let around = rows[0].len() as u32;
        for row in 0..rows.len() as u32 - 1 {
            for i in 0..around {
                let next = (i + 1) % around;
                let (low, high) = (first + row * around, first + (row + 1) * around);
                self.quad(low + i, low + next, high + next, high + i);
            }
        }
    }

    /// A limb: two balls, of radius `from_m` and `to_m`, and the cone tangent to both.
    pub fn limb(&mut self, from: Vec3, to: Vec3, from_m: f32, to_m: f32, color: [f32; 4]) {
        let axis = to - from;
        let length = axis.length().max(1e-6);
        let along = axis / length;
        let (side, other) = basis(along);
        // Latitude at which the cone touches both balls.
        let lean = ((from_m - to_m) / length).clamp(-0.99, 0.99).asin();
        let row = |centre: Vec3, radius: f32, latitude: f32| {
            let (sin, cos) = latitude.sin_cos();
            circle(AROUND)
                .map(|p| {
                    let normal = (side * p.x + other * p.y) * cos + along * sin;
                    (centre + normal * radius, normal)
                })
                .collect()
        };
        let part = |i: usize| i as f32 / END_ROWS as f32;
        let mut rows: Vec<Vec<_>> = Vec::with_capacity(2 * END_ROWS + 2);
        for i in 0..=END_ROWS {
            rows.push(row(from, from_m, -FRAC_PI_2 + (lean + FRAC_PI_2) * part(i)));
        }
        for i in 0..=END_ROWS {
            rows.push(row(to, to_m, lean + (FRAC_PI_2 - lean) * part(i)));
        }
        self.surface(&rows, color);
    }

    /// A cone with a flat base.
    pub fn cone(&mut self, base: Vec3, tip: Vec3, radius_m: f32, color: [f32; 4]) {
        let along = (tip - base).normalize_or(Vec3::Y);
        let (side, other) = basis(along);
        let slope = radius_m / (tip - base).length().max(1e-6);
        let row = |centre: Vec3, radius: f32, normal: fn(Vec3, Vec3, f32) -> Vec3| {
            circle(AROUND)
                .map(|p| {
                    let out = side * p.x + other * p.y;
                    (centre + out * radius, normal(out, along, slope))
                })
                .collect::<Vec<_>>()
        };
        let under = |_: Vec3, along: Vec3, _: f32| -along;
        let flank = |out: Vec3, along: Vec3, slope: f32| (out + along * slope).normalize();
        self.surface(&[row(base, 0.0, under), row(base, radius_m, under)], color);
        self.surface(&[row(base, radius_m, flank), row(tip, 0.0, flank)], color);
    }

    pub fn ball(&mut self, centre: Vec3, radii_m: Vec3, color: [f32; 4]) {
        let rows: Vec<Vec<_>> = (0..=2 * END_ROWS)
            .map(|i| {
                let latitude = FRAC_PI_2 * (i as f32 / END_ROWS as f32 - 1.0);
                let (sin, cos) = latitude.sin_cos();
                circle(AROUND)
                    .map(|p| {
                        let unit = Vec3::new(p.y * cos, sin, p.x * cos);
                        (centre + unit * radii_m, (unit / radii_m).normalize())
                    })
                    .collect()
            })
            .collect();
        self.surface(&rows, color);
    }

    /// A body of elliptical sections, one at each of the heights, from bottom to top.
    pub fn loft(
        &mut self,
        heights_m: impl Iterator<Item = f32>,
        section: impl Fn(f32) -> Section,
        color: [f32; 4],
    ) {
        let point = |section: &Section, p: Vec2| {
            section.middle_m
                + Vec3::new(p.y * section.half_depth_m, 0.0, p.x * section.half_width_m)
        };
        let rows: Vec<Vec<_>> = heights_m
            .map(|height| {
                let here = section(height);
                let (below, above) = (section(height - 1e-3), section(height + 1e-3));
                circle(AROUND)
                    .map(|p| {
                        let around =
                            Vec3::new(p.x * here.half_depth_m, 0.0, -p.y * here.half_width_m);
                        let up = point(&above, p) - point(&below, p);
                        (point(&here, p), around.cross(up).normalize_or(Vec3::Y))
                    })
                    .collect()
            })
            .collect();
        self.surface(&rows, color);
    }

    /// A block with its edges along the axes.
    pub fn block(&mut self, centre: Vec3, half_m: Vec3, color: [f32; 4]) {
        for normal in [Vec3::X, Vec3::Y, Vec3::Z, -Vec3::X, -Vec3::Y, -Vec3::Z] {
            let (side, other) = basis(normal);
            let corner = |a: f32, b: f32| centre + (normal + side * a + other * b) * half_m;
            let corners = [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)]
                .map(|(a, b)| self.vertex(corner(a, b), normal, color));
            let [a, b, c, d] = corners;
            self.quad(a, b, c, d);
        }
    }

    /// A flat horizontal band between two curves, sampled at `points` of (inner, outer).
    pub fn band(&mut self, points: impl Iterator<Item = (Vec3, Vec3)>, color: [f32; 4]) {
        let mut last = None;
        for (inner, outer) in points {
            let here = (
                self.vertex(inner, Vec3::Y, color),
                self.vertex(outer, Vec3::Y, color),
            );
            if let Some((inner, outer)) = last {
                self.quad(inner, outer, here.1, here.0);
            }
            last = Some(here);
        }
    }

    pub fn disc(&mut self, centre: Vec3, radius_m: f32, color: [f32; 4]) {
        self.band(
            (0..=24).map(|i| {
                let p = Vec2::from_angle(TAU * i as f32 / 24.0) * radius_m;
                (centre, centre + Vec3::new(p.x, 0.0, -p.y))
            }),
            color,
        );
    }

    /// Replaces all vertex colours by one.
    pub fn single_colored(mut self, color: [f32; 4]) -> Self {
        self.colors.fill(color);
        self
    }

    pub fn mesh(self) -> Mesh {
        Mesh::new(
            PrimitiveTopology::TriangleList,
            RenderAssetUsages::RENDER_WORLD,
        )
        .with_inserted_attribute(Mesh::ATTRIBUTE_POSITION, self.positions)
        .with_inserted_attribute(Mesh::ATTRIBUTE_NORMAL, self.normals)
        .with_inserted_attribute(Mesh::ATTRIBUTE_COLOR, self.colors)
        .with_inserted_indices(Indices::U32(self.indices))
    }
}

/// Points of the unit circle.
pub fn circle(points: usize) -> impl Iterator<Item = Vec2> {
    (0..points).map(move |i| Vec2::from_angle(TAU * i as f32 / points as f32))
}

/// Two directions that make a right-handed triad with `along`: first x second = along.
pub fn basis(along: Vec3) -> (Vec3, Vec3) {
    along.any_orthonormal_pair()
}
