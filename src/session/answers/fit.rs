//! What the marks of an attempt say of its jump.

use std::sync::Arc;

use crate::answers::basis::{Answer, Basis};
use turns_aloft_analysis::uncertainty::Range;
use turns_aloft_attempt::Attempt;
use turns_aloft_fit::problem::Unfit;
use turns_aloft_fit::quantity::Quantity;
use turns_aloft_fit::sample::Sample;
use turns_aloft_fit::unknown::Point;
use turns_aloft_fit::{Fit, Fitting};
use turns_aloft_scenario::fly::Jump;

/// The fit as far as it stands: first the likeliest jump, then those that are as likely.
#[derive(Debug, Default)]
pub(crate) struct FitAnswer {
    fitting: Option<Fitting>,
    /// The likeliest jump of the present marks, flown, as soon as it has been found.
    pub first: Option<(Sample, Jump)>,
    /// The whole answer; of earlier marks until that of the present ones is there.
    pub fit: Option<Arc<Fit>>,
    /// Where its turns in all lie.
    pub range: Option<Range>,
    /// Whether it is that of the present marks.
    pub is_whole: bool,
    /// Why no jump can be found.
    pub unfit: Option<Unfit>,
    /// Where the search goes on after another mark.
    from: Option<Point>,
}

impl Answer for FitAnswer {
    /// The attempt that is measured, or that the jump at hand was found from.
    type Depends = Option<Attempt>;

    fn depends(on: &Basis) -> Option<Attempt> {
        on.attempt.cloned()
    }

    fn ask(&mut self, on: &Basis, before: Option<&Option<Attempt>>) {
        let Some(attempt) = on.attempt else {
            *self = Self::default();
            return;
        };
        if before.is_none_or(Option::is_none) {
            *self = Self::default();
        }
        (self.first, self.is_whole, self.unfit) = (None, false, None);
        match Fitting::new(attempt, self.from) {
            Ok(fitting) => self.fitting = Some(fitting),
            Err(why) => *self = Self::unfit(why),
        }
    }

    fn poll(&mut self, _: &Basis) -> bool {
        let Some(fitting) = &mut self.fitting else {
            return false;
        };
        let goes_on = fitting.poll();
        self.from = fitting.point().or(self.from);
        if self.first.is_none() {
            self.first = fitting.first().map(flown);
        }
        if let Some(fit) = fitting.finished() {
            let (best, jump) = flown(fit.best.clone());
            self.range = Some(Range::of_turns(fit.values(Quantity::Turns), &jump));
            self.first = Some((best, jump));
            self.fit = Some(Arc::new(fit.clone()));
            self.is_whole = true;
            self.fitting = None;
        }
        goes_on
    }
}

fn flown(sample: Sample) -> (Sample, Jump) {
    let jump = sample.fly();
    (sample, jump)
}

impl FitAnswer {
    fn unfit(why: Unfit) -> Self {
        Self {
            unfit: Some(why),
            ..Self::default()
        }
    }
}
