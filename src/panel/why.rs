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
use turns_aloft_session::Session;
use turns_aloft_session::why::{BudgetAnswer, words};
use turns_aloft_words::text;

pub fn show(ui: &mut Ui, session: &mut Session) {
    let Some(budget_answer) = session.budget_answer().cloned() else {
        return;
    };
    card(ui, |ui| sentence(ui, session, &budget_answer));
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
        let sentence = sentence.replace(" %", "\u{a0}%");
        ui.label(RichText::new(sentence).font(style::bold(18.0)));
        for said in words::of_change(session, budget_answer) {
            small(ui, &said);
        }
    });
    if budget_answer.proposal.is_none() && session.tried() == 0 {
        return;
    }
    ui.add_space(GAP);
    let (row, _) = ui.allocate_exact_size(vec2(ui.available_width(), TOUCH_SIZE), Sense::hover());
    let [rest, back] = split(row);
    let try_it = if session.tried() > 0 { rest } else { row };
    if budget_answer.proposal.is_some() {
        let button = Button::labelled("try it", text("panel-try-it"));
        if button.show(ui, try_it).clicked() {
            session.try_one_change();
        }
    }
    go_back(ui, session, "go back", back);
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
