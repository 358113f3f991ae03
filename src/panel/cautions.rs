//! The cautions, shown with everything that could push somebody to jump more often, higher or with
//! weights.

use egui::{RichText, Ui};

use crate::style::WEAK_TEXT;
use turns_aloft_analysis::caution::Caution;
use turns_aloft_describe::Text;
use turns_aloft_words::text;

pub fn show(ui: &mut Ui) {
    let said = [
        text("panel-simulation"),
        Caution::NoSafeNumber.text(),
        Caution::Ask.text(),
        Caution::Hands.text(),
    ]
    .join(" ");
    ui.label(RichText::new(said).size(14.5).color(WEAK_TEXT.get()));
}
