//! The buttons of the named views.

use egui::{Rect, Ui, vec2};

use crate::controls::Button;
use crate::style::{GAP, TOUCH_SIZE, WIDE_GAP};
use turns_aloft_appearance::view::View;
use turns_aloft_words::text;

/// The view buttons at the right edge of the picture, one below the other: a row would cover the
/// jumper. Returns their area, and the view that was clicked.
pub fn show(ui: &Ui, present: Option<View>, stage: Rect) -> (Rect, Option<View>) {
    let views = [
        (View::Front, "view Front", text("panel-view-front")),
        (View::Above, "view Above", text("panel-view-above")),
        (View::AlongAxis, "view Axis", text("panel-view-axis")),
    ];
    let size = vec2(56.0, TOUCH_SIZE);
    let step = vec2(0.0, size.y + GAP);
    let corner = stage.right_top() + vec2(-WIDE_GAP - size.x, GAP);
    let all = Rect::from_min_size(corner, size + 2.0 * step);
    let mut clicked = None;
    for (i, (view, name, label)) in views.into_iter().enumerate() {
        let own = Rect::from_min_size(corner + i as f32 * step, size);
        let chosen = present == Some(view);
        let button = Button::labelled(name, label).chosen(chosen);
        if button.show(ui, own).clicked() {
            clicked = Some(view);
        }
    }
    (all, clicked)
}
