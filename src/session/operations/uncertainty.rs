//! Showing the answer as a range, and changing the half-widths for it.

use crate::answers::basis::Poll;
use crate::operations::stepping::moved;
use crate::session::Session;
use turns_aloft_analysis::uncertainty::{Range, UncertainInput, Uncertainty};

impl Session {
    /// Where the turns may lie, when that is shown.
    pub const fn range(&self) -> Option<&Range> {
        self.answers.range.result().range.as_ref()
    }

    pub fn show_range(&mut self, shown: bool) {
        self.uncertainty.shown = shown;
        self.measure_range();
    }

    /// The half-widths behind the range.
    pub fn half_widths(&self) -> Uncertainty {
        self.uncertainty.half_widths(&self.document.scenario)
    }

    /// Makes a half-width larger or smaller by so many steps, to a whole number of steps.
    pub fn step_half_width(&mut self, input: UncertainInput, steps: f64) {
        let value = moved(self.half_widths().get(input), input.step(), steps);
        self.hold_half_width(input, value);
    }

    /// Makes a half-width the user's own, held between nothing and the most it may be.
    pub(crate) fn hold_half_width(&mut self, input: UncertainInput, value: f64) {
        let mut half_widths = self.half_widths();
        half_widths.hold(input, value);
        self.uncertainty
            .own
            .insert(input.key().to_owned(), half_widths.get(input));
        self.measure_range();
    }

    /// Whether any half-width is the user's own.
    pub fn has_own_half_widths(&self) -> bool {
        !self.uncertainty.own.is_empty()
    }

    /// Goes back to the usual half-widths.
    pub fn usual_half_widths(&mut self) {
        self.uncertainty.forget_own();
        self.measure_range();
    }

    /// Brings the range up to date with the flight and the half-widths at once: the turns are not to
    /// stand beside an earlier one.
    pub(crate) fn measure_range(&mut self) {
        let (answers, basis) = self.answers_and_basis();
        answers.range.poll(&basis);
    }
}
