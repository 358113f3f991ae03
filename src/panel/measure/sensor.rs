//! A sensor's trace: the flight found in it, what was corrected, and which column is what.

use egui::{CornerRadius, Pos2, Rect, RichText, Sense, Shape, Stroke, Ui, pos2, vec2};

use crate::controls::{Button, StepperRow, choice, fold, stepper};
use crate::style::{self, ACCENT, CARD, GAP, SEEN, TEXT, WEAK_TEXT};
use crate::text::{card, small};
use turns_aloft_describe::Sentence;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_session::Session;
use turns_aloft_session::measuring::TraceFile;
use turns_aloft_trace::columns::Axes;
use turns_aloft_trace::units::{AccelerationUnit, RateUnit, TimeUnit};
use turns_aloft_trace::{Columns, Windows};
use turns_aloft_words::{decimal, say, text};

/// Height of the curve.
const CURVE: f32 = 120.0;

/// What is seen of the trace before and after the flight, s.
const AROUND_S: f64 = 0.7;

/// What one touch moves an end of the flight, or of the rest, by, s.
const FLIGHT_STEP_S: f64 = 0.01;
const REST_STEP_S: f64 = 0.1;

pub fn show(ui: &mut Ui, session: &mut Session) {
    let Some(file) = session.measuring().and_then(|it| it.trace()).cloned() else {
        small(ui, text("measure-trace-again"));
        return;
    };
    card(ui, |ui| {
        ui.label(RichText::new(text("measure-sensor")).font(style::bold(20.0)));
        small(ui, &file.table().file_name);
        curve(ui, session, &file);
        windows(ui, session, &file);
        for remark in &file.trace().remarks {
            small(ui, &remark.sentence());
        }
    });
    ui.add_space(GAP);
    let title = text("measure-columns");
    fold(ui, "Columns", title, false, |ui| {
        columns(ui, session, &file)
    });
}

/// The size of the rate around the flight.
fn curve(ui: &mut Ui, session: &Session, file: &TraceFile) {
    let (flight, signals) = (&file.trace().flight, file.signals());
    let size = vec2(ui.available_width(), CURVE);
    let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
    let seen_s = [flight.from_s - AROUND_S, flight.to_s + AROUND_S];
    let range = signals.range(seen_s);
    let rates = range.clone().map(|i| signals.rate_rad_s[i].length());
    let most = rates.fold(1.0, f64::max);
    let x = |t_s: f64| {
        rect.left() + rect.width() * ((t_s - seen_s[0]) / (seen_s[1] - seen_s[0])) as f32
    };
    let y = |rate: f64| rect.bottom() - rect.height() * (rate / most) as f32;
    let painter = ui.painter().with_clip_rect(rect.intersect(ui.clip_rect()));
    painter.rect_filled(rect, CornerRadius::same(4), CARD.get());
    let in_flight = Rect::from_x_y_ranges(x(flight.from_s)..=x(flight.to_s), rect.y_range());
    painter.rect_filled(
        in_flight,
        CornerRadius::ZERO,
        SEEN.get().gamma_multiply(0.4),
    );
    let points: Vec<Pos2> = range
        .map(|i| pos2(x(signals.t_s[i]), y(signals.rate_rad_s[i].length())))
        .collect();
    painter.add(Shape::line(points, Stroke::new(2.0, ACCENT.get())));
    painter.hline(rect.x_range(), rect.bottom(), Stroke::new(1.0, TEXT.get()));
    let unit = session.units().of(Kind::Rate);
    painter.text(
        rect.left_top() + vec2(4.0, 2.0),
        egui::Align2::LEFT_TOP,
        say!("measure-trace-peak", rate = unit.text(most)),
        style::text(14.0),
        WEAK_TEXT.get(),
    );
}

