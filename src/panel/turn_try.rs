//! The five-turn try, above the inputs: which step, whether all turns are there, and which limits were passed.

use egui::{RichText, Ui};

use crate::command::PageCommand;
use crate::controls::{Button, choice};
use crate::style::{self, ACCENT, GAP, TEXT, WARNING};
use crate::text::{card, small};
use turns_aloft_analysis::turn_try::{CAUTIONS, STEPS, TurnTry};
use turns_aloft_describe::Text;
use turns_aloft_describe::turn_try::{KNOWN, limit, turns, unknown};
use turns_aloft_session::Session;
use turns_aloft_words::{say, text};

/// Shows the card while a try is on; what needs the browser is returned.
pub fn show(ui: &mut Ui, session: &mut Session) -> Option<PageCommand> {
    let tried = session.turn_try()?.clone();
    let mut command = None;
    card(ui, |ui| {
        ui.label(RichText::new(text("try-title")).font(style::bold(20.0)));
        small(ui, text("try-about"));
        ui.add_space(GAP);
        let labels = STEPS.map(|step| say!("try-step", turns = step));
        let names = STEPS.map(|step| step.to_string());
        let options: Vec<(u8, &str, &str)> = (0..STEPS.len())
            .map(|i| (STEPS[i], names[i].as_str(), labels[i].as_str()))
            .collect();
        if let Some(step) = choice(ui, "try step", tried.step, &options) {
            session.set_try_step(step);
        }
        ui.add_space(GAP);
        result(ui, session, &tried);
        ui.add_space(GAP);
        let by_hand = Button::labelled("try by hand", text("try-by-hand"));
        if by_hand.show_in_row(ui).clicked() {
            session.fly_by_hand();
        }
        ui.add_space(GAP);
        let save = Button::labelled("try card", text("try-card"));
        if save.show_in_row(ui).clicked() {
            command = Some(PageCommand::Picture);
        }
        ui.add_space(GAP);
        let leave = Button::labelled("leave try", text("try-leave"));
        if leave.show_in_row(ui).clicked() {
            session.leave_try();
        }
        ui.add_space(GAP);
        let known = KNOWN.map(|message| message.text());
        let cautions = CAUTIONS.map(Text::text);
        for said in known.into_iter().chain(cautions) {
            small(ui, said);
        }
    });
    ui.add_space(GAP);
    command
}

/// Whether all turns are there, and which limits were passed.
pub fn result(ui: &mut Ui, session: &Session, tried: &TurnTry) {
    let colour = if tried.is_full() { ACCENT } else { WARNING };
    ui.label(
        RichText::new(turns(tried))
            .font(style::bold(18.0))
            .color(colour.get()),
    );
    let units = session.units();
    let passed = match tried.passed.len() {
        0 => text("try-none-passed").to_owned(),
        count => say!("try-passed-count", count = count),
    };
    ui.label(
        RichText::new(passed)
            .font(style::bold(16.0))
            .color(TEXT.get()),
    );
    for held in &tried.passed {
        small(ui, &say!("try-passed-one", what = limit(held, units)));
    }
    if let Some(unknown) = unknown(tried, units) {
        small(ui, &unknown);
    }
}
