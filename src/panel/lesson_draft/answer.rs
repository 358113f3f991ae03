//! What kind of answer a step of a lesson asks for, and what it is about.

use egui::Ui;

use crate::controls::{Button, NumberText, choice};
use crate::lesson::Edits;
use crate::lesson_draft::written::Written;
use crate::number_row;
use crate::pick::pick;
use crate::style::GAP;
use crate::text::small;
use turns_aloft_describe::Label;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_lesson::answer::{LEAST_OPTIONS, MOST_OPTIONS};
use turns_aloft_lesson::{Answer, Choice, Quantity, Setup, Step};
use turns_aloft_scenario::curve::Curve;
use turns_aloft_scenario::parameter::Parameter;
use turns_aloft_session::Session;
use turns_aloft_session::lesson_draft::{
    AnswerKind, ask_for_quantity, asked_quantity, changed_input,
};
use turns_aloft_turntable::RunCurve;
use turns_aloft_words::{say, text};

const fn name(kind: AnswerKind) -> &'static str {
    match kind {
        AnswerKind::Number => "number",
        AnswerKind::Change => "change",
        AnswerKind::Curve => "curve",
        AnswerKind::Words => "words",
        AnswerKind::Opinion => "opinion",
    }
}

fn label(kind: AnswerKind) -> &'static str {
    match kind {
        AnswerKind::Number => text("draft-kind-number"),
        AnswerKind::Change => text("draft-kind-change"),
        AnswerKind::Curve => text("draft-kind-curve"),
        AnswerKind::Words => text("draft-kind-words"),
        AnswerKind::Opinion => text("draft-kind-opinion"),
    }
}

pub fn show(ui: &mut Ui, session: &mut Session, step: &Step, edits: &mut Edits) {
    small(ui, text("draft-kind"));
    let present = AnswerKind::of(step);
    let possible = AnswerKind::ALL.into_iter().filter(|it| it.is_for(step));
    let kinds: Vec<_> = possible.map(|it| (Some(it), name(it), label(it))).collect();
    if let Some(Some(kind)) = choice(ui, "draft kind", present, &kinds) {
        session.ask_in_draft(kind);
        return;
    }
    ui.add_space(GAP);
    match present {
        Some(AnswerKind::Number) => quantity(ui, session, step),
        Some(AnswerKind::Change) => {
            quantity(ui, session, step);
            change(ui, session, step, edits);
        }
        Some(AnswerKind::Curve) => curve(ui, session, step),
        Some(AnswerKind::Words | AnswerKind::Opinion) => {}
        None => small(ui, text("draft-kind-of-file")),
    }
    if let Answer::Choice(choice) = &step.answer {
        options(ui, session, choice, edits);
    }
}

fn quantity(ui: &mut Ui, session: &mut Session, step: &Step) {
    let setup = step.setup.as_ref();
    let all: Vec<Quantity> = Quantity::all().filter(|it| it.is_of(setup)).collect();
    let labels: Vec<&str> = all.iter().map(|it| it.label()).collect();
    let present = asked_quantity(step).map_or("", Label::label);
    let what = text("draft-quantity");
    small(ui, what);
    if let Some(place) = pick(ui, "draft quantity", what, present, &labels) {
        session.edit_draft_step(|step| ask_for_quantity(step, all[place]));
    }
    ui.add_space(GAP);
}

/// The one input that is changed, and to what.
fn change(ui: &mut Ui, session: &mut Session, step: &Step, edits: &mut Edits) {
    let (Some(Setup::Jump(jump)), Some((parameter, value))) = (&step.setup, changed_input(step))
    else {
        return;
    };
    let all = Parameter::ALL.into_iter().filter(|it| jump.has_part(*it));
    let all: Vec<Parameter> = all.collect();
    let labels: Vec<&str> = all.iter().map(|it| it.label()).collect();
    let what = text("draft-input");
    small(ui, what);
    if let Some(place) = pick(ui, "draft input", what, parameter.label(), &labels) {
        session.change_in_draft(all[place]);
        return;
    }
    let unit = session.units().of(parameter.kind());
    let in_jump = unit.set_text(parameter.get(jump));
    small(ui, &say!("draft-in-jump", value = in_jump));
    let shown = NumberText {
        value: unit.set_text(value),
        number: unit.set_number(value),
        sign: unit.sign(),
    };
    let label = text("draft-changed-to");
    if let Some(typed) = number_row::show(ui, edits.numbers, "draft changed to", label, shown) {
        session.type_change_in_draft(&typed);
    }
    ui.add_space(GAP);
}

fn curve(ui: &mut Ui, session: &mut Session, step: &Step) {
    let (Some(setup), Answer::Curve(of)) = (&step.setup, &step.answer) else {
        return;
    };
    let label = |name: &str| match Curve::named(name) {
        Some(curve) => curve.label(),
        None => RunCurve::named(name).map_or("", Label::label),
    };
    let all = setup.curves();
    let labels: Vec<&str> = all.iter().map(|it| label(it)).collect();
    let what = text("draft-curve");
    small(ui, what);
    if let Some(place) = pick(ui, "draft curve", what, label(&of.curve), &labels) {
        let name = all[place].to_owned();
        session.edit_draft_step(|step| {
            if let Answer::Curve(of) = &mut step.answer {
                of.curve = name;
            }
        });
    }
    ui.add_space(GAP);
}

/// The texts of the options; an opinion can have more of them, or fewer.
fn options(ui: &mut Ui, session: &mut Session, choice: &Choice, edits: &mut Edits) {
    let texts = choice.texts();
    for (place, said) in texts.iter().enumerate() {
        let written = Written {
            name: &format!("draft option:{}", place + 1),
            label: &say!("draft-option", number = place + 1),
            example: text("draft-option-about"),
            said,
        };
        if let Some(said) = written.show(ui, edits.texts) {
            session.edit_draft_step(|step| {
                if let Answer::Choice(choice) = &mut step.answer
                    && let Some(own) = choice.texts_mut().into_iter().nth(place)
                {
                    *own = said;
                }
            });
        }
    }
    if !matches!(choice, Choice::Open { .. }) {
        return;
    }
    if texts.len() < MOST_OPTIONS {
        let add = Button::labelled("draft add option", text("draft-add-option"));
        if add.show_in_row(ui).clicked() {
            session.add_option_in_draft(true);
        }
        ui.add_space(GAP);
    }
    if texts.len() > LEAST_OPTIONS {
        let remove = Button::labelled("draft remove option", text("draft-remove-option"));
        if remove.show_in_row(ui).clicked() {
            session.add_option_in_draft(false);
        }
        ui.add_space(GAP);
    }
}
