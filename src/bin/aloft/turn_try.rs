//! `aloft try`.

use clap::Args;

use crate::chosen::Chosen;
use crate::output::printed;
use turns_aloft::analysis::turn_try::{STEPS, TurnTry};
use turns_aloft::describe::report::turn_try::TurnTryReport;

#[derive(Args)]
pub struct TurnTryArguments {
    #[command(flatten)]
    chosen: Chosen,
    /// Turns that are tried, in the jump's name; five if none are given.
    #[arg(long, value_name = "N", allow_negative_numbers = true)]
    turns: Option<String>,
}

impl TurnTryArguments {
    pub fn run(&self) -> Result<String, String> {
        let scenario = self.chosen.scenario()?;
        let step = self.step()?;
        let tried = TurnTry::new(&scenario, &scenario.fly(), step);
        printed(&TurnTryReport::new(&scenario, &tried))
    }

    fn step(&self) -> Result<u8, String> {
        let [least, .., most] = STEPS;
        let Some(text) = &self.turns else {
            return Ok(most);
        };
        let step = text.parse().ok().filter(|step| STEPS.contains(step));
        step.ok_or_else(|| {
            format!("turns = {text} cannot be tried: it is a whole number from {least} to {most}")
        })
    }
}
