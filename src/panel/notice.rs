//! The session's notice, over the picture; where it tells of a jump that made way, that can be brought
//! back.

use egui::{CornerRadius, Rect, Stroke, StrokeKind, Ui, pos2, vec2};

use crate::controls::{Button, button_area};
use crate::style::{self, ACCENT, CARD, GAP, TEXT, TOUCH_SIZE, WIDE_GAP};
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// Width of the button that brings a jump back.
const BRING_BACK: f32 = 110.0;
/// In less room than this the letters are smaller.
const NARROW: f32 = 260.0;

/// The notice at the bottom of the picture; a click dismisses it.
pub fn show(ui: &Ui, session: &mut Session, stage: Rect) {
    let Some(sentence) = session.notice() else {
        return;
    };
    let brings_back = session.notice_brings_back();
    let width = (stage.width() - 2.0 * WIDE_GAP).min(560.0);
    let aside = if brings_back { BRING_BACK + GAP } else { 0.0 };
    let room = width - aside - 2.0 * WIDE_GAP;
    let letters = if room < NARROW { 15.0 } else { 17.0 };
    let galley = ui
        .painter()
        .layout(sentence.to_owned(), style::text(letters), TEXT.get(), room);
    let size = vec2(width, (galley.size().y + 2.0 * WIDE_GAP).max(TOUCH_SIZE));
    let rect = Rect::from_min_size(
        pos2(
            stage.center().x - 0.5 * width,
            stage.bottom() - size.y - WIDE_GAP,
        ),
        size,
    );
    let (said, button) = rect.split_left_right_at_x(rect.right() - aside);
    let response = button_area(ui, "notice", said, text("panel-dismiss"));
    ui.painter().rect(
        rect,
        CornerRadius::same(style::CORNER_RADIUS),
        CARD.get(),
        Stroke::new(2.0, ACCENT.get()),
        StrokeKind::Inside,
    );
    ui.painter().galley(
        pos2(
            said.left() + WIDE_GAP,
            said.center().y - 0.5 * galley.size().y,
        ),
        galley,
        TEXT.get(),
    );
    if response.clicked() {
        session.dismiss();
    }
    let button = Rect::from_center_size(
        pos2(button.left() + 0.5 * BRING_BACK, button.center().y),
        vec2(BRING_BACK, TOUCH_SIZE),
    );
    let bring_back = || Button::labelled("bring back", text("panel-bring-back")).show(ui, button);
    if brings_back && bring_back().clicked() {
        session.undo();
    }
}
