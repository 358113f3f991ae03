//! A try at so many turns, as the command prints it.

use serde::Serialize;

use crate::Text;
use crate::jump::notation;
use crate::report::texts;
use crate::turn_try::{KNOWN, passed, turns, unknown};
use turns_aloft_analysis::turn_try::{CAUTIONS, Held, TurnTry};
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::strength;
use turns_aloft_scenario::units::Units;

/// Keys in snake case, SI units in the name.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct TurnTryReport {
    pub name: String,
    /// As the sport writes it, with the turns that are tried.
    pub jump: String,
    pub turns_owed: f64,
    pub turns: f64,
    pub shortfall_deg: f64,
    pub landing_facing_deg: f64,
    pub full: bool,
    pub limits_passed: Vec<HeldReport>,
    /// What is at the edge of what has been measured, or not known for a jumper of this size.
    pub not_known: Vec<HeldReport>,
    pub sentences: Vec<String>,
    /// Who knows what about five turns.
    pub known: [&'static str; 2],
    pub cautions: Vec<&'static str>,
}

/// What of a jump is held against people; values in the unit of the key.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct HeldReport {
    pub key: &'static str,
    pub value: f64,
    /// Whose torque it is, where it is one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub joint: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub seen_from: Option<f64>,
    pub seen_up_to: Option<f64>,
    pub source: &'static str,
}

impl HeldReport {
    fn new(held: &Held) -> Self {
        Self {
            key: held.of.key(),
            value: held.value,
            joint: held.joint.map(strength::key),
            seen_from: held.seen_from,
            seen_up_to: held.seen_up_to,
            source: held.source.text(),
        }
    }
}

impl TurnTryReport {
    pub fn new(scenario: &Scenario, tried: &TurnTry) -> Self {
        let units = Units::default();
        let said = [Some(turns(tried)), Some(passed(tried, &units))];
        Self {
            name: scenario.name.clone(),
            jump: notation(scenario.jump, tried.step),
            turns_owed: tried.turns_owed,
            turns: tried.turns,
            shortfall_deg: tried.shortfall_deg,
            landing_facing_deg: tried.landing_facing_deg,
            full: tried.is_full(),
            limits_passed: tried.passed.iter().map(HeldReport::new).collect(),
            not_known: tried.unknown.iter().map(HeldReport::new).collect(),
            sentences: (said.into_iter().chain([unknown(tried, &units)]))
                .flatten()
                .collect(),
            known: KNOWN.map(|message| message.text()),
            cautions: texts(&CAUTIONS),
        }
    }
}
