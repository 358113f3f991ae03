//! The positions of all controls by name, for scripts that operate the page.
//!
//! A canvas has no elements that a script could find; it gets the position of a slider or button
//! here.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;

use egui::Rect;

thread_local! {
    static TARGETS: RefCell<BTreeMap<String, [f32; 4]>> = const { RefCell::new(BTreeMap::new()) };
    /// CSS pixels in a point of the panels.
    static ZOOM: Cell<f32> = const { Cell::new(1.0) };
}

/// Called at the beginning of each frame, in which a point has `zoom` CSS pixels.
pub fn clear(zoom: f32) {
    ZOOM.set(zoom);
    TARGETS.with_borrow_mut(BTreeMap::clear);
}

/// Adds a touch target, in points of the panels.
pub(super) fn note(name: &str, rect: Rect) {
    let at = [rect.left(), rect.top(), rect.width(), rect.height()].map(|side| side * ZOOM.get());
    TARGETS.with_borrow_mut(|targets| targets.insert(name.to_owned(), at));
}

/// All touch targets of the last frame as JSON: name to [x, y, width, height] in CSS pixels.
pub fn json() -> String {
    TARGETS.with_borrow(|targets| serde_json::to_string(targets).unwrap_or_default())
}
