//! The arguments that name a scenario and change values of it.

use std::fs::File;
use std::io::{self, Read as _};
use std::path::Path;
use std::sync::atomic::{AtomicUsize, Ordering};

use clap::Args;

use turns_aloft::analysis::hang_time;
use turns_aloft::describe::Sentence;
use turns_aloft::say;
use turns_aloft::scenario::file::{LARGEST_BYTES, Opened, Unreadable};
use turns_aloft::scenario::link::{Link, from_fragment};
use turns_aloft::scenario::reading::text_of;
use turns_aloft::scenario::{Scenario, starts};

/// A scenario, and what is to be changed of it.
#[derive(Args)]
pub struct Chosen {
    /// A starting point's name, a scenario file or a link.
    pub scenario: String,
    /// Change values of the scenario before flying it; comes after the scenario. Where a key is
    /// given twice the last value counts. hang_time_s sets jump_height_m: to the height that is in
    /// the air so long with all the other values.
    #[arg(long, value_name = "KEY=VALUE", num_args = 1..)]
    set: Vec<String>,
}

pub fn unknown_start(name: &str) -> String {
    let known: Vec<&str> = starts::all().iter().map(|start| start.name).collect();
    let name = if name.is_empty() { "\"\"" } else { name };
    format!("{name} is no starting point; they are {}", known.join(", "))
}

/// The number of opened jumps that were saved before the body was refined.
static EARLIER: AtomicUsize = AtomicUsize::new(0);

/// One sentence on jumps that were saved before the body was refined, if any were opened.
pub fn earlier_body() -> Option<String> {
    match EARLIER.load(Ordering::Relaxed) {
        0 => None,
        jumps => Some(say!("earlier-body", jumps = jumps)),
    }
}

/// Opens a starting point by its name, else a link (a text with `#`), else a scenario file by its
/// path.
pub fn open(name: &str) -> Result<Scenario, String> {
    if let Some(start) = starts::named(name) {
        return Ok(start.scenario.clone());
    }
    let found = match name.split_once('#').and_then(|(_, of)| from_fragment(of)) {
        Some(link) => link.map(jump_of).map_err(|why| why.sentence()),
        None => open_file(name),
    }?;
    Ok(opened(found))
}

/// What was opened; whether it was saved before the body was refined is told of at the end.
pub fn opened<T>(found: Opened<T>) -> T {
    EARLIER.fetch_add(usize::from(found.earlier_body), Ordering::Relaxed);
    found.read
}

fn jump_of(link: Link) -> Opened<Scenario> {
    Opened {
        read: link.jump,
        earlier_body: link.earlier_body,
    }
}

fn open_file(name: &str) -> Result<Opened<Scenario>, String> {
    let bytes = bytes_of(name, LARGEST_BYTES).map_err(|why| {
        if why.kind() == io::ErrorKind::NotFound {
            format!("{}, and there is no such file", unknown_start(name))
        } else {
            format!("{name} cannot be read: {why}")
        }
    })?;
    scenario_in(bytes).map_err(|why| format!("{name}: {}", why.sentence()))
}

/// Reads a file, at most one byte more than is allowed, because some files never end.
pub fn bytes_of(name: impl AsRef<Path>, largest_bytes: usize) -> io::Result<Vec<u8>> {
    let mut bytes = Vec::new();
    let most = largest_bytes as u64 + 1;
    File::open(name)?.take(most).read_to_end(&mut bytes)?;
    Ok(bytes)
}

fn scenario_in(bytes: Vec<u8>) -> Result<Opened<Scenario>, Unreadable> {
    if bytes.len() > LARGEST_BYTES {
        return Err(Unreadable::TooLarge);
    }
    Scenario::open_file(&text_of(bytes).map_err(Unreadable::NotText)?)
}

impl Chosen {
    pub fn scenario(&self) -> Result<Scenario, String> {
        let mut scenario = open(&self.scenario)?;
        // It stands for the height, and follows from all the others.
        let mut hang_time_s = None;
        for setting in &self.set {
            let (key, value) = key_and_value("--set", setting)?;
            if key == hang_time::KEY {
                hang_time_s = Some(value);
                continue;
            }
            if key == hang_time::OF.key() {
                hang_time_s = None;
            }
            scenario.set(key, value).map_err(|why| why.sentence())?;
        }
        if let Some(value) = hang_time_s {
            hang_time::set(&mut scenario, value).map_err(|why| why.sentence())?;
        }
        Ok(scenario)
    }
}

/// Splits an option's KEY=VALUE.
pub fn key_and_value<'a>(option: &str, setting: &'a str) -> Result<(&'a str, &'a str), String> {
    setting
        .split_once('=')
        .ok_or_else(|| format!("{option} {setting}: write KEY=VALUE"))
}

/// Parses a finite number.
pub fn number(text: &str) -> Option<f64> {
    text.parse().ok().filter(|number: &f64| number.is_finite())
}
