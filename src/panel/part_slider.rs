//! A slider for something that is no input of a jump: label, value and track.

use egui::{Align2, CornerRadius, Rect, Sense, Ui, pos2, vec2};

use crate::controls::{Scale, slider};
use crate::number::{KNOB, knob};
use crate::style::{self, LINE, TEXT, TOUCH_SIZE};

/// Shows the row. Returns the value that it was moved to.
pub fn show(ui: &mut Ui, name: &str, label: &str, scale: Scale) -> Option<f64> {
    let size = vec2(ui.available_width(), TOUCH_SIZE + 22.0);
    let (row, _) = ui.allocate_exact_size(size, Sense::hover());
    let (head, track) = row.split_top_bottom_at_y(row.bottom() - TOUCH_SIZE);
    let painter = ui.painter();
    let sides = [
        (head.left_center(), Align2::LEFT_CENTER, label),
        (head.right_center(), Align2::RIGHT_CENTER, &scale.text),
    ];
    for (at, align, written) in sides {
        painter.text(at, align, written, style::text(16.0), TEXT.get());
    }
    let mut moved = None;
    let (least, most, value) = (scale.least, scale.most, scale.value);
    let step = scale.step;
    let response = slider(
        ui,
        name,
        track,
        label,
        &mut moved,
        |moved, value| *moved = Some(value),
        |moved| Scale {
            value: moved.unwrap_or(value),
            ..scale
        },
    );
    let (left, span) = (track.left() + KNOB, track.width() - 2.0 * KNOB);
    if (response.dragged() || response.clicked())
        && let Some(at) = response.interact_pointer_pos()
    {
        let share = f64::from((at.x - left) / span).clamp(0.0, 1.0);
        let steps = ((most - least) * share / step).round();
        moved = Some((least + steps * step).min(most));
    }
    let y = track.center().y;
    let line = Rect::from_min_max(pos2(left, y - 3.0), pos2(left + span, y + 3.0));
    ui.painter()
        .rect_filled(line, CornerRadius::same(3), LINE.get());
    let share = ((moved.unwrap_or(value) - least) / (most - least)) as f32;
    let at = pos2(left + span * share.clamp(0.0, 1.0), y);
    knob(ui.painter(), at, response.dragged() || response.hovered());
    moved.filter(|moved| *moved != value)
}
