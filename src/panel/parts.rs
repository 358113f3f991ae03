//! What the answers to the questions are made of: a card, a heading, small print.

use egui::{Align2, Frame, Margin, Painter, Pos2, RichText, Stroke, Ui};

use super::style::{self, APART, ON_TEAL, SLATE, SNOW, TEAL};

pub fn card(ui: &mut Ui, add: impl FnOnce(&mut Ui)) {
    Frame::new()
        .fill(SNOW.get())
        .corner_radius(style::ROUND)
        .inner_margin(Margin::symmetric(12, 10))
        .show(ui, |ui| {
            ui.set_width(ui.available_width());
            add(ui);
        });
}

pub fn heading(ui: &mut Ui, text: &str) {
    ui.add_space(APART);
    ui.label(RichText::new(text).font(style::bold(18.0)));
}

pub fn small(ui: &mut Ui, text: &str) {
    ui.label(RichText::new(text).size(14.5).color(SLATE.get()));
}

/// Radius of the mark that says a word more can be had.
pub const MARK: f32 = 9.0;

/// The mark beside a quantity that, touched, says what it means; filled while it does.
pub fn meaning_mark(painter: &Painter, at: Pos2, open: bool) {
    let ink = if open {
        painter.circle_filled(at, MARK, TEAL.get());
        ON_TEAL.get()
    } else {
        painter.circle_stroke(at, MARK, Stroke::new(1.5, TEAL.get()));
        TEAL.get()
    };
    painter.text(at, Align2::CENTER_CENTER, "?", style::bold(14.0), ink);
}
