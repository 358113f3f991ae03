//! The jump on the map: a point that the pointer drags.
//!
//! A click anywhere moves the point there, and so does a drag, which a finger begins sideways, because
//! upwards and downwards it scrolls; on the point itself a finger drags it in every direction, from
//! where it is, so that a small movement is a small change. A finger hides the point: lines to the borders show
//! its position, and a tooltip above the finger its numbers.

use std::sync::Arc;

use egui::layers::ShapeIdx;
use egui::{
    CornerRadius, Galley, Id, LayerId, Order, Painter, Pos2, Rect, Shape, Stroke, StrokeKind, Ui,
    Vec2, pos2, vec2,
};

use crate::controls::{Scale, pan_area, point_slider, take_hold};
use crate::style::{self, ACCENT, CARD, ON_ACCENT, TEXT, WEAK_TEXT};
use turns_aloft_describe::Label;
use turns_aloft_describe::turns::{turns_in_all, turns_text};
use turns_aloft_session::Session;
use turns_aloft_words::say;

const KNOB: f32 = 13.0;

/// A press within this distance is on the point, which is dragged from where it is.
const GRAB_RADIUS: f32 = 30.0;

/// Side of the square that the ring of the keyboard's focus is drawn round the point in.
const RINGED: f32 = style::TOUCH_SIZE + 10.0;

/// Distance of the tooltip above the finger, so that the hand does not cover it.
const ABOVE: f32 = 58.0;

/// The label of the point is placed clear of the `numbers` on the map; the lines through the point are drawn
/// `below` them.
pub fn show(ui: &mut Ui, session: &mut Session, rect: Rect, numbers: &[Rect], below: ShapeIdx) {
    let response = pan_area(ui, "map", rect);
    let id = response.id;
    let before = place(session, rect);
    if let Some(finger) = response.interact_pointer_pos() {
        let pressed = ui.input(|input| input.pointer.any_pressed());
        if pressed && response.is_pointer_button_down_on() {
            let grabbed = (before - finger).length() < GRAB_RADIUS;
            let offset = if grabbed { before - finger } else { Vec2::ZERO };
            ui.data_mut(|data| data.insert_temp(id, offset));
            if grabbed {
                take_hold(ui.ctx());
            }
        }
        let offset: Vec2 = ui.data(|data| data.get_temp(id).unwrap_or_default());
        let target = finger + offset;
        if (response.dragged() || response.clicked()) && target != before {
            session.put_on_map([
                f64::from((target.x - rect.left()) / rect.width()),
                f64::from((rect.bottom() - target.y) / rect.height()),
            ]);
        }
    }
    sliders(ui, session, rect);
    let at = place(session, rect);
    let finger = response
        .interact_pointer_pos()
        .filter(|_| response.dragged());
    ui.painter().set(below, lines_through(at, rect));
    draw(ui, session, rect, at, finger.is_some());
    match finger {
        Some(finger) => tooltip(ui, session, finger, id),
        None => label(ui, session, rect, at, numbers),
    }
}

/// For AccessKit, two sliders: one for each axis.
fn sliders(ui: &Ui, session: &mut Session, rect: Rect) {
    let at = Rect::from_center_size(place(session, rect), Vec2::splat(style::TOUCH_SIZE));
    for side in session.map_sides() {
        let parameter = side.parameter();
        let unit = session.units().of(parameter.kind());
        point_slider(
            ui,
            ["map:point", parameter.key()],
            at,
            &say!("panel-map-point", lever = parameter.label()),
            session,
            |session, shown| session.set(parameter, unit.to_si(shown)),
            |session| {
                let value = parameter.get(session.scenario());
                Scale::of(&unit, [side.at(0.0), side.at(1.0)], value)
            },
        );
    }
}

/// Where labels would be covered by the ring of the keyboard's focus.
pub fn ringed(session: &Session, rect: Rect) -> Rect {
    Rect::from_center_size(place(session, rect), Vec2::splat(RINGED))
}

/// The position of the jump; clamped to the border if it is outside the map.
fn place(session: &Session, rect: Rect) -> Pos2 {
    let [u, v] = session.map_point().map(|part| part.clamp(0.0, 1.0) as f32);
    pos2(
        rect.left() + rect.width() * u,
        rect.bottom() - rect.height() * v,
    )
}

/// Lines to the borders.
fn lines_through(at: Pos2, rect: Rect) -> Shape {
    let strokes = [(3.0, CARD.get().gamma_multiply(0.7)), (1.0, TEXT.get())];
    let both = |(width, colour)| {
        let stroke = Stroke::new(width, colour);
        [
            Shape::hline(rect.x_range(), at.y, stroke),
            Shape::vline(at.x, rect.y_range(), stroke),
        ]
    };
    Shape::Vec(strokes.into_iter().flat_map(both).collect())
}

