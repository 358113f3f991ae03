//! The pad: how far a finger is from its middle is how far arms and legs are out.

use egui::{Align2, CornerRadius, Id, Rect, Response, Sense, Stroke, StrokeKind, Ui, pos2, vec2};

use crate::controls::{Scale, picture_area, slider, take_hold};
use crate::fitted::fitted;
use crate::style::{self, ACCENT, CARD, CORNER_RADIUS, LINE, TEXT, WEAK_TEXT};
use turns_aloft_session::Session;
use turns_aloft_session::slow_flight::percent;
use turns_aloft_words::text;

/// All in as near to the middle as that, all out as far from it, as shares of the way to the edge: both are
/// easily found without looking.
const ALL_IN: f32 = 0.15;
const ALL_OUT: f32 = 0.9;

/// A step by keyboard, percent.
const STEP: f64 = 10.0;

/// A hand's radius.
const HAND: f32 = 11.0;

/// How far in a finger is that is so far from the middle.
fn tuck(aside: f32, half_width: f32) -> f64 {
    let share = aside.abs() / half_width.max(1.0);
    f64::from(((ALL_OUT - share) / (ALL_OUT - ALL_IN)).clamp(0.0, 1.0))
}

pub fn show(ui: &mut Ui, session: &mut Session, height: f32) {
    let size = vec2(ui.available_width(), height);
    let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
    let label = text("slow-pad");
    let response = slider(ui, "pad", rect, label, session, led_to, scale);
    ui.ctx().accesskit_node_builder(response.id, |node| {
        node.set_description(text("slow-pad-about"));
    });
    follow(ui, session, &response, rect);
    draw(ui, session, rect);
}

/// The picture is a pad as well while the jump is in the air.
pub fn on_picture(ui: &Ui, session: &mut Session, stage: Rect) {
    if session.slow_flight().is_some_and(|it| it.is_in_air()) {
        let response = picture_area(ui, "pad on the picture", stage);
        follow(ui, session, &response, stage);
    }
}

fn led_to(session: &mut Session, percent: f64) {
    session.lead(percent / 100.0);
}

fn wanted(session: &Session) -> f64 {
    session.slow_flight().map_or(0.0, |it| it.wanted())
}

fn scale(session: &Session) -> Scale {
    let wanted = wanted(session);
    Scale {
        value: 100.0 * wanted,
        least: 0.0,
        most: 100.0,
        step: STEP,
        text: percent(wanted),
    }
}

/// Leads by the finger while it is down, and lets out when it is lifted.
fn follow(ui: &Ui, session: &mut Session, response: &Response, rect: Rect) {
    let id = Id::new("finger that leads").with(response.id);
    let at = response.interact_pointer_pos();
    if let Some(at) = at.filter(|_| response.is_pointer_button_down_on()) {
        if ui.input(|input| input.pointer.any_pressed()) {
            // The column doesn't scroll under it.
            take_hold(ui.ctx());
        }
        ui.data_mut(|data| data.insert_temp(id, true));
        session.lead(tuck(at.x - rect.center().x, 0.5 * rect.width()));
    } else if ui.data_mut(|data| data.remove_temp::<bool>(id)).is_some() {
        session.lead(0.0);
    }
}

/// The axis, the zone where all is in, and a hand on either side as far out as is asked for.
fn draw(ui: &Ui, session: &Session, rect: Rect) {
    let painter = ui.painter();
    let corner = CornerRadius::same(CORNER_RADIUS);
    let edge = Stroke::new(1.0, LINE.get());
    painter.rect(rect, corner, CARD.get(), edge, StrokeKind::Inside);
    let (middle, half) = (rect.center(), 0.5 * rect.width());
    let zone = Rect::from_center_size(middle, vec2(2.0 * ALL_IN * half, rect.height()));
    painter.rect_filled(zone, 0.0, ACCENT.get().gamma_multiply(0.25));
    painter.vline(middle.x, rect.y_range(), Stroke::new(2.0, LINE.get()));
    let words = [
        (0.0, Align2::CENTER_BOTTOM, text("slow-pad-middle")),
        (-half + 10.0, Align2::LEFT_BOTTOM, text("slow-pad-edge")),
        (half - 10.0, Align2::RIGHT_BOTTOM, text("slow-pad-edge")),
    ];
    for (aside, align, word) in words {
        let at = pos2(middle.x + aside, rect.bottom() - 8.0);
        let (font, room) = (style::text(16.0), 0.5 * half);
        let colour = if aside == 0.0 { TEXT } else { WEAK_TEXT };
        fitted(painter, align, word, font, colour.get(), room).draw(painter, at);
    }
    let out = 1.0 - wanted(session) as f32;
    let aside = (ALL_IN + (ALL_OUT - ALL_IN) * out) * half - HAND;
    let y = middle.y - 12.0;
    let hands = [-aside, aside].map(|aside| pos2(middle.x + aside, y));
    painter.line_segment(hands, Stroke::new(4.0, ACCENT.get()));
    for hand in hands {
        painter.circle_filled(hand, HAND, ACCENT.get());
    }
}
