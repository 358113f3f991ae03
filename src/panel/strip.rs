//! A sentence at the foot of the picture, put away by a click, and a button with it.

use std::sync::Arc;

use egui::{CornerRadius, Galley, Rect, Stroke, StrokeKind, Ui, pos2, vec2};

use crate::controls::{Button, button_area};
use crate::style::{self, CARD, GAP, TEXT, TOUCH_SIZE, WEAK_TEXT, WIDE_GAP};

/// Greatest width.
const WIDTH: f32 = 560.0;

/// Font sizes, the first of which is taken that makes it no higher than `MOST` of the picture.
const SIZES: [f32; 3] = [17.0, 15.0, 13.0];
const MOST: f32 = 0.3;

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

/// What is left of `room` between those of `others` that reach below `top`.
pub fn between(room: Rect, others: &[Rect], top: f32) -> Rect {
    let middle = room.center().x;
    let meets = |other: &&Rect| other.bottom() + GAP > top;
    others.iter().filter(meets).fold(room, |free, other| {
        if other.center().x < middle {
            free.with_min_x(free.left().max(other.right() + GAP))
        } else {
            free.with_max_x(free.right().min(other.left() - GAP))
        }
    })
}

impl Strip<'_> {
    /// Shows it on the picture, between the `others` there if it is as high as they reach. Returns its
    /// area, and what was clicked.
    pub fn show(self, ui: &Ui, stage: Rect, others: &[Rect]) -> (Rect, Option<Touched>) {
        let inside = stage.shrink2(vec2(WIDE_GAP, GAP));
        let most = MOST * stage.height();
        let (rect, _) = self.placed(ui, inside, most);
        let free = between(inside, others, rect.top());
        let (rect, galley) = self.placed(ui, free, most);
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

    /// Its place, as wide as the sentence needs, in the middle of the foot of `free`, and the letters:
    /// smaller ones where it would be higher than `most`.
    fn placed(&self, ui: &Ui, free: Rect, most: f32) -> (Rect, Arc<Galley>) {
        let room = free.width().min(WIDTH) - WIDE_GAP - TOUCH_SIZE;
        let laid_out = |size| {
            let (sentence, font) = (self.sentence.to_owned(), style::text(size));
            ui.painter().layout(sentence, font, TEXT.get(), room)
        };
        let least = style::least_size(ui.ctx());
        let galley = SIZES
            .into_iter()
            .map(laid_out)
            .find(|galley| galley.size().y + 2.0 * GAP <= most)
            .unwrap_or_else(|| laid_out(least));
        let size = vec2(
            galley.size().x + WIDE_GAP + TOUCH_SIZE,
            (galley.size().y + 2.0 * GAP).max(TOUCH_SIZE) + self.foot(),
        );
        let corner = pos2(free.center().x - 0.5 * size.x, free.bottom() - size.y);
        (Rect::from_min_size(corner, size), galley)
    }
}
