//! `aloft picture`.

use clap::Args;

use crate::chosen::Chosen;
use turns_aloft::picture::{Picture, to_svg};
use turns_aloft::scenario::units::Units;

#[derive(Args)]
pub struct PictureArguments {
    #[command(flatten)]
    jump: Chosen,
    /// The page's address, for a QR code that opens the jump there.
    #[arg(long, value_name = "URL")]
    address: Option<String>,
}

impl PictureArguments {
    pub fn run(&self) -> Result<String, String> {
        let scenario = self.jump.scenario()?;
        let picture = Picture {
            scenario: &scenario,
            jump: &scenario.fly(),
            units: &Units::default(),
            address: self.address.as_deref(),
        };
        Ok(to_svg(&picture))
    }
}
