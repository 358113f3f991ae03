//! A text of a lesson, to be written.

use egui::Ui;

use crate::controls::{TextBox, TextEdit};
use crate::style::GAP;
use crate::text::small;
use turns_aloft_lesson::Said;

pub struct Written<'a> {
    pub name: &'a str,
    /// What it is.
    pub label: &'a str,
    /// Shown while there is none.
    pub example: &'a str,
    pub said: &'a Said,
}

impl Written<'_> {
    /// Shows it with its label above; returns what has been written instead.
    pub fn show(&self, ui: &mut Ui, texts: &mut TextEdit) -> Option<Said> {
        small(ui, self.label);
        let of = TextBox {
            name: self.name,
            accessible_name: self.label,
            text: self.said.text(),
            placeholder: self.example,
        };
        let typed = of.show(ui, texts);
        ui.add_space(GAP);
        typed.map(|typed| Said::typed(&typed))
    }
}
