//! A step of a lesson that is made: what is flown, asked, left free, observed and explained.

use egui::Ui;

use crate::controls::{Button, choice_across, fold};
use crate::lesson::introduction::paragraph;
use crate::lesson::{Edits, option};
use crate::lesson_draft::answer;
use crate::lesson_draft::written::Written;
use crate::pick::pick;
use crate::style::GAP;
use crate::text::{heading, small};
use turns_aloft_describe::quantity::filled;
use turns_aloft_describe::{Label, Text};
use turns_aloft_lesson::free::Free;
use turns_aloft_lesson::{Quantity, Said, Setup, Step};
use turns_aloft_scenario::input::Input;
use turns_aloft_session::Session;
use turns_aloft_session::lesson_draft::{LessonDraft, changed_input};
use turns_aloft_words::{say, text};

pub fn show(
    ui: &mut Ui,
    session: &mut Session,
    draft: &LessonDraft,
    step: &Step,
    edits: &mut Edits,
) {
    let back = Button::labelled("draft all steps", text("draft-all-steps"));
    if back.show_in_row(ui).clicked() {
        session.show_draft_step(None);
    }
    ui.add_space(GAP);
    setup(ui, session, step);
    heading(ui, text("draft-asks"));
    let title = Written {
        name: "draft step title",
        label: text("draft-step-title"),
        example: text("draft-step-title-about"),
        said: &step.title,
    };
    if let Some(said) = title.show(ui, edits.texts) {
        session.edit_draft_step(|step| step.title = said);
    }
    let question = Written {
        name: "draft question",
        label: text("lesson-question"),
        example: text("draft-question-about"),
        said: &step.question,
    };
    if let Some(said) = question.show(ui, edits.texts) {
        session.edit_draft_step(|step| step.question = said);
    }
    answer::show(ui, session, step, edits);
    reason(ui, session, step);
    free(ui, session, step);
    observe(ui, session, step, edits);
    explanation(ui, session, draft, step, edits);
    cautions(ui, step);
    place(ui, session, draft);
}

/// What is flown, which can be the jump at hand instead.
fn setup(ui: &mut Ui, session: &mut Session, step: &Step) {
    heading(ui, text("draft-flown"));
    let flown = match &step.setup {
        Some(Setup::Jump(jump)) => say!("draft-flown-jump", name = jump.name.as_str()),
        Some(Setup::Turntable(_)) => text("draft-flown-turntable").to_owned(),
        Some(Setup::WorkedExample(example)) => example.source.text().to_owned(),
        None => text("draft-flown-nothing").to_owned(),
    };
    paragraph(ui, &flown);
    let is_at_hand =
        |setup: &Setup| matches!(setup, Setup::Jump(jump) if **jump == *session.scenario());
    if step.setup.as_ref().is_some_and(is_at_hand) {
        small(ui, text("draft-flown-at-hand"));
        return;
    }
    let take = Button::labelled("draft take jump", text("draft-take-jump"));
    if take.show_in_row(ui).clicked() {
        session.set_up_draft_step();
    }
    let name = session.shown_name().into_owned();
    small(ui, &say!("draft-jump-at-hand", name = name));
}

/// Whether a reason is asked for.
fn reason(ui: &mut Ui, session: &mut Session, step: &Step) {
    ui.add_space(GAP);
    let reason = Button::labelled("draft reason", text("draft-reason"));
    if reason.toggle(step.reason).show_in_row(ui).clicked() {
        session.edit_draft_step(|step| step.reason = !step.reason);
    }
    ui.add_space(GAP);
}

/// The numbers that the pupil may change.
fn free(ui: &mut Ui, session: &mut Session, step: &Step) {
    let Some(setup) = &step.setup else {
        return;
    };
    let numbers = Free::all(setup).into_iter().filter_map(|free| match free {
        Free::Input(Input::Number(parameter)) => Some((free, parameter.label())),
        Free::Number(number) => Some((free, number.label())),
        _ => None,
    });
    let numbers: Vec<(Free, &str)> = numbers.collect();
    if numbers.is_empty() {
        return;
    }
    let title = say!("draft-free", count = step.free.len());
    fold(ui, "What is free", &title, false, |ui| {
        small(ui, text("draft-free-about"));
        for (free, label) in numbers {
            let name = format!("draft free:{}", free.key());
            let is_free = step.is_free(free);
            if option::show(ui, &name, label, is_free, true).clicked() {
                session.free_in_draft(free);
            }
        }
    });
}

