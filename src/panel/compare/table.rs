//! The differences, each with what it is worth: a number and a bar; below them the whole.

use bevy_egui::egui::{Align2, Rect, Stroke, Ui, pos2, vec2};

use super::super::look::{self, BESIDE, FROST, INK, NEAR, SLATE, TEAL, VERMILION};
use super::{allocate, write};
use crate::session::Session;
use crate::session::compare::told::{Compared, signed_text, turns_text};

const ROW: f32 = 44.0;
const NUMBER: f32 = 54.0;
const BAR: f32 = 72.0;
const BAR_HEIGHT: f32 = 12.0;

pub fn show(ui: &mut Ui, session: &Session, compared: &Compared) {
    ends(ui, &compared.beside, compared.turns[0], false);
    let most = compared.parts.iter().map(|part| part.abs()).max();
    let most = most.unwrap_or_default().max(compared.whole().abs()).max(1);
    for (i, &part) in compared.parts.iter().enumerate() {
        let rect = allocate(ui, ROW);
        let text = words_beside(rect);
        let [from, to] = compared.change(i, &session.units);
        let (upper, lower) = text.split_top_bottom_at_y(rect.top() + 22.0);
        write(ui, upper, compared.label(i), look::text(16.0), INK);
        write(
            ui,
            lower,
            &format!("{from} to {to}"),
            look::text(14.5),
            SLATE,
        );
        worth(ui, rect, part, most);
    }
    let line = allocate(ui, 1.0);
    ui.painter()
        .hline(line.x_range(), line.center().y, Stroke::new(1.0, FROST));
    let rect = allocate(ui, 30.0);
    write(ui, words_beside(rect), "Together", look::bold(16.0), INK);
    worth(ui, rect, compared.whole(), most);
    ends(ui, "This jump", compared.turns[1], true);
    ui.add_space(NEAR);
}

fn words_beside(rect: Rect) -> Rect {
    Rect::from_min_max(
        rect.min,
        pos2(rect.right() - NUMBER - BAR - NEAR, rect.bottom()),
    )
}

/// The turns of one of the two.
fn ends(ui: &mut Ui, name: &str, turns: i64, present: bool) {
    let ink = if present { INK } else { BESIDE };
    let rect = allocate(ui, 28.0);
    let room = Rect::from_min_max(rect.min, pos2(rect.right() - NUMBER - NEAR, rect.bottom()));
    write(ui, room, name, look::bold(16.0), ink);
    number(ui, rect, &turns_text(turns), ink);
}

fn number(ui: &Ui, rect: Rect, text: &str, ink: bevy_egui::egui::Color32) {
    ui.painter().text(
        rect.right_center(),
        Align2::RIGHT_CENTER,
        text,
        look::bold(17.0),
        ink,
    );
}

/// A number with its bar: to the right of the line turns are won, to the left lost.
fn worth(ui: &Ui, rect: Rect, part: i64, most: i64) {
    let ink = match part {
        0 => SLATE,
        1.. => TEAL,
        _ => VERMILION,
    };
    number(ui, rect, &signed_text(part), ink);
    let right = rect.right() - NUMBER - NEAR;
    let bar = Rect::from_min_max(pos2(right - BAR, rect.top()), pos2(right, rect.bottom()));
    let zero = bar.center().x;
    let end = zero + 0.5 * bar.width() * (part as f32 / most as f32);
    let painter = ui.painter();
    painter.rect_filled(
        Rect::from_center_size(
            pos2(0.5 * (zero + end), bar.center().y),
            vec2((end - zero).abs(), BAR_HEIGHT),
        ),
        2.0,
        ink,
    );
    painter.vline(
        zero,
        bar.center().y - BAR_HEIGHT..=bar.center().y + BAR_HEIGHT,
        Stroke::new(1.0, SLATE),
    );
}
