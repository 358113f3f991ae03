//! What a flight by hand came to, where its turns went against the jump as it was, and what to do with it.

use egui::{Align2, Rect, RichText, Stroke, Ui, pos2};

use crate::beyond;
use crate::compare::allocate;
use crate::controls::{Button, choice};
use crate::fitted::fitted;
use crate::style::{self, GAP, LINE, REFERENCE, TEXT};
use crate::text::{card, heading, small};
use crate::turn_try;
use turns_aloft_describe::call::verdict_text;
use turns_aloft_describe::turns::{owed_text, turns_in_all, turns_text};
use turns_aloft_session::Session;
use turns_aloft_session::slow_flight::{Landed, against, rows};
use turns_aloft_words::{say, text};

const FIGURES: f32 = 96.0;

/// Width of a column of numbers.
const NUMBERS: f32 = 76.0;

const ROW: f32 = 30.0;

pub fn show(ui: &mut Ui, session: &mut Session) {
    let Some(landed) = session.slow_flight().and_then(|it| it.landed()).cloned() else {
        return;
    };
    let again = Button::labelled("again", text("slow-again")).filled(true);
    let again = again.show_in_row(ui).clicked();
    card(ui, |ui| answer(ui, session, &landed));
    if let Some(tried) = &landed.tried {
        card(ui, |ui| {
            turn_try::result(ui, session, tried);
            if let Some(against) = against(session, tried) {
                ui.label(RichText::new(against).font(style::bold(16.0)));
            }
        });
    }
    let label = match landed.tried {
        Some(_) => text("try-count"),
        None => text("slow-take"),
    };
    let take = Button::labelled("take this jump", label);
    let take = take.show_in_row(ui).clicked();
    heading(ui, text("panel-where-turns-went"));
    budgets(ui, &landed);
    small(ui, text("slow-ghost"));
    let options = [
        (false, "over", text("panel-figures-over")),
        (true, "beside", text("panel-figures-beside")),
    ];
    if let Some(beside) = choice(ui, "figures", session.is_side_by_side(), &options) {
        session.set_side_by_side(beside);
    }
    if again {
        session.fly_again();
    } else if take {
        session.take_flown();
    }
}

fn answer(ui: &mut Ui, session: &Session, landed: &Landed) {
    let turns = turns_text(turns_in_all(&landed.jump));
    let size = style::fitting(ui.painter(), &turns, FIGURES, ui.available_width());
    let figures = RichText::new(turns).font(style::bold(size));
    ui.label(figures.color(TEXT.get()));
    let said = match landed.jump.owed {
        None => text("panel-turns").to_owned(),
        Some(owed) => say!(
            "slow-of",
            owed = owed_text(owed.turns),
            call = verdict_text(Some(owed))
        ),
    };
    ui.label(RichText::new(said).font(style::bold(19.0)));
    beyond::line(ui, session, &landed.beyond_seen);
}

/// The budgets of both, one beside the other.
fn budgets(ui: &mut Ui, landed: &Landed) {
    let [before, by_hand] = ["slow-before", "slow-by-hand"].map(text);
    line(ui, "", [before, by_hand], false);
    let rows = rows(landed);
    for (i, (_, label, [before, by_hand])) in rows.iter().enumerate() {
        let is_sum = i + 1 == rows.len();
        line(ui, label, [before, by_hand], is_sum);
    }
    ui.add_space(GAP);
}

fn line(ui: &mut Ui, label: &str, [before, by_hand]: [&str; 2], is_sum: bool) {
    let rect = allocate(ui, ROW);
    let painter = ui.painter();
    if is_sum {
        painter.hline(rect.x_range(), rect.top(), Stroke::new(1.0, LINE.get()));
    }
    let font = |size| {
        if is_sum {
            style::bold(size)
        } else {
            style::text(size)
        }
    };
    let width = NUMBERS.min(0.3 * rect.width());
    let room = rect.width() - 2.0 * width - GAP;
    let left = Align2::LEFT_CENTER;
    fitted(painter, left, label, font(16.0), TEXT.get(), room).draw(painter, rect.left_center());
    for (number, right, colour) in [
        (before, rect.right() - width, REFERENCE),
        (by_hand, rect.right(), TEXT),
    ] {
        let own = Rect::from_x_y_ranges(right - width..=right, rect.y_range());
        let (align, font, room) = (Align2::RIGHT_CENTER, font(16.0), own.width() - GAP);
        let number = fitted(painter, align, number, font, colour.get(), room);
        number.draw(painter, pos2(own.right(), own.center().y));
    }
}
