//! What introduces a lesson: for whom it is, who plays it, the plan for the teacher, and its sheets.

use egui::{Rect, RichText, Sense, Ui, vec2};

use crate::command::{PageCommand, Sheet};
use crate::controls::{Button, TextBox, fold};
use crate::lesson::edits::Edits;
use crate::style::{self, GAP, TOUCH_SIZE};
use crate::text::{heading, small};
use turns_aloft_lesson::said::Said;
use turns_aloft_session::Session;
use turns_aloft_session::lesson::LessonInSight;
use turns_aloft_words::{say, text};

pub fn show(
    ui: &mut Ui,
    session: &mut Session,
    lesson: &LessonInSight,
    edits: &mut Edits,
) -> Option<PageCommand> {
    let of = lesson.lesson();
    ui.label(RichText::new(of.title.text()).font(style::bold(24.0)));
    paragraph(ui, of.for_whom.text());
    small(
        ui,
        &say!(
            "lesson-length",
            minutes = of.minutes,
            steps = of.steps.len()
        ),
    );
    paragraph(ui, text("lesson-how"));
    heading(ui, text("lesson-who"));
    let who = TextBox {
        name: "lesson who",
        accessible_name: text("lesson-who"),
        text: &lesson.progress().who,
        placeholder: text("lesson-who-about"),
    };
    if let Some(typed) = who.show(ui, edits.texts) {
        session.set_pupil(&typed);
    }
    ui.add_space(GAP);
    let is_new = lesson.progress().at() == 0 && lesson.progress().record().prediction.is_none();
    let label = if is_new {
        text("lesson-begin")
    } else {
        text("lesson-go-on-where-left")
    };
    let begin = Button::labelled("lesson begin", label).filled(true);
    if begin.show_in_row(ui).clicked() {
        session.begin_lesson(false);
    }
    ui.add_space(GAP);
    let class = Button::labelled("lesson class", text("lesson-for-class"));
    let class = class.about(text("lesson-for-class-about"));
    if class.show_in_row(ui).clicked() {
        session.begin_lesson(true);
    }
    small(ui, text("lesson-for-class-about"));
    if !is_new {
        ui.add_space(GAP);
        let anew = Button::labelled("lesson anew", text("lesson-anew"));
        if anew.show_in_row(ui).clicked() {
            session.begin_lesson_anew();
        }
    }
    ui.add_space(GAP);
    fold(ui, "Lesson plan", text("lesson-plan"), false, |ui| {
        plan(ui, lesson)
    });
    ui.add_space(GAP);
    let mut command = None;
    fold(ui, "Lesson sheets", text("lesson-sheets"), false, |ui| {
        small(ui, text("lesson-sheets-about"));
        for (name, label, sheet) in [
            ("sheet pupil", text("lesson-sheet-pupil"), Sheet::Pupil),
            (
                "sheet answers",
                text("lesson-sheet-answers"),
                Sheet::Answers,
            ),
            ("sheet plan", text("lesson-sheet-plan"), Sheet::Plan),
        ] {
            if Button::labelled(name, label).show_in_row(ui).clicked() {
                command = Some(PageCommand::Sheet(sheet));
            }
            ui.add_space(GAP);
        }
    });
    ui.add_space(GAP);
    let size = vec2(ui.available_width(), TOUCH_SIZE);
    let (row, _) = ui.allocate_exact_size(size, Sense::hover());
    leave(ui, session, row);
    command
}

/// Leaves the lesson.
pub fn leave(ui: &Ui, session: &mut Session, rect: Rect) {
    let leave = Button::labelled("leave lesson", text("lesson-leave"));
    let leave = leave.about(text("lesson-leave-about"));
    if leave.show(ui, rect).clicked() {
        session.leave_lesson();
    }
}

pub fn paragraph(ui: &mut Ui, said: &str) {
    ui.label(RichText::new(said).font(style::text(17.0)));
    ui.add_space(GAP);
}

fn plan(ui: &mut Ui, lesson: &LessonInSight) {
    let plan = &lesson.lesson().plan;
    for part in &plan.parts {
        let minutes = say!("lesson-minutes-of", minutes = part.minutes);
        paragraph(ui, &format!("{minutes}: {}", part.doing.text()));
    }
    list(ui, text("lesson-fetch"), &plan.fetch);
    list(ui, text("lesson-goes-wrong"), &plan.goes_wrong);
    if !plan.classroom_answers.is_empty() {
        heading(ui, text("lesson-classroom-answers"));
        small(ui, text("lesson-common-practice"));
        for answer in &plan.classroom_answers {
            paragraph(
                ui,
                &say!(
                    "lesson-classroom-answer",
                    said = answer.said.text(),
                    reply = answer.reply.text()
                ),
            );
        }
    }
    list(ui, text("lesson-curricula"), &plan.curricula);
}

fn list(ui: &mut Ui, title: &str, all: &[Said]) {
    if all.is_empty() {
        return;
    }
    heading(ui, title);
    for said in all {
        paragraph(ui, &format!("\u{2022} {}", said.text()));
    }
}
