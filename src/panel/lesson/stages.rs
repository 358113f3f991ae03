//! A step of a lesson: predict, fly, observe, explain.

use egui::{RichText, Ui};

use crate::columns::halves;
use crate::command::{PageCommand, Sheet};
use crate::controls::{Button, TextBox};
use crate::lesson::edits::Edits;
use crate::lesson::introduction::{leave, paragraph};
use crate::lesson::{answer, curve, option};
use crate::number;
use crate::style::{self, GAP, TEXT, WEAK_TEXT};
use crate::text::{card, heading, small};
use crate::turntable;
use turns_aloft_describe::Text;
use turns_aloft_describe::turntable_caution::TurntableCaution;
use turns_aloft_lesson::{Answer, Setup, Stage};
use turns_aloft_scenario::units::Units;
use turns_aloft_session::lesson::{
    LessonInSight, happened, option as option_text, predicted, scene, shown,
};
use turns_aloft_session::{Saved, Session};
use turns_aloft_words::text;

pub fn show(
    ui: &mut Ui,
    session: &mut Session,
    lesson: &LessonInSight,
    edits: &mut Edits,
) -> Option<PageCommand> {
    let stage = lesson.progress().stage();
    let step = lesson.step();
    question(ui, session, lesson);
    match stage {
        Stage::Predict => predict(ui, session, lesson, edits),
        Stage::Fly => fly(ui, session, lesson, edits),
        Stage::Observe => observe(ui, session, lesson, edits),
        Stage::Explain => explain(ui, session, lesson, edits),
    }
    ui.add_space(GAP);
    go_on(ui, session, lesson);
    ui.add_space(GAP);
    let is_done = lesson.progress().is_done() && !lesson.is_for_class();
    let command = if is_done { done(ui) } else { None };
    let [left, right] = halves(ui);
    let back = Button::labelled("lesson back", text("lesson-back"));
    if back.show(ui, left).clicked() {
        session.go_back_in_lesson();
    }
    leave(ui, session, right);
    ui.add_space(GAP);
    for caution in step.cautions() {
        small(ui, caution.text());
    }
    if step.turns_on_turntable() {
        for caution in TurntableCaution::ALL {
            small(ui, caution.text());
        }
    }
    command
}

fn question(ui: &mut Ui, session: &Session, lesson: &LessonInSight) {
    let step = lesson.step();
    if let Some(Setup::WorkedExample(example)) = &step.setup {
        small(ui, example.source.text());
    }
    let said = shown(&step.question, lesson, session.units());
    ui.label(RichText::new(said).font(style::text(19.0)));
    ui.add_space(GAP);
}

fn predict(ui: &mut Ui, session: &mut Session, lesson: &LessonInSight, edits: &mut Edits) {
    if lesson.is_for_class() {
        small(ui, text("lesson-class-predicts"));
        for said in options(lesson, session.units()) {
            paragraph(ui, &format!("\u{2022} {said}"));
        }
        return;
    }
    answer::show(ui, session, lesson, edits);
    if lesson.step().reason {
        heading(ui, text("lesson-reason"));
        let reason = TextBox {
            name: "lesson reason",
            accessible_name: text("lesson-reason"),
            text: &lesson.progress().record().reason,
            placeholder: text("lesson-reason-about"),
        };
        if let Some(typed) = reason.show(ui, edits.texts) {
            session.give_reason(&typed);
        }
    }
}

fn options(lesson: &LessonInSight, units: &Units) -> Vec<String> {
    let count = match &lesson.step().answer {
        Answer::Choice(choice) => choice.texts().len(),
        _ => 0,
    };
    (0..count)
        .map(|place| option_text(lesson, place, units))
        .collect()
}

fn fly(ui: &mut Ui, session: &mut Session, lesson: &LessonInSight, edits: &mut Edits) {
    match &lesson.step().setup {
        Some(Setup::WorkedExample(_)) => example(ui, session, lesson),
        Some(Setup::Turntable(on)) if on.programme.is_none() => {
            small(ui, text("lesson-lead-it"));
        }
        _ => small(ui, text("lesson-fly-it")),
    }
    scenes(ui, session, lesson);
    free(ui, session, lesson, edits);
}

/// Which of the flights that the answer is about is in the picture.
fn scenes(ui: &mut Ui, session: &mut Session, lesson: &LessonInSight) {
    let (count, at) = lesson.scenes();
    if count < 2
        || !matches!(
            lesson.step().setup,
            Some(Setup::Jump(_) | Setup::Turntable(_))
        )
    {
        return;
    }
    small(ui, text("lesson-each"));
    for place in 0..count {
        let name = format!("lesson flight:{}", place + 1);
        let label = scene(lesson, place);
        if option::show(ui, &name, &label, place == at).clicked() {
            session.fly_lesson_scene(place);
        }
    }
}

