//! Layers of what is drawn: that of the jump, which is everything's without a word, and that of the turntable.
//! The camera shows one of them.

use bevy::camera::visibility::RenderLayers;

const JUMP: usize = 0;
const TURNTABLE: usize = 1;

/// What the camera shows.
pub fn shown(on_turntable: bool) -> RenderLayers {
    RenderLayers::layer(if on_turntable { TURNTABLE } else { JUMP })
}

/// Of what belongs to the turntable.
pub fn turntable() -> RenderLayers {
    RenderLayers::layer(TURNTABLE)
}

/// Of what both have around them.
pub fn both() -> RenderLayers {
    RenderLayers::from_layers(&[JUMP, TURNTABLE])
}
