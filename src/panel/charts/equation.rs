//! L = I · ω with its numbers at the playhead.

use egui::text::{LayoutJob, TextFormat};
use egui::{FontId, Rect, Ui};

use crate::style::{self, INERTIA, TEXT, ThemeColour, WEAK_TEXT};
use turns_aloft_session::Session;
use turns_aloft_session::readings::Equation;
use turns_aloft_words::text;

/// Height of a line of it.
const LINE: f32 = 21.0;
const SIZE: f32 = 15.0;
/// In less width it takes two lines.
const WIDE: f32 = 600.0;

/// The height that it takes in so much width.
pub fn height(width: f32) -> f32 {
    if width < WIDE { 2.0 * LINE } else { LINE }
}

pub fn show(ui: &Ui, session: &Session, rect: Rect) {
    draw(ui, Equation::now(session), rect);
}

/// The same of anything that turns.
pub fn draw(ui: &Ui, equation: Equation, rect: Rect) {
    let mut job = LayoutJob::default();
    job.wrap.max_width = rect.width();
    let mut term = |said: &str, font: FontId, colour: ThemeColour| {
        // A line breaks between terms, never between a number and its unit.
        let said = said.replace(' ', "\u{a0}") + " ";
        job.append(&said, 0.0, TextFormat::simple(font, colour.get()));
    };
    let (plain, bold) = (style::text(SIZE), style::bold(SIZE));
    term("L = I · ω:", plain.clone(), WEAK_TEXT);
    term(&equation.momentum, bold.clone(), TEXT);
    let inertia = format!("{} {}", equation.relation, equation.inertia);
    term(&inertia, bold.clone(), INERTIA);
    term(&format!("· {}", equation.rate), bold.clone(), TEXT);
    if let Some([sign, rest]) = equation.rest {
        term(&format!("{sign} {rest}"), bold, WEAK_TEXT);
        term(text("panel-equation-rest"), plain, WEAK_TEXT);
    }
    let galley = ui.painter().layout_job(job);
    ui.painter().galley(rect.min, galley, TEXT.get());
}
