//! The jump that an attempt's marks say it was, and how sure that is.

use std::sync::Arc;

use crate::operations::action::Action;
use crate::session::Session;
use crate::state::measuring::Measuring;
use crate::state::question::Question;
use turns_aloft_analysis::uncertainty::Range;
use turns_aloft_attempt::{Attempt, Measured};
use turns_aloft_describe::jump::notation;
use turns_aloft_fit::Fit;
use turns_aloft_fit::problem::Unfit;
use turns_aloft_fit::sample::Sample;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_words::{say, text};

impl Session {
    /// The whole answer of the present marks, once it is there.
    pub fn fit(&self) -> Option<&Arc<Fit>> {
        let answer = self.answers.fit.result();
        answer.fit.as_ref().filter(|_| answer.is_whole)
    }

    /// What the marks say of the jump at hand, if it was found from some and has not been changed since.
    pub fn present_fit(&self) -> Option<&Arc<Fit>> {
        (self.present_fit.as_ref()).filter(|_| !self.differs_from_base())
    }

    /// The same, whatever has been changed since: the range in sight comes from it.
    pub const fn fit_behind_range(&self) -> Option<&Arc<Fit>> {
        self.present_fit.as_ref()
    }

    /// The same, found anew.
    pub(crate) fn fit_of_present_jump(&self) -> Option<Arc<Fit>> {
        if self.measuring.is_some() {
            return None;
        }
        let attempt = self.fitted_attempt()?;
        let asked_for = self.answers.fit.asked_for()?.as_ref();
        self.fit().filter(|_| asked_for == Some(attempt)).cloned()
    }

    /// The answer in sight: that of earlier marks until there is one of the present ones.
    pub fn last_fit(&self) -> Option<&Arc<Fit>> {
        self.answers.fit.result().fit.as_ref()
    }

    /// Where the turns in all of that answer lie.
    pub const fn last_fit_range(&self) -> Option<&Range> {
        self.answers.fit.result().range.as_ref()
    }

    /// The likeliest jump of the present marks, flown, as soon as it has been found.
    pub const fn first_fit(&self) -> Option<&(Sample, Jump)> {
        self.answers.fit.result().first.as_ref()
    }

    /// Why the marks allow no jump.
    pub const fn unfit(&self) -> Option<&Unfit> {
        self.answers.fit.result().unfit.as_ref()
    }

    /// The attempt that the jump at hand was found from.
    pub fn fitted_attempt(&self) -> Option<&Attempt> {
        self.fitted_jumps.attempt_of(&self.document.base)
    }

    /// Opens the likeliest jump of the attempt that is measured, asks why it came short, and shows the range
    /// that the marks leave.
    pub fn open_fitted(&mut self) {
        let Some(best) = self.fit().map(|fit| fit.best.scenario.clone()) else {
            return;
        };
        let Some(Measuring { attempt, .. }) = self.measuring.take() else {
            return;
        };
        let fitted = Scenario {
            name: name_of(&attempt),
            note: String::new(),
            ..best
        };
        self.fitted_jumps
            .add(fitted.clone(), attempt, &self.library.collection);
        self.apply(Action::Open(fitted, None));
        self.ask(Question::Why);
        self.show_range(true);
    }

    /// Goes on measuring the attempt that the jump at hand was found from.
    pub fn measure_on(&mut self) {
        if let Some(attempt) = self.fitted_attempt().cloned() {
            self.apply(Action::Edit(Scenario {
                name: self.scenario().name.clone(),
                ..attempt.scenario.clone()
            }));
            self.measuring = Some(Measuring::new(attempt));
        }
    }
}

/// What the jump of an attempt is called: what it was meant to be and how it was measured.
fn name_of(attempt: &Attempt) -> String {
    let jump = notation(attempt.scenario.jump, attempt.scenario.jump_turns);
    let by = match &attempt.measured {
        Measured::StopWatch(_) => text("measured-by-watch"),
        Measured::Film(film) => film.file_name.as_str(),
        Measured::Sensor(sensor) => sensor.file_name.as_str(),
    };
    say!("measured-name", jump = jump, by = by)
}
