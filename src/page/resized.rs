//! Draws once more after the canvas has changed its size.

use bevy::prelude::*;
use bevy::window::{RequestRedraw, WindowResized};

pub fn plugin(app: &mut App) {
    app.add_systems(Last, draw_again);
}

/// The panels learn the size from the camera, which takes it up at the end of a frame: at rest that
/// frame would be the last one, and show them laid out for the old size.
fn draw_again(mut resized: MessageReader<WindowResized>, mut redraw: MessageWriter<RequestRedraw>) {
    if resized.read().count() > 0 {
        redraw.write(RequestRedraw);
    }
}
