//! What the user has set about the one who jumps: it goes with the jump when another one is opened, and
//! comes back with it.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::state::goal_settings::{limits_by_key, limits_of_keys};
use crate::state::uncertainty::UncertaintyInputs;
use turns_aloft_analysis::limits::Limits;
use turns_aloft_scenario::Scenario;

/// As it is kept with a step of undo.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct OwnSettings {
    /// By key.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub half_widths: BTreeMap<String, f64>,
    /// By key, in the lever's own unit.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    limits: BTreeMap<String, [f64; 2]>,
}

impl OwnSettings {
    pub fn new(uncertainty: &UncertaintyInputs, limits: &Limits) -> Self {
        Self {
            half_widths: uncertainty.own.clone(),
            limits: limits_by_key(limits),
        }
    }

    /// The limits; none of its own where they cannot be, which [`Self::fits`] rules out.
    pub fn limits(&self) -> Limits {
        limits_of_keys(&self.limits).unwrap_or_default()
    }

    /// Whether all of it may be set for a jump.
    pub fn fits(&self, scenario: &Scenario) -> bool {
        let uncertainty = UncertaintyInputs {
            shown: false,
            own: self.half_widths.clone(),
        };
        uncertainty.check(scenario).is_ok() && limits_of_keys(&self.limits).is_ok()
    }
}
