//! The legend of two attempts.

use egui::text::{LayoutJob, TextWrapping};
use egui::{Rect, Shape, Stroke, Ui, pos2};

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
        let from = left + SWATCH + GAP;
        // A long name of the user's own ends with an ellipsis.
        let mut job = LayoutJob::simple_singleline(name.to_owned(), style::text(14.0), colour);
        job.wrap = TextWrapping::truncate_at_width(row.right() - from);
        let text = painter.layout_job(job);
        let at = pos2(from, y - 0.5 * text.size().y);
        left = from + text.size().x + WIDE_GAP;
        painter.galley(at, text, colour);
    }
    rest
}
