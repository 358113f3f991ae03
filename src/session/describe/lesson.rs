//! The lesson in sight as lines of text.

use std::borrow::Cow;

use crate::describe::reading::{Group, Reading, line};
use crate::session::Session;
use crate::state::lesson::LessonInSight;
use turns_aloft_describe::outcome::{self, Outcome};
use turns_aloft_describe::quantity::{figure_text, filled};
use turns_aloft_lesson::said::Said;
use turns_aloft_lesson::{Answer, Choice, Stage, Step, Truth};
use turns_aloft_scenario::units::Units;
use turns_aloft_words::{say, text};

/// "Step 2 of 6: …".
pub fn place(lesson: &LessonInSight) -> String {
    say!(
        "lesson-place",
        place = lesson.progress().at() + 1,
        steps = lesson.lesson().steps.len()
    )
}

/// A text of the step in sight with its figures, as far as those may be seen.
pub fn shown(said: &Said, lesson: &LessonInSight, units: &Units) -> String {
    filled(said.text(), lesson.step(), lesson.flights(), units)
}

/// What was predicted, in words; none where nothing was, or where it is a curve.
pub fn predicted(lesson: &LessonInSight, units: &Units) -> Option<String> {
    let (step, record) = (lesson.step(), lesson.progress().record());
    if matches!(step.answer, Answer::Curve(_)) {
        return None;
    }
    Outcome::of(step, record, lesson.flights(), units).map(|it| it.predicted)
}

/// What is right, in words; none where nothing is, or where it is a curve.
pub fn happened(lesson: &LessonInSight, units: &Units) -> Option<String> {
    match (lesson.truth()?, &lesson.step().answer) {
        (Truth::Number(_), Answer::Number(figure)) => figure_text(figure, lesson.flights(), units),
        (Truth::Choice { right, .. }, _) => Some(option(lesson, *right, units)),
        _ => None,
    }
}

/// The text of an option.
pub fn option(lesson: &LessonInSight, place: usize, units: &Units) -> String {
    outcome::option(lesson.step(), place, lesson.flights(), units)
}

/// What kind of answer is asked for, for whom the answer is drawn or chosen.
pub fn asked(step: &Step) -> &'static str {
    match &step.answer {
        Answer::Number(_) => text("lesson-ask-number"),
        Answer::Choice(Choice::Open { .. }) => text("lesson-ask-opinion"),
        Answer::Choice(_) => text("lesson-ask-choice"),
        Answer::Curve(_) => text("lesson-ask-curve"),
        Answer::Words => text("lesson-ask-words"),
    }
}

/// What one of the flights is called that the answer is about.
pub fn scene(lesson: &LessonInSight, place: usize) -> String {
    let of_option = match &lesson.step().answer {
        Answer::Choice(Choice::Best { options, .. }) => {
            let is_it =
                |option: &&(Said, Option<usize>)| Some(&option.1) == lesson.scenes.get(place);
            options
                .iter()
                .find(is_it)
                .map(|(said, _)| said.text().to_owned())
        }
        _ => None,
    };
    of_option.unwrap_or_else(|| say!("lesson-flight", number = place + 1))
}

/// What the step is at.
pub fn stage(stage: Stage) -> &'static str {
    match stage {
        Stage::Predict => text("lesson-stage-predict"),
        Stage::Fly => text("lesson-stage-fly"),
        Stage::Observe => text("lesson-stage-observe"),
        Stage::Explain => text("lesson-stage-explain"),
    }
}

pub(crate) fn lines(session: &Session, lesson: &LessonInSight) -> Vec<Reading> {
    let units = session.units();
    let line = |quantity: &'static str, label: String, said: String| {
        let (quantity, label) = (Cow::Borrowed(quantity), Cow::Owned(label));
        line(Group::Answer, quantity, label, said, String::new())
    };
    let title = lesson.lesson().title.text();
    if !lesson.is_begun() {
        let whom = lesson.lesson().for_whom.text();
        return vec![line(
            "lesson:title",
            text("lesson").to_owned(),
            format!("{title}. {whom}"),
        )];
    }
    let step = lesson.step();
    let at = format!("{}: {}", place(lesson), step.title.text());
    let mut lines = vec![
        line("lesson:step", title.to_owned(), at),
        line(
            "lesson:stage",
            text("lesson-stage").to_owned(),
            stage(lesson.progress().stage()).to_owned(),
        ),
        line(
            "lesson:question",
            text("lesson-question").to_owned(),
            shown(&step.question, lesson, units),
        ),
    ];
    if lesson.progress().stage() == Stage::Explain && lesson.is_truth_shown() {
        let found = [
            (
                "lesson:predicted",
                "lesson-predicted",
                predicted(lesson, units),
            ),
            (
                "lesson:happened",
                "lesson-happened",
                happened(lesson, units),
            ),
        ];
        for (quantity, label, said) in found {
            if let Some(said) = said {
                lines.push(line(quantity, text(label).to_owned(), said));
            }
        }
        lines.push(line(
            "lesson:explanation",
            text("lesson-explanation").to_owned(),
            shown(&step.explanation, lesson, units),
        ));
    }
    lines
}
