//! Tick marks and numbers along the axes of the map, in the user's units.

use egui::{Align2, Rect, Stroke, Ui, pos2, vec2};

use crate::round_steps::{RoundStep, round_step};
use crate::style::{self, WEAK_TEXT};
use turns_aloft_analysis::map::Axis;
use turns_aloft_scenario::units::Unit;
use turns_aloft_words::decimal;

/// Room for the numbers below the map.
pub const HEIGHT: f32 = 20.0;

const SIZE: f32 = 14.0;

/// Least distance between two numbers, horizontally and vertically.
const LEAST_DISTANCE: [f32; 2] = [58.0, 40.0];

/// A tick: its position along the axis, 0 to 1, and its label.
struct Tick {
    part: f64,
    text: String,
}

/// Ticks at round numbers: the smallest round step with at most `most` steps along the axis.
fn ticks(side: &Axis, unit: &Unit, most: f32) -> Vec<Tick> {
    let [from, to] = [0.0, 1.0].map(|part| unit.from_si(side.at(part)));
    let RoundStep {
        size: step,
        decimals,
    } = round_step(to - from, f64::from(most));
    // The tolerance keeps a tick at an end despite rounding.
    let (first, last) = ((from / step - 1e-6).ceil(), (to / step + 1e-6).floor());
    (first as i64..=last as i64)
        .map(|i| {
            let value = i as f64 * step;
            Tick {
                part: side.part(unit.to_si(value)).clamp(0.0, 1.0),
                text: decimal(value, decimals),
            }
        })
        .collect()
}

/// Width of the numbers beside the map.
pub fn gutter(ui: &Ui, upwards: &Axis, unit: &Unit) -> f32 {
    let widest = ticks(upwards, unit, f32::MAX)
        .iter()
        .map(|tick| {
            let text = tick.text.clone();
            let galley = ui
                .painter()
                .layout_no_wrap(text, style::text(SIZE), WEAK_TEXT.get());
            galley.size().x
        })
        .fold(0.0, f32::max);
    widest + 7.0
}

/// Draws the ticks of both axes.
pub fn draw(ui: &Ui, sides: &[Axis; 2], units: &[Unit; 2], rect: Rect) {
    let painter = ui.painter();
    let stroke = Stroke::new(1.0, WEAK_TEXT.get());
    for tick in ticks(&sides[0], &units[0], rect.width() / LEAST_DISTANCE[0]) {
        let x = rect.left() + rect.width() * tick.part as f32;
        painter.vline(x, rect.bottom()..=rect.bottom() + 4.0, stroke);
        // The numbers at the ends do not project beyond the picture.
        let align = match tick.part {
            ..0.04 => Align2::LEFT_BOTTOM,
            0.96.. => Align2::RIGHT_BOTTOM,
            _ => Align2::CENTER_BOTTOM,
        };
        let at = pos2(x, rect.bottom() + HEIGHT);
        painter.text(at, align, tick.text, style::text(SIZE), WEAK_TEXT.get());
    }
    for tick in ticks(&sides[1], &units[1], rect.height() / LEAST_DISTANCE[1]) {
        let y = rect.bottom() - rect.height() * tick.part as f32;
        painter.hline(rect.left() - 4.0..=rect.left(), y, stroke);
        let align = match tick.part {
            ..0.04 => Align2::RIGHT_BOTTOM,
            0.96.. => Align2::RIGHT_TOP,
            _ => Align2::RIGHT_CENTER,
        };
        let at = pos2(rect.left(), y) - vec2(6.0, 0.0);
        painter.text(at, align, tick.text, style::text(SIZE), WEAK_TEXT.get());
    }
}
