//! One of a few: buttons side by side, wrapped where they do not fit.

use bevy_egui::egui::{Align2, Color32, FontSelection, Rect, Sense, Ui, WidgetText, pos2, vec2};

use super::look::{self, INK, NEAR, TOUCH};
use super::transport::button;

/// Shows all options and returns the one that was touched, if it is not the present one.
pub fn of<T: Copy + PartialEq>(
    ui: &mut Ui,
    name: &str,
    present: T,
    options: &[(T, &str)],
) -> Option<T> {
    let width = ui.available_width();
    let needed = options
        .iter()
        .map(|(_, label)| text_width(ui, label))
        .fold(0.0, f32::max)
        + 20.0;
    let across = ((width + NEAR) / (needed + NEAR))
        .floor()
        .clamp(1.0, options.len() as f32) as usize;
    // As even as they come: five that fit four in a row stand three and two.
    let rows = options.len().div_ceil(across);
    let across = options.len().div_ceil(rows);
    let own_width = (width - NEAR * (across - 1) as f32) / across as f32;
    let mut chosen = None;
    for row in options.chunks(across) {
        let (rect, _) = ui.allocate_exact_size(vec2(width, TOUCH), Sense::hover());
        for (i, &(option, label)) in row.iter().enumerate() {
            let left = rect.left() + (own_width + NEAR) * i as f32;
            let own = Rect::from_min_size(pos2(left, rect.top()), vec2(own_width, TOUCH));
            if single(ui, name, own, label, option == present) && option != present {
                chosen = Some(option);
            }
        }
    }
    chosen
}

fn text_width(ui: &Ui, label: &str) -> f32 {
    WidgetText::from(label)
        .into_galley(
            ui,
            None,
            f32::INFINITY,
            FontSelection::FontId(look::text(16.0)),
        )
        .size()
        .x
}

fn single(ui: &Ui, name: &str, rect: Rect, label: &str, present: bool) -> bool {
    let response = button(ui, &format!("{name}:{label}"), rect, present);
    let ink = if present { Color32::WHITE } else { INK };
    ui.painter().text(
        rect.center(),
        Align2::CENTER_CENTER,
        label,
        look::text(16.0),
        ink,
    );
    response.clicked()
}
