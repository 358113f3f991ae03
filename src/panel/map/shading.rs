//! The surface of the map: a colour band for each quarter turn, and hatching over what has not been
//! seen in people.
//!
//! The values become texture coordinates at the vertices of a mesh, and the texture has sharp
//! bands: so the edges of the bands have the screen's resolution without computing every pixel.

use std::sync::Arc;

use egui::epaint::Vertex;
use egui::{
    Color32, ColorImage, Mesh, Pos2, Rect, Rgba, TextureFilter, TextureHandle, TextureOptions,
    TextureWrapMode, Ui, pos2, remap_clamp,
};

use crate::style::{CARD, WEAK_TEXT, map};
use turns_aloft_analysis::field::Field;
use turns_aloft_appearance::shown;

/// Bands per turn.
const QUARTERS: f64 = 4.0;

/// The greatest number of bands: 32 turns, more than a jump can have.
const MOST: usize = 128;

/// Distance of the hatching's lines, measured along an edge of the map, and their width, logical
/// px.
const HATCH: f32 = 9.0;
const HATCH_WIDTH: f32 = 1.3;

/// Texels across one line and the gap after it.
const HATCH_TEXELS: usize = 36;

/// Factor from the margin to what has been seen to the texture coordinate: so large that rounding
/// of the coordinates does not matter.
const MARGIN: f64 = 4.0;

const SHARP: TextureOptions = TextureOptions {
    magnification: TextureFilter::Nearest,
    minification: TextureFilter::Nearest,
    wrap_mode: TextureWrapMode::Repeat,
    mipmap_mode: None,
};

/// The textures, made once for each theme.
#[derive(Clone)]
struct Shades {
    bands: TextureHandle,
    hatch: TextureHandle,
}

fn shades(ui: &Ui) -> Shades {
    let id = ui.id().with(("shades", shown().name()));
    if let Some(shades) = ui.data(|data| data.get_temp::<Shades>(id)) {
        return shades;
    }
    let load = |name, image: ColorImage| ui.ctx().load_texture(name, image, SHARP);
    let shades = Shades {
        bands: load("map bands", bands()),
        hatch: load("map hatch", hatch()),
    };
    ui.data_mut(|data| data.insert_temp(id, shades.clone()));
    shades
}

/// Row `n - 1` has the colours of a map of `n` bands; the last band's colour fills the rest.
fn bands() -> ColorImage {
    let rows = 1..=MOST;
    let colours = rows.flat_map(|n| (0..MOST).map(move |band| shade(band.min(n - 1), n)));
    ColorImage::new([MOST, MOST], colours.collect())
}

/// The colour of the band with index `band` of `bands`.
pub fn shade(band: usize, bands: usize) -> Color32 {
    let map = map();
    let place = (map.len() - 1) as f32 * (band as f32 + 0.5) / bands as f32;
    let i = (place as usize).min(map.len() - 2);
    let part = place - i as f32;
    let mixed = Rgba::from(map[i]) * (1.0 - part) + Rgba::from(map[i + 1]) * part;
    mixed.into()
}

/// Hatching in the left half, nothing in the right one.
fn hatch() -> ColorImage {
    let colours = (0..HATCH_TEXELS).flat_map(|i| {
        // Measured along an edge, a slanted line is wider by √2 than across.
        let from_middle = (i as f32 + 0.5) / HATCH_TEXELS as f32 * HATCH - 0.5 * HATCH;
        let edge = 0.5 * HATCH_WIDTH * std::f32::consts::SQRT_2;
        let coverage = remap_clamp(from_middle.abs(), edge - 0.5..=edge + 0.5, 1.0..=0.0);
        let veil = Rgba::from(CARD.get()) * 0.4;
        let line = Rgba::from(WEAK_TEXT.get()) * 0.75;
        let colour: Color32 = (veil * (1.0 - coverage) + line * coverage).into();
        [colour, Color32::TRANSPARENT]
    });
    ColorImage::new([2, HATCH_TEXELS], colours.collect())
}

/// The first band of a map, in quarter turns, and how many there are.
pub fn range(turns: &Field) -> (f64, usize) {
    let [least, most] = turns.range();
    let first = (QUARTERS * least).floor();
    let bands = (QUARTERS * most).ceil() - first;
    (first, (bands as usize).clamp(1, MOST))
}

pub fn draw(ui: &Ui, turns: &Field, seen: &Field, rect: Rect) {
    let shades = shades(ui);
    let (first, bands) = range(turns);
    let row = (bands as f32 - 0.5) / MOST as f32;
    let painter = ui.painter();
    painter.add(field_mesh(turns, rect, &shades.bands, |_, turns| {
        pos2(((QUARTERS * turns - first) / MOST as f64) as f32, row)
    }));
    if seen.range()[0] < 0.0 {
        painter.add(field_mesh(seen, rect, &shades.hatch, |at, margin| {
            let along = (at.x - rect.left() + at.y - rect.top()) / HATCH;
            pos2(0.5 + (MARGIN * margin).clamp(-0.49, 0.49) as f32, along)
        }));
    }
}

/// Hatching over a whole rectangle, for the legend.
pub fn hatched(ui: &Ui, rect: Rect) {
    let mut mesh = Mesh::with_texture(shades(ui).hatch.id());
    let at = |x: f32, y: f32| (x + y) / HATCH;
    for (corner, along) in [
        (rect.left_top(), 0.0),
        (rect.right_top(), at(rect.width(), 0.0)),
        (rect.right_bottom(), at(rect.width(), rect.height())),
        (rect.left_bottom(), at(0.0, rect.height())),
    ] {
        mesh.vertices.push(vertex(corner, pos2(0.25, along)));
    }
    mesh.add_triangle(0, 1, 2);
    mesh.add_triangle(0, 2, 3);
    ui.painter().add(Arc::new(mesh));
}

/// The mesh of a field over a rectangle, with a texture coordinate from the value at each node.
fn field_mesh(
    field: &Field,
    rect: Rect,
    texture: &TextureHandle,
    place: impl Fn(Pos2, f64) -> Pos2,
) -> Arc<Mesh> {
    let (columns, rows) = (field.columns(), field.rows());
    let mut mesh = Mesh::with_texture(texture.id());
    mesh.reserve_vertices(columns * rows);
    mesh.reserve_triangles(2 * (columns - 1) * (rows - 1));
    for j in 0..rows {
        for i in 0..columns {
            let (u, v) = (part(i, columns), part(j, rows));
            let at = pos2(
                rect.left() + rect.width() * u,
                rect.bottom() - rect.height() * v,
            );
            mesh.vertices.push(vertex(at, place(at, field.node(i, j))));
        }
    }
    for j in 0..rows - 1 {
        for i in 0..columns - 1 {
            let corner = |i: usize, j: usize| (j * columns + i) as u32;
            let (a, b) = (corner(i, j), corner(i + 1, j));
            let (c, d) = (corner(i + 1, j + 1), corner(i, j + 1));
            // Turns mostly grow towards corner c, so that this diagonal runs along the bands.
            mesh.add_triangle(a, b, d);
            mesh.add_triangle(b, c, d);
        }
    }
    Arc::new(mesh)
}

fn part(i: usize, nodes: usize) -> f32 {
    i as f32 / (nodes - 1) as f32
}

fn vertex(pos: Pos2, uv: Pos2) -> Vertex {
    Vertex {
        pos,
        uv,
        color: Color32::WHITE,
    }
}
