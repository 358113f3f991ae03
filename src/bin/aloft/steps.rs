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

/// The JSON that is printed. Changes are in the unit of their key.
#[derive(Serialize)]
struct Answer {
    name: String,
    jump: String,
    turns: f64,
    /// What the jumper keeps constant when the hands get heavier.
    hands_keep: HandsKeep,
    /// Landing load of the present jump: lowest and highest estimate, in body weights.
    landing_load_bw: [f64; 2],
    /// The largest gain first.
    steps: Vec<GainReport>,
    /// Slightly heavier weights, for each assumption of what the jumper keeps constant; they are
    /// not a step. None if the hand mass is at its limit.
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
