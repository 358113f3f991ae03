//! Touch and mouse gestures that move the camera.

use bevy::ecs::system::SystemParam;
use bevy::input::mouse::{MouseScrollUnit, MouseWheel};
use bevy::prelude::*;
use bevy::window::PrimaryWindow;
use bevy_egui::input::EguiWantsInput;

use turns_aloft_physics::order::by_number;

/// Zoom factor per notch of a mouse wheel, and the pixels of a touch pad that count as one notch.
const ZOOM_PER_NOTCH: f32 = 1.12;
const PIXELS_PER_NOTCH: f32 = 60.0;

/// The gesture since the last frame.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gesture {
    /// Logical px, positive to the right and down.
    pub drag_px: Vec2,
    /// Factor; over 1 moves nearer.
    pub zoom: f32,
}

impl Gesture {
    const NONE: Self = Self {
        drag_px: Vec2::ZERO,
        zoom: 1.0,
    };

    pub fn is_none(&self) -> bool {
        *self == Self::NONE
    }
}

/// Touch, mouse and wheel input, with the state of the last frame.
#[derive(SystemParam)]
pub struct Pointers<'w, 's> {
    touches: Res<'w, Touches>,
    buttons: Res<'w, ButtonInput<MouseButton>>,
    wheel: MessageReader<'w, 's, MouseWheel>,
    window: Single<'w, 's, &'static Window, With<PrimaryWindow>>,
    egui: Res<'w, EguiWantsInput>,
    /// Last position of a mouse drag that began on the picture, logical px.
    dragged_to: Local<'s, Option<Vec2>>,
    /// Touches of the last frame: id and position, logical px.
    fingers: Local<'s, Vec<(u64, Vec2)>>,
}

impl Pointers<'_, '_> {
    /// The gesture in `area` (logical px) since the last call.
    pub fn gesture(&mut self, area: Rect) -> Gesture {
        let mut gesture = self.touched(area);
        self.follow_mouse(area, &mut gesture);
        // A press on a button over the picture, or on what is led there, does not move the camera; two fingers
        // do, wherever they are.
        if self.egui.is_using_pointer() && self.fingers.len() < 2 {
            return Gesture::NONE;
        }
        gesture
    }

    fn touched(&mut self, area: Rect) -> Gesture {
        let fingers: Vec<(u64, Vec2)> = self
            .touches
            .iter()
            .filter(|touch| area.contains(touch.start_position()))
            .map(|touch| (touch.id(), touch.position()))
            .collect();
        let fingers = by_number(fingers, |finger| finger.0 as f64);
        let last = std::mem::replace(&mut *self.fingers, fingers);
        let same = last
            .iter()
            .map(|f| f.0)
            .eq(self.fingers.iter().map(|f| f.0));
        match (&last[..], &self.fingers[..]) {
            ([from], [to]) if same => Gesture {
                drag_px: to.1 - from.1,
                zoom: 1.0,
            },
            ([a, b], [c, d]) if same => Gesture {
                drag_px: Vec2::ZERO,
                zoom: c.1.distance(d.1).max(1.0) / a.1.distance(b.1).max(1.0),
            },
            _ => Gesture::NONE,
        }
    }

    fn follow_mouse(&mut self, area: Rect, gesture: &mut Gesture) {
        let cursor = self.window.cursor_position();
        let over = cursor.is_some_and(|at| area.contains(at)) && !self.egui.is_popup_open();
        if self.buttons.just_pressed(MouseButton::Left) {
            *self.dragged_to = cursor.filter(|_| over);
        } else if !self.buttons.pressed(MouseButton::Left) {
            *self.dragged_to = None;
        } else if let (Some(from), Some(to)) = (*self.dragged_to, cursor) {
            gesture.drag_px += to - from;
            *self.dragged_to = Some(to);
        }
        for notch in self.wheel.read() {
            let notches = match notch.unit {
                MouseScrollUnit::Line => notch.y,
                MouseScrollUnit::Pixel => notch.y / PIXELS_PER_NOTCH,
            };
            if over {
                gesture.zoom *= ZOOM_PER_NOTCH.powf(notches.clamp(-3.0, 3.0));
            }
        }
    }
}
