//! `aloft link`.

use clap::Args;

use crate::chosen::{Chosen, open};
use turns_aloft::scenario::link::to_fragment;

#[derive(Args)]
pub struct Link {
    #[command(flatten)]
    jump: Chosen,
    /// A second jump to compare with: a starting point's name, a scenario file or a link.
    #[arg(long, alias = "beside", value_name = "SCENARIO")]
    reference: Option<String>,
}

impl Link {
    pub fn run(&self) -> Result<String, String> {
        let reference = self.reference.as_deref().map(open).transpose()?;
        let fragment = to_fragment(&self.jump.scenario()?, reference.as_ref());
        Ok(format!("#{fragment}\n"))
    }
}
