//! The command beside the page: flies the very same scenario files.

#[cfg(not(target_arch = "wasm32"))]
fn main() -> std::process::ExitCode {
    command::main()
}

/// The page is the browser's; the command has no business there.
#[cfg(target_arch = "wasm32")]
fn main() {}

#[cfg(not(target_arch = "wasm32"))]
mod command {
    use std::fs;
    use std::io::{self, Write as _};
    use std::path::PathBuf;
    use std::process::ExitCode;

    use clap::{Args, Parser, Subcommand};
    use serde::Serialize;

    use turns_aloft::physics::motion;
    use turns_aloft::scenario::Scenario;
    use turns_aloft::scenario::export::Export;
    use turns_aloft::scenario::report::{RangeReport, Report};
    use turns_aloft::scenario::starts;
    use turns_aloft::scenario::uncertainty::Uncertainty;

    /// How many turns a body completes before it comes down.
    #[derive(Parser)]
    #[command(version)]
    struct Command {
        #[command(subcommand)]
        task: Task,
    }

    #[derive(Subcommand)]
    enum Task {
        /// List the starting points, or print one as a scenario file.
        Starts { name: Option<String> },
        /// Fly a starting point or a scenario file and print every readout as JSON.
        Fly(Fly),
        /// Print the exact body, joint motion and start of a flight as JSON, to compute it again by
        /// other means.
        Export(Chosen),
    }

    /// A scenario, and what is to be changed of it.
    #[derive(Args)]
    struct Chosen {
        /// A starting point's name or a scenario file.
        scenario: String,
        /// Change values of the scenario before flying it; comes after the scenario.
        #[arg(long, value_name = "KEY=VALUE", num_args = 1..)]
        set: Vec<String>,
    }

    #[derive(Args)]
    struct Fly {
        #[command(flatten)]
        chosen: Chosen,
        /// Print also the range of the turns and the calls possible, and what they come from.
        #[arg(long)]
        range: bool,
        /// Print the range with another half-width than the usual one of jump_height_m,
        /// takeoff_rate_rad_s, close_time_s or inertia_share: the 95 % limit of its error.
        #[arg(long, value_name = "KEY=VALUE", num_args = 1..)]
        half_width: Vec<String>,
        /// Write where every part of the body is, one row per part and time, to this CSV file.
        #[arg(long, value_name = "OUT.csv")]
        motion: Option<PathBuf>,
        /// Time between rows of the motion table, s.
        #[arg(
            long,
            value_name = "S",
            default_value = "0.001",
            allow_negative_numbers = true
        )]
        step: String,
    }

    /// Shortest and longest admissible time between rows, s.
    const STEP_S: [f64; 2] = [1e-5, 1.0];

    pub fn main() -> ExitCode {
        match run(Command::parse()) {
            Ok(text) => match io::stdout().write_all(text.as_bytes()) {
                // A reader that stops early, such as `head`, is no fault.
                Ok(()) | Err(_) => ExitCode::SUCCESS,
            },
            Err(why) => {
                eprintln!("aloft: {why}");
                ExitCode::from(2)
            }
        }
    }

    fn run(command: Command) -> Result<String, String> {
        match command.task {
            Task::Starts { name: None } => Ok(list()),
            Task::Starts { name: Some(name) } => starts::named(&name)
                .map(|start| start.scenario.to_file())
                .ok_or_else(|| unknown_start(&name)),
            Task::Fly(fly) => fly_one(&fly),
            Task::Export(chosen) => printed(&Export::new(&chosen.scenario()?.fly())),
        }
    }

    fn list() -> String {
        starts::all()
            .iter()
            .map(|start| format!("{:20} {}\n", start.name, start.scenario.note))
            .collect()
    }

    fn unknown_start(name: &str) -> String {
        let known: Vec<&str> = starts::all().iter().map(|start| start.name).collect();
        format!("{name} is no starting point; they are {}", known.join(", "))
    }

    /// A starting point by its name, else a scenario file by its path.
    fn open(name: &str) -> Result<Scenario, String> {
        if let Some(start) = starts::named(name) {
            return Ok(start.scenario.clone());
        }
        let text = match fs::read(name) {
            Ok(bytes) => String::from_utf8(bytes)
                .map_err(|_| format!("{name}: this file is not text; open a scenario file"))?,
            Err(why) if why.kind() == io::ErrorKind::NotFound => {
                return Err(format!(
                    "{}, and there is no such file",
                    unknown_start(name)
                ));
            }
            Err(why) => return Err(format!("{name} cannot be read: {why}")),
        };
        Scenario::from_file(&text).map_err(|why| format!("{name}: {why}"))
    }

    impl Chosen {
        fn scenario(&self) -> Result<Scenario, String> {
            let mut scenario = open(&self.scenario)?;
            for setting in &self.set {
                let (key, value) = key_and_value("--set", setting)?;
                scenario.set(key, value).map_err(|why| why.to_string())?;
            }
            Ok(scenario)
        }
    }

    fn key_and_value<'a>(option: &str, setting: &'a str) -> Result<(&'a str, &'a str), String> {
        setting
            .split_once('=')
            .ok_or_else(|| format!("{option} {setting}: write KEY=VALUE"))
    }

    fn printed(what: &impl Serialize) -> Result<String, String> {
        let json = serde_json::to_string_pretty(what).map_err(|why| why.to_string())?;
        Ok(format!("{json}\n"))
    }

    fn fly_one(fly: &Fly) -> Result<String, String> {
        let scenario = fly.chosen.scenario()?;
        let step_s = step_s(&fly.step)?;
        let half_widths = fly.half_widths(&scenario)?;
        let jump = scenario.fly();
        if let Some(path) = &fly.motion {
            fs::write(path, motion::table(&jump.flight, step_s))
                .map_err(|why| format!("{} cannot be written: {why}", path.display()))?;
        }
        match half_widths {
            Some(half_widths) => printed(&RangeReport::new(&scenario, &jump, &half_widths)),
            None => printed(&Report::new(&scenario, &jump)),
        }
    }

    impl Fly {
        /// What the range is computed from, where it is asked for.
        fn half_widths(&self, scenario: &Scenario) -> Result<Option<Uncertainty>, String> {
            let mut half_widths = Uncertainty::usual(scenario);
            for setting in &self.half_width {
                let (key, value) = key_and_value("--half-width", setting)?;
                half_widths.set(key, value).map_err(|why| why.to_string())?;
            }
            let asked = self.range || !self.half_width.is_empty();
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
}
