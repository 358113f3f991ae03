//! The camera's position around the jump, and its eased motion to a target position.

use std::f32::consts::{FRAC_PI_2, TAU};

use bevy::prelude::*;

use crate::framing::Subject;
use turns_aloft_appearance::view::View;

/// Rotation of the camera by a drag, rad per logical px.
const TURN_PER_PX: f32 = 0.008;
const PITCH_RAD: [f32; 2] = [0.04, FRAC_PI_2];
/// Pitch from which the camera looks straight down for all that matters.
const STEEP_RAD: f32 = 1.35;
const ZOOM: [f32; 2] = [0.75, 2.6];

/// The camera's direction and distance relative to the jump.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Viewpoint {
    /// Rotation about the vertical; 0 looks along -Z, π/2 along -X.
    yaw_rad: f32,
    /// Angle of the line of sight below the horizontal.
    pitch_rad: f32,
    /// 1 fits the whole jump.
    zoom: f32,
}

impl Viewpoint {
    const fn of(view: View) -> Self {
        let [yaw_rad, pitch_rad] = view.yaw_and_pitch_rad();
        Self {
            yaw_rad,
            pitch_rad,
            zoom: 1.0,
        }
    }

    fn turn(&self) -> Quat {
        Quat::from_rotation_y(self.yaw_rad) * Quat::from_rotation_x(-self.pitch_rad)
    }

    /// Interpolates to another viewpoint, with the yaw the shorter way round; `part` 1 is the
    /// other.
    fn towards(&self, other: &Self, part: f32) -> Self {
        let mix = |a: f32, b: f32| {
            if (b - a).abs() < 1e-3 {
                b
            } else {
                a + (b - a) * part
            }
        };
        let around = (other.yaw_rad - self.yaw_rad + 0.5 * TAU).rem_euclid(TAU) - 0.5 * TAU;
        Self {
            yaw_rad: mix(other.yaw_rad - around, other.yaw_rad),
            pitch_rad: mix(self.pitch_rad, other.pitch_rad),
            zoom: mix(self.zoom, other.zoom),
        }
    }
}

/// The camera's state: moved at once by touch and mouse, eased to a named view.
#[derive(Resource, Debug)]
pub struct Orbit {
    view: Option<View>,
    target: Viewpoint,
    now: Viewpoint,
    framed: Option<Framed>,
}

/// The region that fits the picture now, and the one it is eased to.
#[derive(Debug, Clone, Copy)]
struct Framed {
    target: Subject,
    now: Subject,
}

impl Default for Orbit {
    fn default() -> Self {
        Self {
            view: Some(View::Front),
            target: Viewpoint::of(View::Front),
            now: Viewpoint::of(View::Front),
            framed: None,
        }
    }
}

impl Orbit {
    /// Starts the motion to a named view.
    pub fn set_view(&mut self, view: View) {
        self.view = Some(view);
        self.target = Viewpoint::of(view);
    }

    /// The named view last set; none once touch or mouse has moved the camera.
    pub fn view(&self) -> Option<View> {
        self.view
    }

    /// Sets the region that has to fit the picture. The first one applies at once, later ones are
    /// eased to.
    pub(super) fn set_subject(&mut self, target: Subject) {
        let now = self.framed.map_or(target, |framed| framed.now);
        self.framed = Some(Framed { target, now });
    }

    /// The region that fits the picture now.
    pub(super) fn subject(&self) -> Option<Subject> {
        self.framed.map(|framed| framed.now)
    }

    pub(super) fn turn(&self) -> Quat {
        self.now.turn()
    }

    pub(super) fn zoom(&self) -> f32 {
        self.now.zoom
    }

    /// Whether the camera looks down so steeply that what is over the head hides the jumper.
    pub(super) fn looks_down(&self) -> bool {
        self.now.pitch_rad > STEEP_RAD
    }

    pub(super) fn is_settled(&self) -> bool {
        self.now == self.target && self.framed.is_none_or(|framed| framed.now == framed.target)
    }

    /// Moves by a fraction of the remaining distance to the target.
    pub(super) fn approach_target(&mut self, part: f32) {
        self.now = self.now.towards(&self.target, part);
        if let Some(framed) = &mut self.framed {
            framed.now = framed.now.towards(&framed.target, part);
        }
    }

    /// Rotates by a drag, in logical px, and multiplies the zoom, without easing.
    pub(super) fn drag(&mut self, drag_px: Vec2, zoom: f32) {
        self.view = None;
        self.now.yaw_rad -= TURN_PER_PX * drag_px.x;
        self.now.pitch_rad =
            (self.now.pitch_rad + TURN_PER_PX * drag_px.y).clamp(PITCH_RAD[0], PITCH_RAD[1]);
        self.now.zoom = (self.now.zoom * zoom).clamp(ZOOM[0], ZOOM[1]);
        self.target = self.now;
    }
}
