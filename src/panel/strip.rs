//! A sentence at the foot of the picture, put away by a click.

use std::sync::Arc;

use egui::{CornerRadius, Galley, Rect, Stroke, StrokeKind, Ui, pos2, vec2};

use crate::controls::button_area;
use crate::style::{self, CARD, GAP, TEXT, TOUCH_SIZE, WEAK_TEXT, WIDE_GAP};

/// Greatest width.
const WIDTH: f32 = 560.0;

/// Font size, usual and in less room than `NARROW`.
const USUAL: f32 = 17.0;
const SMALLER: f32 = 15.0;
const NARROW: f32 = 260.0;

/// Half the size of the cross at the end.
const CROSS: f32 = 5.0;

pub struct Strip<'a> {
    /// The name of its control.
    pub name: &'a str,
    pub accessible_name: &'a str,
    pub sentence: &'a str,
    pub frame: Stroke,
}

impl Strip<'_> {
    /// Shows it on the picture, between the `others` there if it is as high as they reach. Returns its
    /// area, and whether it was clicked.
    pub fn show(self, ui: &Ui, stage: Rect, others: &[Rect]) -> (Rect, bool) {
        let inside = stage.shrink2(vec2(WIDE_GAP, GAP));
        let (rect, _) = self.placed(ui, inside);
        let meets = |other: &&Rect| other.bottom() + GAP > rect.top();
        let free = others.iter().filter(meets).fold(inside, |free, other| {
            if other.center().x < stage.center().x {
                free.with_min_x(other.right() + GAP)
            } else {
                free.with_max_x(other.left() - GAP)
            }
        });
        let (rect, galley) = self.placed(ui, free);
        let response = button_area(ui, self.name, rect, self.accessible_name);
        let painter = ui.painter();
        painter.rect(
            rect,
            CornerRadius::same(style::CORNER_RADIUS),
            CARD.get(),
            self.frame,
            StrokeKind::Inside,
        );
        let top = rect.center().y - 0.5 * galley.size().y;
        painter.galley(pos2(rect.left() + WIDE_GAP, top), galley, TEXT.get());
        let cross = rect.right_center() - vec2(0.5 * TOUCH_SIZE, 0.0);
        for diagonal in [vec2(CROSS, CROSS), vec2(CROSS, -CROSS)] {
            let stroke = Stroke::new(2.0, WEAK_TEXT.get());
            painter.line_segment([cross - diagonal, cross + diagonal], stroke);
        }
        (rect, response.clicked())
    }

    /// Its place, as wide as the sentence needs, in the middle of the foot of `free`; and the letters.
    fn placed(&self, ui: &Ui, free: Rect) -> (Rect, Arc<Galley>) {
        let room = free.width().min(WIDTH) - WIDE_GAP - TOUCH_SIZE;
        let size = if room < NARROW { SMALLER } else { USUAL };
        let galley = ui.painter().layout(
            self.sentence.to_owned(),
            style::text(size),
            TEXT.get(),
            room,
        );
        let size = vec2(
            galley.size().x + WIDE_GAP + TOUCH_SIZE,
            (galley.size().y + 2.0 * GAP).max(TOUCH_SIZE),
        );
        let corner = pos2(free.center().x - 0.5 * size.x, free.bottom() - size.y);
        (Rect::from_min_size(corner, size), galley)
    }
}
