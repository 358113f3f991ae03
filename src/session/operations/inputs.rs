//! Changing what the jump is put together from.

use crate::operations::action::Action;
use crate::session::Session;
use crate::state::policy::Policy;
use turns_aloft_describe::Label;
use turns_aloft_describe::typed::Admissible;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::parameter::Parameter;
use turns_aloft_words::say;

impl Session {
    /// Locks inputs from now on, or frees them.
    pub fn set_policy(&mut self, policy: Policy) {
        self.policy = policy;
    }

    /// Sets a number; outside its range it is held at the limit, and that is said.
    pub fn set(&mut self, parameter: Parameter, value: f64) {
        if !value.is_finite() {
            self.say(say!("number-needed", what = parameter.label()));
            return;
        }
        if !self.apply(Action::Set(parameter, value)) {
            return;
        }
        let held = parameter.get(self.scenario());
        self.notice = (held != value).then(|| {
            let unit = self.units().of(parameter.kind());
            say!(
                "number-held",
                what = parameter.label(),
                least = unit.text(parameter.least()),
                most = unit.text(parameter.most()),
                held = unit.text(held)
            )
            .into()
        });
    }

    /// Sets a number from what somebody has typed. What is no number, and what is out of range but may have
    /// been meant otherwise, changes nothing: it is asked what was meant.
    pub fn set_typed(&mut self, parameter: Parameter, text: &str) {
        let admissible = Admissible::of(parameter);
        let value = admissible.typed(text, self.units());
        if let Some(value) = value
            && self.asks_back(parameter.label(), admissible, text, value)
        {
            return;
        }
        self.set(parameter, value.unwrap_or(f64::NAN));
    }

    /// Asks what was meant by a number that is out of range, where that can be guessed.
    pub(crate) fn asks_back(
        &mut self,
        what: &str,
        admissible: Admissible,
        text: &str,
        value: f64,
    ) -> bool {
        let [least, most] = admissible.range;
        if (least..=most).contains(&value) {
            return false;
        }
        let likely = admissible.likely_meant(text, self.units());
        let meant = match likely.as_slice() {
            [] => return false,
            [one] => one.clone(),
            [first, last, ..] => say!("either-or", first = first.as_str(), last = last.as_str()),
        };
        let unit = self.units().of(admissible.kind);
        self.say(say!(
            "number-likely",
            what = what,
            value = unit.set_text(value),
            least = unit.number(least),
            most = unit.text(most),
            meant = meant
        ));
        true
    }

    /// Puts a number back to what the opened jump had.
    pub fn reset(&mut self, parameter: Parameter) {
        self.apply(Action::Reset(parameter));
    }

    /// Whether anything differs from the opened jump, its name and note included.
    pub fn differs_from_base(&self) -> bool {
        self.document.differs_from_base()
    }

    /// Whether any control differs from the opened jump.
    pub fn inputs_differ(&self) -> bool {
        self.document.inputs_differ()
    }

    /// Puts every control back.
    pub fn reset_all(&mut self) {
        self.apply(Action::ResetAll);
    }

    /// Changes what is not a number.
    pub fn change(&mut self, change: impl FnOnce(&mut Scenario)) {
        let mut scenario = self.scenario().clone();
        change(&mut scenario);
        self.apply(Action::Edit(scenario));
    }
}
