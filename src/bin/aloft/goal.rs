//! `aloft goal`.

use clap::Args;
use serde::Serialize;

use crate::chosen::{Chosen, key_and_value, number};
use crate::output::printed;
use turns_aloft::analysis::goal::{GOAL_TURNS, Goal};
use turns_aloft::analysis::lever::{Lever, Season};
use turns_aloft::analysis::limits::Limits;
use turns_aloft::analysis::weights::WeightsNeeded;
use turns_aloft::describe::jump::notation;
use turns_aloft::describe::report::goal::{CombinationReport, SingleReport};
use turns_aloft::describe::report::weights::WeightsNeededReport;
use turns_aloft::describe::{Sentence, Text};
use turns_aloft::scenario::{HandsKeep, Scenario};

#[derive(Args)]
pub struct GoalArguments {
    #[command(flatten)]
    chosen: Chosen,
    /// The goal in turns in all; without it, those that the jump owes.
    #[arg(long, value_name = "N", allow_negative_numbers = true)]
    turns: Option<String>,
    /// This jumper's own limits of a lever. Where a lever is given twice the last counts.
    #[arg(long, value_name = "KEY=FROM:TO", num_args = 1..)]
    limit: Vec<String>,
    /// What a season's training might bring of a lever, instead of the usual; 0 holds it as it is.
    /// Where a lever is given twice the last counts.
    #[arg(long, value_name = "KEY=VALUE", num_args = 1..)]
    season: Vec<String>,
}

/// The JSON that is printed. Values are in the unit of their key.
#[derive(Serialize)]
struct Answer {
    name: String,
    jump: String,
    turns: f64,
    /// What the jumper keeps constant when the hands get heavier.
    hands_keep: HandsKeep,
    #[serde(rename = "target_turns")]
    goal_turns: f64,
    /// Landing load of the present jump: lowest and highest estimate, in body weights.
    landing_load_bw: [f64; 2],
    levers: Vec<SingleReport>,
    /// None if no joint change of the levers was found that reaches the goal.
    #[serde(rename = "joint")]
    combination: Option<CombinationReport>,
    season_source: &'static str,
    /// The weights that would reach the goal, for each assumption of what the jumper keeps
    /// constant; they are not a lever.
    weights: WeightsNeededReport,
}

impl GoalArguments {
    pub fn run(&self) -> Result<String, String> {
        let scenario = self.chosen.scenario()?;
        let goal_turns = self.goal_turns(&scenario)?;
        let limits = self.limits()?;
        let season = self.season()?;
        let now = scenario.fly();
        let goal = Goal::new(&scenario, &now, goal_turns, &limits, &season);
        let levers = goal.singles();
        let combination = goal.combination(&levers);
        printed(&Answer {
            name: scenario.name.clone(),
            jump: notation(scenario.jump, scenario.jump_turns),
            turns: now.turns,
            hands_keep: scenario.hands_keep,
            goal_turns,
            landing_load_bw: now.readout.landing_load_bw,
            levers: levers.iter().map(SingleReport::new).collect(),
            combination: combination.as_ref().map(CombinationReport::new),
            season_source: Season::SOURCE.text(),
            weights: WeightsNeededReport::new(&WeightsNeeded::new(&goal)),
        })
    }

    fn goal_turns(&self, scenario: &Scenario) -> Result<f64, String> {
        let [least, most] = GOAL_TURNS;
        let Some(text) = &self.turns else {
            return scenario
                .jump
                .turns_owed(scenario.jump_turns)
                .ok_or_else(|| {
                    format!("a free jump owes no turns: say how many with --turns, from {least} to {most}")
                });
        };
        number(text)
            .filter(|turns| (least..=most).contains(turns))
            .ok_or_else(|| {
                format!("turns = {text} is out of range: it goes from {least} to {most} turns")
            })
    }

    fn limits(&self) -> Result<Limits, String> {
        let mut limits = Limits::default();
        for setting in &self.limit {
            let (key, range) = key_and_value("--limit", setting)?;
            let ends = range.split_once(':');
            let ends = ends.and_then(|(from, to)| Some([number(from)?, number(to)?]));
            let ends = ends.ok_or_else(|| format!("--limit {setting}: write KEY=FROM:TO"))?;
            let lever = Lever::named(key).map_err(|why| why.sentence())?;
            limits.set(lever, ends).map_err(|why| why.sentence())?;
        }
        Ok(limits)
    }

    fn season(&self) -> Result<Season, String> {
        let mut season = Season::default();
        for setting in &self.season {
            let (key, value) = key_and_value("--season", setting)?;
            let unit = number(value)
                .ok_or_else(|| format!("--season {setting}: {value} is not a number"))?;
            let lever = Lever::named(key).map_err(|why| why.sentence())?;
            season.set(lever, unit).map_err(|why| why.sentence())?;
        }
        Ok(season)
    }
}
