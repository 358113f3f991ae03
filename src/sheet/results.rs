//! What a pupil has predicted, what happened, and what was seen.

use crate::chart::Chart;
use crate::html::{Page, escaped, named, paragraph};
use turns_aloft_describe::outcome::{Outcome, curve_label, curve_unit};
use turns_aloft_describe::quantity::filled;
use turns_aloft_lesson::{
    Answer, Flights, Lesson, Prediction, Progress, Record, Stage, Step, Truth,
};
use turns_aloft_scenario::units::Units;
use turns_aloft_words::{decimal, say, text};

/// The sheet in the language spoken. What happened stands only where it has been explained.
pub fn results(lesson: &Lesson, progress: &Progress, units: &Units) -> String {
    let mut page = Page::new(lesson.title.text());
    let who = if progress.who.is_empty() {
        String::new()
    } else {
        named(text("sheet-name"), &progress.who)
    };
    page.header(text("sheet-results"), &who, None);
    for (i, (step, record)) in lesson.steps.iter().zip(progress.records()).enumerate() {
        let flights = Flights::of(step);
        let heading = format!(
            "{}. {}",
            i + 1,
            filled(step.title.text(), step, &flights, units)
        );
        page.section(&heading, &answered(step, record, &flights, units));
    }
    page.finished()
}

fn answered(step: &Step, record: &Record, flights: &Flights, units: &Units) -> String {
    let mut html = paragraph(&filled(step.question.text(), step, flights, units));
    let explained = record.stage == Stage::Explain;
    let Some(outcome) = Outcome::of(step, record, flights, units) else {
        return html + &paragraph(text("sheet-not-predicted"));
    };
    match drawn(step, record, flights, units) {
        Some(chart) => html += &chart,
        None => {
            let name = match step.answer {
                Answer::Words => text("sheet-answer"),
                _ => text("lesson-table-prediction"),
            };
            html += &named(name, &outcome.predicted);
        }
    }
    for (name, said) in [
        (text("lesson-table-reason"), &record.reason),
        (text("lesson-table-observation"), &record.observation),
    ] {
        if !said.trim().is_empty() {
            html += &named(name, said);
        }
    }
    if let Some(happened) = outcome.happened.filter(|_| explained && !is_curve(step)) {
        let judged = match (outcome.right, outcome.off_percent) {
            (Some(true), _) => text("sheet-was-right").to_owned(),
            (Some(false), _) => text("sheet-was-wrong").to_owned(),
            (None, Some(off)) if off < 0.0 => {
                say!("sheet-was-less", percent = decimal(-off, 0))
            }
            (None, Some(off)) => say!("sheet-was-more", percent = decimal(off, 0)),
            (None, None) => String::new(),
        };
        let both = format!("{happened} {judged}");
        html += &named(text("lesson-table-happened"), both.trim_end());
    }
    html
}

const fn is_curve(step: &Step) -> bool {
    matches!(step.answer, Answer::Curve(_))
}

/// The drawn curve, with the flown one where it has been explained.
fn drawn(step: &Step, record: &Record, flights: &Flights, units: &Units) -> Option<String> {
    let (Answer::Curve(of), Some(Prediction::Curve(drawn))) = (&step.answer, &record.prediction)
    else {
        return None;
    };
    let Ok(Truth::Curve(flown)) = step.truth(flights) else {
        return None;
    };
    let chart = Chart {
        label: curve_label(of),
        unit: curve_unit(of, step, units)?,
        flown: &flown,
        shown: record.stage == Stage::Explain,
        drawn,
    };
    let legend = escaped(text("sheet-drawn-dashed"));
    let svg = chart.svg();
    Some(format!(
        "<figure class=\"chart\">{svg}<figcaption>{legend}</figcaption></figure>"
    ))
}
