//! `aloft measure`.

use std::path::PathBuf;

use clap::Args;

use crate::chosen::{bytes_of, opened};
use crate::output::printed;
use turns_aloft::attempt::Attempt;
use turns_aloft::attempt::example::example;
use turns_aloft::attempt::file::LARGEST_BYTES;
use turns_aloft::attempt::unreadable::Unreadable;
use turns_aloft::describe::Sentence;
use turns_aloft::describe::report::measured::MeasuredReport;
use turns_aloft::fit::Fitting;
use turns_aloft::scenario::file::Opened;
use turns_aloft::scenario::reading::text_of;

#[derive(Args)]
pub struct Measure {
    /// An attempt file.
    #[arg(required_unless_present = "example")]
    file: Option<PathBuf>,
    /// Print an attempt file, invented, to begin from.
    #[arg(long, conflicts_with = "file")]
    example: bool,
}

impl Measure {
    pub fn run(&self) -> Result<String, String> {
        let Some(file) = &self.file else {
            return Ok(example().to_file());
        };
        let name = file.display();
        let bytes =
            bytes_of(file, LARGEST_BYTES).map_err(|why| format!("{name} cannot be read: {why}"))?;
        let attempt = attempt_in(bytes).map_err(|why| format!("{name}: {}", why.sentence()))?;
        let attempt = opened(attempt);
        let fitting = Fitting::new(&attempt, None);
        let fitting = fitting.map_err(|why| format!("{name}: {}", why.sentence()))?;
        printed(&MeasuredReport::new(&attempt, &fitting.complete()))
    }
}

fn attempt_in(bytes: Vec<u8>) -> Result<Opened<Attempt>, Unreadable> {
    if bytes.len() > LARGEST_BYTES {
        return Err(Unreadable::TooLarge);
    }
    Attempt::open_file(&text_of(bytes).map_err(Unreadable::NotText)?)
}
