//! The camera: orbits the jump and fits all of it into the picture.

use bevy::camera::SubCameraView;
use bevy::core_pipeline::tonemapping::Tonemapping;
use bevy::light::cluster::ClusterConfig;
use bevy::prelude::*;
use bevy::render::renderer::RenderAdapterInfo;
use bevy::window::{PrimaryWindow, RequestRedraw};

use crate::beside::Beside;
use crate::framing::Subject;
use crate::gesture::Pointers;
use crate::orbit::Orbit;
use crate::order::{StageArea, StageSystems};
use crate::shown::{ShownFlight, ShownReference};
use crate::shown_turntable::ShownTurntable;
use crate::{axis, dial};
use turns_aloft_figure::shown::lowest_bed_m;
use turns_aloft_physics::flight::Flight;

/// Half of the vertical field of view, rad: small, so that perspective hardly distorts the figure.
const HALF_FIELD_RAD: f32 = 0.24;
/// Below this number of device pixels per CSS px single pixels are visible.
const COARSE_SCALE: f32 = 1.5;
/// Fraction of the picture left free on each side of the jump.
const MARGIN: f32 = 0.035;
/// Rate at which the remaining distance to a named view decays, 1/s.
const EASE_PER_S: f32 = 7.0;
/// The framed height is rounded up to multiples of this, so that small changes of jump height are
/// visible instead of rescaling the picture, m.
const FRAMED_STEP_M: f32 = 0.15;

pub fn plugin(app: &mut App) {
    app.init_resource::<Orbit>()
        .add_systems(Startup, spawn)
        .add_systems(
            PostUpdate,
            (frame.run_if(resource_exists::<ShownFlight>), steer, place)
                .chain()
                .in_set(StageSystems::Follow),
        );
}

fn spawn(
    mut commands: Commands,
    window: Single<&Window, With<PrimaryWindow>>,
    adapter: Option<Res<RenderAdapterInfo>>,
) {
    // Multisampling nearly doubles the time of a frame: it is used on low-density screens only, and
    // not where the browser renders in software. (Bevy does not export wgpu's device type, hence
    // the comparison of its name.)
    let in_software = adapter.is_some_and(|info| format!("{:?}", info.device_type) == "Cpu");
    let msaa = if window.scale_factor() < COARSE_SCALE && !in_software {
        Msaa::Sample4
    } else {
        Msaa::Off
    };
    commands.spawn((
        Camera3d::default(),
        Tonemapping::None,
        // No lights to cluster: the shader has its own.
        ClusterConfig::None,
        msaa,
        Projection::from(PerspectiveProjection {
            fov: 2.0 * HALF_FIELD_RAD,
            ..default()
        }),
    ));
}

/// Sets the region to fit when the jump, the reference attempt or its place has changed.
fn frame(
    shown: Res<ShownFlight>,
    reference: Res<ShownReference>,
    beside: Res<Beside>,
    turntable: Res<ShownTurntable>,
    mut orbit: ResMut<Orbit>,
) {
    let of_jump = shown.is_changed() || reference.is_changed() || beside.is_changed();
    if !of_jump && !turntable.is_changed() {
        return;
    }
    if let Some(subject) = turntable.subject() {
        orbit.set_subject(subject);
        return;
    }
    let flights = || std::iter::once(&shown.flight).chain(reference.flight());
    let most =
        |of: fn(&Flight) -> f64| flights().map(|flight| of(flight)).fold(0.0, f64::max) as f32;
    let stature_m = most(|flight| flight.table.body.spec.stature_m);
    let apex_m = most(|flight| flight.takeoff_cm_m + flight.launch.jump_height_m);
    let stepped_m = (apex_m / FRAMED_STEP_M).ceil() * FRAMED_STEP_M;
    let subject = Subject {
        dial_m: dial::outer_radius_m(&shown, reference.flight().map(|flight| &**flight)),
        arms_m: [stepped_m + 0.25 * stature_m, 0.52 * stature_m],
        low_m: lowest_bed_m(&shown.flight, shown.ground) as f32,
        top_m: stepped_m + axis::arrow_top_m(&shown),
        beside_m: beside.offset_m(),
    };
    orbit.set_subject(subject);
}

/// Applies gestures and eases to the target; requests another frame until the target is reached.
fn steer(
    area: Res<StageArea>,
    window: Single<&Window, With<PrimaryWindow>>,
    mut pointers: Pointers,
    mut orbit: ResMut<Orbit>,
    time: Res<Time>,
    mut redraw: MessageWriter<RequestRedraw>,
) {
    let gesture = pointers.gesture(on(area.rect, &window));
    if !gesture.is_none() {
        orbit.drag(gesture.drag_px, gesture.zoom);
    }
    if orbit.is_settled() {
        return;
    }
    // The time step is limited, so that the camera still moves smoothly after a pause without
    // frames.
    let step_s = time.delta_secs().min(0.1);
    orbit.approach_target(1.0 - (-EASE_PER_S * step_s).exp());
    redraw.write(RequestRedraw);
}

pub fn place(
    orbit: Res<Orbit>,
    area: Res<StageArea>,
    window: Single<Ref<Window>, With<PrimaryWindow>>,
    camera: Single<(&mut Transform, &mut Camera)>,
) {
    if !(orbit.is_changed() || area.is_changed() || window.is_changed()) {
        return;
    }
    let Some(subject) = orbit.subject() else {
        return;
    };
    let rect = on(area.figure, &window);
    let (mut transform, mut camera) = camera.into_inner();
    let up = HALF_FIELD_RAD.tan() * (1.0 - 2.0 * MARGIN);
    let tangents = Vec2::new(up * rect.width() / rect.height(), up);
    let (turn, zoom) = (orbit.turn(), orbit.zoom());
    *transform = Transform {
        translation: subject.eye(turn, tangents, zoom),
        rotation: turn,
        ..default()
    };
    camera.sub_camera_view = Some(sub_view(rect, &window));
}

/// Where a point of the world is drawn on the window, logical px, for this camera and area.
pub fn on_screen(eye: &Transform, rect: Rect, at_m: Vec3) -> Vec2 {
    let seen = eye.rotation.inverse() * (at_m - eye.translation);
    let up = HALF_FIELD_RAD.tan() * -seen.z;
    let part = Vec2::new(seen.x * rect.height() / rect.width(), -seen.y) / up.max(1e-3);
    rect.center() + 0.5 * rect.size() * part
}

/// A view whose full size is the area: the picture fits there, and the rest of the window shows its
/// surroundings.
fn sub_view(rect: Rect, window: &Window) -> SubCameraView {
    let scale = window.scale_factor();
    SubCameraView {
        full_size: (rect.size() * scale).round().as_uvec2().max(UVec2::ONE),
        offset: -rect.min * scale,
        size: window.physical_size().max(UVec2::ONE),
    }
}

/// An area clipped to this window, logical px; never empty.
pub fn on(area: Option<Rect>, window: &Window) -> Rect {
    let whole = Rect::from_corners(Vec2::ZERO, window.size());
    let rect = area.map_or(whole, |rect| rect.intersect(whole));
    if rect.width() < 1.0 || rect.height() < 1.0 {
        return Rect::from_center_half_size(whole.center(), Vec2::ONE);
    }
    rect
}
