//! The dial on the ice: turns wind up on a spiral towards the place where the landing is owed.

use std::f32::consts::{FRAC_PI_4, TAU};

use bevy::prelude::*;

use crate::ice::level;
use crate::mesh_builder::MeshBuilder;
use crate::order::StageSystems;
use crate::paint::{Paints, thing};
use crate::palette::{self, BevyColour as _, Ink};
use crate::shown::ShownFlight;
use crate::shown::ShownSample;
use crate::theme::Themed;
use turns_aloft_physics::flight::{Flight, FlightSample};
use turns_aloft_physics::rotation::heading_rad;
use turns_aloft_scenario::call::QUARTER_BAND_FROM_DEG;

/// The spiral begins at this radius and moves out by the pitch each turn.
const FIRST_M: f32 = 0.62;
const PITCH_M: f32 = 0.088;
const BAND_M: f32 = 0.064;
/// The face inside the spiral.
const FACE_M: f32 = 0.54;
/// Outside the spiral, for the marks of the landing.
const RIM_M: f32 = 0.19;
/// Points of an arc are no further apart than this.
const STEP_RAD: f32 = 0.09;

pub fn plugin(app: &mut App) {
    app.add_systems(Themed, spawn).add_systems(
        PostUpdate,
        (
            draw_face.run_if(resource_exists_and_changed::<ShownFlight>),
            (wind, point, show_gap).run_if(resource_exists_and_changed::<ShownSample>),
        )
            .chain()
            .in_set(StageSystems::Follow),
    );
}

#[derive(Component)]
struct Face;
#[derive(Component)]
struct Wound;
#[derive(Component)]
struct Pointer;
#[derive(Component)]
struct Gap;

/// Where turns lie on the ice.
#[derive(Debug, Clone, Copy)]
struct Spiral {
    start_rad: f32,
    /// +1 anticlockwise from above, -1 clockwise.
    sign: f32,
    /// Turned from take-off to touch-down.
    turned_rad: f32,
    /// To be turned from take-off to the heading that the landing owes.
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

    /// Towards the heading reached after turning so far.
    fn direction(&self, turned_rad: f32) -> Vec3 {
        let heading = self.start_rad + self.sign * turned_rad;
        Vec3::new(heading.cos(), 0.0, -heading.sin())
    }

    /// Inner and outer points of the band along a part of the spiral.
    fn band(&self, from_rad: f32, to_rad: f32, lift_m: f32) -> impl Iterator<Item = (Vec3, Vec3)> {
        let half = 0.5 * BAND_M;
        self.arc(from_rad, to_rad, lift_m, move |turned| {
            let radius = Self::radius_m(turned);
            (radius - half, radius + half)
        })
    }

    /// Points at two radii along the turning.
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

    /// Outermost radius that the dial takes, marks included.
    fn reach_m(&self) -> f32 {
        let most = self.turned_rad.max(self.owed_rad.unwrap_or(0.0));
        Self::radius_m(most.max(0.0)) + 0.5 * BAND_M + RIM_M
    }
}

/// Room that the dial takes around the point under the CM, m, with what the attempt beside has turned
/// on it.
pub fn reach_m(shown: &ShownFlight, reference: Option<&Flight>) -> f32 {
    let own_m = Spiral::new(shown).reach_m();
    reference.map_or(own_m, |reference| {
        own_m.max(Spiral::of(reference, None).reach_m())
    })
}

/// Where a flight has got to on its spiral after turning so far, on the ice itself.
pub fn turned_to(flight: &Flight, turned_rad: f64) -> Vec3 {
    let turned_rad = turned_rad as f32;
    Spiral::of(flight, None).direction(turned_rad) * Spiral::radius_m(turned_rad)
}

/// A mark on the spiral, as wide as its band.
pub fn bead(ink: Ink) -> MeshBuilder {
    let mut mesh_builder = MeshBuilder::default();
    mesh_builder.disc(Vec3::ZERO, 0.86 * BAND_M, palette::now().ice.linear());
    mesh_builder.disc(Vec3::Y * 0.001, 0.66 * BAND_M, ink.linear());
    mesh_builder
}

fn spawn(mut commands: Commands, mut meshes: ResMut<Assets<Mesh>>, paints: Res<Paints>) {
    commands.spawn((Face, thing(Handle::default(), &paints.flat)));
    commands.spawn((Wound, thing(Handle::default(), &paints.flat)));
    commands.spawn((Gap, thing(Handle::default(), &paints.flat)));
    commands.spawn((
        Pointer,
        thing(meshes.add(needle(palette::now().mark).mesh()), &paints.flat),
    ));
}

