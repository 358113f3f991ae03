//! Draws another frame after the canvas has changed its size.

use bevy::prelude::*;
use bevy::window::{RequestRedraw, WindowResized};

pub fn plugin(app: &mut App) {
    app.add_systems(Last, draw_again);
}

/// egui gets the size from the camera, which is updated at the end of a frame. At rest that frame
/// would be the last one and show the panels laid out for the old size.
fn draw_again(mut resized: MessageReader<WindowResized>, mut redraw: MessageWriter<RequestRedraw>) {
    if resized.read().count() > 0 {
        redraw.write(RequestRedraw);
    }
}
