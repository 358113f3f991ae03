//! `aloft turntable`.

use std::path::PathBuf;

use clap::Args;

use crate::chosen::{bytes_of, key_and_value, number};
use crate::output::printed;
use turns_aloft::describe::Sentence;
use turns_aloft::turntable::calibrate::{CalibrationFault, Reading, both, torque_alone};
use turns_aloft::turntable::export::Export;
use turns_aloft::turntable::planned::Planned;
use turns_aloft::turntable::programme::{EXAMPLE, LARGEST_BYTES};
use turns_aloft::turntable::setup::{Number, STAND, TABLE};
use turns_aloft::turntable::{OnBearing, Person, Programme, Setup, Stand};

/// Turn somebody on a platform, a swivel chair or the ice by a programme of hand and leg positions, and print
/// the run as CSV.
///
/// Real turntables need room, a helper and a low rate: people get dizzy and fall. Weights are held by adults
/// or under supervision.
#[derive(Args)]
pub struct TurntableArguments {
    /// A programme (CSV): the columns `time_s` and `hand_distance_m` (of either hand from the axis), and where
    /// they are wanted `legs` (0 in, 1 out) and `twist_rad` (of the shoulders against the hips).
    #[arg(required_unless_present = "example")]
    programme: Option<PathBuf>,
    #[arg(long, value_name = "KEY=VALUE", num_args = 1.., help = set_help())]
    set: Vec<String>,
    /// Time between the rows that are printed, s; 0.02 if none is given.
    #[arg(long, value_name = "S", allow_negative_numbers = true)]
    step: Option<String>,
    /// Print the exact body, its joints over time and the run as JSON instead, to compute it again by other means.
    #[arg(long)]
    export: bool,
    /// Print the friction instead, as --set takes it, of a bearing that slows this person down like that, held as
    /// the programme begins: two or three times, s, each with the rate then, rad/s. Two give a torque alone, three
    /// give both parts.
    #[arg(long, value_name = "TIME=RATE", num_args = 2..=3, conflicts_with_all = ["step", "export"])]
    slowed: Vec<String>,
    /// Print a programme to begin from.
    #[arg(long, conflicts_with_all = ["programme", "set", "step", "export", "slowed"])]
    example: bool,
}

fn set_help() -> String {
    let keys: Vec<&str> = Number::ALL.map(Number::key).into();
    format!(
        "Who turns on what, and how fast at first: {STAND} ({}; brings its bearing along, wherever it stands), {TABLE} \
         (female, male), {}. Where a key is given twice the last value counts",
        Stand::ALL.map(Stand::key).join(", "),
        keys.join(", ")
    )
}

/// Time between rows if none is given, s.
const DEFAULT_STEP_S: f64 = 0.02;

/// Shortest and longest admissible time between rows, s.
const STEP_S: [f64; 2] = [0.001, 60.0];

/// Rows at most, so that memory is bounded.
const MOST_ROWS: f64 = 200_000.0;

impl TurntableArguments {
    pub fn run(&self) -> Result<String, String> {
        let Some(path) = &self.programme else {
            return Ok(EXAMPLE.to_owned());
        };
        let said = |why: &dyn Sentence| format!("{}: {}", path.display(), why.sentence());
        let person = Person::new(&self.setup()?).map_err(|why| why.sentence())?;
        let step_s = self.step_s()?;
        let bytes = bytes_of(path, LARGEST_BYTES)
            .map_err(|why| format!("{} cannot be read: {why}", path.display()))?;
        let programme = Programme::of_file(&bytes).map_err(|why| said(&why))?;
        let planned = Planned::new(&person, &programme).map_err(|why| said(&why))?;
        let [from_s, to_s] = planned.span_s();
        if !self.slowed.is_empty() {
            let inertia_kg_m2 = planned.at(from_s).inertia_kg_m2;
            return self.friction(inertia_kg_m2);
        }
        if to_s - from_s > MOST_ROWS * step_s {
            let least_s = (to_s - from_s) / MOST_ROWS;
            return Err(format!(
                "step = {step_s} s makes more than {MOST_ROWS} rows: this programme takes {least_s} s or more"
            ));
        }
        if self.export {
            printed(&Export::new(&planned, step_s))
        } else {
            Ok(planned.run(step_s).to_csv())
        }
    }

    /// The friction of a bearing that slows this moment of inertia down as it was read.
    fn friction(&self, inertia_kg_m2: f64) -> Result<String, String> {
        let read = |reading: &String| {
            let (time, rate) = key_and_value("--slowed", reading)?;
            let not_numbers = || format!("--slowed: {reading} is not two numbers, TIME=RATE");
            Ok(Reading {
                t_s: number(time).ok_or_else(not_numbers)?,
                rate_rad_s: number(rate).ok_or_else(not_numbers)?,
            })
        };
        let readings: Vec<Reading> = (self.slowed.iter())
            .map(read)
            .collect::<Result<_, String>>()?;
        let friction = match *readings {
            [first, second, third] => both(&[first, second, third], inertia_kg_m2),
            [first, second, ..] => torque_alone(&[first, second], inertia_kg_m2),
            _ => Err(CalibrationFault::NotNumbers),
        };
        let friction = friction.map_err(|why| why.sentence())?;
        Ok(format!(
            "{}={}\n{}={}\n",
            Number::FrictionTorque.key(),
            friction.torque_n_m,
            Number::FrictionViscous.key(),
            friction.viscous_n_m_s
        ))
    }

    /// What it stands on first, since that brings a bearing along.
    fn setup(&self) -> Result<Setup, String> {
        let mut stand = Stand::Platform;
        let mut others = Vec::new();
        for setting in &self.set {
            let (key, value) = key_and_value("--set", setting)?;
            if key == STAND {
                let mut setup = Setup::on(stand);
                setup.set(key, value).map_err(|why| why.sentence())?;
                stand = setup.stand;
            } else {
                others.push((key, value));
            }
        }
        let mut setup = Setup::on(stand);
        for (key, value) in others {
            setup.set(key, value).map_err(|why| why.sentence())?;
        }
        Ok(setup)
    }

    fn step_s(&self) -> Result<f64, String> {
        let Some(text) = &self.step else {
            return Ok(DEFAULT_STEP_S);
        };
        let [least, most] = STEP_S;
        number(text)
            .filter(|step_s| (least..=most).contains(step_s))
            .ok_or_else(|| {
                format!("step = {text} is out of range: it goes from {least} to {most} s")
            })
    }
}
