//! Whether the answer is shown as a range, and the half-widths that the user has set for it.

use std::collections::BTreeMap;

use serde::{Deserialize, Deserializer, Serialize};

use turns_aloft_analysis::uncertainty::{RefusedHalfWidth, Uncertainty};
use turns_aloft_scenario::Scenario;

/// What survives a reload.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
pub(crate) struct UncertaintyInputs {
    pub shown: bool,
    /// The user's own, by key; the others are the usual ones of the jumper.
    #[serde(deserialize_with = "still_meant")]
    pub own: BTreeMap<String, f64>,
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

    pub fn half_widths(&self, scenario: &Scenario) -> Uncertainty {
        self.admissible(scenario)
            .expect("only half-widths that may be are taken up")
    }

    pub fn forget_own(&mut self) {
        self.own.clear();
    }
}
