//! A sentence at the foot of the picture, put away by a click, and a button with it.

use std::sync::Arc;

use egui::{CornerRadius, Galley, Rect, Stroke, StrokeKind, Ui, pos2, vec2};

use crate::controls::{Button, button_area};
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
    /// Name and text of a button below the sentence.
    pub button: Option<[&'a str; 2]>,
    pub frame: Stroke,
}

/// What of it was clicked.
pub enum Touched {
    Sentence,
    Button,
}

impl Strip<'_> {
    /// Shows it on the picture, between the `others` there if it is as high as they reach. Returns its
    /// area, and what was clicked.
    pub fn show(self, ui: &Ui, stage: Rect, others: &[Rect]) -> (Rect, Option<Touched>) {
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
        let (said, foot) = rect.split_top_bottom_at_y(rect.bottom() - self.foot());
        let response = button_area(ui, self.name, said, self.accessible_name);
        let painter = ui.painter();
        painter.rect(
            rect,
            CornerRadius::same(style::CORNER_RADIUS),
            CARD.get(),
            self.frame,
            StrokeKind::Inside,
        );
        let top = said.center().y - 0.5 * galley.size().y;
        painter.galley(pos2(rect.left() + WIDE_GAP, top), galley, TEXT.get());
        let cross = said.right_center() - vec2(0.5 * TOUCH_SIZE, 0.0);
        for diagonal in [vec2(CROSS, CROSS), vec2(CROSS, -CROSS)] {
            let stroke = Stroke::new(2.0, WEAK_TEXT.get());
            painter.line_segment([cross - diagonal, cross + diagonal], stroke);
        }
        let pressed = self.button.is_some_and(|[name, label]| {
            let own = Rect::from_min_max(foot.min, foot.max - vec2(0.0, GAP));
            let own = own.shrink2(vec2(GAP, 0.0));
            Button::labelled(name, label).show(ui, own).clicked()
        });
        let touched = if pressed {
            Some(Touched::Button)
        } else {
            response.clicked().then_some(Touched::Sentence)
        };
        (rect, touched)
    }

    /// Room for the button.
    fn foot(&self) -> f32 {
        self.button.map_or(0.0, |_| TOUCH_SIZE + GAP)
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
            (galley.size().y + 2.0 * GAP).max(TOUCH_SIZE) + self.foot(),
        );
        let corner = pos2(free.center().x - 0.5 * size.x, free.bottom() - size.y);
        (Rect::from_min_size(corner, size), galley)
    }
}
