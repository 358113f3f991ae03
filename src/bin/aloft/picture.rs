//! `aloft picture`.

use clap::Args;

use crate::chosen::Chosen;
use turns_aloft::analysis::turn_try::TurnTry;
use turns_aloft::picture::{Picture, to_svg};
use turns_aloft::scenario::units::Units;

#[derive(Args)]
pub struct PictureArguments {
    #[command(flatten)]
    jump: Chosen,
    /// As a try at the turns of its name, with the limits seen in people that it passes
    #[arg(long = "try")]
    tried: bool,
    /// The page's address, for a QR code that opens the jump there.
    #[arg(long, value_name = "URL")]
    address: Option<String>,
}

impl PictureArguments {
    pub fn run(&self) -> Result<String, String> {
        let scenario = self.jump.scenario()?;
        let jump = scenario.fly();
        let tried = (self.tried).then(|| TurnTry::new(&scenario, &jump, scenario.jump_turns));
        let picture = Picture {
            scenario: &scenario,
            jump: &jump,
            tried: tried.as_ref(),
            units: &Units::default(),
            address: self.address.as_deref(),
        };
        Ok(to_svg(&picture))
    }
}
