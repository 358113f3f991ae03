//! What more in the hands would do.

use serde::Serialize;

use crate::Text;
use crate::report::texts;
use turns_aloft_analysis::weights::{Needed, Outcome, Weights, WeightsNeeded};

/// A jump with two masses in each hand, kg, under every assumption.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct WeightsReport {
    pub from_kg: f64,
    pub hand_mass_kg: f64,
    pub outcomes: [Outcome; 3],
    pub observed: &'static str,
    pub cautions: Vec<&'static str>,
}

impl WeightsReport {
    pub fn new(weights: &Weights) -> Self {
        Self {
            from_kg: weights.from_kg,
            hand_mass_kg: weights.hand_mass_kg,
            outcomes: weights.outcomes,
            observed: weights.observed.text(),
            cautions: texts(&weights.cautions),
        }
    }
}

/// What the hands would have to hold for the wanted turns, under every assumption.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct WeightsNeededReport {
    pub outcomes: [Needed; 3],
    pub observed: &'static str,
    pub cautions: Vec<&'static str>,
}

impl WeightsNeededReport {
    pub fn new(needed: &WeightsNeeded) -> Self {
        Self {
            outcomes: needed.outcomes.clone(),
            observed: needed.observed.text(),
            cautions: texts(&needed.cautions),
        }
    }
}