/// A worked example has no body to be seen: its curves stand in place of the picture.
fn example(ui: &mut Ui, session: &Session, lesson: &LessonInSight) {
    small(ui, text("lesson-example-flown"));
    for curve in ["rate", "inertia", "momentum", "energy"] {
        curve::flown(ui, session, lesson, curve);
    }
}

/// What the step leaves free; all else is locked, which is said.
fn free(ui: &mut Ui, session: &mut Session, lesson: &LessonInSight, edits: &mut Edits) {
    let numbers = session.free_numbers();
    for parameter in &numbers {
        let marks = session.marks(*parameter);
        number::show(
            ui,
            session,
            edits.numbers,
            edits.about,
            *parameter,
            marks.as_ref(),
        );
    }
    if session.is_on_turntable() {
        turntable::free(ui, session, edits.numbers);
    }
    let said = if lesson.step().free.is_empty() {
        text("lesson-all-locked")
    } else {
        text("lesson-rest-locked")
    };
    small(ui, said);
}

fn observe(ui: &mut Ui, session: &mut Session, lesson: &LessonInSight, edits: &mut Edits) {
    if let Some(observe) = &lesson.step().observe {
        heading(ui, text("lesson-stage-observe"));
        paragraph(ui, &shown(observe, lesson, session.units()));
    }
    if !lesson.is_for_class() {
        let seen = TextBox {
            name: "lesson observation",
            accessible_name: text("lesson-observation"),
            text: &lesson.progress().record().observation,
            placeholder: text("lesson-observation-about"),
        };
        if let Some(typed) = seen.show(ui, edits.texts) {
            session.observe(&typed);
        }
    }
    scenes(ui, session, lesson);
    free(ui, session, lesson, edits);
}

fn explain(ui: &mut Ui, session: &mut Session, lesson: &LessonInSight, edits: &mut Edits) {
    if !lesson.is_truth_shown() {
        small(ui, text("lesson-hidden"));
        let show = Button::labelled("lesson show", text("lesson-show")).filled(true);
        if show.show_in_row(ui).clicked() {
            session.show_truth();
        }
        return;
    }
    let units = session.units();
    card(ui, |ui| {
        if let Some(said) = predicted(lesson, units) {
            small(ui, text("lesson-predicted"));
            ui.label(
                RichText::new(said)
                    .font(style::bold(19.0))
                    .color(WEAK_TEXT.get()),
            );
        }
        if let Some(said) = happened(lesson, units) {
            small(ui, text("lesson-happened"));
            ui.label(
                RichText::new(said)
                    .font(style::bold(22.0))
                    .color(TEXT.get()),
            );
        }
        if let Answer::Curve(of) = &lesson.step().answer {
            small(ui, text("lesson-curves-compared"));
            curve::compare(ui, session, lesson, of);
        }
    });
    ui.add_space(GAP);
    paragraph(ui, &shown(&lesson.step().explanation, lesson, units));
    scenes(ui, session, lesson);
    if !lesson.step().free.is_empty() {
        free(ui, session, lesson, edits);
    }
}

/// After the last step: what was answered, on paper or as a table.
fn done(ui: &mut Ui) -> Option<PageCommand> {
    heading(ui, text("lesson-done"));
    let mut command = None;
    for (name, label, does) in [
        (
            "lesson results",
            text("lesson-results"),
            PageCommand::Sheet(Sheet::Results),
        ),
        (
            "lesson table",
            text("lesson-answers-table"),
            PageCommand::Save(Saved::AnswersTable),
        ),
    ] {
        if Button::labelled(name, label).show_in_row(ui).clicked() {
            command = Some(does);
        }
        ui.add_space(GAP);
    }
    command
}

/// The button that goes on: what it does is on it.
fn go_on(ui: &mut Ui, session: &mut Session, lesson: &LessonInSight) {
    let is_last = lesson.progress().at() + 1 == lesson.lesson().steps.len();
    let label = match lesson.progress().stage() {
        Stage::Predict if lesson.step().setup.is_some() => text("lesson-to-fly"),
        Stage::Predict | Stage::Fly if lesson.step().observe.is_some() => text("lesson-to-observe"),
        Stage::Predict | Stage::Fly | Stage::Observe => text("lesson-to-explain"),
        Stage::Explain if is_last => return,
        Stage::Explain => text("lesson-to-next"),
    };
    let can = session.can_go_on();
    let button = Button::labelled("lesson on", label)
        .filled(can)
        .enabled(can);
    if button.show_in_row(ui).clicked() {
        session.go_on_in_lesson();
    }
    if !can && let Some(needed) = needed(lesson) {
        small(ui, needed);
    }
}

/// What is still to be done before it goes on.
fn needed(lesson: &LessonInSight) -> Option<&'static str> {
    let record = lesson.progress().record();
    match record.stage {
        Stage::Predict if record.prediction.is_none() => Some(text("lesson-needs-prediction")),
        Stage::Predict => Some(text("lesson-needs-reason")),
        Stage::Fly => Some(text("lesson-needs-flight")),
        Stage::Observe => Some(text("lesson-needs-observation")),
        Stage::Explain => None,
    }
}
