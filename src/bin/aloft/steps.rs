//! `aloft steps`.

use clap::Args;
use serde::Serialize;

use crate::chosen::Chosen;
use crate::output::printed;
use turns_aloft::analysis::steps::ranked;
use turns_aloft::analysis::weights::Weights;
use turns_aloft::describe::jump::notation;
use turns_aloft::describe::report::steps::GainReport;
use turns_aloft::describe::report::weights::WeightsReport;
use turns_aloft::scenario::HandsKeep;

#[derive(Args)]
pub struct Steps {
    #[command(flatten)]
    chosen: Chosen,
}

/// What is printed. Changes are in the unit of their key.
#[derive(Serialize)]
struct Answer {
    name: String,
    jump: String,
    turns: f64,
    /// What heavier hands leave as it is in this jump.
    hands_keep: HandsKeep,
    /// Of the jump as it is: estimate, lowest and highest, in body weights.
    landing_load_bw: [f64; 2],
    /// The largest gain first.
    steps: Vec<GainReport>,
    /// No step: a little more in each hand, by what the jumper keeps. None where no more can be set.
    weights: Option<WeightsReport>,
}

impl Steps {
    pub fn run(&self) -> Result<String, String> {
        let scenario = self.chosen.scenario()?;
        let now = scenario.fly();
        printed(&Answer {
            name: scenario.name.clone(),
            jump: notation(scenario.jump, scenario.jump_turns),
            turns: now.turns,
            hands_keep: scenario.hands_keep,
            landing_load_bw: now.readout.landing_load_bw,
            steps: ranked(&scenario, &now)
                .iter()
                .map(GainReport::new)
                .collect(),
            weights: Weights::more(&scenario, &now)
                .as_ref()
                .map(WeightsReport::new),
        })
    }
}
