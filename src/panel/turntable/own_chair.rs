//! The friction of somebody's own chair, from two rates and the time between them.

use egui::Ui;

use crate::controls::{Button, NumberEdit, choice};
use crate::style::GAP;
use crate::text::small;
use crate::turntable::typed;
use turns_aloft_session::Session;
use turns_aloft_session::turntable::TypedNumber;
use turns_aloft_words::text;

pub fn show(ui: &mut Ui, session: &mut Session, numbers: &mut NumberEdit) {
    small(ui, text("turntable-own-chair-about"));
    for (of, name) in [
        (TypedNumber::RateBefore, "value:rate before"),
        (TypedNumber::RateAfter, "value:rate after"),
        (TypedNumber::TimeBetween, "value:time between"),
    ] {
        typed::show(ui, session, numbers, of, name);
    }
    let Some(grows) = session.turntable().map(|it| it.slowing().grows) else {
        return;
    };
    let kinds = [
        (false, "even", text("turntable-even")),
        (true, "grows", text("turntable-grows")),
    ];
    if let Some(chosen) = choice(ui, "slowing", grows, &kinds) {
        session.change_slowing(|slowing| slowing.grows = chosen);
    }
    ui.add_space(GAP);
    let take = Button::labelled("calibrate", text("turntable-calibrate"));
    if take.show_in_row(ui).clicked() {
        session.calibrate_turntable();
    }
}
