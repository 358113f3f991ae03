//! The whole of a lesson that is made: what introduces it, its plan, its steps, and how it is given to others.

use egui::{RichText, Ui};

use crate::command::PageCommand;
use crate::controls::{Button, NumberText};
use crate::lesson::{Edits, option};
use crate::lesson_draft::give::{self, Given};
use crate::lesson_draft::written::Written;
use crate::number_row;
use crate::style::{GAP, WARNING};
use crate::text::{heading, small};
use turns_aloft_lesson::Lesson;
use turns_aloft_lesson::file::{MOST_MINUTES, MOST_STEPS};
use turns_aloft_session::Session;
use turns_aloft_session::lesson_draft::{LessonDraft, fault};
use turns_aloft_words::{number, say, text};

pub fn show(
    ui: &mut Ui,
    session: &mut Session,
    draft: &LessonDraft,
    edits: &mut Edits,
    given: &Given,
) -> Option<PageCommand> {
    let lesson = draft.lesson();
    let title = Written {
        name: "draft title",
        label: text("draft-title"),
        example: text("draft-title-about"),
        said: &lesson.title,
    };
    if let Some(said) = title.show(ui, edits.texts) {
        session.edit_draft(|lesson| lesson.title = said);
    }
    let for_whom = Written {
        name: "draft for whom",
        label: text("draft-for-whom"),
        example: text("draft-for-whom-about"),
        said: &lesson.for_whom,
    };
    if let Some(said) = for_whom.show(ui, edits.texts) {
        session.edit_draft(|lesson| lesson.for_whom = said);
    }
    parts(ui, session, lesson, edits);
    steps(ui, session, draft);
    give::show(ui, session, draft, given)
}

/// The parts of the plan, whose minutes add up to the lesson's.
fn parts(ui: &mut Ui, session: &mut Session, lesson: &Lesson, edits: &mut Edits) {
    let has_many = lesson.plan.parts.len() > 1;
    if has_many {
        heading(ui, text("lesson-plan"));
        small(ui, &say!("draft-minutes-in-all", minutes = lesson.minutes));
    }
    for (place, part) in lesson.plan.parts.iter().enumerate() {
        let name = format!("draft minutes:{}", place + 1);
        let minutes = part.minutes.to_string();
        let shown = NumberText {
            value: say!("lesson-minutes-of", minutes = part.minutes),
            number: minutes,
            sign: "",
        };
        let label = text("draft-minutes");
        if let Some(typed) = number_row::show(ui, edits.numbers, &name, label, shown) {
            set_minutes(session, place, &typed);
        }
        if has_many {
            let doing = Written {
                name: &format!("draft part:{}", place + 1),
                label: text("draft-doing"),
                example: text("draft-doing-about"),
                said: &part.doing,
            };
            if let Some(said) = doing.show(ui, edits.texts) {
                session.edit_draft(|lesson| lesson.plan.parts[place].doing = said);
            }
        }
    }
}

fn set_minutes(session: &mut Session, place: usize, typed: &str) {
    let lesson = session.lesson_draft().map(LessonDraft::lesson);
    let others = lesson.map_or(0, |it| it.minutes - it.plan.parts[place].minutes);
    let most = MOST_MINUTES - others;
    match number(typed.trim()).map(f64::round) {
        Some(minutes) if (1.0..=most as f64).contains(&minutes) => {
            let minutes = minutes as u64;
            session.edit_draft(|lesson| {
                lesson.plan.parts[place].minutes = minutes;
                lesson.minutes = others + minutes;
            });
        }
        _ => session.say(say!("draft-minutes-range", most = most)),
    }
}

fn steps(ui: &mut Ui, session: &mut Session, draft: &LessonDraft) {
    heading(ui, text("draft-steps"));
    for (place, step) in draft.lesson().steps.iter().enumerate() {
        let title = step.title.text();
        let title = if title.is_empty() {
            text("draft-step-untitled")
        } else {
            title
        };
        let name = format!("draft step:{}", place + 1);
        let label = say!("draft-step", number = place + 1, title = title);
        if option::show(ui, &name, &label, false, true).clicked() {
            session.show_draft_step(Some(place));
        }
        if let Some(found) = draft.fault_of(place) {
            ui.label(RichText::new(fault(found)).size(14.5).color(WARNING.get()));
            ui.add_space(GAP);
        }
    }
    if !session.has_room_in_draft() {
        small(ui, &say!("draft-full", most = MOST_STEPS));
        return;
    }
    ui.add_space(GAP);
    let add = Button::labelled("draft add jump", text("draft-add-jump"));
    if add.show_in_row(ui).clicked() {
        session.add_draft_step(true);
    }
    let name = session.shown_name().into_owned();
    small(ui, &say!("draft-jump-at-hand", name = name));
    ui.add_space(GAP);
    let add = Button::labelled("draft add question", text("draft-add-question"));
    if add.show_in_row(ui).clicked() {
        session.add_draft_step(false);
    }
}
