//! Whether the answer is shown as a range, and the half-widths that the user has set for it.

use std::collections::BTreeMap;
use turns_aloft_describe::unit::UnitText;

use serde::{Deserialize, Deserializer, Serialize};

use crate::Session;
use crate::answers::{Answer, Basis, Poll};
use crate::stepping::moved;
use turns_aloft_analysis::uncertainty::{Range, RefusedHalfWidth, UncertainInput, Uncertainty};
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_scenario::units::Unit;

/// What survives a reload.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub struct UncertaintyInputs {
    shown: bool,
    /// The user's own, by key; the others are the usual ones of the jumper.
    #[serde(deserialize_with = "still_meant")]
    own: BTreeMap<String, f64>,
}

/// A visit may have been kept when the body's inertia was uncertain in another way: by a share of the
/// standing body's. That number means nothing for its ratio, so the usual one takes its place.
fn still_meant<'de, D: Deserializer<'de>>(from: D) -> Result<BTreeMap<String, f64>, D::Error> {
    let mut own = BTreeMap::<String, f64>::deserialize(from)?;
    own.remove("inertia_share");
    Ok(own)
}

impl UncertaintyInputs {
    fn admissible(&self, scenario: &Scenario) -> Result<Uncertainty, RefusedHalfWidth> {
        let mut half_widths = Uncertainty::usual(scenario);
        for (key, value) in &self.own {
            half_widths.set(key, &value.to_string())?;
        }
        Ok(half_widths)
    }

    /// Whether what was kept may be.
    pub fn check(&self, scenario: &Scenario) -> Result<(), RefusedHalfWidth> {
        self.admissible(scenario).map(|_| ())
    }

    fn half_widths(&self, scenario: &Scenario) -> Uncertainty {
        self.admissible(scenario)
            .expect("only half-widths that may be are taken up")
    }

    pub fn forget_own(&mut self) {
        self.own.clear();
    }
}

/// Where the turns may lie; none when that is not shown.
#[derive(Debug, Default)]
pub(crate) struct RangeAnswer(Option<Range>);

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

impl Session {
    /// Where the turns may lie, when that is shown.
    pub const fn range(&self) -> Option<&Range> {
        self.answers.range.result().0.as_ref()
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
        let mut half_widths = self.half_widths();
        let value = moved(half_widths.get(input), input.step(), steps);
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

    /// A half-width in the user's units, one decimal finer than the number itself.
    pub fn half_width_text(&self, input: UncertainInput) -> String {
        let unit = self.units().of(input.kind());
        let finer = Unit {
            decimals: match input.kind() {
                Kind::Share => unit.decimals,
                _ => unit.decimals + 1,
            },
            ..unit
        };
        finer.text(self.half_widths().get(input))
    }
}
