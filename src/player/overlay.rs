//! What is drawn over the film, in step with it.

use std::f64::consts::TAU;

use web_sys::CanvasRenderingContext2d;

use crate::view::{FilmPoint, View};

/// Lines and circles at places of the film. They stay where they are in the film, however it is looked
/// at, and as thin as they are on the page.
#[derive(Clone, Debug, Default)]
pub struct Overlay(Vec<Shape>);

/// How a line is drawn: its width in CSS pixels, and its colour as CSS has it.
#[derive(Clone, Debug, PartialEq)]
pub struct Stroke {
    pub width_px: f64,
    pub colour: String,
}

#[derive(Clone, Debug)]
enum Shape {
    Line(Vec<FilmPoint>, Stroke),
    Circle(FilmPoint, f64, Stroke),
}

impl Overlay {
    /// A line from place to place, with round joints.
    pub fn line(&mut self, through: &[FilmPoint], stroke: &Stroke) {
        self.0.push(Shape::Line(through.to_vec(), stroke.clone()));
    }

    /// A circle whose radius is in pixels of the film.
    pub fn circle(&mut self, middle: FilmPoint, radius_px: f64, stroke: &Stroke) {
        self.0
            .push(Shape::Circle(middle, radius_px, stroke.clone()));
    }

    /// Draws it where `view` has the film.
    pub(crate) fn draw(&self, canvas: &CanvasRenderingContext2d, view: &View) {
        canvas.set_line_cap("round");
        canvas.set_line_join("round");
        for shape in &self.0 {
            canvas.begin_path();
            let stroke = match shape {
                Shape::Line(through, stroke) => {
                    for place in through {
                        let place = view.to_room(*place);
                        canvas.line_to(place.x_px, place.y_px);
                    }
                    stroke
                }
                Shape::Circle(middle, radius_px, stroke) => {
                    let middle = view.to_room(*middle);
                    let radius_px = radius_px * view.scale();
                    canvas
                        .arc(middle.x_px, middle.y_px, radius_px, 0.0, TAU)
                        .ok();
                    stroke
                }
            };
            canvas.set_line_width(stroke.width_px);
            canvas.set_stroke_style_str(&stroke.colour);
            canvas.stroke();
        }
    }
}
