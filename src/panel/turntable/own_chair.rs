//! The friction of somebody's own chair, from rates and the times between them.

use egui::Ui;

use crate::controls::{Button, NumberEdit, choice};
use crate::style::GAP;
use crate::text::small;
use crate::turntable::typed;
use turns_aloft_session::Session;
use turns_aloft_session::turntable::{SlowedBy, TypedNumber};
use turns_aloft_words::text;

/// In the order of time; the last two only where a third rate counts.
const READ: [(TypedNumber, &str); 5] = [
    (TypedNumber::ReadRate(0), "value:rate before"),
    (TypedNumber::TimeBetween(0), "value:time between"),
    (TypedNumber::ReadRate(1), "value:rate after"),
    (TypedNumber::TimeBetween(1), "value:time to third"),
    (TypedNumber::ReadRate(2), "value:rate third"),
];

pub fn show(ui: &mut Ui, session: &mut Session, numbers: &mut NumberEdit) {
    small(ui, text("turntable-own-chair-about"));
    let Some(by) = session.turntable().map(|it| it.slowing().by) else {
        return;
    };
    let kinds = [
        (SlowedBy::Torque, "even", text("turntable-even")),
        (SlowedBy::Viscous, "grows", text("turntable-grows")),
        (SlowedBy::Both, "both", text("turntable-both")),
    ];
    if let Some(chosen) = choice(ui, "slowing", by, &kinds) {
        session.change_slowing(|slowing| slowing.by = chosen);
    }
    ui.add_space(GAP);
    let read = if by == SlowedBy::Both { 5 } else { 3 };
    for (of, name) in &READ[..read] {
        typed::show(ui, session, numbers, *of, name);
    }
    ui.add_space(GAP);
    let take = Button::labelled("calibrate", text("turntable-calibrate"));
    if take.show_in_row(ui).clicked() {
        session.calibrate_turntable();
    }
}
