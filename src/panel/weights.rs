//! Weights in the hands under each assumption of what the jumper keeps constant. These are no
//! proposals: no button tries them.

use egui::{Galley, Sense, Stroke, Ui, pos2, vec2};

use crate::style::{self, GAP, TEXT, WEAK_TEXT};
use crate::text::{card, heading, small};
use turns_aloft_analysis::caution::Caution;
use turns_aloft_analysis::weights::OBSERVED;
use turns_aloft_describe::Text;
use turns_aloft_describe::weights as words;
use turns_aloft_scenario::HandsKeep;
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// Least height of a text.
const ROW_HEIGHT: f32 = 23.0;
/// Width of the disc that marks the chosen assumption.
const DISC: f32 = 20.0;

/// Below the slider: the present weights compared with bare hands.
pub fn held(ui: &mut Ui, session: &Session) {
    let Some(weights) = session.weights_held() else {
        return;
    };
    let owed = session.jump().owed.map(|owed| owed.turns);
    small(ui, &words::held(session.units(), weights));
    for outcome in &weights.outcomes {
        row(
            ui,
            session,
            outcome.hands_keep,
            &words::turns(outcome, owed),
        );
    }
    let cautions = [Caution::Hands, Caution::Ask].map(Caution::text);
    for known in [OBSERVED.text()].into_iter().chain(cautions) {
        small(ui, known);
    }
    ui.add_space(GAP);
}

/// Below the steps: slightly heavier weights than now.
pub fn more(ui: &mut Ui, session: &Session) {
    let Some(weights) = session.more_weights() else {
        return;
    };
    let owed = session.jump().owed.map(|owed| owed.turns);
    heading(ui, &words::more(session.units(), weights));
    card(ui, |ui| {
        small(ui, text("weights-no-technique"));
        for outcome in &weights.outcomes {
            row(
                ui,
                session,
                outcome.hands_keep,
                &words::turns(outcome, owed),
            );
        }
    });
    caveats(ui);
}

/// Below the answers: the weights with which the jump would reach the target turns.
pub fn needed(ui: &mut Ui, session: &Session) {
    let mut needed = session.weights_needed().peekable();
    if needed.peek().is_none() {
        return;
    }
    heading(ui, text("panel-weights-needed"));
    card(ui, |ui| {
        small(ui, text("weights-no-technique"));
        for (needed, fits) in needed {
            ui.scope(|ui| {
                if !fits {
                    ui.set_opacity(style::FADED);
                }
                let said = words::needed(session.units(), needed);
                row(ui, session, needed.hands_keep, &said);
            });
        }
    });
    caveats(ui);
}

fn caveats(ui: &mut Ui) {
    for known in words::to_be_known() {
        small(ui, known);
    }
}

/// An assumption and its result, side by side if there is room. The assumption of the present jump
/// has a filled disc.
fn row(ui: &mut Ui, session: &Session, keep: HandsKeep, said: &str) {
    let chosen = session.scenario().hands_keep == keep;
    let font = if chosen { style::bold } else { style::text };
    let painter = ui.painter();
    let width = ui.available_width();
    let [label, said] = [(words::keeps(keep), 15.0), (said, 16.0)]
        .map(|(text, size)| painter.layout(text.to_owned(), font(size), TEXT.get(), width - DISC));
    let side_by_side = DISC + label.size().x + GAP + said.size().x <= width;
    let line = |galley: &Galley| galley.size().y.max(ROW_HEIGHT);
    let (upper, lower) = (line(&label), line(&said));
    let height = if side_by_side { upper } else { upper + lower };
    let (rect, _) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
    let painter = ui.painter();
    let disc = pos2(rect.left() + 6.0, rect.top() + 0.5 * ROW_HEIGHT);
    if chosen {
        painter.circle_filled(disc, 5.0, TEXT.get());
    } else {
        painter.circle_stroke(disc, 4.5, Stroke::new(1.5, WEAK_TEXT.get()));
    }
    let left = rect.left() + DISC;
    let middle = rect.top() + 0.5 * (upper - label.size().y);
    painter.galley(pos2(left, middle), label, TEXT.get());
    let said_left = if side_by_side {
        rect.right() - said.size().x
    } else {
        left
    };
    let middle = rect.bottom() - 0.5 * (lower + said.size().y);
    painter.galley(pos2(said_left, middle), said, TEXT.get());
}
