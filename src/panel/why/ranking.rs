//! The turns gained by a small step of each lever, the greatest first; a click tries it.

use egui::{
    Align2, Color32, CornerRadius, Rect, Response, Sense, Stroke, StrokeKind, Ui, pos2, vec2,
};

use crate::controls::button_area;
use crate::fitted::fitted;
use crate::style::{self, ACCENT, CARD, GAP, LINE, TEXT, TOUCH_SIZE, WARNING, WEAK_TEXT, WIDE_GAP};
use crate::text::small;
use crate::why::go_back::{self, go_back, split};
use turns_aloft_analysis::steps::{Flown, Gain};
use turns_aloft_describe::beyond;
use turns_aloft_describe::lever::{gained_text, step_text};
use turns_aloft_scenario::units::Units;
use turns_aloft_session::Session;
use turns_aloft_session::why::words;
use turns_aloft_words::{say, text};

const ROW_HEIGHT: f32 = 50.0;
const BAR_HEIGHT: f32 = 10.0;
/// Greatest height of one line of text in it.
const LINE_HEIGHT: f32 = 22.0;
/// Padding of a row, left and right.
const PADDING: f32 = 10.0;

pub fn show(ui: &mut Ui, session: &mut Session) {
    let gains: Vec<Gain> = session.gains().cloned().collect();
    if gains.is_empty() {
        return;
    }
    ui.add_space(WIDE_GAP);
    let painter = ui.painter();
    let room = ui.available_width() - go_back::WIDTH;
    let left = Align2::LEFT_TOP;
    let (title, hint) = (text("panel-what-matters-most"), text("panel-steps-hint"));
    let (bold, small_text) = (style::bold(18.0), style::text(14.5));
    let title = fitted(painter, left, title, bold, TEXT.get(), room);
    let hint = fitted(painter, left, hint, small_text, WEAK_TEXT.get(), room);
    let high = title.height() + hint.height();
    let size = vec2(ui.available_width(), high.max(TOUCH_SIZE));
    let (row, _) = ui.allocate_exact_size(size, Sense::hover());
    let [words, back] = split(row);
    let at = words.left_center() - vec2(0.0, 0.5 * high);
    let below = title.draw(ui.painter(), at).left_bottom();
    hint.draw(ui.painter(), below);
    go_back(ui, session, "go back:steps", back);

    let worth = |gain: &Gain| gain.turns_gained.unwrap_or_default();
    let least = gains.iter().map(worth).fold(0.0, f64::min);
    let most = gains.iter().map(worth).fold(0.0, f64::max);
    let units = *session.units();
    let mut touched = None;
    for gain in &gains {
        if bar(ui, gain, &units, [least, most]) {
            touched = Some(gain.lever);
        }
    }
    if let Some(lever) = touched {
        session.try_step(lever);
    }
    if gains.iter().any(|gain| gain.flown == Flown::Back) {
        small(ui, words::BACK.text());
    }
    ui.add_space(GAP);
    for said in words::of_steps(session) {
        small(ui, &said);
    }
}

/// One step; returns whether it was clicked.
fn bar(ui: &mut Ui, gain: &Gain, units: &Units, [least, most]: [f64; 2]) -> bool {
    let possible = gain.flown == Flown::Forward;
    let beyond = beyond::short(&gain.beyond_seen, units);
    let width = ui.available_width() - 2.0 * PADDING;
    let beyond_text = beyond.clone().map(|said| {
        let font = style::text(14.0);
        ui.painter().layout(said, font, WARNING.get(), width)
    });
    let (step, number) = (step_text(gain.lever, units), gained_text(gain));
    let (size, colour) = if possible {
        (17.0, TEXT.get())
    } else {
        (15.0, WEAK_TEXT.get())
    };
    // The heading has the unit already.
    let plain = number.strip_suffix(text("panel-turns")).unwrap_or(&number);
    let painter = ui.painter();
    let plain = painter.layout_no_wrap(plain.trim_end().to_owned(), style::bold(size), colour);
    let room = width - plain.size().x - GAP;
    let font = style::text(16.0);
    let step_words = fitted(painter, Align2::LEFT_CENTER, &step, font, colour, room);
    // More than one line moves all below it down.
    let more = (step_words.height() - LINE_HEIGHT).max(0.0);
    let foot = beyond_text.as_ref().map_or(0.0, |text| text.size().y + GAP);
    let size = vec2(ui.available_width(), ROW_HEIGHT + more + foot);
    let (row, _) = ui.allocate_exact_size(size, Sense::hover());
    let response = possible.then(|| {
        let said = say!(
            "panel-try-step",
            step = step.as_str(),
            gain = number.as_str()
        );
        let also = beyond.iter().map(String::as_str);
        let said: Vec<&str> = [said.as_str()].into_iter().chain(also).collect();
        let name = format!("step:{}", gain.lever.key());
        button_area(ui, &name, row, &said.join("; "))
    });
    let painter = ui.painter();
    let (fill, edge) = match (possible, response.as_ref().is_some_and(Response::hovered)) {
        (true, true) => (CARD.get(), ACCENT.get()),
        (true, false) => (CARD.get(), LINE.get()),
        (false, _) => (Color32::TRANSPARENT, LINE.get()),
    };
    painter.rect(
        row,
        CornerRadius::same(8),
        fill,
        Stroke::new(1.0, edge),
        StrokeKind::Inside,
    );
    let inside = row.shrink2(vec2(PADDING, 0.0));
    let line = row.top() + 18.0 + 0.5 * more;
    let at = pos2(inside.right() - plain.size().x, line - 0.5 * plain.size().y);
    painter.galley(at, plain, colour);
    step_words.draw(painter, pos2(inside.left(), line));
    if let Some(text) = beyond_text {
        painter.galley(
            pos2(inside.left(), row.top() + ROW_HEIGHT + more),
            text,
            WARNING.get(),
        );
    }
    let Some(gained) = gain.turns_gained else {
        return false;
    };
    let x = |turns: f64| {
        let share = (turns - least) / (most - least).max(f64::MIN_POSITIVE);
        inside.left() + inside.width() * share as f32
    };
    let colour = if gained < 0.0 {
        WARNING.get()
    } else {
        ACCENT.get()
    };
    let own = Rect::from_x_y_ranges(
        x(gained.min(0.0))..=x(gained.max(0.0)),
        row.top() + more + 32.0..=row.top() + more + 32.0 + BAR_HEIGHT,
    );
    painter.rect(
        own,
        CornerRadius::same(3),
        // A step that is only possible backwards is drawn hollow.
        if possible {
            colour
        } else {
            Color32::TRANSPARENT
        },
        Stroke::new(1.0, colour),
        StrokeKind::Inside,
    );
    response.is_some_and(|response| response.clicked())
}
