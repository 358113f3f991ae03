//! Cards, headings and small print.

use egui::{Frame, Margin, RichText, Ui};

use crate::style::{self, CARD, WARNING, WEAK_TEXT, WIDE_GAP};

pub fn card(ui: &mut Ui, add: impl FnOnce(&mut Ui)) {
    Frame::new()
        .fill(CARD.get())
        .corner_radius(style::CORNER_RADIUS)
        .inner_margin(Margin::symmetric(12, 10))
        .show(ui, |ui| {
            ui.set_width(ui.available_width());
            add(ui);
        });
}

pub fn heading(ui: &mut Ui, text: &str) {
    ui.add_space(WIDE_GAP);
    ui.label(RichText::new(text).font(style::bold(18.0)));
}

pub fn small(ui: &mut Ui, text: &str) {
    ui.label(RichText::new(text).size(14.5).color(WEAK_TEXT.get()));
}

/// A sentence that something may be wrong.
pub fn warned(ui: &mut Ui, said: &str) {
    ui.label(
        RichText::new(said)
            .font(style::bold(16.0))
            .color(WARNING.get()),
    );
}
