//! The titles of the map's axes, which are menus of the inputs to choose from.

use egui::{Pos2, Rect, Shape, Stroke, Ui, Vec2, pos2, vec2};

use crate::controls::{Button, menu, menu_item};
use crate::style::{self, GAP, TEXT, WEAK_TEXT};
use turns_aloft_describe::Label;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_scenario::parameter::Parameter;
use turns_aloft_session::Session;
use turns_aloft_session::map::Levers;
use turns_aloft_words::say;

/// Width of the arrow before a title, and of the menu triangle after it.
const ARROW: f32 = 30.0;
const LIST: f32 = 30.0;

/// The menu of one axis, 0 for the horizontal and 1 for the vertical; returns the axis and the
/// input chosen for it.
pub fn show(ui: &Ui, session: &Session, side: usize, row: Rect) -> Option<(usize, Parameter)> {
    let parameter = session.map_levers().parameters()[side];
    let name = format!(
        "{}, {}",
        parameter.label(),
        session.units().of(parameter.kind()).sign()
    );
    let most = row.width() - ARROW - LIST;
    let font = style::bold(style::fitting(ui.painter(), &name, 17.0, most));
    let galley = ui.painter().layout_no_wrap(name, font, TEXT.get());
    let width = galley.size().x + ARROW + LIST;
    // Above the vertical axis, or below the end of the horizontal one.
    let left = [row.right() - width, row.left()][side];
    let rect = Rect::from_min_size(pos2(left, row.top()), vec2(width, row.height()));
    let shown = rect.shrink2(vec2(0.0, 3.0));
    let accessible_name = if side == 0 {
        say!("panel-map-across", lever = parameter.label())
    } else {
        say!("panel-map-upwards", lever = parameter.label())
    };
    let name = ["map:x", "map:y"][side];
    let response = Button::drawn(name, &accessible_name, |_, _, _| ()).show(ui, rect);
    let direction = [vec2(1.0, 0.0), vec2(0.0, -1.0)][side];
    arrow(
        ui,
        pos2(shown.left() + 0.5 * ARROW + 2.0, shown.center().y),
        direction,
    );
    let at = pos2(rect.left() + ARROW, rect.center().y - 0.5 * galley.size().y);
    ui.painter().galley(at, galley, TEXT.get());
    let tip = rect.right_center() - vec2(15.0, -4.0);
    ui.painter().add(Shape::convex_polygon(
        vec![tip, tip + vec2(-6.0, -8.0), tip + vec2(6.0, -8.0)],
        WEAK_TEXT.get(),
        Stroke::NONE,
    ));
    let mut chosen = None;
    menu(&response).width(220.0).gap(4.0).show(|ui| {
        for offered in Levers::offered() {
            let present = offered == parameter;
            let name = format!("{name}:{}", offered.key());
            let item = menu_item(ui, &name, offered.label(), 208.0, present);
            if item.clicked() && !present {
                chosen = Some((side, offered));
            }
        }
    });
    chosen
}

fn arrow(ui: &Ui, at: Pos2, direction: Vec2) {
    let stroke = Stroke::new(2.0, TEXT.get());
    let tip = at + 8.0 * direction;
    ui.painter()
        .line_segment([at - 8.0 * direction, tip], stroke);
    for turned in [direction.rot90(), -direction.rot90()] {
        ui.painter().line_segment(
            [tip, tip - (GAP - 1.0) * direction + (GAP - 1.0) * turned],
            stroke,
        );
    }
}
