//! The table of differences: each with the turns it accounts for as number and bar, and their sum.

use egui::{Align2, Color32, Rect, Stroke, Ui, pos2, vec2};

use crate::beyond;
use crate::compare::attempt::{allocate, elided};
use crate::fitted::{Fitted, fitted};
use crate::style::{self, ACCENT, GAP, LINE, REFERENCE, TEXT, WARNING, WEAK_TEXT};
use turns_aloft_describe::comparison::Compared;
use turns_aloft_describe::turns::{signed_text, turns_text};
use turns_aloft_session::Session;
use turns_aloft_session::compare::hang_times;
use turns_aloft_words::{say, text};

const ROW: f32 = 44.0;
const NUMBER: f32 = 54.0;
const BAR: f32 = 72.0;
const BAR_HEIGHT: f32 = 12.0;

pub fn show(ui: &mut Ui, session: &Session, compared: &Compared) {
    attempt(ui, &compared.reference, compared.turns[0], false);
    if let Some(reference) = session.reference() {
        beyond::line(ui, session, &reference.beyond_seen);
    }
    let scale = Scale::of(&compared.parts);
    for (i, &part) in compared.parts.iter().enumerate() {
        let [from, to] = compared.change(i, session.units());
        let change = say!("panel-from-to", from = from, to = to);
        let change = match hang_times(session, compared, i) {
            Some(hang_times) => format!("{change}, {hang_times}"),
            None => change,
        };
        let room = label_width(ui.available_width());
        let (label, small) = (style::text(16.0), style::text(14.5));
        let left = Align2::LEFT_TOP;
        let painter = ui.painter();
        let words = [
            fitted(painter, left, compared.label(i), label, TEXT.get(), room),
            fitted(painter, left, &change, small, WEAK_TEXT.get(), room),
        ];
        let high: f32 = words.iter().map(Fitted::height).sum();
        let rect = allocate(ui, ROW.max(high + GAP));
        let mut at = rect.left_center() - vec2(0.0, 0.5 * high);
        for line in words {
            at = line.draw(ui.painter(), at).left_bottom();
        }
        worth(ui, rect, part);
        scale.bar(ui, rect, part);
    }
    let line = allocate(ui, 1.0);
    ui.painter().hline(
        line.x_range(),
        line.center().y,
        Stroke::new(1.0, LINE.get()),
    );
    let rect = allocate(ui, 30.0);
    let together = text("panel-together");
    ui.painter().text(
        rect.left_center(),
        Align2::LEFT_CENTER,
        together,
        style::bold(16.0),
        TEXT.get(),
    );
    worth(ui, rect, compared.whole());
    attempt(ui, text("panel-this-jump"), compared.turns[1], true);
    beyond::line(ui, session, session.beyond_seen());
    ui.add_space(GAP);
}

/// Width of the bars, less on a narrow page.
fn bar_width(width: f32) -> f32 {
    BAR.min(0.2 * width)
}

fn label_width(width: f32) -> f32 {
    width - NUMBER - bar_width(width) - GAP
}

/// The row of one of the attempts: name and turns.
fn attempt(ui: &mut Ui, name: &str, turns: i64, present: bool) {
    let colour = if present { TEXT.get() } else { REFERENCE.get() };
    let rect = allocate(ui, 36.0);
    let room = Rect::from_min_max(rect.min, pos2(rect.right() - NUMBER - GAP, rect.bottom()));
    elided(ui.painter(), room, name, style::bold(16.0), colour);
    number(ui, rect, &turns_text(turns), colour);
}

fn number(ui: &Ui, rect: Rect, text: &str, colour: Color32) {
    ui.painter().text(
        rect.right_center(),
        Align2::RIGHT_CENTER,
        text,
        style::bold(17.0),
        colour,
    );
}

/// Turns gained or lost, as a number.
fn worth(ui: &Ui, rect: Rect, part: i64) {
    number(ui, rect, &signed_text(part), colour(part));
}

fn colour(part: i64) -> Color32 {
    match part {
        0 => WEAK_TEXT.get(),
        1.. => ACCENT.get(),
        _ => WARNING.get(),
    }
}

/// The scale of the bars: gains are right of the zero line, losses left. It spans the single
/// differences; the sum, which can be many times as large, has no bar.
struct Scale {
    /// Hundredths of a turn at the left end, at most 0, and their number up to the right end.
    least: f32,
    span: f32,
}

impl Scale {
    fn of(parts: &[i64]) -> Self {
        let least = parts.iter().fold(0, |least, &part| least.min(part));
        let most = parts.iter().fold(0, |most, &part| most.max(part));
        Self {
            least: least as f32,
            span: (most - least).max(1) as f32,
        }
    }

    fn bar(&self, ui: &Ui, rect: Rect, part: i64) {
        let width = bar_width(rect.width());
        let left = rect.right() - NUMBER - width;
        let x = |hundredths: f32| left + width * (hundredths - self.least) / self.span;
        let (zero, end) = (x(0.0), x(part as f32));
        let y = rect.center().y;
        let painter = ui.painter();
        painter.rect_filled(
            Rect::from_x_y_ranges(
                zero.min(end)..=zero.max(end),
                y - 0.5 * BAR_HEIGHT..=y + 0.5 * BAR_HEIGHT,
            ),
            2.0,
            colour(part),
        );
        painter.vline(
            zero,
            y - BAR_HEIGHT..=y + BAR_HEIGHT,
            Stroke::new(1.0, WEAK_TEXT.get()),
        );
    }
}
