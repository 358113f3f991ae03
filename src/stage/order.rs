//! The area of the picture on the window, and the order of its systems in a frame.

use bevy::prelude::*;

/// The part of the window that the panels leave free, logical px; set by the panels, the whole
/// window until then. The picture also continues behind the panels.
#[derive(Resource, Debug, Clone, Copy, Default, PartialEq)]
pub struct StageArea {
    pub rect: Option<Rect>,
    /// The part of it without buttons on it: the jump is fitted into that.
    pub figure: Option<Rect>,
}

/// Systems that update the picture from the session. They run after the panels, so that a change
/// made there shows in the same frame.
#[derive(SystemSet, Debug, Clone, PartialEq, Eq, Hash)]
pub enum StageSystems {
    /// Detects what has changed in the session.
    Read,
    /// Updates meshes, transforms and the camera.
    Follow,
}
