//! Gives egui one step of a press at a time, however many have happened since the last frame.
//!
//! egui looks for the control under the pointer where the pointer is at the end of a frame's events: on
//! a busy device a finger that came down on a text and then moved over a slider would take hold of the
//! slider, and one that was lifted again in the same frame would have touched nothing.

use std::collections::VecDeque;

use egui::Event;

/// The events that wait for the next frame.
#[derive(Default)]
pub(super) struct OneStep(VecDeque<Event>);

impl OneStep {
    /// The events of the next step, after those `new`: up to a press, or up to the last movement before
    /// a release, or the release.
    pub fn next(&mut self, new: Vec<Event>) -> Vec<Event> {
        self.0.extend(new);
        let mut moved = false;
        let mut stepped = false;
        let end = self.0.iter().position(|event| match event {
            Event::PointerButton { pressed, .. } => {
                let next = stepped || (moved && !pressed);
                stepped = true;
                next
            }
            Event::PointerMoved(_) => {
                moved = true;
                stepped
            }
            _ => false,
        });
        self.0.drain(..end.unwrap_or(self.0.len())).collect()
    }

    pub fn is_waiting(&self) -> bool {
        !self.0.is_empty()
    }
}

#[cfg(test)]
mod tests {
    use egui::{Modifiers, PointerButton, pos2};

    use super::*;

    fn button(pressed: bool) -> Event {
        Event::PointerButton {
            pos: pos2(0.0, 0.0),
            button: PointerButton::Primary,
            pressed,
            modifiers: Modifiers::NONE,
        }
    }

    fn moved(x: f32) -> Event {
        Event::PointerMoved(pos2(x, 0.0))
    }

    #[test]
    fn a_swipe_in_one_frame_is_a_press_a_movement_and_a_release() {
        let mut steps = OneStep::default();
        let events = [
            moved(0.0),
            button(true),
            moved(1.0),
            moved(2.0),
            button(false),
            Event::PointerGone,
            moved(3.0),
            button(true),
        ];
        let first = steps.next(events.to_vec());
        assert_eq!(first, events[..2]);
        assert_eq!(steps.next(Vec::new()), events[2..4]);
        assert_eq!(steps.next(Vec::new()), events[4..6]);
        assert!(steps.is_waiting());
        assert_eq!(steps.next(vec![moved(4.0)]), events[6..]);
        assert_eq!(steps.next(Vec::new()), [moved(4.0)]);
        assert!(!steps.is_waiting());
    }

    #[test]
    fn what_comes_one_by_one_does_not_wait() {
        let mut steps = OneStep::default();
        for event in [button(true), button(false), moved(1.0), Event::PointerGone] {
            assert_eq!(steps.next(vec![event.clone()]), [event]);
            assert!(!steps.is_waiting());
        }
    }
}
