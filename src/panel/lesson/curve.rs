//! A curve over time: drawn by a finger or set by sliders before it is flown, and beside what was flown after.

use egui::{Rect, Sense, Shape, Stroke, Ui, pos2, vec2};

use crate::charts::scale::VerticalScale;
use crate::controls::{Button, Scale, fold, pan_area, take_hold};
use crate::part_slider;
use crate::style::{self, ACCENT, CARD, REFERENCE, TEXT, WEAK_TEXT};
use turns_aloft_describe::Label;
use turns_aloft_describe::curve::{run_unit, unit};
use turns_aloft_describe::outcome::at;
use turns_aloft_describe::unit::{SECONDS, UnitText};
use turns_aloft_lesson::answer::OfCurve;
use turns_aloft_lesson::{Prediction, Setup};
use turns_aloft_scenario::curve::Curve;
use turns_aloft_scenario::units::{Unit, Units};
use turns_aloft_session::Session;
use turns_aloft_session::lesson::LessonInSight;
use turns_aloft_turntable::RunCurve;
use turns_aloft_words::{say, text};

/// Height of the chart, of the times below it, and of the name above.
const HEIGHT: f32 = 190.0;
const TICKS: f32 = 20.0;
const NAME: f32 = 22.0;

/// Points over the time that a finger draws. Our choice.
const POINTS: usize = 60;

/// Times at which there are sliders, from the beginning to the end.
const SLIDERS: usize = 5;

/// Room above the largest value that is flown, so that it does not tell how much that is. Our choice.
const ROOM: f64 = 1.6;

/// The chart of a curve: its name, unit and span.
struct Chart {
    label: &'static str,
    unit: Unit,
    end_s: f64,
    /// In the unit.
    most: f64,
    /// What is flown, in SI.
    flown: Vec<[f64; 2]>,
}

impl Chart {
    fn of(lesson: &LessonInSight, of: &OfCurve, units: &Units) -> Option<Self> {
        let on_turntable = !matches!(lesson.step().setup, Some(Setup::Jump(_)));
        let (label, unit) = if on_turntable {
            let curve = RunCurve::named(&of.curve)?;
            (curve.label(), run_unit(curve, units))
        } else {
            let curve = Curve::named(&of.curve)?;
            (curve.label(), unit(curve, units))
        };
        let flown = lesson.flights().one(of.variant)?.points(&of.curve)?;
        let values = flown.iter().map(|point| unit.from_si(point[1]));
        Some(Self {
            label,
            unit,
            end_s: flown.last()?[0],
            most: ROOM * values.fold(0.0, f64::max),
            flown,
        })
    }

    /// Draws all but the curves; returns where they are drawn, and their scale.
    fn draw(&self, ui: &mut Ui) -> (Rect, VerticalScale) {
        let width = ui.available_width();
        let (area, _) = ui.allocate_exact_size(vec2(width, NAME + HEIGHT + TICKS), Sense::hover());
        let scale = VerticalScale::of([0.0, self.most].into_iter(), HEIGHT);
        let left = area.left() + scale.width(ui);
        let rect = Rect::from_min_size(
            pos2(left, area.top() + NAME),
            vec2(area.right() - left, HEIGHT),
        );
        let painter = ui.painter();
        let name = say!(
            "lesson-curve-name",
            curve = self.label,
            unit = self.unit.sign()
        );
        let font = style::text(15.0);
        let corner = egui::Align2::LEFT_TOP;
        painter.text(area.left_top(), corner, name, font.clone(), TEXT.get());
        painter.rect_filled(rect, 4.0, CARD.get());
        scale.lines(painter, rect);
        scale.numbers(painter, rect);
        let ends = [
            (rect.left(), egui::Align2::LEFT_TOP, 0.0),
            (rect.right(), egui::Align2::RIGHT_TOP, self.end_s),
        ];
        for (x, align, t_s) in ends {
            let at = pos2(x, rect.bottom() + 2.0);
            painter.text(at, align, SECONDS.text(t_s), font.clone(), WEAK_TEXT.get());
        }
        (rect, scale)
    }

    fn line(&self, rect: Rect, scale: &VerticalScale, points: &[[f64; 2]]) -> Vec<egui::Pos2> {
        let at = |[t_s, si]: &[f64; 2]| {
            let part = (t_s / self.end_s) as f32;
            pos2(
                rect.left() + part * rect.width(),
                scale.y(rect, self.unit.from_si(*si)),
            )
        };
        points.iter().map(at).collect()
    }
}

