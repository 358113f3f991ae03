//! What the answers to the questions are made of: a card, a heading, small print.

use bevy_egui::egui::{Frame, Margin, RichText, Ui};

use super::look::{self, APART, SLATE, SNOW};

pub fn card(ui: &mut Ui, add: impl FnOnce(&mut Ui)) {
    Frame::new()
        .fill(SNOW.get())
        .corner_radius(look::ROUND)
        .inner_margin(Margin::symmetric(12, 10))
        .show(ui, |ui| {
            ui.set_width(ui.available_width());
            add(ui);
        });
}

pub fn heading(ui: &mut Ui, text: &str) {
    ui.add_space(APART);
    ui.label(RichText::new(text).font(look::bold(18.0)));
}

pub fn small(ui: &mut Ui, text: &str) {
    ui.label(RichText::new(text).size(14.5).color(SLATE.get()));
}
