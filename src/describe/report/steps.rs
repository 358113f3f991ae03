//! What a small step of each lever gives.

use serde::Serialize;

use crate::lever::step_text;
use crate::report::{LeverReport, keys, texts};
use turns_aloft_analysis::steps::{Flown, Gain};
use turns_aloft_scenario::units::Units;

#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct GainReport {
    #[serde(flatten)]
    pub lever: LeverReport,
    /// In the usual units.
    pub step: String,
    pub flown: Flown,
    /// The step as flown, in the lever's own unit.
    pub change: Option<f64>,
    pub turns_gained: Option<f64>,
    /// Estimate, lowest and highest, in body weights.
    pub landing_load_bw: Option<[f64; 2]>,
    pub beyond_seen: Vec<&'static str>,
    pub cautions: Vec<&'static str>,
}

impl GainReport {
    pub fn new(gain: &Gain) -> Self {
        Self {
            lever: LeverReport(gain.lever),
            step: step_text(gain.lever, &Units::default()),
            flown: gain.flown,
            change: gain.change,
            turns_gained: gain.turns_gained,
            landing_load_bw: gain.landing_load_bw,
            beyond_seen: keys(&gain.beyond_seen),
            cautions: texts(&gain.cautions),
        }
    }
}
