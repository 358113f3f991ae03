//! The answer sheet for the teacher, worked out by the flights.

use crate::chart::Chart;
use crate::html::{Page, code, escaped, list, named, paragraph};
use crate::pictured::pictured;
use turns_aloft_analysis::caution::Caution;
use turns_aloft_describe::outcome::{curve_label, curve_unit, option};
use turns_aloft_describe::quantity::{figure_text, filled, value_text};
use turns_aloft_describe::report::lesson::NoAnswer;
use turns_aloft_describe::turntable_caution::TurntableCaution;
use turns_aloft_describe::{Label, Text};
use turns_aloft_lesson::{Answer, Choice, Flights, Lesson, Quantity, Setup, Step, Truth};
use turns_aloft_scenario::units::Units;
use turns_aloft_words::text;

/// The sheet in the language spoken; `address` opens the lesson. An error where a step has no right answer that
/// should have one.
pub fn answers(lesson: &Lesson, units: &Units, address: Option<&str>) -> Result<String, NoAnswer> {
    let mut page = Page::new(lesson.title.text());
    let about = paragraph(text("sheet-computed"));
    page.header(text("sheet-answers"), &about, code(address));
    for (i, step) in lesson.steps.iter().enumerate() {
        let number = i + 1;
        let flights = Flights::of(step);
        let truth = step.truth(&flights);
        let truth = truth.map_err(|why| NoAnswer { step: number, why })?;
        let heading = format!(
            "{number}. {}",
            filled(step.title.text(), step, &flights, units)
        );
        let answered = Answered {
            lesson,
            step,
            flights: &flights,
            units,
        };
        page.section(&heading, &answered.html(&truth));
    }
    let cautions = cautions(lesson);
    if !cautions.is_empty() {
        page.section(text("sheet-cautions"), &list(cautions));
    }
    Ok(page.finished())
}

/// All that the lesson's steps call for, each once.
pub fn cautions(lesson: &Lesson) -> Vec<&'static str> {
    let mut of_jumps: Vec<Caution> = Vec::new();
    for caution in lesson.steps.iter().flat_map(Step::cautions) {
        if !of_jumps.contains(&caution) {
            of_jumps.push(caution);
        }
    }
    let mut said: Vec<&str> = of_jumps.into_iter().map(Text::text).collect();
    if lesson.steps.iter().any(Step::turns_on_turntable) {
        said.extend(TurntableCaution::ALL.map(Text::text));
    }
    said
}

struct Answered<'a> {
    lesson: &'a Lesson,
    step: &'a Step,
    flights: &'a Flights,
    units: &'a Units,
}

impl Answered<'_> {
    fn html(&self, truth: &Truth) -> String {
        let said = |text: &str| filled(text, self.step, self.flights, self.units);
        let mut html = paragraph(&said(self.step.question.text()));
        if let Some(Setup::WorkedExample(example)) = &self.step.setup {
            html += &named(text("sheet-source"), example.source.text());
        }
        html += &self.right(truth);
        html += &paragraph(&said(self.step.explanation.text()));
        html
    }

    fn right(&self, truth: &Truth) -> String {
        match (truth, &self.step.answer) {
            (Truth::Number(_), Answer::Number(figure)) => {
                let value = figure_text(figure, self.flights, self.units);
                named(text("sheet-right"), &value.unwrap_or_default())
            }
            (Truth::Choice { right, values }, Answer::Choice(choice)) => {
                if self.lesson.pictures {
                    return pictured(choice, Some(*right), self.step, self.flights, self.units);
                }
                self.options(choice, Some(*right), values)
            }
            (Truth::Curve(flown), Answer::Curve(of)) => {
                let unit = curve_unit(of, self.step, self.units);
                unit.map_or_else(String::new, |unit| {
                    let chart = Chart {
                        label: curve_label(of),
                        unit,
                        flown,
                        shown: true,
                        drawn: &[],
                    };
                    format!("<figure class=\"chart\">{}</figure>", chart.svg())
                })
            }
            (_, Answer::Choice(choice)) => {
                self.options(choice, None, &[]) + &paragraph(text("sheet-open"))
            }
            _ => paragraph(text("sheet-own-words")),
        }
    }

    fn options(&self, choice: &Choice, right: Option<usize>, values: &[f64]) -> String {
        let items: String = (0..choice.texts().len())
            .map(|place| {
                let said = escaped(&option(self.step, place, self.flights, self.units));
                if right == Some(place) {
                    format!("<li class=\"right\">{said}</li>")
                } else {
                    format!("<li>{said}</li>")
                }
            })
            .collect();
        let follows = self.follows_from(choice, values);
        format!("<ul class=\"options\">{items}</ul>{follows}")
    }

    /// The figures by which the right option was found.
    fn follows_from(&self, choice: &Choice, values: &[f64]) -> String {
        let in_unit = |quantity: Quantity, value: f64| value_text(quantity, value, self.units);
        let (quantity, said) = match choice {
            Choice::Change { figures, .. } if figures[0].quantity != figures[1].quantity => {
                let each = figures.iter().zip(values).map(|(figure, value)| {
                    named(figure.quantity.label(), &in_unit(figure.quantity, *value))
                });
                return each.collect();
            }
            Choice::Best { of, options, .. } => {
                let each = (0..options.len()).zip(values).map(|(place, value)| {
                    let said = option(self.step, place, self.flights, self.units);
                    format!("{said}: {}", in_unit(*of, *value))
                });
                (*of, each.collect::<Vec<_>>().join("; "))
            }
            Choice::Change { figures, .. } => {
                let each = figures.iter().zip(values);
                let each = each.map(|(figure, value)| in_unit(figure.quantity, *value));
                let [from, ..] = figures;
                (from.quantity, each.collect::<Vec<_>>().join(" → "))
            }
            Choice::Nearest { of, .. } => {
                let value = values.first().map(|value| in_unit(of.quantity, *value));
                (of.quantity, value.unwrap_or_default())
            }
            Choice::Open { .. } => return String::new(),
        };
        named(quantity.label(), &said)
    }
}
