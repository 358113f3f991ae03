//! The signs on the bar's buttons.

use egui::{Color32, Painter, Pos2, Shape, Stroke, Vec2, vec2};

use crate::style::CARD;

const WIDTH: f32 = 2.5;

/// A gear: the settings.
pub fn gear(painter: &Painter, at: Pos2, colour: Color32) {
    const TEETH: u32 = 8;
    for tooth in 0..TEETH {
        let direction = Vec2::angled(tooth as f32 / TEETH as f32 * std::f32::consts::TAU);
        painter.line_segment(
            [at + 6.0 * direction, at + 11.0 * direction],
            Stroke::new(4.0, colour),
        );
    }
    painter.circle(at, 6.5, CARD.get(), Stroke::new(3.5, colour));
}

/// A cross: something new.
pub fn plus(painter: &Painter, at: Pos2, colour: Color32) {
    for arm in [vec2(9.0, 0.0), vec2(0.0, 9.0)] {
        painter.line_segment([at - arm, at + arm], Stroke::new(WIDTH, colour));
    }
}

/// A bookmark: something to keep.
pub fn bookmark(painter: &Painter, at: Pos2, colour: Color32) {
    let outline = [
        (-7.0, -10.0),
        (7.0, -10.0),
        (7.0, 10.0),
        (0.0, 4.0),
        (-7.0, 10.0),
    ];
    let points = outline.map(|(x, y)| at + vec2(x, y)).to_vec();
    painter.add(Shape::closed_line(points, Stroke::new(WIDTH, colour)));
}

/// An arrow out of a box: something to give to others.
pub fn share(painter: &Painter, at: Pos2, colour: Color32) {
    let stroke = Stroke::new(WIDTH, colour);
    let sides = [
        (-4.0, -2.0),
        (-8.0, -2.0),
        (-8.0, 10.0),
        (8.0, 10.0),
        (8.0, -2.0),
        (4.0, -2.0),
    ];
    let points = sides.map(|(x, y)| at + vec2(x, y)).to_vec();
    painter.add(Shape::line(points, stroke));
    let tip = at - vec2(0.0, 10.0);
    painter.line_segment([at + vec2(0.0, 4.0), tip], stroke);
    for side in [vec2(-4.5, 4.5), vec2(4.5, 4.5)] {
        painter.line_segment([tip, tip + side], stroke);
    }
}
