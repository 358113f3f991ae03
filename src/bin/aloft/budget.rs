//! `aloft budget`.

use crate::chosen::Chosen;
use crate::output::printed;
use turns_aloft::analysis::budget::Budget;
use turns_aloft::describe::report::budget::BudgetReport;

pub fn run(chosen: &Chosen) -> Result<String, String> {
    let scenario = chosen.scenario()?;
    let budget = Budget::new(&scenario, &scenario.fly());
    printed(&BudgetReport::new(&scenario, &budget))
}
