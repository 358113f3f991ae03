//! Every change of the document: what can be done to it, and the one place where it is done.

use std::mem;

use crate::session::Session;
use crate::state::document::{Attempt, Document};
use crate::state::history::{Change, History};
use crate::state::own_settings::OwnSettings;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::parameter::Parameter;
use turns_aloft_words::say;

/// What can be done to the document.
#[derive(Debug, Clone)]
pub enum Action {
    /// Sets a number, held inside its range.
    Set(Parameter, f64),
    /// Puts a number back to what the opened jump had.
    Reset(Parameter),
    /// Puts every input back.
    ResetAll,
    /// Gives the jump other inputs: words, or several numbers at once.
    Edit(Scenario),
    /// Gives the jump the inputs that an answer proposes.
    Try(Scenario),
    /// Opens a jump, with the attempt to compare it with if one came along.
    Open(Scenario, Option<Box<Attempt>>),
    SetReference(Attempt),
    ClearReference,
    Undo,
    Redo,
    /// Undoes everything from the last tried proposal on.
    GoBack,
}

/// What an action makes of a document; none where it goes through the history.
fn changed(action: Action, before: &Document) -> Option<(Change, Document)> {
    let mut after = before.clone();
    let change = match action {
        Action::Set(parameter, value) => {
            parameter.hold(&mut after.scenario, value);
            Change::Inputs
        }
        Action::Reset(parameter) => {
            parameter.hold(&mut after.scenario, parameter.get(&before.base));
            Change::Inputs
        }
        Action::ResetAll => {
            after.put_back();
            Change::ResetAll
        }
        Action::Edit(scenario) => {
            after.scenario = scenario;
            Change::Inputs
        }
        Action::Try(scenario) => {
            after.scenario = scenario;
            Change::Tried
        }
        Action::Open(scenario, reference) => {
            after.open(scenario, reference.map(|attempt| *attempt));
            Change::Opened
        }
        Action::SetReference(attempt) => {
            after.reference = Some(attempt);
            Change::Reference
        }
        Action::ClearReference => {
            after.reference = None;
            Change::Reference
        }
        Action::Undo | Action::Redo | Action::GoBack => return None,
    };
    after.settle_notes();
    Some((change, after))
}

impl Session {
    /// Does an action: as a whole, or not at all where it would change what is locked, which is said in
    /// one sentence. Returns whether it was allowed.
    pub fn apply(&mut self, action: Action) -> bool {
        self.leave_lesson_for(&action);
        let pass = match action {
            Action::Undo => History::undo,
            Action::Redo => History::redo,
            Action::GoBack => History::go_back,
            action => return self.change_by(action),
        };
        let mut history = self.history.clone();
        let Some(mut passed) = pass(&mut history, &self.document, &self.own_settings()) else {
            return true;
        };
        passed.document.settle_notes();
        if !self.allows(&passed.document) {
            return false;
        }
        self.history = history;
        self.replace_document(passed.change, passed.document);
        if let Some(own) = passed.own {
            self.take_up(own);
        }
        true
    }

    fn change_by(&mut self, action: Action) -> bool {
        let Some((change, after)) = changed(action, &self.document) else {
            return true;
        };
        if !self.allows(&after) {
            return false;
        }
        if after != self.document || change == Change::Opened {
            let left = (change == Change::Opened && after != self.document)
                .then(|| self.work_left_behind());
            let own = self.own_settings();
            let step = [&self.document, &after];
            self.history.record(change, step, &own, self.dragging);
            self.replace_document(change, after);
            if let Some(name) = left.flatten() {
                self.say_that_it_comes_back(say!("changed-jump-left", name = name));
            }
        }
        true
    }

    /// What the present jump is to be called, where something was changed of it that is not kept, or set
    /// about its jumper.
    fn work_left_behind(&self) -> Option<String> {
        let is_changed = self.differs_from_base() && !self.is_kept(self.scenario());
        let is_set = self.own_settings() != OwnSettings::default();
        (is_changed || is_set).then(|| self.telling_name())
    }

    fn allows(&mut self, after: &Document) -> bool {
        match self.policy.check(&self.document, after) {
            Ok(()) => true,
            Err(refused) => {
                self.say(refused);
                false
            }
        }
    }

    /// Takes another document in place of the present one, and brings up to date what follows from it.
    pub(crate) fn replace_document(&mut self, change: Change, after: Document) {
        let before = mem::replace(&mut self.document, after);
        self.notice = None;
        self.slow_flight = None;
        let opened = change == Change::Opened;
        if opened && before != self.document {
            // Half-widths and limits are about one jumper.
            self.uncertainty.forget_own();
            self.goal_settings.forget_limits();
        }
        if let Some(measuring) = &mut self.measuring {
            measuring
                .attempt
                .scenario
                .clone_from(&self.document.scenario);
        }
        if opened || before.scenario != self.document.scenario {
            // Who changes a jump has done what a newcomer is told.
            self.preferences.greeted |= !opened;
            self.fly();
            if change == Change::Tried {
                self.tried_generation = Some(self.generation);
            }
        }
        if change != Change::Inputs {
            let before = self.history.before_try(&self.document);
            self.before_try = before.map(|before| before.scenario);
        }
        self.follow_reference();
        if opened {
            self.setting_up = false;
            self.turntable = None;
            self.show();
        }
    }

    pub(crate) fn own_settings(&self) -> OwnSettings {
        OwnSettings::new(&self.uncertainty, &self.goal_settings.limits)
    }

    /// Takes up what had been set about a jumper who is back.
    pub(crate) fn take_up(&mut self, own: OwnSettings) {
        self.goal_settings.limits = own.limits();
        self.uncertainty.own = own.half_widths;
        self.measure_range();
    }

    fn fly(&mut self) {
        let rests = self.playback.t_s >= self.jump.flight.touchdown_s;
        let after_s = self.playback.t_s - self.jump.flight.touchdown_s;
        self.jump = self.document.scenario.fly_after(Some(&self.jump));
        self.beyond_seen = self.document.scenario.beyond_seen(&self.jump);
        self.generation += 1;
        self.take_stock_of_try();
        self.measure_range();
        if rests {
            // Who looks at the landing goes on looking at the landing.
            self.playback.t_s = self.jump.flight.touchdown_s + after_s;
        }
        self.hold_playhead();
    }

    /// Undoes the last change.
    pub fn undo(&mut self) {
        self.apply(Action::Undo);
    }

    /// Does again what was last undone.
    pub fn redo(&mut self) {
        self.apply(Action::Redo);
    }

    /// Tries inputs that an answer proposes.
    pub fn try_on(&mut self, change: impl FnOnce(&mut Scenario)) {
        let mut tried = self.scenario().clone();
        change(&mut tried);
        self.apply(Action::Try(tried));
    }

    /// Tries another value of one number, held inside its range.
    pub fn try_change(&mut self, parameter: Parameter, value: f64) {
        self.try_on(|scenario| {
            parameter.hold(scenario, value);
        });
    }

    /// Makes the jump what it was before the last try, also where it has been changed by hand since.
    pub fn go_back(&mut self) {
        self.apply(Action::GoBack);
    }

    /// How many tries can be gone back on, one at a time.
    pub fn tried(&self) -> usize {
        self.history.tried()
    }

    pub const fn history(&self) -> &History {
        &self.history
    }
}
