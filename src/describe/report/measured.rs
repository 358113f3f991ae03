//! What was found from an attempt, as the command prints it.

use std::collections::BTreeMap;

use serde::{Serialize, Serializer};

use crate::fit::{further_mark, largest_loss, other_answers, other_turning};
use crate::measuring_caution::MeasuringCaution;
use crate::{Sentence, Text};
use turns_aloft_analysis::budget::Cause;
use turns_aloft_analysis::caution::Caution;
use turns_aloft_attempt::{Attempt, Measured};
use turns_aloft_fit::Fit;
use turns_aloft_fit::fit::CountAnswer;
use turns_aloft_fit::quantity::{Quantity, correlation};
use turns_aloft_fit::untold::{FurtherMark, MarkOf};
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::file::Saved;

/// SI units in the names. `scenario` is the likeliest jump, as a scenario file has it.
#[derive(Debug, Serialize)]
pub struct MeasuredReport<'a> {
    pub name: &'a str,
    pub measured_by: &'static str,
    /// What is to be said of it.
    pub sentences: Vec<String>,
    /// What is to be known of the trace that it was measured by.
    pub remarks: Vec<String>,
    pub turns: f64,
    pub turns_low: f64,
    pub turns_high: f64,
    /// Counts of turns, the likeliest first.
    pub answers: Vec<AnswerReport>,
    pub found: Found,
    pub correlations: Correlations,
    /// How likely each cause is the one that lost most.
    pub largest_loss_chances: BTreeMap<&'static str, f64>,
    /// Losses of which one makes up for the other.
    pub trade: Vec<TradeReport>,
    pub further_mark: Option<FurtherMarkReport>,
    pub scenario: Saved<&'a Scenario>,
    pub cautions: Vec<&'static str>,
}

#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct AnswerReport {
    pub chance: f64,
    pub turns: f64,
    pub turns_low: f64,
    pub turns_high: f64,
    pub air_turns: f64,
    pub air_turns_low: f64,
    pub air_turns_high: f64,
}

impl AnswerReport {
    const fn new(answer: &CountAnswer) -> Self {
        Self {
            chance: answer.chance,
            turns: answer.turns.middle,
            turns_low: answer.turns.low,
            turns_high: answer.turns.high,
            air_turns: answer.air_turns.middle,
            air_turns_low: answer.air_turns.low,
            air_turns_high: answer.air_turns.high,
        }
    }
}

/// A number that was found: of the likeliest jump, the middle of all, and where 95 % of them lie.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct FoundNumber {
    pub likeliest: f64,
    pub middle: f64,
    pub low: f64,
    pub high: f64,
    pub half_width: f64,
}

/// Each under its published key.
#[derive(Debug, Clone, PartialEq)]
pub struct Found(Vec<(Quantity, FoundNumber)>);

impl Found {
    fn new(fit: &Fit) -> Self {
        let each = Quantity::all().map(|quantity| {
            let range = fit.range(quantity);
            let number = FoundNumber {
                likeliest: quantity.of(&fit.best),
                middle: range.middle,
                low: range.low,
                high: range.high,
                half_width: range.half_width(),
            };
            (quantity, number)
        });
        Self(each.collect())
    }
}

impl Serialize for Found {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(
            self.0
                .iter()
                .map(|(quantity, number)| (quantity.key(), number)),
        )
    }
}

/// Coefficients of all with all, in the order of their keys; none where one is the same in all samples.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Correlations {
    pub of: Vec<&'static str>,
    pub coefficients: Vec<Vec<Option<f64>>>,
}

impl Correlations {
    fn new(fit: &Fit) -> Self {
        let all: Vec<Quantity> = Quantity::all().collect();
        let values: Vec<Vec<f64>> = all.iter().map(|quantity| fit.values(*quantity)).collect();
        let rounded = |it: f64| (1e3 * it).round() / 1e3;
        let with = |one: &Vec<f64>| {
            let each = values
                .iter()
                .map(|other| correlation(one, other).map(rounded));
            each.collect()
        };
        Self {
            of: all.iter().map(|quantity| quantity.key()).collect(),
            coefficients: values.iter().map(with).collect(),
        }
    }
}

#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct TradeReport {
    pub of: [Cause; 2],
    pub correlation: f64,
}

/// The mark that would tell most of what is left open, and the part of its variance that it would take away.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct FurtherMarkReport {
    pub of: &'static str,
    /// None for take-off and landing.
    pub t_s: Option<f64>,
    pub takes_away: f64,
}

impl FurtherMarkReport {
    const fn new(further: &FurtherMark) -> Self {
        let (of, t_s) = match further.of {
            MarkOf::Facing(t_s) => ("facing", Some(t_s)),
            MarkOf::Arms(t_s) => ("arms", Some(t_s)),
            MarkOf::Legs(t_s) => ("legs", Some(t_s)),
            MarkOf::Contacts => ("contacts", None),
        };
        Self {
            of,
            t_s,
            takes_away: further.takes_away,
        }
    }
}

fn sentences(fit: &Fit) -> Vec<String> {
    let mut said = vec![fit.sentence()];
    said.extend(other_turning(fit).map(str::to_owned));
    said.extend(other_answers(fit));
    said.push(largest_loss(fit));
    said.extend(further_mark(fit));
    said
}

impl<'a> MeasuredReport<'a> {
    pub fn new(attempt: &'a Attempt, fit: &'a Fit, remarks: Vec<String>) -> Self {
        let turns = fit.range(Quantity::Turns);
        let chances = Cause::ORDER.into_iter().zip(fit.untold.largest);
        let trade = fit.untold.trade.iter();
        let measuring = MeasuringCaution::ALL.map(Text::text);
        Self {
            name: &attempt.scenario.name,
            measured_by: match attempt.measured {
                Measured::StopWatch(_) => "stop_watch",
                Measured::Film(_) => "film",
                Measured::Sensor(_) => "sensor",
            },
            sentences: sentences(fit),
            remarks,
            turns: turns.middle,
            turns_low: turns.low,
            turns_high: turns.high,
            answers: fit.answers.iter().map(AnswerReport::new).collect(),
            found: Found::new(fit),
            correlations: Correlations::new(fit),
            largest_loss_chances: chances
                .map(|(cause, chance)| (cause_key(cause), chance))
                .collect(),
            trade: trade
                .map(|&(one, other, correlation)| TradeReport {
                    of: [one, other],
                    correlation,
                })
                .collect(),
            further_mark: fit.untold.further.as_ref().map(FurtherMarkReport::new),
            scenario: fit.best.scenario.saved(),
            cautions: measuring
                .into_iter()
                .chain([Caution::Adults, Caution::Ask].map(Text::text))
                .collect(),
        }
    }
}

const fn cause_key(cause: Cause) -> &'static str {
    match cause {
        Cause::Closing => "closing",
        Cause::Tightness => "tightness",
        Cause::Opening => "opening",
        Cause::Tilt => "tilt",
    }
}
