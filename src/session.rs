//! What the user is doing: the jump at hand, its finished flight, and where the playhead stands.

use std::sync::Arc;

use crate::physics::flight::Flight;

/// The jump on the screen.
#[derive(Debug)]
#[cfg_attr(feature = "page", derive(bevy::prelude::Resource))]
pub struct Session {
    flight: Arc<Flight>,
    playhead_s: f64,
}

impl Session {
    pub fn flight(&self) -> &Arc<Flight> {
        &self.flight
    }

    /// Time shown, s after take-off; from a little before take-off to a little after touch-down.
    pub fn playhead_s(&self) -> f64 {
        self.playhead_s
    }

    /// Heading of the pelvis that the named jump's landing owes; none for a free jump.
    pub fn owed_heading_rad(&self) -> Option<f64> {
        None
    }
}
