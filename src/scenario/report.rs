//! Every readout of a flown jump under its published key, for the command and the page.

use serde::Serialize;

use super::Scenario;
use super::fly::Jump;
use super::uncertainty::{Range, Uncertainty};
use crate::physics::call::Call;
use crate::physics::plan::Turning;

/// Keys in snake case, SI units in the name. Turns and rates are positive in the jumper's own
/// turning direction; the angular momentum is a world vector (X travel, Y up, Z right).
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Report {
    pub name: String,
    pub jump: String,
    pub turning: Turning,
    pub air_turns: f64,
    pub pre_rotation_turns: f64,
    pub turns: f64,
    pub turns_owed: Option<f64>,
    pub shortfall_deg: Option<f64>,
    pub call: Option<Call>,
    pub hang_time_s: f64,
    pub jump_height_m: f64,
    pub takeoff_rate_rad_s: f64,
    pub peak_rate_rad_s: f64,
    pub mean_rate_rad_s: f64,
    pub touchdown_rate_rad_s: f64,
    pub inertia_takeoff_kg_m2: f64,
    pub inertia_least_kg_m2: f64,
    pub angular_momentum_kg_m2_s: [f64; 3],
    pub energy_takeoff_j: f64,
    pub energy_peak_j: f64,
    pub pull_in_work_j: f64,
    pub hand_pull_peak_n: f64,
    pub tilt_takeoff_rad: f64,
    pub tilt_peak_rad: f64,
    pub tilt_touchdown_rad: f64,
    pub touchdown_speed_m_s: f64,
    pub landing_load_bw: [f64; 2],
    pub flying_mass_kg: f64,
}

impl Report {
    pub fn new(scenario: &Scenario, jump: &Jump) -> Self {
        let r = &jump.readout;
        Self {
            name: scenario.name.clone(),
            jump: scenario.jump.notation(scenario.jump_turns),
            turning: scenario.turning,
            air_turns: r.air_turns,
            pre_rotation_turns: scenario.pre_rotation_turns,
            turns: jump.turns,
            turns_owed: jump.owed.map(|owed| owed.turns),
            shortfall_deg: jump.owed.map(|owed| owed.shortfall_deg),
            call: jump.owed.and_then(|owed| owed.call),
            hang_time_s: r.hang_time_s,
            jump_height_m: r.jump_height_m,
            takeoff_rate_rad_s: r.takeoff_rate_rad_s,
            peak_rate_rad_s: r.peak_rate_rad_s,
            mean_rate_rad_s: r.mean_rate_rad_s,
            touchdown_rate_rad_s: r.touchdown_rate_rad_s,
            inertia_takeoff_kg_m2: r.inertia_takeoff_kg_m2,
            inertia_least_kg_m2: r.inertia_least_kg_m2,
            angular_momentum_kg_m2_s: r.angular_momentum_kg_m2_s.to_array(),
            energy_takeoff_j: r.energy_takeoff_j,
            energy_peak_j: r.energy_peak_j,
            pull_in_work_j: r.pull_in_work_j,
            hand_pull_peak_n: r.hand_pull_peak_n,
            tilt_takeoff_rad: r.tilt_takeoff_rad,
            tilt_peak_rad: r.tilt_peak_rad,
            tilt_touchdown_rad: r.tilt_touchdown_rad,
            touchdown_speed_m_s: r.touchdown_speed_m_s,
            landing_load_bw: r.landing_load_bw,
            flying_mass_kg: jump.flight.table.body.mass_kg,
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
    /// The mildest first; none where the rule does not reach.
    pub calls_possible: Option<Vec<Call>>,
    pub half_width_jump_height_m: f64,
    pub half_width_takeoff_rate_rad_s: f64,
    pub half_width_close_time_s: f64,
    /// Of the standing body's moment of inertia.
    pub half_width_inertia_share: f64,
    pub turns_change_with_jump_height: f64,
    pub turns_change_with_takeoff_rate: f64,
    pub turns_change_with_close_time: f64,
    pub turns_change_with_inertia: f64,
}

impl RangeReport {
    pub fn new(scenario: &Scenario, jump: &Jump, half_widths: &Uncertainty) -> Self {
        let range = Range::new(scenario, jump, half_widths);
        let [with_height, with_rate, with_close_time, with_inertia] = range.changes;
        Self {
            report: Report::new(scenario, jump),
            turns_low: range.low,
            turns_high: range.high,
            calls_possible: range.calls,
            half_width_jump_height_m: half_widths.jump_height_m,
            half_width_takeoff_rate_rad_s: half_widths.takeoff_rate_rad_s,
            half_width_close_time_s: half_widths.close_time_s,
            half_width_inertia_share: half_widths.inertia_share,
            turns_change_with_jump_height: with_height,
            turns_change_with_takeoff_rate: with_rate,
            turns_change_with_close_time: with_close_time,
            turns_change_with_inertia: with_inertia,
        }
    }
}
