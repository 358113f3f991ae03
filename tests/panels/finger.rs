//! Events of a finger, as the browser's touches reach egui.

use egui::{Event, Modifiers, PointerButton, Pos2, TouchDeviceId, TouchId, TouchPhase, Vec2, lerp};

use crate::harness::{Page, settle};

/// The events of one phase of a touch, among them those of the mouse that egui follows.
pub fn events(phase: TouchPhase, at: Pos2) -> Vec<Event> {
    let touch = Event::Touch {
        device_id: TouchDeviceId(0),
        id: TouchId(1),
        phase,
        pos: at,
        force: None,
    };
    let button = |pressed| Event::PointerButton {
        pos: at,
        button: PointerButton::Primary,
        pressed,
        modifiers: Modifiers::NONE,
    };
    match phase {
        TouchPhase::Start => vec![touch, Event::PointerMoved(at), button(true)],
        TouchPhase::Move => vec![touch, Event::PointerMoved(at)],
        TouchPhase::End => vec![touch, button(false), Event::PointerGone],
        TouchPhase::Cancel => vec![touch, Event::PointerGone],
    }
}

/// A frame with one phase of a touch.
pub fn finger(page: &mut Page, phase: TouchPhase, at: Pos2) {
    page.input_mut().events.extend(events(phase, at));
    page.step();
}

pub fn tap(page: &mut Page, at: Pos2) {
    finger(page, TouchPhase::Start, at);
    finger(page, TouchPhase::End, at);
    settle(page);
}

/// Puts the finger down, moves it in a straight line, and lifts it.
pub fn swipe(page: &mut Page, from: Pos2, way: Vec2) {
    const STEPS: u8 = 6;
    finger(page, TouchPhase::Start, from);
    for step in 1..=STEPS {
        let part = f32::from(step) / f32::from(STEPS);
        let at = from + way * lerp(0.0..=1.0, part);
        finger(page, TouchPhase::Move, at);
    }
    finger(page, TouchPhase::End, from + way);
    settle(page);
}

/// A swipe all of whose events arrive before the next frame, as on a device that is busy.
pub fn swipe_in_a_frame(page: &mut Page, from: Pos2, way: Vec2) {
    let mut all = events(TouchPhase::Start, from);
    for part in [0.3, 0.6, 1.0] {
        all.extend(events(TouchPhase::Move, from + part * way));
    }
    all.extend(events(TouchPhase::End, from + way));
    page.input_mut().events.extend(all);
    page.step();
    settle(page);
}
