//! The run as it writes itself: rate, moment of inertia, angular momentum and energy over time, with the run
//! that is laid under it as dashed lines.

use egui::{Align2, Pos2, Rect, Sense, Shape, Stroke, Ui, pos2, vec2};

use crate::charts::scale::VerticalScale;
use crate::fitted::fitted;
use crate::round_steps::round_step;
use crate::style::{
    self, ACCENT, CARD, GAP, INERTIA, PLAYHEAD, REFERENCE, TEXT, ThemeColour, WEAK_TEXT,
};
use crate::turntable::transport;
use turns_aloft_describe::Label;
use turns_aloft_describe::curve::run_unit;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_session::Session;
use turns_aloft_session::turntable::OnTurntable;
use turns_aloft_turntable::{RunCurve, Sample};
use turns_aloft_words::decimal;

/// The shortest and the longest time that is shown, s.
const SPAN_S: [f64; 2] = [10.0, 60.0];

/// Most points of a curve.
const MOST_POINTS: usize = 400;

/// Height of the times below, of the name above a narrow chart, of a chart in the column, and between two.
const TICKS: f32 = 20.0;
const HEAD: f32 = 22.0;
const IN_COLUMN: f32 = 64.0;
const APART: f32 = 3.0;

/// Least height of a chart, with the distance to the next; where there is less, there are fewer.
const LEAST: f32 = 36.0;

/// Width of names and values beside the charts; in less than this in all they stand above.
const NAMES: f32 = 128.0;
const BESIDE: f32 = 400.0;

/// Least distance of two times.
const TICK: f64 = 64.0;

/// Below the picture; a finger on it goes back in time.
pub fn show(ui: &Ui, session: &mut Session, area: Rect) {
    let Some((line, span_s)) = draw(ui, session, area) else {
        return;
    };
    transport::wind_back(ui, session, line, span_s);
}

/// In the column that scrolls.
pub fn in_column(ui: &mut Ui, session: &Session) {
    let width = ui.available_width();
    let each = IN_COLUMN + if width < BESIDE { HEAD } else { 0.0 };
    let size = vec2(width, TICKS + each * RunCurve::ALL.len() as f32);
    let (area, _) = ui.allocate_exact_size(size, Sense::hover());
    draw(ui, session, area);
}

/// Draws all curves. Returns where time is, and which.
fn draw(ui: &Ui, session: &Session, area: Rect) -> Option<(Rect, [f64; 2])> {
    let on_turntable = session.turntable()?;
    let span_s = span_s(on_turntable);
    let own = points(&on_turntable.run().samples, span_s);
    let kept = (on_turntable.kept()).map(|run| points(&run.samples, span_s));
    let (shown, now) = (on_turntable.shown(), on_turntable.now());
    let is_beside = area.width() >= BESIDE;
    let (names, head) = if is_beside { (NAMES, 0.0) } else { (0.0, HEAD) };
    let height = area.height() - TICKS;
    let room = ((height / (LEAST + head)) as usize).clamp(1, RunCurve::ALL.len());
    let curves = &RunCurve::ALL[..room];
    let each = height / room as f32;
    let high = each - head - APART;
    let measured = measured(on_turntable, span_s);
    let scale = |curve: &RunCurve| {
        let unit = run_unit(*curve, session.units());
        let samples = own.iter().chain(kept.iter().flatten()).copied();
        let values = samples.chain([&shown, &now]).map(|it| curve.value(it));
        let of_sensor = (measured.iter().filter(|_| *curve == RunCurve::Rate)).map(|it| it[1]);
        VerticalScale::of(values.chain(of_sensor).map(|it| unit.from_si(it)), high)
    };
    let scales: Vec<VerticalScale> = curves.iter().map(scale).collect();
    let numbers = scales.iter().map(|scale| scale.width(ui));
    let left = area.left() + names + numbers.fold(0.0, f32::max);
    let line = Rect::from_min_max(pos2(left, area.top()), area.max);
    let x_of = |t_s: f64| {
        let part = (t_s - span_s[0]) / (span_s[1] - span_s[0]);
        line.left() + line.width() * part as f32
    };
    for (i, (&curve, scale)) in curves.iter().zip(&scales).enumerate() {
        let top = area.top() + each * i as f32;
        let unit = run_unit(curve, session.units());
        let value = unit.text(curve.value(&shown));
        let chart = Rect::from_min_max(
            pos2(left, top + head),
            pos2(area.right(), top + head + high),
        );
        if is_beside {
            let own = Rect::from_min_max(
                pos2(area.left(), top),
                pos2(area.left() + names, top + high),
            );
            beside(ui, curve, &value, own);
        } else {
            let own = Rect::from_min_max(pos2(area.left(), top), pos2(area.right(), top + head));
            above(ui, curve, &value, own);
        }
        ui.painter().rect_filled(chart, 4.0, CARD.get());
        let painter = ui.painter().with_clip_rect(chart.intersect(ui.clip_rect()));
        scale.lines(&painter, chart);
        scale.numbers(ui.painter(), chart);
        let place = |sample: &Sample| -> Pos2 {
            let y = scale.y(chart, unit.from_si(curve.value(sample)));
            pos2(x_of(sample.t_s), y)
        };
        if let Some(kept) = &kept {
            let stroke = Stroke::new(2.0, REFERENCE.get());
            let placed: Vec<Pos2> = kept.iter().map(|it| place(it)).collect();
            painter.extend(Shape::dashed_line(&placed, stroke, 7.0, 5.0));
        }
        if curve == RunCurve::Rate {
            let place =
                |[t_s, rate]: &[f64; 2]| pos2(x_of(*t_s), scale.y(chart, unit.from_si(*rate)));
            let placed = measured.iter().map(place).collect();
            painter.add(Shape::line(placed, Stroke::new(1.5, ACCENT.get())));
        }
        let colour = colour(curve).get();
        let placed = own.iter().copied().chain([&now]).map(place).collect();
        painter.add(Shape::line(placed, Stroke::new(2.5, colour)));
        let stroke = Stroke::new(2.0, PLAYHEAD.get());
        painter.vline(x_of(shown.t_s), chart.y_range(), stroke);
        painter.circle_filled(place(&shown), 5.0, colour);
    }
    times(ui, line, span_s, x_of);
    Some((line, span_s))
}