fn draw(ui: &Ui, session: &Session, rect: Rect, at: Pos2, dragged: bool) {
    let painter = ui
        .painter()
        .with_clip_rect(rect.expand(KNOB).intersect(ui.clip_rect()));
    let [u, v] = session.map_point();
    let out = [
        (u < 0.0, vec2(-1.0, 0.0)),
        (u > 1.0, vec2(1.0, 0.0)),
        (v < 0.0, vec2(0.0, 1.0)),
        (v > 1.0, vec2(0.0, -1.0)),
    ];
    for (_, direction) in out.into_iter().filter(|(is_out, _)| *is_out) {
        outside(&painter, at, direction);
    }
    let (fill, dot) = if dragged {
        (ACCENT.get(), ON_ACCENT.get())
    } else {
        (CARD.get(), TEXT.get())
    };
    let ring = if dragged { ACCENT.get() } else { TEXT.get() };
    painter.circle(at, KNOB, fill, Stroke::new(2.5, ring));
    painter.circle_filled(at, 3.5, dot);
}

/// An arrow towards a jump that is outside the map.
fn outside(painter: &Painter, at: Pos2, direction: Vec2) {
    let tip = at - 16.0 * direction;
    let side = 8.0 * direction.rot90();
    painter.add(Shape::convex_polygon(
        vec![
            at - 6.0 * direction,
            tip + side - 8.0 * direction,
            tip - side - 8.0 * direction,
        ],
        TEXT.get(),
        Stroke::new(1.5, CARD.get()),
    ));
}

/// The turns, beside the point where there is a free place; they are shown above the map as well.
fn label(ui: &Ui, session: &Session, rect: Rect, at: Pos2, numbers: &[Rect]) {
    let text = turns_text(turns_in_all(session.jump()));
    let galley = ui
        .painter()
        .layout_no_wrap(text, style::bold(19.0), TEXT.get());
    let size = galley.size() + vec2(14.0, 6.0);
    let away = vec2(0.5 * (RINGED + size.x), KNOB + 0.5 * size.y);
    let directions = [
        vec2(1.0, -1.0),
        vec2(-1.0, -1.0),
        vec2(1.0, 1.0),
        vec2(-1.0, 1.0),
        vec2(1.0, 0.0),
        vec2(-1.0, 0.0),
    ];
    let mut places = directions
        .into_iter()
        .map(|direction| Rect::from_center_size(at + direction * away, size));
    let free = places.find(|place| {
        rect.contains_rect(*place) && numbers.iter().all(|other| !other.intersects(*place))
    });
    if let Some(place) = free {
        board(ui.painter(), place.center(), size, &[galley]);
    }
}

/// The tooltip above the pointer: turns and both inputs.
fn tooltip(ui: &Ui, session: &Session, finger: Pos2, id: Id) {
    let painter = ui.ctx().layer_painter(LayerId::new(Order::Tooltip, id));
    let numbers = session
        .map_sides()
        .map(|side| session.value_text(side.parameter()));
    let turns = say!(
        "panel-turns-count",
        turns = turns_text(turns_in_all(session.jump()))
    );
    let rows = [
        painter.layout_no_wrap(turns, style::bold(24.0), TEXT.get()),
        painter.layout_no_wrap(numbers.join(", "), style::text(16.0), WEAK_TEXT.get()),
    ];
    let width = rows.iter().map(|row| row.size().x).fold(0.0, f32::max) + 22.0;
    let height = rows.iter().map(|row| row.size().y).sum::<f32>() + 10.0;
    let screen = ui.ctx().viewport_rect();
    let half = 0.5 * width;
    let x = finger.x.clamp(screen.left() + half, screen.right() - half);
    let y = finger.y - ABOVE - 0.5 * height;
    board(&painter, pos2(x, y), vec2(width, height), &rows);
}

/// Lines of text on a small card.
fn board(painter: &Painter, middle: Pos2, size: Vec2, rows: &[Arc<Galley>]) {
    let card = Rect::from_center_size(middle, size);
    painter.rect(
        card,
        CornerRadius::same(8),
        CARD.get(),
        Stroke::new(1.5, TEXT.get()),
        StrokeKind::Inside,
    );
    let high: f32 = rows.iter().map(|row| row.size().y).sum();
    let mut y = middle.y - 0.5 * high;
    for row in rows {
        let left = middle.x - 0.5 * row.size().x;
        painter.galley(pos2(left, y), Arc::clone(row), TEXT.get());
        y += row.size().y;
    }
}
