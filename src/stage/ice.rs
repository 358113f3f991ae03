//! The sheet of ice and the air over it, fading into each other in the distance.
//!
//! A lit or even a plain material over the whole picture costs more than everything else
//! together, so ice and air are a sky: one cheap look-up for every pixel that nothing covers.

use std::f32::consts::FRAC_PI_2;

use bevy::asset::RenderAssetUsages;
use bevy::camera::Exposure;
use bevy::light::Skybox;
use bevy::prelude::*;
use bevy::render::render_resource::{
    Extent3d, TextureDimension, TextureFormat, TextureViewDescriptor, TextureViewDimension,
};

use super::Dress;
use super::clay::{Clay, circle};
use super::paint::{Paints, thing};
use super::palette::{self, Ink};

/// Heights of what lies on the ice, m: thin layers, far enough apart for the depth buffer.
pub mod level {
    pub const SCRATCH: f32 = 0.002;
    pub const SHADOW: f32 = 0.004;
    pub const TRACK: f32 = 0.006;
    pub const GAP: f32 = 0.008;
    pub const WOUND: f32 = 0.010;
    pub const MARK: f32 = 0.012;
    pub const GHOST: f32 = 0.014;
    pub const POINTER: f32 = 0.016;
}

/// Rings scratched into the ice, m: they give the eye a floor.
const RINGS_M: [f32; 6] = [1.75, 2.5, 3.5, 4.75, 6.25, 8.25];
const SCRATCH_WIDTH_M: f32 = 0.016;
/// Where the scratches have faded away, m.
const EDGE_M: f32 = 10.0;

/// How far below and above the horizon, rad, the haze has cleared.
const CLEAR_BELOW_RAD: f32 = 0.36;
const CLEAR_ABOVE_RAD: f32 = 0.55;
/// Pixels along the edge of a face of the sky.
const SKY_PX: u32 = 128;

pub fn plugin(app: &mut App) {
    app.add_systems(Dress, (spawn, spread));
}

fn spawn(mut commands: Commands, mut meshes: ResMut<Assets<Mesh>>, paints: Res<Paints>) {
    commands.spawn(thing(meshes.add(scratches().mesh()), &paints.sheer));
}

/// From 0 at 0 to 1 at 1, level at both ends.
fn smooth(x: f32) -> f32 {
    let x = x.clamp(0.0, 1.0);
    x * x * (3.0 - 2.0 * x)
}

fn scratches() -> Clay {
    let mut clay = Clay::default();
    for radius in RINGS_M {
        let color = palette::now()
            .scratch
            .linear_alpha(smooth(1.0 - radius / EDGE_M));
        let around = circle(96).chain(std::iter::once(Vec2::X));
        let points = around.map(|p| {
            let out = Vec3::new(p.x, 0.0, -p.y);
            let lift = Vec3::Y * level::SCRATCH;
            (out * (radius - SCRATCH_WIDTH_M) + lift, out * radius + lift)
        });
        clay.band(points, color);
    }
    clay
}

/// The colour seen in a direction this far above the horizon.
fn sky_at(elevation_rad: f32) -> Ink {
    if elevation_rad < 0.0 {
        palette::now().ice.over(
            palette::now().haze,
            smooth(-elevation_rad / CLEAR_BELOW_RAD),
        )
    } else {
        palette::now()
            .air
            .over(palette::now().haze, smooth(elevation_rad / CLEAR_ABOVE_RAD))
    }
}

/// Gives the camera its backdrop.
fn spread(
    mut commands: Commands,
    mut images: ResMut<Assets<Image>>,
    camera: Single<Entity, With<Camera3d>>,
) {
    commands.insert_resource(ClearColor(palette::now().ice.color()));
    commands.entity(*camera).insert(sky(&mut images));
}

fn sky(images: &mut Assets<Image>) -> Skybox {
    let middle = |i: u32| (i as f32 + 0.5) / SKY_PX as f32 * 2.0 - 1.0;
    let mut bytes = Vec::with_capacity((6 * SKY_PX * SKY_PX * 4) as usize);
    // Faces in the order of a cube map: +X, -X, +Y, -Y, +Z, -Z; rows go down on the upright ones.
    for face in 0..6 {
        for row in 0..SKY_PX {
            for column in 0..SKY_PX {
                let (u, v) = (middle(column), middle(row));
                let up = match face {
                    2 => 1.0,
                    3 => -1.0,
                    _ => -v,
                };
                let level = match face {
                    2 | 3 => u.hypot(v),
                    _ => u.hypot(1.0),
                };
                let elevation = up.atan2(level).clamp(-FRAC_PI_2, FRAC_PI_2);
                let Ink(r, g, b) = sky_at(elevation);
                bytes.extend([r, g, b, u8::MAX]);
            }
        }
    }
    let mut image = Image::new(
        Extent3d {
            width: SKY_PX,
            height: SKY_PX,
            depth_or_array_layers: 6,
        },
        TextureDimension::D2,
        bytes,
        TextureFormat::Rgba8UnormSrgb,
        RenderAssetUsages::RENDER_WORLD,
    );
    image.texture_view_descriptor = Some(TextureViewDescriptor {
        dimension: Some(TextureViewDimension::Cube),
        ..default()
    });
    Skybox {
        image: Some(images.add(image)),
        // Undoes the camera's exposure: the colours are to be seen as they are.
        brightness: Exposure::default().exposure().recip(),
        ..default()
    }
}
