//! The dial on the ice: a spiral shows the turns so far, with a mark at the heading that a full
//! jump lands on.

use std::f32::consts::{FRAC_PI_4, TAU};

use bevy::prelude::*;

use crate::level;
use crate::material::{StageMaterials, mesh_bundle};
use crate::mesh_builder::MeshBuilder;
use crate::order::StageSystems;
use crate::palette::{self, BevyColour as _, Rgb};
use crate::shown::{ShownFlight, ShownSample};
use turns_aloft_physics::flight::{Flight, FlightSample};
use turns_aloft_physics::rotation::heading_rad;
use turns_aloft_scenario::call::QUARTER_BAND_FROM_DEG;

/// Radius at which the spiral begins, and its growth per turn, m.
const FIRST_M: f32 = 0.62;
const PITCH_M: f32 = 0.088;
const BAND_M: f32 = 0.064;
/// Radius of the face inside the spiral, m.
const FACE_M: f32 = 0.54;
/// Width outside the spiral for the marks of the landing, m.
const RIM_M: f32 = 0.19;
/// Largest angle between the points of an arc.
const STEP_RAD: f32 = 0.09;

pub fn plugin(app: &mut App) {
    app.add_systems(
        PostUpdate,
        (
            draw_face.run_if(resource_exists_and_changed::<ShownFlight>),
            (draw_turned_band, point, show_gap).run_if(resource_exists_and_changed::<ShownSample>),
        )
            .chain()
            .in_set(StageSystems::Follow),
    );
}

#[derive(Component)]
struct Face;
#[derive(Component)]
struct TurnedBand;
#[derive(Component)]
struct Pointer;
#[derive(Component)]
struct Gap;

/// The spiral of one flight.
#[derive(Debug, Clone, Copy)]
struct Spiral {
    start_rad: f32,
    /// +1 anticlockwise from above, -1 clockwise.
    sign: f32,
    /// Rotation from take-off to touch-down.
    turned_rad: f32,
    /// Rotation from take-off to the heading of a full jump's landing.
    owed_rad: Option<f32>,
}

impl Spiral {
    fn new(shown: &ShownFlight) -> Self {
        Self::of(&shown.flight, shown.owed_heading_rad)
    }

    fn of(flight: &Flight, owed_heading_rad: Option<f64>) -> Self {
        let sign = flight.table.plan.spec.turning.sign();
        let start_rad = flight.launch.heading_rad;
        Self {
            start_rad: start_rad as f32,
            sign: sign as f32,
            turned_rad: flight.touchdown().turned_rad as f32,
            owed_rad: owed_heading_rad.map(|owed| (sign * (owed - start_rad)) as f32),
        }
    }

    fn radius_m(turned_rad: f32) -> f32 {
        FIRST_M + PITCH_M * turned_rad / TAU
    }

    /// Horizontal unit vector towards the heading after this rotation, world frame.
    fn direction(&self, turned_rad: f32) -> Vec3 {
        let heading = self.start_rad + self.sign * turned_rad;
        Vec3::new(heading.cos(), 0.0, -heading.sin())
    }

    /// Inner and outer points of the band along a part of the spiral, `lift_m` above the ice.
    fn band(&self, from_rad: f32, to_rad: f32, lift_m: f32) -> impl Iterator<Item = (Vec3, Vec3)> {
        let half = 0.5 * BAND_M;
        self.arc(from_rad, to_rad, lift_m, move |turned| {
            let radius = Self::radius_m(turned);
            (radius - half, radius + half)
        })
    }

    /// Points at the two radii that `radii_m` gives for each rotation, `lift_m` above the ice.
    fn arc(
        &self,
        from_rad: f32,
        to_rad: f32,
        lift_m: f32,
        radii_m: impl Fn(f32) -> (f32, f32),
    ) -> impl Iterator<Item = (Vec3, Vec3)> {
        let steps = ((to_rad - from_rad).abs() / STEP_RAD).ceil().max(1.0) as usize;
        let spiral = *self;
        (0..=steps).map(move |i| {
            let turned = from_rad + (to_rad - from_rad) * i as f32 / steps as f32;
            let out = spiral.direction(turned);
            let (inner, outer) = radii_m(turned);
            let lift = Vec3::Y * lift_m;
            (out * inner + lift, out * outer + lift)
        })
    }

    /// Outer radius of the dial, marks included, m.
    fn outer_radius_m(&self) -> f32 {
        let most = self.turned_rad.max(self.owed_rad.unwrap_or(0.0));
        Self::radius_m(most.max(0.0)) + 0.5 * BAND_M + RIM_M
    }
}

