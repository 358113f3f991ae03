//! Every readout of a flown jump.

use serde::{Serialize, Serializer};

use crate::jump::notation;
use crate::report::{RespectReport, keys};
use turns_aloft_analysis::uncertainty::{Range, UncertainInput, Uncertainty};
use turns_aloft_physics::plan::Turning;
use turns_aloft_physics::readout::Readout;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::call::Call;
use turns_aloft_scenario::effort_report::EffortReport;
use turns_aloft_scenario::fly::Jump;

/// Keys in snake case, SI units in the name. Turns and rates are positive in the jumper's own
/// turning direction; the angular momentum is a world vector (X travel, Y up, Z right).
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Report {
    pub name: String,
    /// As the sport writes it, or in words.
    pub jump: String,
    pub turning: Turning,
    pub pre_rotation_turns: f64,
    pub turns: f64,
    pub turns_owed: Option<f64>,
    pub shortfall_deg: Option<f64>,
    /// None where it is not over-rotated.
    pub over_rotated_deg: Option<f64>,
    pub landing_facing_deg: Option<f64>,
    pub call: Option<Call>,
    #[serde(flatten)]
    pub readout: Readout,
    pub flying_mass_kg: f64,
    /// In which respects nobody has been seen to do what this jump asks; empty in none.
    pub beyond_seen: Vec<RespectReport>,
    /// Keys of what is at the edge of what has been measured: neither seen nor beyond.
    pub at_edge_of_measured: Vec<&'static str>,
    /// Keys of what is not known for a jumper of this size.
    pub not_known_for_size: Vec<&'static str>,
    #[serde(flatten)]
    pub efforts: EffortReport,
}

impl Report {
    pub fn new(scenario: &Scenario, jump: &Jump) -> Self {
        Self {
            name: scenario.name.clone(),
            jump: notation(scenario.jump, scenario.jump_turns),
            turning: scenario.turning,
            pre_rotation_turns: scenario.pre_rotation_turns,
            turns: jump.turns,
            turns_owed: jump.owed.map(|owed| owed.turns),
            shortfall_deg: jump.owed.map(|owed| owed.shortfall_deg),
            over_rotated_deg: jump.owed.and_then(|owed| owed.over_rotated_deg),
            landing_facing_deg: jump.owed.map(|owed| owed.landing_facing_deg),
            call: jump.owed.and_then(|owed| owed.call),
            readout: jump.readout,
            flying_mass_kg: jump.flight.table.body.mass_kg,
            beyond_seen: scenario
                .beyond_seen(jump)
                .iter()
                .map(RespectReport::new)
                .collect(),
            at_edge_of_measured: keys(&scenario.at_edge_of_measured(jump)),
            not_known_for_size: keys(&scenario.not_known_for_size(jump)),
            efforts: EffortReport::new(jump.efforts()),
        }
    }
}

/// The same with the range of the turns, and what it is made of: the half-widths of the inputs (95 %
/// limits) and what each alone changes the turns by as the input grows by it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RangeReport {
    #[serde(flatten)]
    pub report: Report,
    pub turns_low: f64,
    pub turns_high: f64,
    /// That of the most turns first; none where the rule does not reach.
    pub calls_possible: Option<Vec<Call>>,
    #[serde(flatten)]
    pub half_widths: HalfWidths,
    #[serde(flatten)]
    pub changes: Changes,
}

/// Each half-width under `half_width_` and the key of its input. That of the ratio of the body's
/// moments of inertia is of open to tight.
#[derive(Debug, Clone, PartialEq)]
pub struct HalfWidths(pub Uncertainty);

impl Serialize for HalfWidths {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let entry = |input: UncertainInput| {
            let key = format!("half_width_{}", input.key());
            (key, self.0.get(input))
        };
        serializer.collect_map(UncertainInput::ALL.map(entry))
    }
}

/// What each input alone changes the turns by, under `turns_change_with_` and its key without the
/// unit.
#[derive(Debug, Clone, PartialEq)]
pub struct Changes(pub [f64; UncertainInput::COUNT]);

impl Serialize for Changes {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let entry = |(input, change): (UncertainInput, f64)| (input.change_key(), change);
        serializer.collect_map(UncertainInput::ALL.into_iter().zip(self.0).map(entry))
    }
}

impl RangeReport {
    pub fn new(scenario: &Scenario, jump: &Jump, half_widths: &Uncertainty) -> Self {
        let range = Range::new(scenario, jump, half_widths);
        Self {
            report: Report::new(scenario, jump),
            turns_low: range.low,
            turns_high: range.high,
            calls_possible: range.calls,
            half_widths: HalfWidths(*half_widths),
            changes: Changes(range.changes),
        }
    }
}
