//! The vertical scale of a chart: zero, and two or three round marks, each with a light line.

use egui::{Align2, Painter, Rect, Stroke, Ui, pos2};

use crate::round_steps::round_step;
use crate::style::{self, WEAK_TEXT};
use turns_aloft_words::decimal;

const SIZE: f32 = 13.0;

/// Half the height of the numbers: so far from the chart's edges the scale ends.
pub const EDGE: f32 = 5.0;

/// Between the numbers and the chart.
const GUTTER: f32 = 5.0;

/// Least distance of two numbers.
const LEAST_DISTANCE: f32 = 13.0;

/// Most marks, zero included.
const MOST: usize = 4;

/// Room above the largest value, as a part of the range.
const HEADROOM: f64 = 0.06;

/// A range of values in the unit shown, zero in it, and its marks.
#[derive(Debug, Clone)]
pub struct VerticalScale {
    bottom: f64,
    top: f64,
    marks: Vec<(f64, String)>,
}

impl VerticalScale {
    /// For values in a chart of so much height.
    pub fn of(values: impl Iterator<Item = f64>, height: f32) -> Self {
        let (least, most) = values.fold((0.0_f64, 0.0_f64), |(least, most), value| {
            (least.min(value), most.max(value))
        });
        let room = HEADROOM * (most - least);
        let (bottom, top) = if most > least {
            (if least < 0.0 { least - room } else { 0.0 }, most + room)
        } else {
            (0.0, 1.0)
        };
        Self {
            bottom,
            top,
            marks: marks(bottom, top, height - 2.0 * EDGE),
        }
    }

    /// Where a value is drawn in a chart.
    pub fn y(&self, chart: Rect, value: f64) -> f32 {
        let part = ((value - self.bottom) / (self.top - self.bottom)) as f32;
        chart.bottom() - EDGE - part * (chart.height() - 2.0 * EDGE)
    }

    /// The value that is drawn so high.
    pub fn value(&self, chart: Rect, y: f32) -> f64 {
        let part = (chart.bottom() - EDGE - y) / (chart.height() - 2.0 * EDGE);
        self.bottom + f64::from(part) * (self.top - self.bottom)
    }

    /// Width of its numbers, with their distance from the chart.
    pub fn width(&self, ui: &Ui) -> f32 {
        let width = |text: &String| {
            let font = style::text(SIZE);
            let galley = ui
                .painter()
                .layout_no_wrap(text.clone(), font, WEAK_TEXT.get());
            galley.size().x
        };
        let widest = self.marks.iter().map(|(_, text)| width(text));
        widest.fold(0.0, f32::max) + GUTTER
    }

    /// Draws the lines into a chart, that of zero stronger.
    pub fn lines(&self, painter: &Painter, chart: Rect) {
        for &(value, _) in &self.marks {
            let faint = if value == 0.0 { 0.8 } else { 0.3 };
            let stroke = Stroke::new(1.0, WEAK_TEXT.get().gamma_multiply(faint));
            painter.hline(chart.x_range(), self.y(chart, value), stroke);
        }
    }

    /// Draws the numbers to the left of a chart.
    pub fn numbers(&self, painter: &Painter, chart: Rect) {
        for (value, text) in &self.marks {
            painter.text(
                pos2(chart.left() - GUTTER, self.y(chart, *value)),
                Align2::RIGHT_CENTER,
                text,
                style::text(SIZE),
                WEAK_TEXT.get(),
            );
        }
    }
}

/// Multiples of a round number, zero among them, as many as have room over a height.
fn marks(bottom: f64, top: f64, height: f32) -> Vec<(f64, String)> {
    let step = round_step(top - bottom, 5.0);
    let [first, last] = [(bottom / step.size).ceil(), (top / step.size).floor()];
    let distance = f64::from(height) * step.size / (top - bottom);
    let has_room = |stride: f64| {
        let count = (last / stride).floor() - (first / stride).ceil() + 1.0;
        stride * distance >= f64::from(LEAST_DISTANCE) && count <= MOST as f64
    };
    let stride = [1.0, 2.0, 3.0, 4.0].into_iter().find(|&it| has_room(it));
    let stride = stride.unwrap_or(5.0);
    let [first, last] = [(first / stride).ceil(), (last / stride).floor()];
    let is_whole = (stride * step.size).fract() == 0.0;
    (first as i64..=last as i64)
        .map(|i| {
            let value = i as f64 * stride * step.size;
            let decimals = if is_whole || i == 0 { 0 } else { step.decimals };
            (value, decimal(value, decimals))
        })
        .collect()
}
