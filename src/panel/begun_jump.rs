//! What is asked of a jump that has just been begun: its name, which jump it is, and who jumps. All of it
//! is in sight at once, with the numbers that are known next: how high, and how tight.

use egui::{Align2, Rect, Sense, Ui, UiBuilder, pos2, vec2};

use crate::controls::{Button, NumberEdit, TextEdit, choice_across};
use crate::folded_inputs::{name_box, table_choice, turns_choice};
use crate::number;
use crate::style::{self, GAP, TEXT, TOUCH_SIZE, WEAK_TEXT};
use turns_aloft_describe::Label;
use turns_aloft_scenario::jump::JumpName;
use turns_aloft_scenario::parameter::{Parameter, Section};
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// Height of a small label above a field.
const LABEL: f32 = 18.0;

/// Width from which on all that is asked of the jumper stands in one row, and four jumps do.
const ONE_ROW: f32 = 350.0;

/// The main numbers, those first that somebody knows who has watched a jump.
pub fn main_numbers() -> impl Iterator<Item = Parameter> {
    const FIRST: [Parameter; 3] = [
        Parameter::JumpHeight,
        Parameter::ArmTuck,
        Parameter::LegTuck,
    ];
    let others = Parameter::of_section(Section::Main).filter(|it| !FIRST.contains(it));
    FIRST.into_iter().chain(others)
}

/// Shows the questions.
pub fn show(ui: &mut Ui, session: &mut Session, numbers: &mut NumberEdit, texts: &mut TextEdit) {
    name_box(ui, session, texts);
    which_jump(ui, session);
    let width = ui.available_width();
    if width >= ONE_ROW {
        let row = row(ui, LABEL + TOUCH_SIZE);
        let (table, fields) = row.split_left_right_at_x(row.center().x - 0.5 * GAP);
        let table = Rect::from_min_max(pos2(table.left(), table.bottom() - TOUCH_SIZE), table.max);
        table_choice(&mut child(ui, table), session);
        let fields = Rect::from_min_max(pos2(fields.left() + GAP, fields.top()), fields.max);
        body(ui, session, numbers, fields);
    } else {
        table_choice(ui, session);
        let fields = row(ui, LABEL + TOUCH_SIZE);
        body(ui, session, numbers, fields);
    }
}

/// Which jump, and below it the turns in its name.
fn which_jump(ui: &mut Ui, session: &mut Session) {
    let names = JumpName::ALL.map(|name| {
        let label = match name {
            JumpName::OffIce => text("panel-off-ice-short"),
            name => name.label(),
        };
        (name, name.key(), label)
    });
    let across = if ui.available_width() < ONE_ROW { 3 } else { 4 };
    let present = session.scenario().jump;
    if let Some(name) = choice_across(ui, "jump", present, &names, across) {
        session.change(|scenario| scenario.jump = name);
    }
    if session.scenario().jump == JumpName::Free {
        return;
    }
    let row = row(ui, TOUCH_SIZE);
    let label = text("panel-turns-short");
    let written = ui.painter().text(
        row.left_center(),
        Align2::LEFT_CENTER,
        label,
        style::text(15.0),
        WEAK_TEXT.get(),
    );
    let rest = Rect::from_min_max(pos2(written.right() + 2.0 * GAP, row.top()), row.max);
    turns_choice(&mut child(ui, rest), session);
}

/// Stature and mass side by side.
fn body(ui: &mut Ui, session: &mut Session, numbers: &mut NumberEdit, rect: Rect) {
    let width = 0.5 * (rect.width() - GAP);
    for (i, parameter) in [Parameter::Stature, Parameter::BodyMass]
        .into_iter()
        .enumerate()
    {
        let left = rect.left() + i as f32 * (width + GAP);
        let label = parameter.label();
        let size = style::fitting_text(ui.painter(), label, 15.0, width);
        ui.painter().text(
            pos2(left, rect.top() + 0.5 * LABEL),
            Align2::LEFT_CENTER,
            label,
            style::text(size),
            TEXT.get(),
        );
        let field = Rect::from_min_max(
            pos2(left, rect.top() + LABEL),
            pos2(left + width, rect.bottom()),
        );
        number::value(ui, session, numbers, parameter, field);
    }
}

/// The end of it: the jump is shown as any other.
pub fn finish(ui: &mut Ui, session: &mut Session) {
    let button = Button::labelled("set up", text("panel-set-up")).filled(true);
    if button.show_in_row(ui).clicked() {
        session.finish_setting_up();
    }
}

fn row(ui: &mut Ui, height: f32) -> Rect {
    let size = vec2(ui.available_width(), height);
    ui.allocate_exact_size(size, Sense::hover()).0
}

fn child(ui: &mut Ui, rect: Rect) -> Ui {
    ui.new_child(UiBuilder::new().max_rect(rect))
}
