//! `aloft budget`.

use turns_aloft::analysis::budget::Budget;
use turns_aloft::describe::report::budget::BudgetReport;

use crate::chosen::Chosen;
use crate::command::printed;

pub fn run(chosen: &Chosen) -> Result<String, String> {
    let scenario = chosen.scenario()?;
    let budget = Budget::new(&scenario, &scenario.fly());
    printed(&BudgetReport::new(&scenario, &budget))
}
