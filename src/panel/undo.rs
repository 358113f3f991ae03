//! Undo and redo: two buttons on every screen, and the keys.

use std::f32::consts::PI;

use egui::{Color32, Context, Event, Key, Painter, Pos2, Rect, Shape, Stroke, Ui, vec2};

use crate::controls::Button;
use crate::style::{self, GAP, TOUCH_SIZE};
use turns_aloft_session::Session;
use turns_aloft_words::{say, text};

/// Width of both in a row.
pub const WIDTH: f32 = 2.0 * TOUCH_SIZE + GAP;

/// The two buttons, their corners at `at`.
pub fn show(ui: &Ui, session: &mut Session, at: [Pos2; 2]) {
    let [undo, redo] = session.history().next_texts();
    let label = undo.map(|what| say!("panel-undo-what", what = what));
    if button(ui, "undo", label, text("panel-undo"), at[0]) {
        session.undo();
    }
    let label = redo.map(|what| say!("panel-redo-what", what = what));
    if button(ui, "redo", label, text("panel-redo"), at[1]) {
        session.redo();
    }
}

/// Both in a row.
pub fn row(ui: &Ui, session: &mut Session, corner: Pos2) {
    show(ui, session, [corner, corner + vec2(TOUCH_SIZE + GAP, 0.0)]);
}

/// One below the other at the left edge of the stage. Returns their area.
pub fn on_stage(ui: &Ui, session: &mut Session, stage: Rect) -> Rect {
    let corner = stage.left_top() + vec2(style::WIDE_GAP, GAP);
    let step = vec2(0.0, TOUCH_SIZE + GAP);
    show(ui, session, [corner, corner + step]);
    Rect::from_min_size(corner, vec2(TOUCH_SIZE, TOUCH_SIZE) + step)
}

/// Shows one button; disabled if there is no `label`. Returns whether it was clicked.
fn button(ui: &Ui, name: &str, label: Option<String>, plain: &str, corner: Pos2) -> bool {
    // A curved arrow to the left, or its mirror image.
    let direction = if name == "undo" { 1.0 } else { -1.0 };
    Button::drawn(
        name,
        label.as_deref().unwrap_or(plain),
        |painter, rect, colour| arrow(painter, rect.center(), direction, colour),
    )
    .enabled(label.is_some())
    .show(
        ui,
        Rect::from_min_size(corner, vec2(TOUCH_SIZE, TOUCH_SIZE)),
    )
    .clicked()
}

fn arrow(painter: &Painter, at: Pos2, direction: f32, colour: Color32) {
    let centre = at + vec2(0.0, 3.0);
    let arc: Vec<Pos2> = (0..=18)
        .map(|i| {
            let angle = -0.5 + (PI + 0.5) * i as f32 / 18.0;
            centre + 8.5 * vec2(direction * angle.cos(), -angle.sin())
        })
        .collect();
    let end = centre - vec2(direction * 8.5, 0.0);
    painter.add(Shape::line(arc, Stroke::new(2.5, colour)));
    painter.add(Shape::convex_polygon(
        vec![
            end + vec2(0.0, 6.5),
            end + vec2(-5.5, -1.5),
            end + vec2(5.5, -1.5),
        ],
        colour,
        Stroke::NONE,
    ));
}

/// Undoes on Ctrl+Z, redoes on Shift+Ctrl+Z and Ctrl+Y (on a Mac with Cmd). Does nothing while a
/// text field has the focus, which handles these keys itself.
pub fn keys(ctx: &Context, session: &mut Session) {
    if ctx.text_edit_focused() {
        return;
    }
    let pressed = ctx.input(|input| {
        let pressed = |event: &Event| match event {
            Event::Key {
                key,
                pressed: true,
                modifiers,
                ..
            } if modifiers.command && !modifiers.alt => match (key, modifiers.shift) {
                (Key::Z, false) => Some(false),
                (Key::Z, true) | (Key::Y, false) => Some(true),
                _ => None,
            },
            _ => None,
        };
        input.events.iter().filter_map(pressed).collect::<Vec<_>>()
    });
    for is_redo in pressed {
        if is_redo {
            session.redo();
        } else {
            session.undo();
        }
    }
}
