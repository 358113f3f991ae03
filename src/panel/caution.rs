//! The usual cautions, beside whatever could push somebody to jump more, higher or with weights.

use egui::{RichText, Ui};

use super::style::SLATE;
use crate::analysis::caution::Caution;
use crate::words::text;

pub fn show(ui: &mut Ui) {
    let said = [
        text("panel-simulation"),
        Caution::NoSafeNumber.text(),
        Caution::Ask.text(),
        Caution::Hands.text(),
    ]
    .join(" ");
    ui.label(RichText::new(said).size(14.5).color(SLATE.get()));
}
