//! The session's notice, over the picture.

use egui::{CornerRadius, Rect, Stroke, StrokeKind, Ui, pos2, vec2};

use crate::controls::button_area;
use crate::style::{self, ACCENT, CARD, TEXT, TOUCH_SIZE, WIDE_GAP};
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// The notice at the bottom of the picture; a click dismisses it.
pub fn show(ui: &Ui, session: &mut Session, stage: Rect) {
    let Some(sentence) = session.notice() else {
        return;
    };
    let width = (stage.width() - 2.0 * WIDE_GAP).min(560.0);
    let galley = ui.painter().layout(
        sentence.to_owned(),
        style::text(17.0),
        TEXT.get(),
        width - 2.0 * WIDE_GAP,
    );
    let size = vec2(width, (galley.size().y + 2.0 * WIDE_GAP).max(TOUCH_SIZE));
    let rect = Rect::from_min_size(
        pos2(
            stage.center().x - 0.5 * width,
            stage.bottom() - size.y - WIDE_GAP,
        ),
        size,
    );
    let response = button_area(ui, "notice", rect, text("panel-dismiss"));
    ui.painter().rect(
        rect,
        CornerRadius::same(style::CORNER_RADIUS),
        CARD.get(),
        Stroke::new(2.0, ACCENT.get()),
        StrokeKind::Inside,
    );
    ui.painter().galley(
        pos2(
            rect.left() + WIDE_GAP,
            rect.center().y - 0.5 * galley.size().y,
        ),
        galley,
        TEXT.get(),
    );
    if response.clicked() {
        session.dismiss();
    }
}
