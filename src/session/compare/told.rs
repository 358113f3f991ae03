//! The comparison as it is told: in the user's units and words, and in hundredths of a turn that
//! add up as they stand.

use std::borrow::Cow;

use crate::analysis::compare::Comparison;
use crate::physics::landing::Ground;
use crate::physics::plan::Turning;
use crate::physics::segments::SegmentTable;
use crate::scenario::keys::{Key, key};
use crate::scenario::units::{Unit, Units};
use crate::scenario::{HandsKeep, Scenario};
use crate::words::Message;

pub const ORDER: Message = Message("compare-order");

/// From the attempt beside to the present one.
#[derive(Debug, Clone, PartialEq)]
pub struct Compared {
    pub comparison: Comparison,
    /// What the attempt beside is called.
    pub beside: String,
    scenarios: [Scenario; 2],
    /// Hundredths of a turn of each difference, in the comparison's order.
    pub parts: Vec<i64>,
    /// Turns in all of both, in hundredths; the parts add up to their difference.
    pub turns: [i64; 2],
}

impl Compared {
    pub fn new(name: &str, beside: &Scenario, present: &Scenario) -> Self {
        let comparison = Comparison::new(beside, present);
        let turns = comparison.turns.map(hundredths);
        let exact: Vec<f64> = comparison
            .differences
            .iter()
            .map(|difference| 100.0 * difference.turns)
            .collect();
        Self {
            beside: name.to_owned(),
            parts: rounded(&exact, turns[1] - turns[0]),
            scenarios: [beside.clone(), present.clone()],
            comparison,
            turns,
        }
    }

    /// Hundredths of a turn, as the parts add up to.
    pub const fn whole(&self) -> i64 {
        self.turns[1] - self.turns[0]
    }

    /// What a difference is called.
    pub fn label(&self, place: usize) -> &'static str {
        let name = self.comparison.differences[place].key;
        key(name).map_or_else(|| word_label(name), Key::label)
    }

    /// What it was and what it is.
    pub fn change(&self, place: usize, units: &Units) -> [String; 2] {
        let name = self.comparison.differences[place].key;
        match key(name) {
            Some(key) => numbers(key, &self.scenarios, units),
            None => self
                .scenarios
                .each_ref()
                .map(|scenario| word(name, scenario).into_owned()),
        }
    }

    /// What it comes down to, in one sentence.
    pub fn sentence(&self) -> String {
        let beside = &self.beside;
        if self.parts.is_empty() {
            return format!("This jump and “{beside}” are the same: nothing differs.");
        }
        let whole = self.whole();
        let size = turns_text(whole.abs());
        let mut said = match whole {
            0 => format!("This jump turns as much as “{beside}”"),
            1.. => format!("This jump turns {size} more than “{beside}”"),
            _ => format!("This jump turns {size} less than “{beside}”"),
        };
        // What works the other way explains nothing.
        let with = |part: i64| {
            if whole == 0 {
                part
            } else {
                part * whole.signum()
            }
        };
        let largest = (0..self.parts.len()).rev().max_by_key(|&i| {
            if whole == 0 {
                self.parts[i].abs()
            } else {
                with(self.parts[i])
            }
        });
        let Some(largest) =
            largest.filter(|&i| self.parts[i] != 0 && (whole == 0 || with(self.parts[i]) > 0))
        else {
            return said + ".";
        };
        let by = format!(
            "{} ({})",
            self.label(largest).to_lowercase(),
            signed_text(self.parts[largest])
        );
        let part = with(self.parts[largest]);
        said += &if whole == 0 {
            format!("; the differences cancel out, the largest is {by}.")
        } else if self.parts.len() == 1 {
            format!(", all of it by {}.", self.label(largest).to_lowercase())
        } else if 2 * part > whole.abs() && part <= whole.abs() {
            format!("; most of it by {by}.")
        } else {
            format!("; the largest part is {by}.")
        };
        said
    }
}

/// Whole numbers near the exact ones that add up to `whole`, which is nearer than 1 to the sum of
/// the exact ones (largest remainder: all are rounded down, and those that lost most get one more).
/// What is nothing stays nothing.
pub fn rounded(exact: &[f64], whole: i64) -> Vec<i64> {
    let mut parts: Vec<i64> = exact.iter().map(|part| part.floor() as i64).collect();
    let missing = whole - parts.iter().sum::<i64>();
    let mut by_loss: Vec<usize> = (0..exact.len()).collect();
    let lost = |i: &usize| exact[*i] - exact[*i].floor();
    by_loss.sort_by(|a, b| lost(b).total_cmp(&lost(a)));
    for i in by_loss.into_iter().take(missing.max(0) as usize) {
        parts[i] += 1;
    }
    parts
}

/// Rounded to hundredths just as any other text on the page rounds.
fn hundredths(turns: f64) -> i64 {
    let text = format!("{turns:.2}").replace('.', "");
    text.parse().unwrap_or_default()
}

/// Hundredths of a turn as text: "1.53", "−0.33".
pub fn turns_text(hundredths: i64) -> String {
    let sign = if hundredths < 0 { "−" } else { "" };
    let size = hundredths.unsigned_abs();
    format!("{sign}{}.{:02}", size / 100, size % 100)
}

/// The same with a sign wherever there is something: "+0.27".
pub fn signed_text(hundredths: i64) -> String {
    let sign = if hundredths > 0 { "+" } else { "" };
    format!("{sign}{}", turns_text(hundredths))
}

/// Two values of a number, with as many decimals as it takes to tell them apart.
fn numbers(key: &Key, scenarios: &[Scenario; 2], units: &Units) -> [String; 2] {
    const MOST_DECIMALS: usize = 6;
    let unit = units.of(key.kind);
    let told = |decimals| {
        let unit = Unit { decimals, ..unit };
        scenarios
            .each_ref()
            .map(|scenario| unit.text((key.get)(scenario)))
    };
    (unit.decimals..MOST_DECIMALS)
        .map(told)
        .find(|[from, to]| from != to)
        .unwrap_or_else(|| told(MOST_DECIMALS))
}

fn word_label(name: &str) -> &'static str {
    match name {
        "jump" => "Jump",
        "jump_turns" => "Turns in the name",
        "table" => "Mass table",
        "ground" => "Jumps on",
        "turning" => "Turns, seen from above",
        _ => "Heavier hands keep",
    }
}

fn word(name: &str, scenario: &Scenario) -> Cow<'static, str> {
    match name {
        "jump" => scenario.jump.label().into(),
        "jump_turns" => scenario.jump_turns.to_string().into(),
        "table" => match scenario.table {
            SegmentTable::Female => "female",
            SegmentTable::Male => "male",
        }
        .into(),
        "ground" => match scenario.ground {
            Ground::Ice => "ice",
            Ground::Floor => "floor",
            Ground::Trampoline => "trampoline",
        }
        .into(),
        "turning" => match scenario.turning {
            Turning::Anticlockwise => "anticlockwise",
            Turning::Clockwise => "clockwise",
        }
        .into(),
        _ => match scenario.hands_keep {
            HandsKeep::Rate => "rate",
            HandsKeep::AngularMomentum => "momentum",
            HandsKeep::Energy => "energy",
        }
        .into(),
    }
}
