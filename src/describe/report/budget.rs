//! Where the turns went, as the command prints it.

use serde::Serialize;

use crate::budget::budget_sentence;
use turns_aloft_analysis::budget::{Budget, Cause};
use turns_aloft_analysis::one_change::OneChange;
use turns_aloft_scenario::Scenario;

/// The budget under its published keys, for the command: turns, snake case.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct BudgetReport {
    pub name: String,
    pub ideal_turns: f64,
    pub lost_by_closing_turns: f64,
    pub lost_by_tightness_turns: f64,
    pub lost_by_opening_turns: f64,
    pub lost_by_tilt_turns: f64,
    pub air_turns: f64,
    pub pre_rotation_turns: f64,
    pub turns: f64,
    pub largest_loss: Option<Cause>,
    pub one_change: Option<OneChange>,
    pub sentence: String,
}

impl BudgetReport {
    pub fn new(scenario: &Scenario, budget: &Budget) -> Self {
        Self {
            name: scenario.name.clone(),
            ideal_turns: budget.ideal_turns,
            lost_by_closing_turns: budget.loss(Cause::Closing),
            lost_by_tightness_turns: budget.loss(Cause::Tightness),
            lost_by_opening_turns: budget.loss(Cause::Opening),
            lost_by_tilt_turns: budget.loss(Cause::Tilt),
            air_turns: budget.air_turns,
            pre_rotation_turns: budget.pre_rotation_turns,
            turns: budget.turns,
            largest_loss: budget.largest,
            one_change: budget.one_change,
            sentence: budget_sentence(scenario, budget),
        }
    }
}
