//! `aloft measure`.

use std::fs::File;
use std::io::{self, Read as _};
use std::path::{Path, PathBuf};

use clap::Args;

use crate::chosen::{bytes_of, open, opened};
use crate::output::printed;
use turns_aloft::attempt::example::example;
use turns_aloft::attempt::file::LARGEST_BYTES;
use turns_aloft::attempt::unreadable::Unreadable;
use turns_aloft::attempt::{Attempt, Measured};
use turns_aloft::describe::Sentence;
use turns_aloft::describe::report::measured::MeasuredReport;
use turns_aloft::fit::Fitting;
use turns_aloft::physics::plan::Turning;
use turns_aloft::scenario::Scenario;
use turns_aloft::scenario::file::Opened;
use turns_aloft::scenario::reading::text_of;
use turns_aloft::trace::table_reader::ReadFault;
use turns_aloft::trace::{Signals, Survey, Trace, TraceFault, Windows, find_columns, read_table};

#[derive(Args)]
pub struct Measure {
    /// An attempt file, or the trace of a sensor (CSV).
    #[arg(required_unless_present = "example")]
    file: Option<PathBuf>,
    /// The jump that a trace is one of, and its jumper: a starting point's name, a scenario file or a
    /// link. Without it, a double flip of somebody of fourteen.
    #[arg(long, value_name = "SCENARIO")]
    jump: Option<String>,
    /// Print an attempt file, invented, to begin from.
    #[arg(long, conflicts_with_all = ["file", "jump"])]
    example: bool,
}

impl Measure {
    pub fn run(&self) -> Result<String, String> {
        let Some(file) = &self.file else {
            return Ok(example().to_file());
        };
        let name = file.display();
        let said = |why: String| format!("{name}: {why}");
        let unread = |why: io::Error| format!("{name} cannot be read: {why}");
        let (attempt, remarks) = if is_json(file).map_err(unread)? {
            let bytes = bytes_of(file, LARGEST_BYTES).map_err(unread)?;
            let attempt = attempt_in(bytes).map_err(|why| said(why.sentence()))?;
            if self.jump.is_some() {
                return Err(said(
                    "an attempt has its jump in it; leave out --jump".to_owned(),
                ));
            }
            (opened(attempt), Vec::new())
        } else {
            let trace = trace_in(file).map_err(|why| match why {
                ReadFault::Io(why) => unread(why),
                ReadFault::Trace(why) => said(why.sentence()),
            })?;
            let remarks = trace.remarks.iter().map(Sentence::sentence).collect();
            (self.attempt_of(file, &trace)?, remarks)
        };
        let fitting = Fitting::new(&attempt, None).map_err(|why| said(why.sentence()))?;
        printed(&MeasuredReport::new(&attempt, &fitting.complete(), remarks))
    }

    /// An attempt at the jump that was asked for, turned the way the sensor was.
    fn attempt_of(&self, file: &Path, trace: &Trace) -> Result<Attempt, String> {
        let meant = self.jump.as_deref().map(open).transpose()?;
        let file_name = file.file_name().unwrap_or_default().to_string_lossy();
        Ok(Attempt {
            scenario: Scenario {
                turning: if trace.turned_rad() < 0.0 {
                    Turning::Clockwise
                } else {
                    Turning::Anticlockwise
                },
                ..meant.unwrap_or_else(Scenario::begun)
            },
            measured: Measured::Sensor(trace.sensor(&file_name)),
        })
    }
}

/// Whether a file begins like JSON does, in whatever encoding. What does not is columns of numbers, or nothing.
fn is_json(file: &Path) -> io::Result<bool> {
    let mut head = Vec::new();
    File::open(file)?.take(64).read_to_end(&mut head)?;
    let letter = head.iter().find(|byte| byte.is_ascii_graphic());
    Ok(letter.is_none_or(|letter| b"{[".contains(letter)))
}

fn attempt_in(bytes: Vec<u8>) -> Result<Opened<Attempt>, Unreadable> {
    if bytes.len() > LARGEST_BYTES {
        return Err(Unreadable::TooLarge);
    }
    Attempt::open_file(&text_of(bytes).map_err(Unreadable::NotText)?)
}

fn trace_in(file: &Path) -> Result<Trace, ReadFault> {
    let name = file.file_name().unwrap_or_default().to_string_lossy();
    let table = read_table(&name, File::open(file).map_err(ReadFault::Io)?)?;
    let of_table = || -> Result<Trace, TraceFault> {
        let columns = find_columns(&table)?;
        Survey::of(Signals::of(&table, &columns)?).trace(&Windows::default())
    };
    Ok(of_table()?)
}
