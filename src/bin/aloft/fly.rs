//! `aloft fly`.

use std::fs;
use std::path::{Path, PathBuf};

use clap::Args;

use crate::chosen::{Chosen, key_and_value};
use crate::output::{printed, written};
use turns_aloft::analysis::hang_time;
use turns_aloft::analysis::uncertainty::{UncertainInput, Uncertainty};
use turns_aloft::describe::Sentence;
use turns_aloft::describe::report::flight::{RangeReport, Report};
use turns_aloft::physics::motion_table;
use turns_aloft::scenario::Scenario;
use turns_aloft::scenario::fly::Jump;

#[derive(Args)]
pub struct Fly {
    #[command(flatten)]
    chosen: Chosen,
    /// Print also the uncertainty of the turns: their range, the calls possible, and what they come from.
    #[arg(long, alias = "range")]
    uncertainty: bool,
    #[arg(long, value_name = "KEY=VALUE", num_args = 1.., help = half_width_help())]
    half_width: Vec<String>,
    /// Write where every part of the body is, one row per part and time, to this CSV file.
    #[arg(long, value_name = "OUT.csv")]
    motion: Option<PathBuf>,
    /// Time between rows of the motion table, s; 0.001 if none is given.
    #[arg(long, value_name = "S", allow_negative_numbers = true)]
    step: Option<String>,
}

fn half_width_help() -> String {
    let [inputs @ .., last] = UncertainInput::ALL.map(UncertainInput::key);
    format!(
        "Print the range with another half-width than the usual one of {} or {last}: the 95 % limit \
         of its error. {} sets that of {}. Where a key is given twice the last value counts",
        inputs.join(", "),
        hang_time::KEY,
        hang_time::OF.key()
    )
}

/// Time between rows if none is given, s.
const DEFAULT_STEP_S: f64 = 0.001;

/// Shortest and longest admissible time between rows, s.
const STEP_S: [f64; 2] = [1e-5, 1.0];

impl Fly {
    pub fn run(&self) -> Result<String, String> {
        let scenario = self.chosen.scenario()?;
        let step_s = self.step_s()?;
        let motion = self.motion()?;
        let jump = scenario.fly();
        let half_widths = self.half_widths(&scenario, &jump)?;
        if let Some(path) = motion {
            let table = motion_table::table(&jump.flight, step_s);
            written(&path.display().to_string(), fs::write(path, table))?;
        }
        match half_widths {
            Some(half_widths) => printed(&RangeReport::new(&scenario, &jump, &half_widths)),
            None => printed(&Report::new(&scenario, &jump)),
        }
    }

    fn step_s(&self) -> Result<f64, String> {
        let Some(text) = &self.step else {
            return Ok(DEFAULT_STEP_S);
        };
        if self.motion.is_none() {
            return Err(format!(
                "--step {text} is the time between rows of the motion table: say with --motion where to write it"
            ));
        }
        step_s(text)
    }

    /// Where to write the motion table; an error if that is the scenario's own file.
    fn motion(&self) -> Result<Option<&Path>, String> {
        let Some(path) = self.motion.as_deref() else {
            return Ok(None);
        };
        let same = |one: &Path, other: &Path| matches!((one.canonicalize(), other.canonicalize()), (Ok(one), Ok(other)) if one == other);
        if fs::metadata(path).is_ok_and(|file| file.is_file())
            && same(path, Path::new(&self.chosen.scenario))
        {
            return Err(format!(
                "{} is the scenario itself: write the motion table to another file",
                path.display()
            ));
        }
        Ok(Some(path))
    }

    /// The half-widths that the range is computed from, if a range is requested.
    fn half_widths(&self, scenario: &Scenario, jump: &Jump) -> Result<Option<Uncertainty>, String> {
        let mut half_widths = Uncertainty::usual(scenario);
        for setting in &self.half_width {
            let (key, value) = key_and_value("--half-width", setting)?;
            let set = if key == hang_time::KEY {
                hang_time::set_half_width(&mut half_widths, scenario, jump, value)
            } else {
                half_widths.set(key, value)
            };
            set.map_err(|why| why.sentence())?;
        }
        let asked = self.uncertainty || !self.half_width.is_empty();
        Ok(asked.then_some(half_widths))
    }
}

fn step_s(text: &str) -> Result<f64, String> {
    text.parse()
        .ok()
        .filter(|step_s| (STEP_S[0]..=STEP_S[1]).contains(step_s))
        .ok_or_else(|| {
            format!(
                "step = {text} is out of range: it goes from {} to {} s",
                STEP_S[0], STEP_S[1]
            )
        })
}
