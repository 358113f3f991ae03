//! A choice of one out of many: a button with the present one on it, which opens a menu of all.

use egui::{Align2, Sense, Shape, Stroke, Ui, pos2, vec2};

use crate::controls::{Button, menu, menu_item};
use crate::fitted::fitted;
use crate::menu_area;
use crate::style::{self, TOUCH_SIZE};
use turns_aloft_words::say;

/// Distance of the text from the left side, and of the sign from the right.
const EDGE: f32 = 12.0;

/// Width of the sign that a menu opens.
const TIP: f32 = 24.0;

/// Shows the row: `what` is chosen, and the `present` one. `options` are what each is called. Returns the place of
/// the one that was clicked.
pub fn pick(ui: &mut Ui, name: &str, what: &str, present: &str, options: &[&str]) -> Option<usize> {
    let size = vec2(ui.available_width(), TOUCH_SIZE);
    let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
    let accessible_name = say!("panel-picked", what = what, present = present);
    let button = Button::drawn(name, &accessible_name, |painter, rect, colour| {
        let room = rect.width() - 2.0 * EDGE - TIP;
        let font = style::text(17.0);
        let left = Align2::LEFT_CENTER;
        let written = fitted(painter, left, present, font, colour, room);
        written.draw(painter, rect.left_center() + vec2(EDGE, 0.0));
        let tip = pos2(rect.right() - EDGE, rect.center().y + 4.0);
        let sides = vec![
            tip + vec2(-6.0, 0.0),
            tip + vec2(-12.0, -8.0),
            tip - vec2(0.0, 8.0),
        ];
        painter.add(Shape::convex_polygon(sides, colour, Stroke::NONE));
    });
    let response = button.show(ui, rect);
    let mut picked = None;
    menu(&response).width(menu_area::WIDTH).gap(4.0).show(|ui| {
        menu_area::as_high_as_fits(ui, &response, |ui| {
            for (place, label) in options.iter().enumerate() {
                let own = format!("{name}:{}", place + 1);
                let width = menu_area::WIDTH - 12.0;
                if menu_item(ui, &own, label, width, *label == present).clicked() {
                    picked = Some(place);
                }
            }
        });
    });
    picked
}
