//! `aloft budget`.

use clap::Args;

use turns_aloft::analysis::budget::Budget;

use crate::chosen::Chosen;
use crate::command::printed;

#[derive(Args)]
pub struct Turns {
    #[command(flatten)]
    chosen: Chosen,
}

impl Turns {
    pub fn run(&self) -> Result<String, String> {
        let scenario = self.chosen.scenario()?;
        printed(&Budget::new(&scenario, &scenario.fly()))
    }
}
