//! Every readout, grouped; a tap on one tells in a sentence what it means.

use std::borrow::Cow;

use egui::{Align2, CornerRadius, Rect, RichText, Sense, Stroke, StrokeKind, Ui, pos2, vec2};

use super::charts;
use super::controls::{EXPLANATION_MARK_RADIUS, explanation_area, explanation_mark};
use super::style::{self, FROST, INK, NEAR, SLATE, SNOW, TEAL};
use super::text::small;
use crate::session::Session;
use crate::session::readings::{Group, Reading, readings};
use crate::words::text;

const TILE: f32 = 54.0;
/// The mark's middle from the corner.
const MARK_IN: f32 = 14.0;
/// A tile that is narrower cuts its text.
const NARROWEST: f32 = 136.0;
/// Too long for a tile, and always in sight beside the turns.
const BESIDE_THE_TURNS: &str = "beyond_seen";
/// The texts of the landing are long.
const LANDING_ACROSS: usize = 2;

pub fn show(ui: &mut Ui, session: &Session, about: &mut Option<Cow<'static, str>>) {
    let all = readings(session);
    for group in Group::ALL {
        let lines: Vec<&Reading> = all
            .iter()
            .filter(|line| line.group == group && line.quantity != BESIDE_THE_TURNS)
            .collect();
        if lines.is_empty() {
            continue;
        }
        ui.add_space(NEAR);
        ui.label(
            RichText::new(group.label())
                .font(style::bold(16.0))
                .color(SLATE.get()),
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
            ui.add_space(NEAR);
            charts::torques(ui, session);
            small(ui, text("panel-torques-note"));
        }
    }
}

/// How many tiles stand side by side.
fn columns(width: f32, most: usize) -> usize {
    ((width / NARROWEST) as usize).clamp(1, most)
}

fn row(ui: &mut Ui, lines: &[&Reading], across: usize, about: &mut Option<Cow<'static, str>>) {
    let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), TILE), Sense::hover());
    let width = (rect.width() - NEAR * (across - 1) as f32) / across as f32;
    for (i, line) in lines.iter().enumerate() {
        let left = rect.left() + (width + NEAR) * i as f32;
        let own = Rect::from_min_size(pos2(left, rect.top()), vec2(width, TILE));
        tile(ui, line, own, about);
    }
    if let Some(line) = lines
        .iter()
        .find(|line| about.as_ref() == Some(&line.quantity))
    {
        ui.label(RichText::new(&line.about).size(14.5).color(SLATE.get()));
        ui.add_space(NEAR);
    }
}

fn tile(ui: &Ui, line: &Reading, rect: Rect, about: &mut Option<Cow<'static, str>>) {
    let open = about.as_ref() == Some(&line.quantity);
    // Some are inputs too, and have the same name there.
    let what = || format!("{}, {}", line.group.label(), line.label);
    let name = format!("reading:{}", line.quantity);
    let response = explanation_area(ui, &name, rect, open, what, || line.about.clone());
    if response.clicked() {
        *about = (!open).then(|| line.quantity.clone());
    }
    if !ui.is_rect_visible(rect) {
        return;
    }
    let edge = if open || response.hovered() {
        TEAL.get()
    } else {
        FROST.get()
    };
    let painter = ui.painter().with_clip_rect(rect.intersect(ui.clip_rect()));
    painter.rect(
        rect,
        CornerRadius::same(8),
        SNOW.get(),
        Stroke::new(1.0, edge),
        StrokeKind::Inside,
    );
    painter.text(
        rect.left_top() + vec2(10.0, 6.0),
        Align2::LEFT_TOP,
        &line.label,
        style::text(style::fitting_text(
            ui.painter(),
            &line.label,
            14.0,
            rect.width() - 2.0 * EXPLANATION_MARK_RADIUS - 20.0,
        )),
        SLATE.get(),
    );
    let corner = rect.right_top() + vec2(-MARK_IN, MARK_IN);
    explanation_mark(&painter, corner, open);
    let size = style::fitting(ui.painter(), &line.text, 18.0, rect.width() - 16.0);
    painter.text(
        rect.left_bottom() + vec2(10.0, -6.0),
        Align2::LEFT_BOTTOM,
        &line.text,
        style::bold(size),
        INK.get(),
    );
}
