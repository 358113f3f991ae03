//! What a newcomer is told: one line on the stage, away with a touch.

use egui::{CornerRadius, Rect, Stroke, StrokeKind, Ui, pos2, vec2};

use super::controls::button_area;
use super::style::{self, APART, FROST, INK, NEAR, SLATE, SNOW, TOUCH};
use crate::session::Session;
use crate::words::text;

/// Smallest letters; where they are too wide still, it takes two lines.
const LEAST: f32 = 14.0;
/// Of the cross at its end.
const CROSS: f32 = 5.0;

/// In the stage's upper corner that the named views leave free.
pub fn show(ui: &Ui, session: &mut Session, stage: Rect, views: Rect) {
    if !session.greets() {
        return;
    }
    let left = stage.left() + APART;
    let room = views.left() - NEAR - left - APART - TOUCH;
    let line = text("panel-greeting");
    let letters = style::fitting_text(ui.painter(), line, 16.0, room).max(LEAST);
    let galley = ui
        .painter()
        .layout(line.to_owned(), style::text(letters), INK.get(), room);
    let size = vec2(
        galley.size().x + APART + TOUCH,
        (galley.size().y + 2.0 * NEAR).max(TOUCH),
    );
    let rect = Rect::from_min_size(pos2(left, views.top()), size);
    let response = button_area(ui, "greeting", rect, text("panel-greeting-away"));
    let painter = ui.painter();
    painter.rect(
        rect,
        CornerRadius::same(style::ROUND),
        SNOW.get(),
        Stroke::new(1.0, FROST.get()),
        StrokeKind::Inside,
    );
    let top = rect.center().y - 0.5 * galley.size().y;
    painter.galley(pos2(rect.left() + APART, top), galley, INK.get());
    let cross = rect.right_center() - vec2(0.5 * TOUCH, 0.0);
    for way in [vec2(CROSS, CROSS), vec2(CROSS, -CROSS)] {
        painter.line_segment([cross - way, cross + way], Stroke::new(2.0, SLATE.get()));
    }
    if response.clicked() {
        session.greet_no_more();
    }
}