/// What has to be observed, where something is.
fn observe(ui: &mut Ui, session: &mut Session, step: &Step, edits: &mut Edits) {
    ui.add_space(GAP);
    let asked = Button::labelled("draft observes", text("draft-observes"));
    let asked = asked.toggle(step.observe.is_some());
    if asked.show_in_row(ui).clicked() {
        session.edit_draft_step(|step| {
            step.observe = match step.observe {
                Some(_) => None,
                None => Some(Said::Alike(text("lesson-observation").to_owned())),
            }
        });
    }
    ui.add_space(GAP);
    let Some(observe) = &step.observe else {
        return;
    };
    let written = Written {
        name: "draft observe",
        label: text("draft-observe"),
        example: text("lesson-observation"),
        said: observe,
    };
    if let Some(said) = written.show(ui, edits.texts) {
        session.edit_draft_step(|step| step.observe = Some(said));
    }
}

/// The explanation, into which figures can be put, and how the pupil reads it.
fn explanation(
    ui: &mut Ui,
    session: &mut Session,
    draft: &LessonDraft,
    step: &Step,
    edits: &mut Edits,
) {
    heading(ui, text("lesson-explanation"));
    let written = Written {
        name: "draft explanation",
        label: text("draft-explanation"),
        example: text("draft-explanation-about"),
        said: &step.explanation,
    };
    if let Some(said) = written.show(ui, edits.texts) {
        session.edit_draft_step(|step| step.explanation = said);
    }
    insert(ui, session, step);
    let said = step.explanation.text();
    if let (Some(flights), true) = (draft.flights(), said.contains('{'))
        && step.check().is_ok()
    {
        small(ui, text("draft-preview"));
        paragraph(ui, &filled(said, step, flights, session.units()));
    }
}

/// Puts a figure at the end of the explanation.
fn insert(ui: &mut Ui, session: &mut Session, step: &Step) {
    let setup = step.setup.as_ref();
    let of_setup = Quantity::all().filter(|it| it.is_of(setup));
    let mut figures: Vec<(String, String)> = of_setup
        .map(|it| (it.key().to_owned(), it.label().to_owned()))
        .collect();
    if figures.is_empty() {
        return;
    }
    if changed_input(step).is_some() {
        let changed = figures.clone().into_iter().map(|(key, label)| {
            let label = say!("draft-figure-changed", quantity = label);
            (format!("changed.{key}"), label)
        });
        figures.extend(changed.collect::<Vec<_>>());
    }
    let labels: Vec<&str> = figures.iter().map(|(_, label)| label.as_str()).collect();
    let what = text("draft-insert");
    let picked = pick(ui, "draft insert", what, what, &labels);
    small(ui, text("draft-insert-about"));
    if let Some(place) = picked {
        let key = &figures[place].0;
        let said = format!("{} {{{key}}}", step.explanation.text());
        session.edit_draft_step(|step| step.explanation = Said::typed(&said));
    }
}

/// What has to be said to a pupil who may change that is said to who makes the lesson, too.
fn cautions(ui: &mut Ui, step: &Step) {
    for caution in step.cautions() {
        small(ui, caution.text());
    }
}

/// Where it stands among the steps, and whether it does.
fn place(ui: &mut Ui, session: &mut Session, draft: &LessonDraft) {
    if draft.lesson().steps.len() < 2 {
        return;
    }
    heading(ui, text("draft-order"));
    let ways = [
        (Some(false), "earlier", text("draft-earlier")),
        (Some(true), "later", text("draft-later")),
    ];
    // Of two steps or more each can be moved at least one way.
    let can = |way: &Option<bool>| way.and_then(|later| draft.moved_place(later)).is_some();
    let ways: Vec<_> = ways.into_iter().filter(|(way, ..)| can(way)).collect();
    let moved = choice_across(ui, "draft move", None, &ways, ways.len());
    if let Some(Some(later)) = moved {
        session.move_draft_step(later);
    }
    ui.add_space(GAP);
    let remove = Button::labelled("draft remove step", text("draft-remove-step"));
    if remove.show_in_row(ui).clicked() {
        session.remove_draft_step();
    }
}
