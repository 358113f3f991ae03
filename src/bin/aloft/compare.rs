//! `aloft compare`.

use clap::Args;

use crate::chosen::open;
use crate::output::printed;
use turns_aloft::analysis::compare::Comparison;

#[derive(Args)]
pub struct Compare {
    /// The first attempt: a starting point's name, a scenario file or a link.
    first: String,
    /// The second.
    second: String,
}

impl Compare {
    pub fn run(&self) -> Result<String, String> {
        printed(&Comparison::new(&open(&self.first)?, &open(&self.second)?))
    }
}
