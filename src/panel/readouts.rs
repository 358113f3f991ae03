//! All readouts by group; a click on one explains it.

use std::borrow::Cow;

use egui::{
    Align2, CornerRadius, Rect, Response, RichText, Sense, Stroke, StrokeKind, Ui, pos2, vec2,
};

use crate::charts;
use crate::controls::{EXPLANATION_MARK_RADIUS, explained, explanation_area, explanation_mark};
use crate::fitted::{Fitted, fitted};
use crate::style::{self, ACCENT, CARD, GAP, LINE, TEXT, WEAK_TEXT};
use crate::text::small;
use turns_aloft_session::Session;
use turns_aloft_session::readings::{Group, Reading, readings};
use turns_aloft_words::text;

/// Least height of a tile.
const TILE: f32 = 54.0;
/// Distance of the letters from the sides.
const IN: f32 = 10.0;
/// Distance of the mark's centre from the corner.
const MARK_IN: f32 = 14.0;
/// Least width of a tile.
const LEAST_WIDTH: f32 = 136.0;
/// The reading that is shown with the turns instead, being too long for a tile.
const SHOWN_WITH_TURNS: &str = "beyond_seen";
/// Greatest number of columns of the landing's readouts, whose texts are long.
const LANDING_ACROSS: usize = 2;

pub fn show(ui: &mut Ui, session: &Session, about: &mut Option<Cow<'static, str>>) {
    let all = readings(session);
    for group in Group::ALL {
        let lines: Vec<&Reading> = all
            .iter()
            .filter(|line| line.group == group && line.quantity != SHOWN_WITH_TURNS)
            .collect();
        if lines.is_empty() {
            continue;
        }
        ui.add_space(GAP);
        ui.label(
            RichText::new(group.label())
                .font(style::bold(16.0))
                .color(WEAK_TEXT.get()),
        );
        let most = if group == Group::Landing {
            LANDING_ACROSS
        } else {
            3
        };
        let across = columns(ui.available_width(), most.min(lines.len()));
        for lines in lines.chunks(across) {
            row(ui, lines, across, about);
        }
        if group == Group::Efforts {
            ui.add_space(GAP);
            charts::torques(ui, session);
            small(ui, text("panel-torques-note"));
        }
    }
}

/// The number of tiles in a row.
fn columns(width: f32, most: usize) -> usize {
    ((width / LEAST_WIDTH) as usize).clamp(1, most)
}

fn row(ui: &mut Ui, lines: &[&Reading], across: usize, about: &mut Option<Cow<'static, str>>) {
    let width = (ui.available_width() - GAP * (across - 1) as f32) / across as f32;
    // Only what is in sight is laid out: that takes most of the time that the readouts do. What is out
    // of sight is as high as when it was last in sight.
    let id = ui.id().with(&lines[0].quantity);
    let last: f32 = ui.data(|data| data.get_temp(id)).unwrap_or(TILE);
    let likely = Rect::from_min_size(ui.cursor().min, vec2(ui.available_width(), last));
    let texts: Vec<[Fitted; 2]> = if ui.is_rect_visible(likely) {
        lines.iter().map(|line| texts(ui, line, width)).collect()
    } else {
        Vec::new()
    };
    let height = if texts.is_empty() {
        last
    } else {
        let height = |[label, value]: &[Fitted; 2]| label.height() + value.height() + 14.0;
        texts.iter().map(height).fold(TILE, f32::max)
    };
    ui.data_mut(|data| data.insert_temp(id, height));
    let size = vec2(ui.available_width(), height);
    let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
    let mut texts = texts.into_iter();
    for (i, line) in lines.iter().enumerate() {
        let left = rect.left() + (width + GAP) * i as f32;
        let own = Rect::from_min_size(pos2(left, rect.top()), vec2(width, height));
        let response = area(ui, line, own, about);
        if let Some(texts) = texts.next() {
            tile(ui, line, texts, &response, about);
        }
    }
    if let Some(line) = lines
        .iter()
        .find(|line| about.as_ref() == Some(&line.quantity))
    {
        let name = format!("reading:{}", line.quantity);
        if explained(ui, &name, rect, |ui| small(ui, &line.about)) {
            *about = None;
        }
    }
}

/// Label and value, for a tile of that width.
fn texts(ui: &Ui, line: &Reading, width: f32) -> [Fitted; 2] {
    let painter = ui.painter();
    let mark = MARK_IN + EXPLANATION_MARK_RADIUS + 2.0;
    let (small, large) = (style::text(14.0), style::bold(18.0));
    let room = width - IN - mark;
    let label = fitted(
        painter,
        Align2::LEFT_TOP,
        &line.label,
        small,
        WEAK_TEXT.get(),
        room,
    );
    let room = width - 2.0 * IN;
    let value = fitted(
        painter,
        Align2::LEFT_BOTTOM,
        &line.text,
        large,
        TEXT.get(),
        room,
    );
    [label, value]
}

/// What can be touched of a tile; a click opens or closes the explanation.
fn area(ui: &Ui, line: &Reading, rect: Rect, about: &mut Option<Cow<'static, str>>) -> Response {
    let open = about.as_ref() == Some(&line.quantity);
    // Has the group's label, because some inputs have the same label as a readout.
    let what = || format!("{}, {}", line.group.label(), line.label);
    let name = format!("reading:{}", line.quantity);
    let response = explanation_area(ui, &name, rect, open, what, || line.about.clone());
    if response.clicked() {
        *about = (!open).then(|| line.quantity.clone());
    }
    response
}

fn tile(
    ui: &Ui,
    line: &Reading,
    [label, value]: [Fitted; 2],
    response: &Response,
    about: &Option<Cow<'static, str>>,
) {
    let rect = response.rect;
    let open = about.as_ref() == Some(&line.quantity);
    let edge = if open || response.hovered() {
        ACCENT.get()
    } else {
        LINE.get()
    };
    let painter = ui.painter().with_clip_rect(rect.intersect(ui.clip_rect()));
    painter.rect(
        rect,
        CornerRadius::same(8),
        CARD.get(),
        Stroke::new(1.0, edge),
        StrokeKind::Inside,
    );
    label.draw(&painter, rect.left_top() + vec2(IN, 6.0));
    let corner = rect.right_top() + vec2(-MARK_IN, MARK_IN);
    explanation_mark(&painter, corner, open);
    value.draw(&painter, rect.left_bottom() + vec2(IN, -6.0));
}
