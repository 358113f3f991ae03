//! `aloft map`.

use std::fmt::Write as _;

use clap::Args;

use crate::chosen::{Chosen, number};
use turns_aloft::analysis::map::{Axis, TurnMap};
use turns_aloft::describe::Sentence;

#[derive(Args)]
pub struct Map {
    #[command(flatten)]
    chosen: Chosen,
    /// First number: its key, from, to (SI units) and how many values.
    #[arg(long, value_name = "KEY:FROM:TO:N")]
    x: String,
    /// Second number.
    #[arg(long, value_name = "KEY:FROM:TO:N")]
    y: String,
}

impl Map {
    /// Computes the CSV: one row per pair of values, with both and the turns at landing.
    pub fn run(&self) -> Result<String, String> {
        let scenario = self.chosen.scenario()?;
        let (x, y) = (axis("--x", &self.x)?, axis("--y", &self.y)?);
        for axis in [&x, &y] {
            axis.check(&scenario).map_err(|why| why.sentence())?;
        }
        let mut map = TurnMap::new(&scenario, x, y).map_err(|why| why.sentence())?;
        map.complete();
        let mut text = format!("{},{},turns\n", x.parameter().key(), y.parameter().key());
        for j in 0..y.nodes() {
            for i in 0..x.nodes() {
                if let Some(turns) = map.turns(i, j) {
                    writeln!(text, "{},{},{turns}", x.value(i), y.value(j))
                        .expect("writing to a string does not fail");
                }
            }
        }
        Ok(text)
    }
}

fn axis(option: &str, text: &str) -> Result<Axis, String> {
    let parts: Vec<&str> = text.split(':').collect();
    let [key, from, to, nodes] = parts[..] else {
        return Err(format!("{option} {text}: write KEY:FROM:TO:N"));
    };
    let end = |part| number(part).ok_or_else(|| format!("{option} {text}: {part} is not a number"));
    let (from, to) = (end(from)?, end(to)?);
    let nodes = nodes
        .parse()
        .map_err(|_| format!("{option} {text}: {nodes} is not a whole number of values"))?;
    Axis::named(key, from, to, nodes).map_err(|why| format!("{option} {text}: {}", why.sentence()))
}
