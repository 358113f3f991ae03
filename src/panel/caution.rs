//! The usual cautions, beside whatever could push somebody to jump more, higher or with weights.

use bevy_egui::egui::{RichText, Ui};

use super::look::SLATE;

const TEXT: &str = "A simulation, not advice. No safe number of jumps is known and most injuries \
in singles skating come from overuse: how often, how high and whether with weights is for the \
coach, the rules of the sport and licensed medical practice to say. Hand masses are a physics \
experiment; props are not allowed in competition.";

pub fn show(ui: &mut Ui) {
    ui.label(RichText::new(TEXT).size(14.5).color(SLATE));
}
