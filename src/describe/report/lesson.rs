//! The answer sheet of a lesson, worked out by its flights.

use std::collections::BTreeMap;

use serde::Serialize;

use crate::quantity::{figure_text, filled};
use crate::{Sentence, Text};
use turns_aloft_lesson::answer::{Answer, OfCurve};
use turns_aloft_lesson::figure::{Figure, Piece, pieces};
use turns_aloft_lesson::{Flights, Lesson, Said, Setup, Step, Truth, Unanswerable};
use turns_aloft_scenario::units::Units;

use crate::turntable_caution::TurntableCaution;

/// In the order of its steps; texts in the language spoken, with their figures put in.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LessonReport {
    pub title: String,
    pub for_whom: String,
    pub minutes: u64,
    pub steps: Vec<StepReport>,
}

#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct StepReport {
    /// Counted from 1.
    pub step: usize,
    pub title: String,
    /// Of a worked example: where it is printed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub source: Option<String>,
    pub question: String,
    pub answer: AnswerReport,
    pub explanation: String,
    /// Every figure that texts and answer have, in SI.
    pub figures: BTreeMap<String, f64>,
    pub cautions: Vec<&'static str>,
}

/// What is right.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum AnswerReport {
    Number {
        of: String,
        value: f64,
        text: String,
    },
    Choice {
        options: Vec<String>,
        /// The right option, counted from 1.
        right: usize,
        /// What it follows from, in SI.
        values: Vec<f64>,
    },
    Curve {
        of: String,
        /// Times and values, in SI.
        points: Vec<[f64; 2]>,
    },
    /// A choice of which no option is right.
    Open {
        options: Vec<String>,
    },
    Words,
}

/// A step without a right answer where there has to be one.
#[derive(Debug, Clone, PartialEq)]
pub struct NoAnswer {
    /// Counted from 1.
    pub step: usize,
    pub why: Unanswerable,
}

impl Sentence for NoAnswer {
    fn sentence(&self) -> String {
        turns_aloft_words::say!(
            "lesson-step-broken",
            number = self.step,
            why = self.why.sentence()
        )
    }
}

impl LessonReport {
    pub fn new(lesson: &Lesson, units: &Units) -> Result<Self, NoAnswer> {
        let steps = lesson.steps.iter().enumerate().map(|(i, step)| {
            let number = i + 1;
            StepReport::new(number, step, units).map_err(|why| NoAnswer { step: number, why })
        });
        Ok(Self {
            title: lesson.title.text().to_owned(),
            for_whom: lesson.for_whom.text().to_owned(),
            minutes: lesson.minutes,
            steps: steps.collect::<Result<_, _>>()?,
        })
    }
}

impl StepReport {
    fn new(number: usize, step: &Step, units: &Units) -> Result<Self, Unanswerable> {
        let flights = Flights::of(step);
        let said = |said: &Said| filled(said.text(), step, &flights, units);
        let source = match &step.setup {
            Some(Setup::WorkedExample(example)) => Some(example.source.text().to_owned()),
            _ => None,
        };
        let mut cautions: Vec<&str> = step.cautions().into_iter().map(Text::text).collect();
        if step.turns_on_turntable() {
            cautions.extend(TurntableCaution::ALL.map(Text::text));
        }
        Ok(Self {
            step: number,
            title: said(&step.title),
            source,
            question: said(&step.question),
            answer: answer(step, &flights, units)?,
            explanation: said(&step.explanation),
            figures: figures(step, &flights),
            cautions,
        })
    }
}

fn answer(step: &Step, flights: &Flights, units: &Units) -> Result<AnswerReport, Unanswerable> {
    let options = || match &step.answer {
        Answer::Choice(choice) => {
            let texts = choice.texts().into_iter();
            texts
                .map(|it| filled(it.text(), step, flights, units))
                .collect()
        }
        _ => Vec::new(),
    };
    Ok(match (step.truth(flights)?, &step.answer) {
        (Truth::Number(value), Answer::Number(figure)) => AnswerReport::Number {
            of: figure.written(&step.variants),
            value,
            text: figure_text(figure, flights, units).unwrap_or_default(),
        },
        (Truth::Choice { right, values }, _) => AnswerReport::Choice {
            options: options(),
            right: right + 1,
            values,
        },
        (Truth::Curve(points), Answer::Curve(of)) => AnswerReport::Curve {
            of: curve(of, step),
            points,
        },
        (_, Answer::Words) => AnswerReport::Words,
        (_, _) => AnswerReport::Open { options: options() },
    })
}

fn curve(of: &OfCurve, step: &Step) -> String {
    match of.variant.and_then(|place| step.variants.get(place)) {
        Some(variant) => format!("{}.{}", variant.name, of.curve),
        None => of.curve.clone(),
    }
}

fn figures(step: &Step, flights: &Flights) -> BTreeMap<String, f64> {
    let texts = [
        Some(&step.title),
        Some(&step.question),
        step.observe.as_ref(),
        Some(&step.explanation),
    ];
    let texts = texts.into_iter().flatten().flat_map(Said::all);
    let mut figures: Vec<Figure> = texts
        .flat_map(|text| pieces(text, &step.variants).unwrap_or_default())
        .filter_map(|piece| match piece {
            Piece::Figure(figure) => Some(figure),
            Piece::Plain(_) => None,
        })
        .collect();
    if let Answer::Number(figure) = &step.answer {
        figures.push(*figure);
    }
    let value = |it: &Figure| Some((it.written(&step.variants), flights.value(it)?));
    figures.iter().filter_map(value).collect()
}
