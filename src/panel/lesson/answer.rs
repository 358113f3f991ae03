//! What is asked for, to be filled in: a number, one of several options, a curve, or words.

use egui::Ui;

use crate::controls::{NumberText, TextBox};
use crate::lesson::edits::Edits;
use crate::lesson::{curve, option, picture};
use crate::number_row;
use crate::text::small;
use turns_aloft_describe::Label;
use turns_aloft_describe::number::plain;
use turns_aloft_describe::quantity::unit;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_lesson::figure::Figure;
use turns_aloft_lesson::{Answer, Prediction};
use turns_aloft_session::Session;
use turns_aloft_session::lesson::{LessonInSight, asked, option as option_text};
use turns_aloft_words::{number, say, text};

pub fn show(ui: &mut Ui, session: &mut Session, lesson: &LessonInSight, edits: &mut Edits) {
    small(ui, asked(lesson.step()));
    let given = lesson.progress().record().prediction.as_ref();
    match &lesson.step().answer {
        Answer::Number(figure) => {
            let given = match given {
                Some(Prediction::Number(si)) => Some(*si),
                _ => None,
            };
            of_number(ui, session, figure, given, edits);
        }
        Answer::Choice(choice) if lesson.lesson().pictures => {
            let chosen = match given {
                Some(Prediction::Choice(place)) => Some(*place),
                _ => None,
            };
            if let Some(place) = picture::show(ui, lesson, choice, chosen) {
                session.predict(Some(Prediction::Choice(place)));
            }
        }
        Answer::Choice(choice) => {
            for place in 0..choice.texts().len() {
                let name = format!("lesson option:{}", place + 1);
                let chosen = given == Some(&Prediction::Choice(place));
                let label = option_text(lesson, place, session.units());
                if option::show(ui, &name, &label, chosen).clicked() {
                    session.predict(Some(Prediction::Choice(place)));
                }
            }
        }
        Answer::Curve(of) => curve::predict(ui, session, lesson, of),
        Answer::Words => {
            let given = match given {
                Some(Prediction::Words(words)) => words.as_str(),
                _ => "",
            };
            let words = TextBox {
                name: "lesson words",
                accessible_name: text("lesson-words"),
                text: given,
                placeholder: text("lesson-words"),
            };
            if let Some(typed) = words.show(ui, edits.texts) {
                let said = (!typed.trim().is_empty()).then_some(Prediction::Words(typed));
                session.predict(said);
            }
        }
    }
}

fn of_number(
    ui: &mut Ui,
    session: &mut Session,
    figure: &Figure,
    given: Option<f64>,
    edits: &mut Edits,
) {
    let label = figure.quantity.label();
    let unit = unit(figure.quantity, session.units());
    let value = |si: f64| match &unit {
        Some(unit) => unit.set_text(si),
        None => plain(si),
    };
    let shown = NumberText {
        value: given.map_or_else(|| text("lesson-type-number").to_owned(), value),
        number: match (&unit, given) {
            (_, None) => String::new(),
            (Some(unit), Some(si)) => unit.set_number(si),
            (None, Some(si)) => plain(si),
        },
        sign: unit.as_ref().map_or("", |unit| unit.sign()),
    };
    let Some(typed) = number_row::show(ui, edits.numbers, "lesson number", label, shown) else {
        return;
    };
    let alone = match &unit {
        Some(unit) => typed.trim().trim_end_matches(unit.sign()),
        None => typed.trim(),
    };
    match number(alone) {
        Some(value) => {
            let si = unit.map_or(value, |unit| unit.to_si(value));
            session.predict(Some(Prediction::Number(si)));
        }
        None if typed.trim().is_empty() => session.predict(None),
        None => session.say(say!("number-needed", what = label)),
    }
}
