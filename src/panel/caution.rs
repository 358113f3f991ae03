//! The usual cautions, beside whatever could push somebody to jump more, higher or with weights.

use bevy_egui::egui::{RichText, Ui};

use super::look::SLATE;
use crate::analysis::caution::{ASK, HANDS, NO_SAFE_NUMBER};

const WHAT_IT_IS: &str = "A simulation, not advice.";

pub fn show(ui: &mut Ui) {
    let text = [WHAT_IT_IS, NO_SAFE_NUMBER.text(), ASK.text(), HANDS.text()].join(" ");
    ui.label(RichText::new(text).size(14.5).color(SLATE));
}
