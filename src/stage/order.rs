//! Where the picture is on the window, and when in a frame it is brought up to date.

use bevy::prelude::*;

/// Where on the window the picture is meant to be looked at, logical px; set by the panels. The
/// whole window until then. What lies outside is drawn behind the panels all the same.
#[derive(Resource, Debug, Clone, Copy, Default, PartialEq)]
pub struct StageArea {
    pub rect: Option<Rect>,
}

/// Systems that follow the session. They run after the panels, so that a change made there is
/// seen in the same frame.
#[derive(SystemSet, Debug, Clone, PartialEq, Eq, Hash)]
pub enum StageSystems {
    /// Notices what changed.
    Read,
    /// Moves what is seen.
    Follow,
}
