//! Text in little room: smaller first, and in several lines before it is too small to read.

use std::sync::Arc;

use egui::text::LayoutJob;
use egui::{Align2, Color32, FontId, Galley, Painter, Pos2, Rect};

use crate::style;

/// A text laid out for `room` across, aligned to where `anchor` says it will be drawn.
#[derive(Clone)]
pub struct Fitted {
    galley: Arc<Galley>,
    anchor: Align2,
}

/// Lays out a text of at most the size of `font`.
pub fn fitted(
    painter: &Painter,
    anchor: Align2,
    text: &str,
    mut font: FontId,
    colour: Color32,
    room: f32,
) -> Fitted {
    font.size = style::fitting_in(painter, text, font.clone(), room);
    let mut job = LayoutJob::simple(text.to_owned(), font, colour, room.max(0.0));
    job.halign = anchor.x();
    Fitted {
        galley: painter.layout_job(job),
        anchor,
    }
}

impl Fitted {
    pub fn height(&self) -> f32 {
        self.galley.size().y
    }

    /// Where it would be drawn.
    pub fn area(&self, at: Pos2) -> Rect {
        self.anchor.anchor_size(at, self.galley.size())
    }

    /// Draws it with its anchor at a place; returns its area.
    pub fn draw(self, painter: &Painter, at: Pos2) -> Rect {
        let area = self.area(at);
        let corner = area.min - self.galley.rect.min.to_vec2();
        painter.galley(corner, self.galley, Color32::PLACEHOLDER);
        area
    }
}
