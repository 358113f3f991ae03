//! What the jump comes to with what the hands hold.

use std::mem;

use crate::answers::basis::{Answer, Basis};
use turns_aloft_analysis::weights::Weights;

/// What the hands hold, compared with bare ones.
#[derive(Debug, Default)]
pub(crate) struct HandWeights {
    pub weights: Option<Weights>,
    due: bool,
}

impl Answer for HandWeights {
    /// The flight.
    type Depends = u64;

    fn depends(on: &Basis) -> u64 {
        on.generation
    }

    fn ask(&mut self, _: &Basis, _: Option<&u64>) {
        self.due = true;
    }

    fn poll(&mut self, on: &Basis) -> bool {
        if !mem::take(&mut self.due) {
            return false;
        }
        self.weights = Weights::held(on.scenario, on.jump);
        on.scenario.hand_mass_kg > 0.0
    }
}
