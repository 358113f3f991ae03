//! Where the turns may lie.

use crate::answers::basis::{Answer, Basis};
use crate::state::uncertainty::UncertaintyInputs;
use turns_aloft_analysis::hang_time::{self, half_width_s};
use turns_aloft_analysis::uncertainty::Range;

/// Where the turns may lie, and the half-width of the height as one of the hang time; none when that is
/// not shown.
#[derive(Debug, Default)]
pub(crate) struct RangeAnswer {
    pub range: Option<Range>,
    pub hang_time_half_width_s: Option<f64>,
}

impl Answer for RangeAnswer {
    /// The flight and the half-widths.
    type Depends = (u64, UncertaintyInputs);

    fn depends(on: &Basis) -> Self::Depends {
        (on.generation, on.uncertainty.clone())
    }

    fn ask(&mut self, on: &Basis, _: Option<&Self::Depends>) {
        let Basis { scenario, jump, .. } = on;
        let shown = on.uncertainty.shown;
        let half_widths = on.uncertainty.half_widths(scenario);
        self.range = shown.then(|| Range::new(scenario, jump, &half_widths));
        self.hang_time_half_width_s =
            shown.then(|| half_width_s(scenario, jump, half_widths.get(hang_time::UNCERTAIN)));
    }

    /// It is one piece.
    fn poll(&mut self, _: &Basis) -> bool {
        false
    }
}