/// Outer radius of the dial about the point under the CM, m, large enough for the reference
/// attempt's turns too.
pub fn outer_radius_m(shown: &ShownFlight, reference: Option<&Flight>) -> f32 {
    let own_m = Spiral::new(shown).outer_radius_m();
    reference.map_or(own_m, |reference| {
        own_m.max(Spiral::of(reference, None).outer_radius_m())
    })
}

/// The point of a flight's spiral after this rotation, at the height of the ice, m, world frame.
pub fn turned_to(flight: &Flight, turned_rad: f64) -> Vec3 {
    let turned_rad = turned_rad as f32;
    Spiral::of(flight, None).direction(turned_rad) * Spiral::radius_m(turned_rad)
}

/// A round mark for the spiral, about as wide as its band.
pub fn bead(color: Rgb) -> MeshBuilder {
    let mut mesh_builder = MeshBuilder::default();
    mesh_builder.disc(Vec3::ZERO, 0.86 * BAND_M, palette::now().ice.linear());
    mesh_builder.disc(Vec3::Y * 0.001, 0.66 * BAND_M, color.linear());
    mesh_builder
}

pub fn spawn(commands: &mut Commands, meshes: &mut Assets<Mesh>, materials: &StageMaterials) {
    commands.spawn((Face, mesh_bundle(Handle::default(), &materials.unlit)));
    commands.spawn((TurnedBand, mesh_bundle(Handle::default(), &materials.unlit)));
    commands.spawn((Gap, mesh_bundle(Handle::default(), &materials.unlit)));
    commands.spawn((
        Pointer,
        mesh_bundle(
            meshes.add(needle(palette::now().mark).mesh()),
            &materials.unlit,
        ),
    ));
}

/// Adds a radial mark at the heading after this rotation.
fn bar(
    mesh_builder: &mut MeshBuilder,
    spiral: &Spiral,
    turned_rad: f32,
    from_to_m: [f32; 2],
    width_m: f32,
    color: Rgb,
) {
    let out = spiral.direction(turned_rad);
    let side = out.cross(Vec3::Y) * 0.5 * width_m;
    let lift = Vec3::Y * level::MARK;
    let points = from_to_m.map(|radius| (out * radius - side + lift, out * radius + side + lift));
    mesh_builder.band(points.into_iter(), color.linear());
}

fn draw_face(
    shown: Res<ShownFlight>,
    mut meshes: ResMut<Assets<Mesh>>,
    mut face: Single<&mut Mesh3d, (With<Face>, Without<Gap>)>,
    mut gap: Single<&mut Mesh3d, (With<Gap>, Without<Face>)>,
) {
    let spiral = Spiral::new(&shown);
    let mut mesh_builder = MeshBuilder::default();
    let track = palette::now().track.linear();
    let end_rad = spiral
        .owed_rad
        .unwrap_or(spiral.turned_rad)
        .max(spiral.turned_rad);
    mesh_builder.band(spiral.band(0.0, end_rad, level::TRACK), track);
    let rim = |_: f32| (FACE_M - 0.012, FACE_M);
    mesh_builder.band(
        spiral.arc(0.0, TAU, level::TRACK, rim),
        palette::now().tick.linear(),
    );
    for eighth in 0..8_u8 {
        let at_rad = FRAC_PI_4 * f32::from(eighth);
        let (length, width) = if eighth % 2 == 0 {
            (0.11, 0.022)
        } else {
            (0.05, 0.012)
        };
        bar(
            &mut mesh_builder,
            &spiral,
            at_rad,
            [FACE_M - length, FACE_M],
            width,
            palette::now().tick,
        );
    }
    let half = 0.5 * BAND_M;
    let start = [FACE_M, FIRST_M + half];
    bar(
        &mut mesh_builder,
        &spiral,
        0.0,
        start,
        0.03,
        palette::now().mark,
    );
    if let Some(owed_rad) = spiral.owed_rad {
        draw_owed(&mut mesh_builder, &spiral, owed_rad);
        gap.0 = meshes.add(gap_between(&spiral, owed_rad).mesh());
    }
    face.0 = meshes.add(mesh_builder.mesh());
}

