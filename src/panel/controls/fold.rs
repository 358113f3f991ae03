//! A section that opens and closes.

use egui::{Align2, Sense, Shape, Stroke, Ui, vec2};

use crate::controls::areas::toggle_area;
use crate::style::{self, LINE, TEXT, TOUCH_SIZE};

/// Shows a title, and below it what `add` adds while the section is open. `name` identifies it in
/// every language, so that it stays open when the language changes.
pub fn fold(ui: &mut Ui, name: &str, title: &str, open_at_first: bool, add: impl FnOnce(&mut Ui)) {
    let id = ui.id().with(name);
    let mut open = ui.data_mut(|data| *data.get_persisted_mut_or(id, open_at_first));
    let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), TOUCH_SIZE), Sense::hover());
    if toggle_area(ui, &format!("fold:{name}"), rect, title, open).clicked() {
        open = !open;
        ui.data_mut(|data| data.insert_persisted(id, open));
    }
    let painter = ui.painter();
    painter.hline(rect.x_range(), rect.top(), Stroke::new(1.0, LINE.get()));
    painter.text(
        rect.left_center(),
        Align2::LEFT_CENTER,
        title,
        style::bold(18.0),
        TEXT.get(),
    );
    let tip = rect.right_center() - vec2(10.0, 0.0);
    let direction = if open { -1.0 } else { 1.0 };
    painter.add(Shape::line(
        vec![
            tip + vec2(-7.0, -3.5 * direction),
            tip + vec2(0.0, 3.5 * direction),
            tip + vec2(7.0, -3.5 * direction),
        ],
        Stroke::new(2.5, TEXT.get()),
    ));
    if open {
        add(ui);
    }
}
