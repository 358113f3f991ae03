//! What the jump comes to with what the hands hold.

use crate::session::Session;
use turns_aloft_analysis::weights::Weights;

impl Session {
    /// What the hands hold, under every assumption against bare hands; none where they are bare, or
    /// before it has been worked out. That of an earlier flight stays until it is replaced.
    pub fn weights_held(&self) -> Option<&Weights> {
        let weights = self.answers.hand_weights.result().weights.as_ref();
        weights.filter(|_| self.document.scenario.hand_mass_kg > 0.0)
    }
}