/// Draws the heading of a full jump's landing, and the range before it that still counts as full.
fn draw_owed(mesh_builder: &mut MeshBuilder, spiral: &Spiral, owed_rad: f32) {
    let outer = spiral.outer_radius_m() - RIM_M;
    bar(
        mesh_builder,
        spiral,
        owed_rad,
        [FACE_M - 0.11, outer],
        0.034,
        palette::now().owed,
    );
    let out = spiral.direction(owed_rad);
    let side = out.cross(Vec3::Y) * 0.105;
    let lift = Vec3::Y * level::MARK;
    let base = out * (outer + 0.18) + lift;
    let [tip, a, b] = [out * outer + lift, base - side, base + side]
        .map(|at| mesh_builder.vertex(at, Vec3::Y, palette::now().owed.linear()));
    mesh_builder.triangle(tip, a, b);
    let from = owed_rad - full_jump_tolerance_rad();
    let radii = |_: f32| (outer + 0.02, outer + 0.045);
    mesh_builder.band(
        spiral.arc(from, owed_rad, level::MARK, radii),
        palette::now().owed.linear(),
    );
}

/// A jump that is short by less than this counts as full.
fn full_jump_tolerance_rad() -> f32 {
    (QUARTER_BAND_FROM_DEG as f32).to_radians()
}

/// The missing rotation as a sector of the face and a part of the spiral.
fn gap_between(spiral: &Spiral, owed_rad: f32) -> MeshBuilder {
    let turned = spiral.turned_rad;
    let color = if owed_rad - turned >= full_jump_tolerance_rad() {
        palette::now().short
    } else {
        palette::now().owed
    };
    let mut mesh_builder = MeshBuilder::default();
    // At most one turn, so that the sector does not overlap itself.
    let from = turned.max(owed_rad - TAU);
    let sector = spiral.arc(from, owed_rad, level::GAP, |_| (0.0, FACE_M - 0.012));
    mesh_builder.band(sector, color.over(palette::now().ice, 0.55).linear());
    mesh_builder.band(spiral.band(turned, owed_rad, level::GAP), color.linear());
    mesh_builder
}

fn draw_turned_band(
    flight: Res<ShownFlight>,
    sample: Res<ShownSample>,
    mut meshes: ResMut<Assets<Mesh>>,
    turned_band: Single<(&mut Mesh3d, &mut Visibility), With<TurnedBand>>,
) {
    let spiral = Spiral::new(&flight);
    let turned_rad = sample.flown.turned_rad as f32;
    let (mut mesh, mut visibility) = turned_band.into_inner();
    if turned_rad <= 0.0 {
        *visibility = Visibility::Hidden;
        return;
    }
    *visibility = Visibility::Inherited;
    let mut mesh_builder = MeshBuilder::default();
    mesh_builder.band(
        spiral.band(0.0, turned_rad, level::TURNED),
        palette::now().turned.linear(),
    );
    for turn in 1..=(turned_rad / TAU) as u16 {
        let at_rad = TAU * f32::from(turn);
        let centre = spiral.direction(at_rad) * Spiral::radius_m(at_rad);
        mesh_builder.disc(
            centre + Vec3::Y * level::MARK,
            0.30 * BAND_M,
            palette::now().mark.linear(),
        );
    }
    mesh.0 = meshes.add(mesh_builder.mesh());
}

/// An arrow along X from the centre of the dial.
pub fn needle(color: Rgb) -> MeshBuilder {
    let mut mesh_builder = MeshBuilder::default();
    let color = color.linear();
    let at = |x: f32, side: f32| Vec3::new(x, 0.0, side);
    mesh_builder.band(
        [0.0, 0.38]
            .map(|x| (at(x, -0.022), at(x, 0.022)))
            .into_iter(),
        color,
    );
    mesh_builder.disc(at(0.0, 0.0), 0.042, color);
    let [a, b, c] = [at(0.53, 0.0), at(0.37, -0.075), at(0.37, 0.075)]
        .map(|corner| mesh_builder.vertex(corner, Vec3::Y, color));
    mesh_builder.triangle(a, b, c);
    mesh_builder
}

fn point(sample: Res<ShownSample>, mut pointer: Single<&mut Transform, With<Pointer>>) {
    **pointer = pointing(&sample.flown, level::POINTER);
}

/// The transform of a needle that points in the heading of the pelvis.
pub fn pointing(sample: &FlightSample, lift_m: f32) -> Transform {
    let heading = heading_rad(sample.orientation());
    Transform {
        translation: Vec3::Y * lift_m,
        rotation: Quat::from_rotation_y(heading as f32),
        ..default()
    }
}

fn show_gap(
    flight: Res<ShownFlight>,
    sample: Res<ShownSample>,
    mut gap: Single<&mut Visibility, With<Gap>>,
) {
    let down = sample.playhead_s >= flight.flight.touchdown_s;
    **gap = if down && flight.owed_heading_rad.is_some() {
        Visibility::Inherited
    } else {
        Visibility::Hidden
    };
}
