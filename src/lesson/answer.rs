//! What kind of answer a step asks for, and what each option of a choice stands for.

use crate::figure::Figure;
use crate::quantity::Quantity;
use crate::said::Said;

/// What is predicted.
#[derive(Debug, Clone, PartialEq)]
pub enum Answer {
    /// The value of a figure.
    Number(Figure),
    Choice(Choice),
    /// A curve over the time of the flight, drawn on its chart.
    Curve(OfCurve),
    /// In the pupil's own words: there is no right answer to compare them with.
    Words,
}

/// Which curve, of what.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OfCurve {
    pub curve: String,
    /// The variant's place; none for what is set up.
    pub variant: Option<usize>,
}

/// A choice: its options, two at least, and by what the right one is found.
#[derive(Debug, Clone, PartialEq)]
pub enum Choice {
    /// The variant that makes the most of a quantity, or the least. The figure's own variant is of no account.
    Best {
        of: Quantity,
        most: bool,
        options: Vec<(Said, Option<usize>)>,
    },
    /// Whether the second figure is more than the first.
    Change {
        figures: [Figure; 2],
        options: Vec<(Said, Meaning)>,
    },
    /// The option whose value is the nearest to the figure's.
    Nearest {
        of: Figure,
        options: Vec<(Said, f64)>,
    },
    /// An opinion: none of them is right.
    Open { options: Vec<Said> },
}

/// What comes of a quantity from one figure to another.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Meaning {
    Rises,
    Falls,
    Stays,
}

impl Meaning {
    pub const ALL: [Self; 3] = [Self::Rises, Self::Falls, Self::Stays];

    /// The word for it in files.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Rises => "rises",
            Self::Falls => "falls",
            Self::Stays => "stays",
        }
    }

    pub fn named(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|it| it.key() == key)
    }
}

impl Choice {
    /// The options' texts.
    pub fn texts(&self) -> Vec<&Said> {
        match self {
            Self::Best { options, .. } => options.iter().map(|(said, _)| said).collect(),
            Self::Change { options, .. } => options.iter().map(|(said, _)| said).collect(),
            Self::Nearest { options, .. } => options.iter().map(|(said, _)| said).collect(),
            Self::Open { options } => options.iter().collect(),
        }
    }
}

impl Answer {
    /// What it is about, each once: variants by their places, none for what is set up.
    pub fn about(&self) -> Vec<Option<usize>> {
        let all = match self {
            Self::Number(figure) => vec![figure.variant],
            Self::Choice(Choice::Best { options, .. }) => options.iter().map(|it| it.1).collect(),
            Self::Choice(Choice::Change { figures, .. }) => figures.map(|it| it.variant).into(),
            Self::Choice(Choice::Nearest { of, .. }) => vec![of.variant],
            Self::Curve(of) => vec![of.variant],
            Self::Choice(Choice::Open { .. }) | Self::Words => vec![None],
        };
        let mut each: Vec<Option<usize>> = Vec::new();
        for one in all {
            if !each.contains(&one) {
                each.push(one);
            }
        }
        each
    }
}
