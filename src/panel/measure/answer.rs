//! What follows from the marks made so far: the turns, how sure they are, and what cannot be told.

use egui::{RichText, Ui};

use crate::controls::Button;
use crate::style::{self, GAP, TEXT};
use crate::text::{card, small, warned};
use turns_aloft_describe::Sentence;
use turns_aloft_describe::call::shortfall_range_text;
use turns_aloft_describe::fit::{further_mark, largest_loss, other_answers, other_turning};
use turns_aloft_describe::range::range_figures;
use turns_aloft_describe::turns::owed_text;
use turns_aloft_fit::quantity::Quantity;
use turns_aloft_session::Session;
use turns_aloft_words::{decimal, say, text};

/// Size of the figures, where no film takes the room.
const FIGURES: f32 = 64.0;

pub fn show(ui: &mut Ui, session: &mut Session) {
    if let Some(why) = session.unfit() {
        let said = why.sentence();
        card(ui, |ui| small(ui, &said));
        return;
    }
    let Some(fit) = session.last_fit().cloned() else {
        if session.first_fit().is_some() {
            card(ui, |ui| small(ui, text("measure-working")));
        }
        return;
    };
    card(ui, |ui| {
        turns(ui, session);
        let hang = fit.range(Quantity::HangTime);
        small(
            ui,
            &say!(
                "measure-hang-time",
                low = decimal(hang.low, 2),
                high = decimal(hang.high, 2)
            ),
        );
        if let Some(turns) = other_turning(&fit) {
            warned(ui, turns);
            let turn = Button::labelled("turn round", text("measure-turn-round"));
            if turn.show_in_row(ui).clicked() {
                session.change(|scenario| scenario.turning = scenario.turning.opposite());
            }
            ui.add_space(GAP);
        }
        for other in other_answers(&fit) {
            warned(ui, &other);
        }
        ui.label(RichText::new(largest_loss(&fit)).font(style::bold(16.0)));
        if let Some(further) = further_mark(&fit) {
            small(ui, &further);
        }
        ui.add_space(GAP);
        let is_whole = session.fit().is_some();
        let ask = Button::labelled("ask why", text("measure-ask-why"))
            .filled(is_whole)
            .enabled(is_whole);
        if ask.show_in_row(ui).clicked() {
            session.open_fitted();
        }
        if let Some(measuring) = session.measuring().filter(|it| it.film().is_some()) {
            let proposes = measuring.proposes();
            ui.add_space(GAP);
            let label = text("measure-with-change");
            let with_change = Button::labelled("with change", label).toggle(proposes);
            if with_change.show_in_row(ui).clicked() {
                session.show_proposed(!proposes);
            }
        }
    });
    ui.add_space(GAP);
}

/// The turns in all as a range, of those that the jump's name asks for, and how far short that is.
fn turns(ui: &mut Ui, session: &Session) {
    let Some(range) = session.last_fit_range() else {
        return;
    };
    let scenario = session.scenario();
    let owed = scenario.jump.turns_owed(scenario.jump_turns);
    let figures = range_figures(range, owed);
    let size = style::fitting(ui.painter(), &figures, FIGURES, ui.available_width());
    ui.label(
        RichText::new(figures)
            .font(style::bold(size))
            .color(TEXT.get()),
    );
    let said = match (owed, range.shortfall_deg) {
        (Some(owed), Some(shortfall_deg)) => say!(
            "panel-turns-of-short",
            owed = owed_text(owed),
            short = shortfall_range_text(shortfall_deg)
        ),
        _ => text("panel-turns").to_owned(),
    };
    ui.label(RichText::new(said).font(style::bold(19.0)));
}
