//! Why: the largest loss in a sentence, the losses as a waterfall, the effect of small steps.

mod go_back;
mod ranking;
mod waterfall;

use egui::{Id, RichText, Sense, Ui, vec2};

use crate::controls::Button;
use crate::style::{self, GAP, TOUCH_SIZE};
use crate::text::{card, heading, small};
use crate::weights;
use crate::why::go_back::{go_back, split};
use turns_aloft_describe::budget::budget_sentence;
use turns_aloft_describe::fit::{further_mark, largest_loss, other_answers};
use turns_aloft_fit::Fit;
use turns_aloft_session::Session;
use turns_aloft_session::why::{BudgetAnswer, words};
use turns_aloft_words::{say, text};

pub fn show(ui: &mut Ui, session: &mut Session) {
    let Some(budget_answer) = session.budget_answer().cloned() else {
        return;
    };
    card(ui, |ui| sentence(ui, session, &budget_answer));
    if session.fitted_attempt().is_some() {
        ui.add_space(GAP);
        let on = Button::labelled("measure on", text("measure-on"));
        if on.show_in_row(ui).clicked() {
            session.measure_on();
        }
    }
    heading(ui, text("panel-where-turns-went"));
    card(ui, |ui| waterfall::show(ui, session, &budget_answer));
    small(ui, words::ORDER.text());
    ranking::show(ui, session);
    weights::more(ui, session);
}

/// The largest loss, the change to try against it, and the cautions.
fn sentence(ui: &mut Ui, session: &mut Session, budget_answer: &BudgetAnswer) {
    hold_height(ui, session, |ui| {
        // A number and its sign stay on one line.
        let sentence = budget_sentence(session.scenario(), &budget_answer.budget);
        if let Some(fit) = session.present_fit() {
            of_marks(ui, fit, &sentence);
            return;
        }
        let sentence = sentence.replace(" %", "\u{a0}%");
        ui.label(RichText::new(sentence).font(style::bold(18.0)));
        for said in words::of_change(session, budget_answer) {
            small(ui, &said);
        }
    });
    // Nothing is proposed against a loss that the marks do not tell.
    let tells = (session.present_fit()).is_none_or(|fit| fit.untold.tells_largest());
    let proposes = tells && budget_answer.proposal.is_some();
    if !proposes && session.tried() == 0 {
        return;
    }
    ui.add_space(GAP);
    let (row, _) = ui.allocate_exact_size(vec2(ui.available_width(), TOUCH_SIZE), Sense::hover());
    let [rest, back] = split(row);
    let try_it = if session.tried() > 0 { rest } else { row };
    if proposes {
        let button = Button::labelled("try it", text("panel-try-it"));
        if button.show(ui, try_it).clicked() {
            session.try_one_change();
        }
    }
    go_back(ui, session, "go back", back);
}

/// What the marks of an attempt say, and what they cannot tell.
fn of_marks(ui: &mut Ui, fit: &Fit, of_likeliest: &str) {
    ui.label(RichText::new(largest_loss(fit)).font(style::bold(18.0)));
    for other in other_answers(fit) {
        small(ui, &other);
    }
    if fit.untold.tells_largest() {
        small(ui, &say!("fit-likeliest", sentence = of_likeliest));
    }
    if let Some(further) = further_mark(fit) {
        small(ui, &further);
    }
}

/// Takes the greatest height so far while changes are tried or a control is dragged, so that what
/// is below does not move up.
fn hold_height(ui: &mut Ui, session: &Session, add: impl FnOnce(&mut Ui)) {
    let id = Id::new("tallest sentence");
    let moves = session.is_dragging() || session.tried() > 0;
    let tallest = ui.data(|data| data.get_temp::<f32>(id)).unwrap_or_default();
    let own = ui.scope(|ui| add(ui)).response.rect.height();
    let room = if moves { own.max(tallest) } else { own };
    ui.add_space(room - own);
    ui.data_mut(|data| data.insert_temp(id, room));
}