/// From when to when is shown: all of a run, or the last minute, or that around an earlier time.
fn span_s(on_turntable: &OnTurntable) -> [f64; 2] {
    let [shortest_s, longest_s] = SPAN_S;
    let measured_s = on_turntable.measured().map_or(0.0, |it| it.end_s());
    let end_s = on_turntable.end_s().max(measured_s).max(shortest_s);
    if end_s <= longest_s {
        return [0.0, end_s];
    }
    let shown_s = on_turntable.shown().t_s;
    let from_s = (shown_s - 0.5 * longest_s).clamp(0.0, end_s - longest_s);
    [from_s, from_s + longest_s]
}

/// The times and rates of a real chair between two times, as many as there are points.
fn measured(on_turntable: &OnTurntable, [from_s, to_s]: [f64; 2]) -> Vec<[f64; 2]> {
    let Some(measured) = on_turntable.measured() else {
        return Vec::new();
    };
    let sense = on_turntable.sense();
    let points = measured.points();
    let stride = points.len().div_ceil(MOST_POINTS).next_power_of_two();
    let in_sight = points
        .step_by(stride)
        .filter(|[t_s, _]| (from_s..=to_s).contains(t_s));
    in_sight.map(|[t_s, rate]| [t_s, sense * rate]).collect()
}

/// The samples between two times, every so manyth of them where they are many: always the same ones, so that
/// a curve does not flicker while it grows.
fn points(samples: &[Sample], [from_s, to_s]: [f64; 2]) -> Vec<&Sample> {
    let from = samples.partition_point(|it| it.t_s < from_s);
    let to = samples.partition_point(|it| it.t_s <= to_s);
    let mut stride = 1;
    while (to - from) / stride > MOST_POINTS {
        stride *= 2;
    }
    let first = from.next_multiple_of(stride);
    (first..to).step_by(stride).map(|i| &samples[i]).collect()
}

fn beside(ui: &Ui, curve: RunCurve, value: &str, rect: Rect) {
    let painter = ui.painter();
    let font = style::text(style::fitting_text(
        painter,
        curve.label(),
        14.0,
        rect.width() - GAP,
    ));
    let middle = rect.left_center();
    let label = curve.label();
    let (up, down) = (middle - vec2(0.0, 2.0), middle - vec2(0.0, 3.0));
    painter.text(up, Align2::LEFT_BOTTOM, label, font, WEAK_TEXT.get());
    let size = style::fitting(painter, value, 18.0, rect.width() - GAP);
    let colour = colour(curve).get();
    painter.text(down, Align2::LEFT_TOP, value, style::bold(size), colour);
}

fn above(ui: &Ui, curve: RunCurve, value: &str, row: Rect) {
    let painter = ui.painter();
    let (right, bold) = (Align2::RIGHT_CENTER, style::bold(17.0));
    let own = painter.text(row.right_center(), right, value, bold, colour(curve).get());
    let room = own.left() - GAP - row.left();
    let (left, font) = (Align2::LEFT_CENTER, style::text(14.0));
    let label = fitted(painter, left, curve.label(), font, WEAK_TEXT.get(), room);
    label.draw(painter, row.left_center());
}

/// Round times below the charts.
fn times(ui: &Ui, line: Rect, [from_s, to_s]: [f64; 2], x_of: impl Fn(f64) -> f32) {
    let most = (f64::from(line.width()) / TICK).max(1.0);
    let step = round_step(to_s - from_s, most);
    let first = (from_s / step.size).ceil() as i64;
    for i in first..=(to_s / step.size).floor() as i64 {
        let t_s = i as f64 * step.size;
        let x = x_of(t_s);
        let align = if x < line.left() + 16.0 {
            Align2::LEFT_BOTTOM
        } else if x > line.right() - 16.0 {
            Align2::RIGHT_BOTTOM
        } else {
            Align2::CENTER_BOTTOM
        };
        ui.painter().text(
            pos2(x, line.bottom()),
            align,
            format!("{} s", decimal(t_s, step.decimals)),
            style::text(13.0),
            WEAK_TEXT.get(),
        );
    }
}

const fn colour(curve: RunCurve) -> ThemeColour {
    match curve {
        RunCurve::Inertia => INERTIA,
        _ => TEXT,
    }
}