/// To be drawn.
pub fn predict(ui: &mut Ui, session: &mut Session, lesson: &LessonInSight, of: &OfCurve) {
    let Some(chart) = Chart::of(lesson, of, session.units()) else {
        return;
    };
    let mut points = drawn(lesson);
    let before = points.clone();
    let (rect, scale) = chart.draw(ui);
    let response = pan_area(ui, "lesson curve", rect);
    let held = response.is_pointer_button_down_on();
    if let Some(at) = response.interact_pointer_pos().filter(|_| held) {
        let begins = ui.input(|input| input.pointer.any_pressed());
        if begins {
            // The column doesn't scroll under it.
            take_hold(ui.ctx());
        }
        let from = at
            - if begins {
                egui::Vec2::ZERO
            } else {
                response.drag_delta()
            };
        put(
            &mut points,
            &chart,
            [from, at].map(|at| {
                let part = f64::from((at.x - rect.left()) / rect.width()).clamp(0.0, 1.0);
                [
                    part,
                    chart
                        .unit
                        .to_si(scale.value(rect, at.y).clamp(0.0, chart.most)),
                ]
            }),
        );
    }
    let line = chart.line(rect, &scale, &points);
    ui.painter()
        .add(Shape::line(line, Stroke::new(3.0, ACCENT.get())));
    fold(
        ui,
        "Curve by sliders",
        text("lesson-curve-by-sliders"),
        false,
        |ui| {
            by_sliders(ui, &chart, &mut points);
        },
    );
    let again = Button::labelled("lesson curve again", text("lesson-curve-again"));
    if again.enabled(!points.is_empty()).show_in_row(ui).clicked() {
        points.clear();
    }
    if points != before {
        // One point is no curve yet.
        session.predict((!points.is_empty()).then_some(Prediction::Curve(points)));
    }
}

fn drawn(lesson: &LessonInSight) -> Vec<[f64; 2]> {
    match &lesson.progress().record().prediction {
        Some(Prediction::Curve(points)) => points.clone(),
        _ => Vec::new(),
    }
}

/// Draws from one place to another: parts of the time, and values in SI.
fn put(points: &mut Vec<[f64; 2]>, chart: &Chart, [from, to]: [[f64; 2]; 2]) {
    let place = |part: f64| (part * (POINTS - 1) as f64).round() as usize;
    let (first, last) = if from[0] <= to[0] {
        (from, to)
    } else {
        (to, from)
    };
    for i in place(first[0])..=place(last[0]) {
        let part = i as f64 / (POINTS - 1) as f64;
        let share = ((part - first[0]) / (last[0] - first[0])).clamp(0.0, 1.0);
        // A finger that has not moved is at one place.
        let share = if share.is_nan() { 0.0 } else { share };
        let value = first[1] + share * (last[1] - first[1]);
        set(points, part * chart.end_s, value);
    }
}

fn set(points: &mut Vec<[f64; 2]>, t_s: f64, value: f64) {
    let place = points.partition_point(|point| point[0] < t_s - 1e-9);
    match points.get_mut(place) {
        Some(point) if (point[0] - t_s).abs() < 1e-9 => point[1] = value,
        _ => points.insert(place, [t_s, value]),
    }
}

fn by_sliders(ui: &mut Ui, chart: &Chart, points: &mut Vec<[f64; 2]>) {
    let times = (0..SLIDERS).map(|i| chart.end_s * i as f64 / (SLIDERS - 1) as f64);
    let mut values: Vec<[f64; 2]> = times.map(|t_s| [t_s, at(points, t_s)]).collect();
    let mut is_moved = false;
    for (i, point) in values.iter_mut().enumerate() {
        let name = format!("lesson curve at:{}", i + 1);
        let label = say!("lesson-curve-at", time = SECONDS.text(point[0]));
        let scale = Scale {
            value: chart.unit.from_si(point[1]),
            least: 0.0,
            most: chart.most,
            step: chart.most / 100.0,
            text: chart.unit.text(point[1]),
        };
        if let Some(to) = part_slider::show(ui, &name, &label, scale) {
            point[1] = chart.unit.to_si(to);
            is_moved = true;
        }
    }
    if is_moved {
        *points = values;
    }
}

/// What was flown of another curve than the one that is asked for.
pub fn flown(ui: &mut Ui, session: &Session, lesson: &LessonInSight, curve: &str) {
    let of = OfCurve {
        curve: curve.to_owned(),
        variant: None,
    };
    if let Some(chart) = Chart::of(lesson, &of, session.units()) {
        let (rect, scale) = chart.draw(ui);
        let line = chart.line(rect, &scale, &chart.flown);
        ui.painter()
            .add(Shape::line(line, Stroke::new(3.0, ACCENT.get())));
    }
}

/// What was drawn, dashed, and what was flown.
pub fn compare(ui: &mut Ui, session: &Session, lesson: &LessonInSight, of: &OfCurve) {
    let Some(mut chart) = Chart::of(lesson, of, session.units()) else {
        return;
    };
    let points = drawn(lesson);
    let highest = points.iter().map(|point| chart.unit.from_si(point[1]));
    chart.most = highest.fold(chart.most / ROOM, f64::max);
    let (rect, scale) = chart.draw(ui);
    let flown = chart.line(rect, &scale, &chart.flown);
    ui.painter()
        .add(Shape::line(flown, Stroke::new(3.0, ACCENT.get())));
    let drawn = chart.line(rect, &scale, &points);
    let dashes = Shape::dashed_line(&drawn, Stroke::new(2.5, REFERENCE.get()), 8.0, 5.0);
    ui.painter().extend(dashes);
}
