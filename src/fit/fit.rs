//! What the marks of an attempt say: its jump, and a few hundred that are as likely.

use crate::quantity::{Quantity, Range, correlation};
use crate::sample::Sample;
use crate::untold::Untold;
use turns_aloft_analysis::budget::Cause;
use turns_aloft_physics::order::by_number;
use turns_aloft_physics::plan::Turning;

/// The answer.
#[derive(Debug, Clone)]
pub struct Fit {
    /// The likeliest jump.
    pub best: Sample,
    /// Jumps that are all as likely.
    pub samples: Vec<Sample>,
    /// How many turns there may have been, whole turns apart: the likeliest first.
    pub answers: Vec<CountAnswer>,
    pub untold: Untold,
    /// How often each sample was moved on since it was drawn.
    pub moves_each: f64,
    /// The other direction of turning than the attempt's, if the facings are met far better by it.
    pub likelier_turning: Option<Turning>,
}

/// A number of turns that the marks allow, to a whole turn.
#[derive(Debug, Clone, PartialEq)]
pub struct CountAnswer {
    /// How likely it is.
    pub chance: f64,
    pub air_turns: Range,
    pub turns: Range,
}

/// A second answer that is less likely is not told of.
const TOLD_FROM: f64 = 0.05;

impl Fit {
    pub(crate) fn new(
        best: Sample,
        (samples, counts): (Vec<Sample>, &[usize]),
        untold: Untold,
        moves_each: f64,
        likelier_turning: Option<Turning>,
    ) -> Self {
        Self {
            answers: answers(&samples, counts),
            best,
            samples,
            untold,
            moves_each,
            likelier_turning,
        }
    }

    /// Of every sample.
    pub fn values(&self, quantity: Quantity) -> Vec<f64> {
        self.samples
            .iter()
            .map(|sample| quantity.of(sample))
            .collect()
    }

    pub fn range(&self, quantity: Quantity) -> Range {
        Range::of(self.values(quantity))
    }

    /// The cause that most samples lost most by.
    pub fn most_likely_largest_loss(&self) -> Cause {
        let each = Cause::ORDER.into_iter().zip(self.untold.largest);
        let likely = each.max_by(|one, other| one.1.total_cmp(&other.1));
        likely.expect("there are causes").0
    }

    /// None where one of both is the same in all samples.
    pub fn correlation(&self, one: Quantity, other: Quantity) -> Option<f64> {
        correlation(&self.values(one), &self.values(other))
    }
}

/// The samples by their count of turns.
fn answers(samples: &[Sample], counts: &[usize]) -> Vec<CountAnswer> {
    let most = counts.iter().copied().max().unwrap_or(0);
    let of_count = |count: usize| -> Vec<&Sample> {
        let each = samples.iter().zip(counts);
        each.filter(|(_, of)| **of == count)
            .map(|(it, _)| it)
            .collect()
    };
    let answers: Vec<CountAnswer> = (0..=most)
        .map(of_count)
        .filter(|of_it| !of_it.is_empty())
        .map(|of_it| CountAnswer {
            chance: of_it.len() as f64 / samples.len() as f64,
            air_turns: Range::of(of_it.iter().map(|it| it.air_turns).collect()),
            turns: Range::of(of_it.iter().map(|it| it.turns()).collect()),
        })
        .collect();
    let mut told = by_number(answers, |answer| -answer.chance).into_iter();
    let first = told.next().into_iter();
    first
        .chain(told.filter(|answer| answer.chance >= TOLD_FROM))
        .collect()
}
