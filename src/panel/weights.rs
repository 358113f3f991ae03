//! Weights in the hands, by what the jumper keeps: all of it side by side, and nothing to be tried.

use egui::{Sense, Stroke, Ui, pos2, vec2};

use super::style::{self, INK, NEAR, SLATE};
use super::text::{card, heading, small};
use crate::analysis::caution::Caution;
use crate::analysis::weights::OBSERVED;
use crate::scenario::HandsKeep;
use crate::session::Session;
use crate::session::weights as words;
use crate::words::text;

/// Height of a line; none can be touched.
const LINE: f32 = 23.0;
/// Room for the disc that marks what is chosen.
const DISC: f32 = 20.0;

/// Beside the slider: what the hands hold now, against bare ones.
pub fn held(ui: &mut Ui, session: &Session) {
    let Some(weights) = session.weights_held() else {
        return;
    };
    small(ui, &words::held(session, weights));
    for outcome in &weights.outcomes {
        row(ui, session, outcome.hands_keep, &words::turns(outcome));
    }
    let cautions = [Caution::Hands, Caution::Ask].map(Caution::text);
    for known in [OBSERVED.text()].into_iter().chain(cautions) {
        small(ui, known);
    }
    ui.add_space(NEAR);
}

/// Under the steps: a little more than now.
pub fn more(ui: &mut Ui, session: &Session) {
    let Some(weights) = session.more_weights() else {
        return;
    };
    heading(ui, &words::more(session, weights));
    card(ui, |ui| {
        small(ui, text("weights-no-technique"));
        for outcome in &weights.outcomes {
            row(ui, session, outcome.hands_keep, &words::turns(outcome));
        }
    });
    to_be_known(ui);
}

/// Under the answers: what the wanted turns would take.
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
                    ui.set_opacity(style::PALE);
                }
                let said = words::needed(session, needed);
                row(ui, session, needed.hands_keep, &said);
            });
        }
    });
    to_be_known(ui);
}

fn to_be_known(ui: &mut Ui) {
    for known in words::to_be_known() {
        small(ui, known);
    }
}

/// An assumption, and what comes of it, beside each other where there is room; the one chosen for the
/// jump at hand has a full disc.
fn row(ui: &mut Ui, session: &Session, keep: HandsKeep, said: &str) {
    let chosen = session.scenario().hands_keep == keep;
    let font = if chosen { style::bold } else { style::text };
    let [label, said] = [(words::keeps(keep), 15.0), (said, 16.0)].map(|(text, size)| {
        let painter = ui.painter();
        painter.layout_no_wrap(text.to_owned(), font(size), INK.get())
    });
    let width = ui.available_width();
    let reference = DISC + label.size().x + NEAR + said.size().x <= width;
    let lines = if reference { 1.0 } else { 2.0 };
    let (rect, _) = ui.allocate_exact_size(vec2(width, lines * LINE), Sense::hover());
    let middle = |line: f32| rect.top() + (line + 0.5) * LINE;
    let painter = ui.painter();
    let disc = pos2(rect.left() + 6.0, middle(0.0));
    if chosen {
        painter.circle_filled(disc, 5.0, INK.get());
    } else {
        painter.circle_stroke(disc, 4.5, Stroke::new(1.5, SLATE.get()));
    }
    let left = rect.left() + DISC;
    let label_at = pos2(left, middle(0.0) - 0.5 * label.size().y);
    painter.galley(label_at, label, INK.get());
    let said_left = if reference {
        rect.right() - said.size().x
    } else {
        left
    };
    let said_at = pos2(said_left, middle(lines - 1.0) - 0.5 * said.size().y);
    painter.galley(said_at, said, INK.get());
}
