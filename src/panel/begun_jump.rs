//! What is asked of a jump that has just been begun: its name, which jump it is, and who jumps. All of it
//! is in sight at once, with how high and how tight the jump is.

use egui::{Align2, Rect, Sense, Ui, UiBuilder, pos2, vec2};

use crate::controls::{Button, NumberEdit, TextEdit, choice_across};
use crate::folded_inputs::{name_box, table_choice, turns_choice};
use crate::style::{self, GAP, TEXT, TOUCH_SIZE, WEAK_TEXT};
use crate::{hang_time, number};
use turns_aloft_describe::Label;
use turns_aloft_scenario::jump::JumpName;
use turns_aloft_scenario::parameter::{Parameter, Section};
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// Height of a small label above a field.
const LABEL: f32 = 18.0;

/// Width from which on four jumps stand in one row.
const FOUR: f32 = 350.0;

/// The sliders of it, those first that somebody can judge who has watched the jump.
pub fn sliders() -> impl Iterator<Item = Parameter> {
    const FIRST: [Parameter; 2] = [Parameter::ArmTuck, Parameter::LegTuck];
    let others = Parameter::of_section(Section::Main)
        .filter(|it| !FIRST.contains(it) && *it != Parameter::JumpHeight);
    FIRST.into_iter().chain(others)
}

/// Shows the questions, but not that for the name where there is little room.
pub fn show(
    ui: &mut Ui,
    session: &mut Session,
    numbers: &mut NumberEdit,
    texts: &mut TextEdit,
    narrow: bool,
) {
    if !narrow {
        name_box(ui, session, texts);
    }
    which_jump(ui, session);
    table_choice(ui, session);
    numbers_side_by_side(ui, session, numbers);
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
    let across = if ui.available_width() < FOUR { 3 } else { 4 };
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

/// Stature, mass, and height of the jump or its hang time, to be typed.
fn numbers_side_by_side(ui: &mut Ui, session: &mut Session, numbers: &mut NumberEdit) {
    // The hang time is no number of its own.
    let asked = [
        Some(Parameter::Stature),
        Some(Parameter::BodyMass),
        Some(Parameter::JumpHeight),
        None,
    ];
    let across = if ui.available_width() < FOUR {
        2
    } else {
        asked.len()
    };
    for of_row in asked.chunks(across) {
        let rect = row(ui, LABEL + TOUCH_SIZE);
        let width = (rect.width() + GAP) / across as f32 - GAP;
        for (i, parameter) in of_row.iter().enumerate() {
            let left = rect.left() + i as f32 * (width + GAP);
            let own = Rect::from_min_size(pos2(left, rect.top()), vec2(width, rect.height()));
            let (above, field) = own.split_top_bottom_at_y(own.top() + LABEL);
            let label = parameter.map_or_else(|| text("reading-hang-time-s"), Label::label);
            let size = style::fitting_text(ui.painter(), label, 15.0, width);
            ui.painter().text(
                above.left_center(),
                Align2::LEFT_CENTER,
                label,
                style::text(size),
                TEXT.get(),
            );
            match *parameter {
                Some(parameter) => number::value(ui, session, numbers, parameter, field),
                None => hang_time::field(ui, session, numbers, field),
            }
        }
    }
}

/// The end of it, below the sliders: the jump is shown as any other.
pub fn finish(ui: &mut Ui, session: &mut Session, texts: &mut TextEdit, narrow: bool) {
    if narrow {
        name_box(ui, session, texts);
    }
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
