//! Where the turns may lie.

use crate::answers::basis::{Answer, Basis};
use crate::state::uncertainty::UncertaintyInputs;
use turns_aloft_analysis::uncertainty::Range;

/// Where the turns may lie; none when that is not shown.
#[derive(Debug, Default)]
pub(crate) struct RangeAnswer(pub Option<Range>);

impl Answer for RangeAnswer {
    /// The flight and the half-widths.
    type Depends = (u64, UncertaintyInputs);

    fn depends(on: &Basis) -> Self::Depends {
        (on.generation, on.uncertainty.clone())
    }

    fn ask(&mut self, on: &Basis, _: Option<&Self::Depends>) {
        let Basis { scenario, jump, .. } = on;
        let shown = on.uncertainty.shown;
        self.0 = shown.then(|| Range::new(scenario, jump, &on.uncertainty.half_widths(scenario)));
    }

    /// It is one piece.
    fn poll(&mut self, _: &Basis) -> bool {
        false
    }
}
