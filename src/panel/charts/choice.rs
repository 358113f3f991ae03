//! The choice of curves: a button, and the list that it opens.

use egui::{PopupCloseBehavior, Rect, Sense, Ui, pos2, vec2};
use turns_aloft_describe::Label;

use crate::controls::{Button, menu};
use crate::style::{GAP, TOUCH_SIZE};
use crate::text::small;
use turns_aloft_session::{Curve, Session};
use turns_aloft_words::text;

/// Width of the button.
pub const WIDTH: f32 = 76.0;

/// Width of the list, which has two columns.
const LIST: f32 = 352.0;

/// The button; `room` is how many curves the charts have room for.
pub fn show(ui: &Ui, session: &mut Session, rect: Rect, room: usize) {
    let label = text("panel-curves");
    let response = Button::labelled("curves", label)
        .accessible_name(text("panel-curves-choose"))
        .show(ui, rect);
    menu(&response)
        .width(LIST)
        .gap(4.0)
        .close_behavior(PopupCloseBehavior::CloseOnClickOutside)
        .show(|ui| {
            ui.set_width(LIST);
            list(ui, session, room);
        });
}

fn list(ui: &mut Ui, session: &mut Session, room: usize) {
    let mut curves = *session.curves();
    let shown = curves.all().count();
    for pair in Curve::ALL.chunks(2) {
        let mut places = row(ui);
        for (&curve, place) in pair.iter().zip(&mut places) {
            let on = curves.shows(curve);
            let name = format!("curve:{}", curve.name());
            // One at least stays.
            let button = Button::labelled(&name, curve.label()).toggle(on);
            if button.show(ui, *place).clicked() {
                curves.set(curve, !on);
                if curves.all().count() > room {
                    curves.make_way_for(curve);
                }
            }
        }
        if pair.len() == 1 {
            let button = Button::labelled("curve:equation", text("panel-equation"));
            if button.toggle(curves.equation).show(ui, places[1]).clicked() {
                curves.equation = !curves.equation;
            }
        }
    }
    // A menu would spread the words over its width.
    ui.vertical(|ui| {
        if shown >= room {
            small(ui, text("panel-curves-full"));
        }
        if curves.equation {
            small(ui, text("panel-equation-about"));
        }
    });
    session.set_curves(curves);
}

/// Two places beside each other.
fn row(ui: &mut Ui) -> [Rect; 2] {
    let (row, _) = ui.allocate_exact_size(vec2(ui.available_width(), TOUCH_SIZE), Sense::hover());
    let width = 0.5 * (row.width() - GAP);
    [row.left(), row.right() - width]
        .map(|left| Rect::from_min_size(pos2(left, row.top()), vec2(width, TOUCH_SIZE)))
}
