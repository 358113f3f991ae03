//! A chart with axes: empty to draw in, or with curves.

use std::fmt::Write as _;

use crate::html::escaped;
use turns_aloft_describe::unit::{SECONDS, UnitText};
use turns_aloft_scenario::units::Unit;
use turns_aloft_words::{decimal, say, text};

/// Size, and where the axes begin and end, in the chart's own units: a tenth of a millimetre or so.
const SIZE: [f64; 2] = [1500.0, 520.0];
const LEFT: f64 = 130.0;
const RIGHT: f64 = 1480.0;
const TOP: f64 = 60.0;
const BOTTOM: f64 = 440.0;

/// Parts of an axis at least.
const PARTS: f64 = 4.0;

/// So much higher than the highest value an axis goes: what is highest is not given away.
const ABOVE: f64 = 1.25;

/// A curve of one quantity over time.
pub struct Chart<'a> {
    pub label: &'a str,
    pub unit: Unit,
    /// What was flown, times and values in SI: the axes go by it. Drawn only where it is to be seen.
    pub flown: &'a [[f64; 2]],
    pub shown: bool,
    /// What somebody has drawn.
    pub drawn: &'a [[f64; 2]],
}

/// The next of 1, 2, 5, 10, ... that is no less.
fn round_step(least: f64) -> f64 {
    let power = power_of_ten(least);
    let unit = 10.0_f64.powi(power);
    let step = [1.0, 2.0, 5.0, 10.0]
        .into_iter()
        .find(|step| step * unit >= least * (1.0 - 1e-9));
    step.unwrap_or(10.0) * unit
}

/// The power of ten that is no more than a number.
fn power_of_ten(number: f64) -> i32 {
    let mut power = 0;
    while 10.0_f64.powi(power) > number && power > -12 {
        power -= 1;
    }
    while 10.0_f64.powi(power + 1) <= number && power < 12 {
        power += 1;
    }
    power
}

/// An axis from 0 on: where it ends, from tick to tick, and the decimals of the ticks.
struct Axis {
    end: f64,
    step: f64,
    decimals: usize,
}

impl Axis {
    fn to(most: f64) -> Self {
        let most = if most.is_finite() && most > 0.0 {
            most
        } else {
            1.0
        };
        let step = round_step(most / PARTS);
        Self {
            end: step * (most / step - 1e-9).ceil(),
            step,
            decimals: usize::try_from(-power_of_ten(step)).unwrap_or(0),
        }
    }

    fn ticks(&self) -> impl Iterator<Item = f64> + '_ {
        let count = (self.end / self.step).round() as usize;
        (0..=count).map(|i| i as f64 * self.step)
    }
}

impl Chart<'_> {
    pub fn svg(&self) -> String {
        let values = self
            .flown
            .iter()
            .chain(self.drawn)
            .map(|it| self.unit.from_si(it[1]));
        let high = Axis::to(ABOVE * values.fold(0.0, f64::max));
        let end_s = self.flown.last().map_or(1.0, |it| it[0]);
        let time = Axis::to(end_s);
        let x = |t_s: f64| LEFT + (RIGHT - LEFT) * t_s / time.end;
        let y = |value: f64| BOTTOM - (BOTTOM - TOP) * value / high.end;
        let mut svg = self.opened();
        for tick in time.ticks() {
            let at = x(tick);
            grid(&mut svg, [at, TOP, at, BOTTOM]);
            label(
                &mut svg,
                [at, BOTTOM + 38.0],
                "middle",
                &decimal(tick, time.decimals),
            );
        }
        for tick in high.ticks() {
            let at = y(tick);
            grid(&mut svg, [LEFT, at, RIGHT, at]);
            label(
                &mut svg,
                [LEFT - 14.0, at + 10.0],
                "end",
                &decimal(tick, high.decimals),
            );
        }
        let axes = format!(
            "<path d=\"M{LEFT} {TOP}V{BOTTOM}H{RIGHT}\" fill=\"none\" stroke=\"#000\" stroke-width=\"4\"/>"
        );
        svg.push_str(&axes);
        let name = format!("{} ({})", self.label, self.unit.sign());
        label(&mut svg, [10.0, 34.0], "start", &name);
        let of_time = format!("{} ({})", text("table-time"), SECONDS.sign());
        label(&mut svg, [RIGHT, BOTTOM + 74.0], "end", &of_time);
        let place = |it: &[f64; 2]| [x(it[0]), y(self.unit.from_si(it[1]))];
        if self.shown {
            curve(&mut svg, self.flown.iter().map(place), "");
        }
        curve(
            &mut svg,
            self.drawn.iter().map(place),
            " stroke-dasharray=\"18 10\"",
        );
        svg.push_str("</svg>");
        svg
    }

    fn opened(&self) -> String {
        let said = if self.shown {
            say!("sheet-chart-of", what = self.label)
        } else {
            say!("sheet-chart-empty", what = self.label)
        };
        format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {} {}\" role=\"img\" aria-label=\"{}\" font-size=\"30\" font-family=\"inherit\">",
            SIZE[0],
            SIZE[1],
            escaped(&said)
        )
    }
}

fn grid(svg: &mut String, [x1, y1, x2, y2]: [f64; 4]) {
    write!(
        svg,
        "<path d=\"M{x1:.1} {y1:.1}L{x2:.1} {y2:.1}\" stroke=\"#888\" stroke-width=\"1.5\" stroke-dasharray=\"4 8\"/>"
    )
    .expect("writing to a string does not fail");
}

fn label(svg: &mut String, [x, y]: [f64; 2], anchor: &str, text: &str) {
    write!(
        svg,
        "<text x=\"{x:.1}\" y=\"{y:.1}\" text-anchor=\"{anchor}\">{}</text>",
        escaped(text)
    )
    .expect("writing to a string does not fail");
}

fn curve(svg: &mut String, points: impl Iterator<Item = [f64; 2]>, how: &str) {
    let points: String = points.map(|[x, y]| format!("{x:.1},{y:.1} ")).collect();
    if points.is_empty() {
        return;
    }
    write!(
        svg,
        "<polyline points=\"{}\" fill=\"none\" stroke=\"#000\" stroke-width=\"6\" stroke-linejoin=\"round\"{how}/>",
        points.trim_end()
    )
    .expect("writing to a string does not fail");
}
