//! What is right, worked out from a step's flights.

use crate::answer::{Answer, Choice, Meaning};
use crate::figure::Figure;
use crate::flights::Flights;
use crate::step::Step;

/// Values that differ by less than this share of the larger one count as the same. Our choice.
pub const SAME: f64 = 0.01;

/// What is right.
#[derive(Debug, Clone, PartialEq)]
pub enum Truth {
    /// In SI.
    Number(f64),
    Choice {
        /// The option's place.
        right: usize,
        /// What it follows from: the value of each option, of both figures, or of the one figure.
        values: Vec<f64>,
    },
    /// Times and values, in SI.
    Curve(Vec<[f64; 2]>),
    /// Nothing is right or wrong: an opinion, or the pupil's own words.
    Open,
}

/// Why nothing can be said to be right.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unanswerable {
    /// Nothing has been flown from which it would follow.
    NotFlown,
    /// Two options are as good as each other, by their places.
    Tie([usize; 2]),
    /// What comes of it is none of the options.
    NotAmongOptions(Meaning),
}

impl Step {
    /// What is right, by its flights.
    pub fn truth(&self, flights: &Flights) -> Result<Truth, Unanswerable> {
        match &self.answer {
            Answer::Number(figure) => {
                let value = flights.value(figure);
                value.map(Truth::Number).ok_or(Unanswerable::NotFlown)
            }
            Answer::Choice(choice) => choice.truth(flights),
            Answer::Curve(of) => {
                let flown = flights.one(of.variant);
                let points = flown.and_then(|flown| flown.points(&of.curve));
                points.map(Truth::Curve).ok_or(Unanswerable::NotFlown)
            }
            Answer::Words => Ok(Truth::Open),
        }
    }
}

impl Choice {
    fn truth(&self, flights: &Flights) -> Result<Truth, Unanswerable> {
        let flown = |value: Option<f64>| value.ok_or(Unanswerable::NotFlown);
        match self {
            Self::Best { of, most, options } => {
                let value = |variant: &Option<usize>| {
                    flown(flights.value(&Figure {
                        quantity: *of,
                        variant: *variant,
                    }))
                };
                let values: Result<Vec<f64>, _> = options.iter().map(|(_, it)| value(it)).collect();
                let values = values?;
                let sign = if *most { 1.0 } else { -1.0 };
                let better = values.iter().map(|value| sign * value).collect::<Vec<_>>();
                let [right, second] = best_two(&better);
                if meaning(values[right], values[second]) == Meaning::Stays {
                    return Err(Unanswerable::Tie([right, second]));
                }
                Ok(Truth::Choice { right, values })
            }
            Self::Change { figures, options } => {
                let [from, to] = figures.map(|figure| flown(flights.value(&figure)));
                let [from, to] = [from?, to?];
                let comes = meaning(from, to);
                let right = options.iter().position(|(_, meaning)| *meaning == comes);
                let right = right.ok_or(Unanswerable::NotAmongOptions(comes))?;
                let values = vec![from, to];
                Ok(Truth::Choice { right, values })
            }
            Self::Nearest { of, options } => {
                let value = flown(flights.value(of))?;
                let near: Vec<f64> = options.iter().map(|(_, it)| -(it - value).abs()).collect();
                let [right, second] = best_two(&near);
                // As near to the one as to the other.
                if (near[right] - near[second]).abs() <= SAME * value.abs() {
                    return Err(Unanswerable::Tie([right, second]));
                }
                let values = vec![value];
                Ok(Truth::Choice { right, values })
            }
            Self::Open { .. } => Ok(Truth::Open),
        }
    }
}

/// What comes of a quantity that was `from` and is `to`.
pub fn meaning(from: f64, to: f64) -> Meaning {
    if (to - from).abs() <= SAME * from.abs().max(to.abs()) {
        Meaning::Stays
    } else if to > from {
        Meaning::Rises
    } else {
        Meaning::Falls
    }
}

/// The places of the largest value and of the next one; of equal ones the first comes first.
fn best_two(values: &[f64]) -> [usize; 2] {
    let largest = |without: Option<usize>| {
        let mut found: Option<usize> = None;
        for (place, value) in values.iter().enumerate() {
            let larger = found.is_none_or(|best| *value > values[best]);
            if Some(place) != without && larger {
                found = Some(place);
            }
        }
        found.unwrap_or_default()
    };
    let first = largest(None);
    [first, largest(Some(first))]
}
