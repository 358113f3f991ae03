//! Which scenario, and what is changed of it.

use std::fs;
use std::io;

use clap::Args;

use turns_aloft::scenario::link::from_fragment;
use turns_aloft::scenario::{Scenario, starts};

/// A scenario, and what is to be changed of it.
#[derive(Args)]
pub struct Chosen {
    /// A starting point's name, a scenario file or a link.
    scenario: String,
    /// Change values of the scenario before flying it; comes after the scenario.
    #[arg(long, value_name = "KEY=VALUE", num_args = 1..)]
    set: Vec<String>,
}

pub fn unknown_start(name: &str) -> String {
    let known: Vec<&str> = starts::all().iter().map(|start| start.name).collect();
    format!("{name} is no starting point; they are {}", known.join(", "))
}

/// A link's jump, behind the `#` of an address; else a starting point by its name, else a scenario
/// file by its path.
pub fn open(name: &str) -> Result<Scenario, String> {
    if let Some(read) = name.split_once('#').and_then(|(_, of)| from_fragment(of)) {
        return read.map(|link| link.jump).map_err(|why| why.to_string());
    }
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
    pub fn scenario(&self) -> Result<Scenario, String> {
        let mut scenario = open(&self.scenario)?;
        for setting in &self.set {
            let (key, value) = key_and_value("--set", setting)?;
            scenario.set(key, value).map_err(|why| why.to_string())?;
        }
        Ok(scenario)
    }
}

/// An option's KEY=VALUE.
pub fn key_and_value<'a>(option: &str, setting: &'a str) -> Result<(&'a str, &'a str), String> {
    setting
        .split_once('=')
        .ok_or_else(|| format!("{option} {setting}: write KEY=VALUE"))
}

/// A finite number.
pub fn number(text: &str) -> Option<f64> {
    text.parse().ok().filter(|number: &f64| number.is_finite())
}
