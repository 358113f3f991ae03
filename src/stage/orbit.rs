//! Where the camera stands around the jump, and where it is going.

use std::f32::consts::{FRAC_PI_2, TAU};

use bevy::prelude::*;

use crate::framing::Subject;
use turns_aloft_appearance::view::View;

/// A drag turns the picture by this, rad per logical px.
const TURN_PER_PX: f32 = 0.008;
const PITCH_RAD: [f32; 2] = [0.04, FRAC_PI_2];
const ZOOM: [f32; 2] = [0.75, 2.6];

/// Where the camera stands around the jump.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Aim {
    /// About the vertical; 0 looks along -Z, a quarter turn along -X.
    yaw_rad: f32,
    /// Down from the horizontal.
    pitch_rad: f32,
    /// 1 fits the whole jump.
    zoom: f32,
}

impl Aim {
    const fn of(view: View) -> Self {
        let (yaw_rad, pitch_rad) = match view {
            View::Front => (1.15, 0.30),
            View::Above => (1.15, 0.92),
            View::AlongAxis => (FRAC_PI_2, FRAC_PI_2),
        };
        Self {
            yaw_rad,
            pitch_rad,
            zoom: 1.0,
        }
    }

    fn turn(&self) -> Quat {
        Quat::from_rotation_y(self.yaw_rad) * Quat::from_rotation_x(-self.pitch_rad)
    }

    /// On the way to another, the shorter way round.
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

/// The camera's way around the jump. Fingers and mouse move it; so can a named view.
#[derive(Resource, Debug)]
pub struct Orbit {
    view: Option<View>,
    goal: Aim,
    now: Aim,
    framed: Option<Framed>,
}

/// What the camera keeps in the picture, and what it still makes room for.
#[derive(Debug, Clone, Copy)]
struct Framed {
    goal: Subject,
    now: Subject,
}

impl Default for Orbit {
    fn default() -> Self {
        Self {
            view: Some(View::Front),
            goal: Aim::of(View::Front),
            now: Aim::of(View::Front),
            framed: None,
        }
    }
}

impl Orbit {
    /// Goes to a named view.
    pub fn set_view(&mut self, view: View) {
        self.view = Some(view);
        self.goal = Aim::of(view);
    }

    /// The named view last asked for, until a finger or the mouse moves the camera.
    pub fn view(&self) -> Option<View> {
        self.view
    }

    /// Keeps another subject in the picture; the first one from the beginning.
    pub(super) fn make_room(&mut self, goal: Subject) {
        let now = self.framed.map_or(goal, |framed| framed.now);
        self.framed = Some(Framed { goal, now });
    }

    /// What is in the picture now.
    pub(super) fn subject(&self) -> Option<Subject> {
        self.framed.map(|framed| framed.now)
    }

    pub(super) fn turn(&self) -> Quat {
        self.now.turn()
    }

    pub(super) fn zoom(&self) -> f32 {
        self.now.zoom
    }

    pub(super) fn is_settled(&self) -> bool {
        self.now == self.goal && self.framed.is_none_or(|framed| framed.now == framed.goal)
    }

    /// Goes a part of the remaining way.
    pub(super) fn ease(&mut self, part: f32) {
        self.now = self.now.towards(&self.goal, part);
        if let Some(framed) = &mut self.framed {
            framed.now = framed.now.towards(&framed.goal, part);
        }
    }

    /// Moves the camera at once.
    pub(super) fn drag(&mut self, drag_px: Vec2, zoom: f32) {
        self.view = None;
        self.now.yaw_rad -= TURN_PER_PX * drag_px.x;
        self.now.pitch_rad =
            (self.now.pitch_rad + TURN_PER_PX * drag_px.y).clamp(PITCH_RAD[0], PITCH_RAD[1]);
        self.now.zoom = (self.now.zoom * zoom).clamp(ZOOM[0], ZOOM[1]);
        self.goal = self.now;
    }
}
