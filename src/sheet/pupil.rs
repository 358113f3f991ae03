//! The pupil's sheet: questions, room for predictions and reasons, empty charts, and a table to fill in.

use crate::chart::Chart;
use crate::html::{Page, code, escaped, lines, paragraph, table};
use crate::pictured::pictured;
use turns_aloft_describe::outcome::{curve_label, curve_unit, option};
use turns_aloft_describe::quantity::{filled, unit};
use turns_aloft_describe::unit::UnitText;
use turns_aloft_lesson::{Answer, Flights, Lesson, Step};
use turns_aloft_scenario::units::Units;
use turns_aloft_words::text;

/// Lines for an answer in words, for a reason and for what was seen.
const WORDS_LINES: usize = 3;
const REASON_LINES: usize = 1;
const SEEN_LINES: usize = 1;

/// The sheet in the language spoken; `address` opens the lesson.
pub fn pupil(lesson: &Lesson, units: &Units, address: Option<&str>) -> String {
    let mut page = Page::new(lesson.title.text());
    let how = if lesson.pictures {
        text("sheet-how-pictures")
    } else {
        text("sheet-how")
    };
    let name = format!(
        "<p>{} <span class=\"fill wide\"></span> {} <span class=\"fill\"></span></p><p>{}</p>",
        escaped(text("sheet-name")),
        escaped(text("sheet-date")),
        escaped(how)
    );
    page.header(text("sheet-pupil"), &name, code(address));
    for (i, step) in lesson.steps.iter().enumerate() {
        let flights = Flights::of(step);
        let heading = format!(
            "{}. {}",
            i + 1,
            filled(step.title.text(), step, &flights, units)
        );
        page.section(&heading, &asked(lesson, step, &flights, units));
    }
    if lesson
        .steps
        .iter()
        .any(|step| !matches!(step.answer, Answer::Words))
        && !lesson.pictures
    {
        page.section(text("sheet-table"), &to_fill_in(lesson, units));
    }
    page.finished()
}

fn asked(lesson: &Lesson, step: &Step, flights: &Flights, units: &Units) -> String {
    let said = |text: &str| filled(text, step, flights, units);
    let mut html = paragraph(&said(step.question.text()));
    html += &room(lesson, step, flights, units);
    if step.reason {
        html += &format!(
            "<p>{}</p>{}",
            escaped(text("sheet-reason")),
            lines(REASON_LINES)
        );
    }
    if let Some(observe) = &step.observe {
        html += &format!(
            "<p>{}</p>{}",
            escaped(&said(observe.text())),
            lines(SEEN_LINES)
        );
    }
    html
}

/// Room for the prediction.
fn room(lesson: &Lesson, step: &Step, flights: &Flights, units: &Units) -> String {
    match &step.answer {
        Answer::Number(figure) => {
            let unit = unit(figure.quantity, units).map_or("", |unit| unit.sign());
            let label = escaped(text("lesson-table-prediction"));
            format!(
                "<p>{label}: <span class=\"fill\"></span> {}</p>",
                escaped(unit)
            )
        }
        Answer::Choice(choice) if lesson.pictures => pictured(choice, None, step, flights, units),
        Answer::Choice(choice) => {
            let items: String = (0..choice.texts().len())
                .map(|place| format!("<li>{}</li>", escaped(&option(step, place, flights, units))))
                .collect();
            format!("<ul class=\"options\">{items}</ul>")
        }
        Answer::Curve(of) => {
            let flown = flights.one(of.variant).and_then(|it| it.points(&of.curve));
            let (Some(flown), Some(unit)) = (flown, curve_unit(of, step, units)) else {
                return String::new();
            };
            let chart = Chart {
                label: curve_label(of),
                unit,
                flown: &flown,
                shown: false,
                drawn: &[],
            };
            format!("<figure class=\"chart\">{}</figure>", chart.svg())
        }
        Answer::Words => lines(WORDS_LINES),
    }
}

/// What was predicted and what was seen, step by step.
fn to_fill_in(lesson: &Lesson, units: &Units) -> String {
    let rows = lesson.steps.iter().enumerate().filter_map(|(i, step)| {
        let unit = match &step.answer {
            Answer::Number(figure) => unit(figure.quantity, units).map_or("", |it| it.sign()),
            Answer::Choice(_) | Answer::Curve(_) => "",
            Answer::Words => return None,
        };
        let flights = Flights::of(step);
        let title = filled(step.title.text(), step, &flights, units);
        Some(vec![
            escaped(&format!("{}. {title}", i + 1)),
            String::new(),
            String::new(),
            escaped(unit),
        ])
    });
    table(
        &[
            text("lesson-table-step"),
            text("lesson-table-prediction"),
            text("lesson-table-happened"),
            text("lesson-table-unit"),
        ],
        rows,
    )
}