/// A mark across the dial in the direction reached after turning so far.
fn bar(
    mesh_builder: &mut MeshBuilder,
    spiral: &Spiral,
    turned_rad: f32,
    from_to_m: [f32; 2],
    width_m: f32,
    ink: Ink,
) {
    let out = spiral.direction(turned_rad);
    let side = out.cross(Vec3::Y) * 0.5 * width_m;
    let lift = Vec3::Y * level::MARK;
    let points = from_to_m.map(|radius| (out * radius - side + lift, out * radius + side + lift));
    mesh_builder.band(points.into_iter(), ink.linear());
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

/// The heading that the landing owes, and how far before it the jump still counts.
fn draw_owed(mesh_builder: &mut MeshBuilder, spiral: &Spiral, owed_rad: f32) {
    let outer = spiral.reach_m() - RIM_M;
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
    let from = owed_rad - allowed_rad();
    let radii = |_: f32| (outer + 0.02, outer + 0.045);
    mesh_builder.band(
        spiral.arc(from, owed_rad, level::MARK, radii),
        palette::now().owed.linear(),
    );
}

/// Missing less than this is a full jump.
fn allowed_rad() -> f32 {
    (QUARTER_BAND_FROM_DEG as f32).to_radians()
}

/// What the landing misses, as a wedge of the face and a stretch of the spiral.
fn gap_between(spiral: &Spiral, owed_rad: f32) -> MeshBuilder {
    let turned = spiral.turned_rad;
    let ink = if owed_rad - turned >= allowed_rad() {
        palette::now().short
    } else {
        palette::now().owed
    };
    let mut mesh_builder = MeshBuilder::default();
    // Whole turns missing would wind the wedge over itself.
    let from = turned.max(owed_rad - TAU);
    let sector = spiral.arc(from, owed_rad, level::GAP, |_| (0.0, FACE_M - 0.012));
    mesh_builder.band(sector, ink.over(palette::now().ice, 0.55).linear());
    mesh_builder.band(spiral.band(turned, owed_rad, level::GAP), ink.linear());
    mesh_builder
}

fn wind(
    flight: Res<ShownFlight>,
    moment: Res<ShownSample>,
    mut meshes: ResMut<Assets<Mesh>>,
    wound: Single<(&mut Mesh3d, &mut Visibility), With<Wound>>,
) {
    let spiral = Spiral::new(&flight);
    let turned_rad = moment.pose.sample.turned_rad as f32;
    let (mut mesh, mut visibility) = wound.into_inner();
    if turned_rad <= 0.0 {
        *visibility = Visibility::Hidden;
        return;
    }
    *visibility = Visibility::Inherited;
    let mut mesh_builder = MeshBuilder::default();
    mesh_builder.band(
        spiral.band(0.0, turned_rad, level::WOUND),
        palette::now().wound.linear(),
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

/// An arrow along X, from the middle of the dial.
pub fn needle(ink: Ink) -> MeshBuilder {
    let mut mesh_builder = MeshBuilder::default();
    let ink = ink.linear();
    let at = |x: f32, side: f32| Vec3::new(x, 0.0, side);
    mesh_builder.band(
        [0.0, 0.38]
            .map(|x| (at(x, -0.022), at(x, 0.022)))
            .into_iter(),
        ink,
    );
    mesh_builder.disc(at(0.0, 0.0), 0.042, ink);
    let [a, b, c] = [at(0.53, 0.0), at(0.37, -0.075), at(0.37, 0.075)]
        .map(|corner| mesh_builder.vertex(corner, Vec3::Y, ink));
    mesh_builder.triangle(a, b, c);
    mesh_builder
}

fn point(moment: Res<ShownSample>, mut pointer: Single<&mut Transform, With<Pointer>>) {
    **pointer = pointing(&moment.pose.sample, level::POINTER);
}

/// Where a needle lies that points where the pelvis faces.
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
    moment: Res<ShownSample>,
    mut gap: Single<&mut Visibility, With<Gap>>,
) {
    let down = moment.playhead_s >= flight.flight.touchdown_s;
    **gap = if down && flight.owed_heading_rad.is_some() {
        Visibility::Inherited
    } else {
        Visibility::Hidden
    };
}
