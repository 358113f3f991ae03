//! Compare: the difference to another attempt, and the attempts to choose from.

mod attempt;
mod kept;
mod table;

use egui::{Rect, RichText, Ui, pos2};

use crate::command::PageCommand;
pub(crate) use crate::compare::attempt::allocate;
use crate::compare::attempt::{attempt_button, toggle_reference};
pub use crate::compare::kept::KeptJumps;
use crate::controls::{Button, choice, fold};
use crate::folded_charts::folded_charts;
use crate::style::{self, GAP, TOUCH_SIZE, WIDE_GAP};
use crate::text::{card, heading, small};
use crate::{beyond, cautions};
use turns_aloft_describe::Label;
use turns_aloft_describe::comparison::ORDER;
use turns_aloft_scenario::starts;
use turns_aloft_session::Session;
use turns_aloft_session::compare::Which;
use turns_aloft_words::{say, text};

/// Shows the answer; `charts`: whether the charts are shown here. Returns a command for the page.
pub fn show(
    ui: &mut Ui,
    session: &mut Session,
    kept_jumps: &mut KeptJumps,
    charts: bool,
) -> Option<PageCommand> {
    difference(ui, session);
    if session.reference().is_some() {
        figures(ui, session);
    }
    if charts && session.reference().is_some() {
        ui.add_space(WIDE_GAP);
        folded_charts(ui, session);
    }
    heading(ui, text("panel-compare-with"));
    fixed_references(ui, session);
    heading(ui, text("panel-kept-jumps"));
    let command = kept::show(ui, session, kept_jumps);
    ui.add_space(WIDE_GAP);
    fold(ui, "Starting points", text("panel-starts"), false, |ui| {
        starting_points(ui, session);
    });
    cautions::show(ui);
    command
}

/// The difference, once there is an attempt to compare with.
fn difference(ui: &mut Ui, session: &Session) {
    if session.reference().is_none() {
        card(ui, |ui| {
            ui.label(RichText::new(text("panel-compare-none")).font(style::bold(18.0)));
            small(ui, text("panel-compare-how"));
        });
        return;
    }
    let Some(compared) = session.compared() else {
        return;
    };
    card(ui, |ui| {
        let sentence = compared.sentence().replace(" %", "\u{a0}%");
        ui.label(RichText::new(sentence).font(style::bold(18.0)));
        if compared.parts.is_empty() {
            beyond::line(ui, session, session.beyond_seen());
            return;
        }
        ui.add_space(GAP);
        table::show(ui, session, compared);
        small(ui, ORDER.text());
    });
}

/// Where the second figure stands.
fn figures(ui: &mut Ui, session: &mut Session) {
    let options = [
        (false, "over", text("panel-figures-over")),
        (true, "beside", text("panel-figures-beside")),
    ];
    if let Some(beside) = choice(ui, "figures", session.is_side_by_side(), &options) {
        session.set_side_by_side(beside);
    }
}

/// The jump before the last change that was tried.
fn before_try(ui: &mut Ui, session: &mut Session) {
    let Some(was) = session.before_try() else {
        return;
    };
    let chosen = session.is_before_try_beside();
    let label = say!("panel-reference-before-try", was = was);
    let button = Button::labelled("reference:before try", &label).chosen(chosen);
    if button.show_in_row(ui).clicked() {
        toggle_reference(session, Which::BeforeTry, chosen);
    }
}

/// The references that do not depend on what is kept: the jump before the last try, none, and the jump as
/// opened.
fn fixed_references(ui: &mut Ui, session: &mut Session) {
    before_try(ui, session);
    let which = session.reference().map(|reference| reference.which.clone());
    let row = allocate(ui, TOUCH_SIZE);
    let (left, as_opened) = row.split_left_right_at_x(row.left() + 0.36 * row.width());
    let none_rect = Rect::from_min_max(left.min, pos2(left.right() - GAP, left.bottom()));
    let none = which.is_none();
    let label = text("panel-reference-nothing");
    let button = Button::labelled("reference:none", label).chosen(none);
    if button.show(ui, none_rect).clicked() && !none {
        session.clear_reference();
    }
    let chosen = which == Some(Which::AsOpened);
    let label = text("panel-reference-as-opened");
    let button = Button::labelled("reference:as opened", label).chosen(chosen);
    if button.show(ui, as_opened).clicked() && !chosen {
        session.set_reference(Which::AsOpened);
    }
    if which == Some(Which::Linked)
        && let Some(reference) = session.reference()
    {
        small(
            ui,
            &say!("panel-reference-linked", name = reference.name.as_str()),
        );
    }
}

fn starting_points(ui: &mut Ui, session: &mut Session) {
    let present = session.reference().map(|reference| reference.which.clone());
    for start in starts::all() {
        let which = Which::Start(start.name.to_owned());
        let chosen = present.as_ref() == Some(&which);
        let name = format!("reference:{}", start.name);
        if attempt_button(ui, &name, start.label(), "", false, chosen).clicked() {
            toggle_reference(session, which, chosen);
        }
    }
    ui.add_space(GAP);
}
