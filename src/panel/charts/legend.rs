//! The legend of two attempts.

use egui::{Align2, Rect, Shape, Stroke, Ui, pos2};

use crate::style::{self, GAP, REFERENCE, TEXT, WIDE_GAP};
use turns_aloft_session::compare::Reference;
use turns_aloft_words::text;

pub const HEIGHT: f32 = 20.0;

/// Draws it at the top; returns the area below it.
pub fn show(ui: &Ui, reference: &Reference, rect: Rect) -> Rect {
    const SWATCH: f32 = 26.0;
    let (row, rest) = rect.split_top_bottom_at_y(rect.top() + HEIGHT);
    let painter = ui.painter().with_clip_rect(row.intersect(ui.clip_rect()));
    let y = row.center().y - 1.0;
    let mut left = row.left();
    let this = text("panel-this-jump");
    for (name, colour, dashed) in [
        (this, TEXT.get(), false),
        (&*reference.name, REFERENCE.get(), true),
    ] {
        let ends = [pos2(left, y), pos2(left + SWATCH, y)];
        let stroke = Stroke::new(2.5, colour);
        if dashed {
            painter.extend(Shape::dashed_line(&ends, stroke, 6.0, 4.0));
        } else {
            painter.line_segment(ends, stroke);
        }
        let text = painter.text(
            pos2(left + SWATCH + GAP, y),
            Align2::LEFT_CENTER,
            name,
            style::text(14.0),
            colour,
        );
        left = text.right() + WIDE_GAP;
    }
    rest
}