/// Flight and rest, to be moved.
fn windows(ui: &mut Ui, session: &mut Session, file: &TraceFile) {
    let trace = file.trace();
    let flight_s = [trace.flight.from_s, trace.flight.to_s];
    let labels = [text("measure-flight-from"), text("measure-flight-to")];
    let names = ["flight from", "flight to"];
    if let Some(flight_s) = ends(ui, names, labels, flight_s, FLIGHT_STEP_S) {
        session.set_trace_windows(Windows {
            flight_s: Some(flight_s),
            ..file.windows()
        });
    }
    if let Some(rest) = trace.rest {
        let labels = [text("measure-rest-from"), text("measure-rest-to")];
        let names = ["rest from", "rest to"];
        let rest_s = [rest.from_s, rest.to_s];
        if let Some(rest_s) = ends(ui, names, labels, rest_s, REST_STEP_S) {
            session.set_trace_windows(Windows {
                rest_s: Some(rest_s),
                ..file.windows()
            });
        }
    }
}

fn ends(
    ui: &mut Ui,
    names: [&str; 2],
    labels: [&str; 2],
    ends_s: [f64; 2],
    step_s: f64,
) -> Option<[f64; 2]> {
    let mut moved = None;
    for i in 0..2 {
        let value = format!("{} s", decimal(ends_s[i], 3));
        let row = StepperRow {
            name: names[i],
            label: labels[i],
            note: "",
            value: &value,
            value_name: None,
        };
        if let Some(steps) = stepper(ui, &row) {
            let mut to_s = ends_s;
            to_s[i] += steps * step_s;
            moved = Some(to_s);
        }
    }
    moved
}

/// Which column is what, and in what unit; a touch takes the next column.
fn columns(ui: &mut Ui, session: &mut Session, file: &TraceFile) {
    let present = file.columns();
    let mut then = present;
    column(
        ui,
        file,
        "column time",
        text("measure-column-time"),
        &mut then.time.column,
    );
    let times = [
        (TimeUnit::Seconds, "s", "s"),
        (TimeUnit::Milliseconds, "ms", "ms"),
        (TimeUnit::Microseconds, "us", "µs"),
        (TimeUnit::Nanoseconds, "ns", "ns"),
    ];
    if let Some(unit) = choice(ui, "time unit", then.time.unit, &times) {
        then.time.unit = unit;
    }
    let rates = [
        (RateUnit::RadPerS, "rad/s", "rad/s"),
        (RateUnit::DegPerS, "deg/s", "°/s"),
    ];
    if let Some(gyroscope) = &mut then.gyroscope {
        axes(
            ui,
            file,
            "gyroscope",
            text("measure-column-gyroscope"),
            gyroscope,
        );
        if let Some(unit) = choice(ui, "gyroscope unit", gyroscope.unit, &rates) {
            gyroscope.unit = unit;
        }
    }
    let accelerations = [
        (AccelerationUnit::MetresPerS2, "m/s2", "m/s²"),
        (AccelerationUnit::G, "g", "g"),
        (AccelerationUnit::MilliG, "mg", "mg"),
    ];
    if let Some(accelerometer) = &mut then.accelerometer {
        let label = text("measure-column-accelerometer");
        axes(ui, file, "accelerometer", label, accelerometer);
        if let Some(unit) = choice(ui, "accelerometer unit", accelerometer.unit, &accelerations) {
            accelerometer.unit = unit;
        }
    }
    if then != present {
        session.set_trace_columns(Columns { ..then });
    }
}

fn axes<U>(ui: &mut Ui, file: &TraceFile, name: &str, label: &str, axes: &mut Axes<U>) {
    for (i, own) in axes.columns.iter_mut().enumerate() {
        let name = format!("column {name} {}", i + 1);
        let label = format!("{label} {}", i + 1);
        column(ui, file, &name, &label, own);
    }
}

fn column(ui: &mut Ui, file: &TraceFile, name: &str, label: &str, column: &mut usize) {
    let columns = &file.table().columns;
    let title = match columns.get(*column) {
        Some(of_file) if !of_file.name.is_empty() => of_file.name.clone(),
        _ => say!("measure-column-number", number = *column + 1),
    };
    let shown = say!("measure-column", what = label, column = title);
    if Button::labelled(name, &shown).show_in_row(ui).clicked() {
        *column = (*column + 1) % columns.len().max(1);
    }
    ui.add_space(GAP);
}
