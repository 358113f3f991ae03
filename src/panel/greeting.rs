//! A hint for newcomers: one line on the 3D picture, dismissed by a click.

use egui::{CornerRadius, Rect, Stroke, StrokeKind, Ui, pos2, vec2};

use crate::controls::button_area;
use crate::style::{self, CARD, GAP, LINE, TEXT, TOUCH_SIZE, WEAK_TEXT, WIDE_GAP};
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// Least font size; text that is wider still is wrapped.
const LEAST: f32 = 14.0;
/// Half the size of the cross at the end of the line.
const CROSS: f32 = 5.0;

/// Shows it in the upper corner of the stage that the view buttons leave free.
pub fn show(ui: &Ui, session: &mut Session, stage: Rect, views: Rect) {
    if !session.shows_greeting() {
        return;
    }
    let left = stage.left() + WIDE_GAP;
    let room = views.left() - GAP - left - WIDE_GAP - TOUCH_SIZE;
    let line = text("panel-greeting");
    let letters = style::fitting_text(ui.painter(), line, 16.0, room).max(LEAST);
    let galley = ui
        .painter()
        .layout(line.to_owned(), style::text(letters), TEXT.get(), room);
    let size = vec2(
        galley.size().x + WIDE_GAP + TOUCH_SIZE,
        (galley.size().y + 2.0 * GAP).max(TOUCH_SIZE),
    );
    let rect = Rect::from_min_size(pos2(left, views.top()), size);
    let response = button_area(ui, "greeting", rect, text("panel-greeting-away"));
    let painter = ui.painter();
    painter.rect(
        rect,
        CornerRadius::same(style::CORNER_RADIUS),
        CARD.get(),
        Stroke::new(1.0, LINE.get()),
        StrokeKind::Inside,
    );
    let top = rect.center().y - 0.5 * galley.size().y;
    painter.galley(pos2(rect.left() + WIDE_GAP, top), galley, TEXT.get());
    let cross = rect.right_center() - vec2(0.5 * TOUCH_SIZE, 0.0);
    for diagonal in [vec2(CROSS, CROSS), vec2(CROSS, -CROSS)] {
        painter.line_segment(
            [cross - diagonal, cross + diagonal],
            Stroke::new(2.0, WEAK_TEXT.get()),
        );
    }
    if response.clicked() {
        session.dismiss_greeting();
    }
}
