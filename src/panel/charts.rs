//! Charts over the flight: turning rate, moment of inertia and turns on one time axis, and the joint
//! torques.

use egui::{Align2, Color32, Rect, Sense, Shape, Stroke, Ui, UiBuilder, Vec2, Vec2b, pos2, vec2};
use egui_plot::{
    HLine, Line, LineStyle, Plot, PlotBounds, PlotPoint, PlotPoints, PlotUi, Span, VLine,
};

use crate::controls::{Scale, slider};
use crate::style::{
    self, ACCENT, CARD, CLOSING, GAP, INERTIA, LINE, OPENING, PLAYHEAD, REFERENCE, TEXT, TIGHT,
    ThemeColour, WEAK_TEXT, WIDE_GAP,
};
use turns_aloft_describe::joint::group_text;
use turns_aloft_describe::unit::{NEWTON_METRES, UnitText};
use turns_aloft_physics::efforts::{GROUPS, JointGroup};
use turns_aloft_physics::flight::FlightSample;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_session::compare::Reference;
use turns_aloft_session::readings::{phase, turns_of, turns_so_far_text};
use turns_aloft_session::{FRAME_S, Session};
use turns_aloft_words::{decimal, say, text};

/// One curve.
struct Curve {
    /// The message that names it.
    name: &'static str,
    colour: ThemeColour,
    of: fn(&Scenario, &FlightSample) -> f64,
    text: fn(&Session, f64) -> String,
    /// A value to draw a horizontal line at.
    mark: fn(&Session) -> Option<f64>,
}

const CURVES: [Curve; 3] = [
    Curve {
        name: "panel-curve-rate",
        colour: TEXT,
        of: |scenario, sample| scenario.turning.sign() * sample.spin_rad_s,
        text: |session, value| session.units().of(Kind::Rate).text(value),
        mark: |_| None,
    },
    Curve {
        name: "panel-curve-inertia",
        colour: INERTIA,
        of: |_, sample| sample.inertia_kg_m2,
        text: |_, value| format!("{} kg m²", decimal(value, 2)),
        mark: |_| None,
    },
    Curve {
        name: "panel-curve-turns",
        colour: ACCENT,
        of: turns_of,
        text: |session, value| turns_so_far_text(session.jump(), value),
        mark: |session| session.jump().owed.map(|owed| owed.turns),
    },
];

/// Height of the time axis, and width of names and values beside the curves.
const TICKS: f32 = 20.0;
const NAMES: f32 = 128.0;
/// Width of names and values where two values are side by side, because the charts are lower than `LOW`.
const TWO_ACROSS: f32 = 188.0;
const LOW: f32 = 60.0;
/// Height of the legend of two attempts.
const LEGEND: f32 = 20.0;

/// Draws the charts into `rect`; dragging anywhere on them moves the playhead.
pub fn show(ui: &mut Ui, session: &mut Session, rect: Rect) {
    let rect = match session.reference() {
        Some(reference) => legend(ui, reference, rect),
        None => rect,
    };
    let height = (rect.height() - TICKS) / CURVES.len() as f32;
    let across = session.reference().is_some() && height - 3.0 < LOW;
    let names = if across { TWO_ACROSS } else { NAMES };
    let (names, line) = rect.split_left_right_at_x(rect.left() + names);
    let now = session.now();
    for (i, curve) in CURVES.iter().enumerate() {
        let top = rect.top() + height * i as f32;
        let own = |side: Rect| {
            Rect::from_min_size(pos2(side.left(), top), vec2(side.width(), height - 3.0))
        };
        name(ui, session, curve, &now, own(names));
        chart(ui, session, curve, &now, own(line));
        if i == 0 {
            span_names(ui, session, own(line));
        }
    }
    ticks(ui, session, line);
    scrub(ui, session, "charts", line, text("panel-time-on-charts"));
}

/// A time line to scrub on, where there is no room for charts.
pub fn time_line(ui: &mut Ui, session: &mut Session, rect: Rect) {
    let x = |t_s: f64| x_of(session, rect, t_s);
    let painter = ui.painter();
    let band = rect.shrink2(vec2(0.0, 10.0));
    painter.rect_filled(band, 4.0, CARD.get());
    for (from_s, to_s, colour, _) in spans(session) {
        let own = Rect::from_x_y_ranges(x(from_s)..=x(to_s), band.y_range());
        painter.rect_filled(own, 0.0, colour);
    }
    span_names(ui, session, band.expand(1.0));
    painter.vline(
        x(session.playhead_s()),
        rect.y_range(),
        Stroke::new(3.0, PLAYHEAD.get()),
    );
    scrub(ui, session, "time line", rect, text("panel-time-in-flight"));
}

/// The position of a time; the axis includes the touch-downs of both attempts.
fn x_of(session: &Session, rect: Rect, t_s: f64) -> f32 {
    rect.left() + rect.width() * (t_s / session.end_s()).clamp(0.0, 1.0) as f32
}

/// The legend of two attempts at the top; returns the area below it.
fn legend(ui: &Ui, reference: &Reference, rect: Rect) -> Rect {
    const SWATCH: f32 = 26.0;
    let (row, rest) = rect.split_top_bottom_at_y(rect.top() + LEGEND);
    let painter = ui.painter().with_clip_rect(row);
    let y = row.center().y - 1.0;
    let mut left = row.left();
    let this = text("panel-this-jump");
    for (name, colour, dashed) in [
        (this, TEXT.get(), false),
        (&*reference.name, REFERENCE.get(), true),
    ] {
        let ends = [pos2(left, y), pos2(left + SWATCH, y)];
        let stroke = Stroke::new(2.5, colour);
        if dashed {
            painter.extend(Shape::dashed_line(&ends, stroke, 6.0, 4.0));
        } else {
            painter.line_segment(ends, stroke);
        }
        let text = painter.text(
            pos2(left + SWATCH + GAP, y),
            Align2::LEFT_CENTER,
            name,
            style::text(14.0),
            colour,
        );
        left = text.right() + WIDE_GAP;
    }
    rest
}

/// The beginning and end of closing, tight and opening, s; and the message with the name.
fn spans(session: &Session) -> [(f64, f64, Color32, &'static str); 3] {
    let flight = session.flight();
    let end_s = flight.touchdown_s;
    let open_s = if flight.table.plan.spec.open_lead_s > 0.0 {
        flight.open_s
    } else {
        end_s
    };
    let delay_s = flight.table.plan.spec.close_delay_s.min(end_s);
    let closed_s = flight.table.plan.closed_s().min(open_s).max(delay_s);
    [
        (delay_s, closed_s, CLOSING.get(), "panel-span-closing"),
        (
            closed_s,
            open_s.max(closed_s),
            TIGHT.get(),
            "panel-span-tight",
        ),
        (
            open_s.max(closed_s),
            end_s,
            OPENING.get(),
            "panel-span-opening",
        ),
    ]
}

fn chart(ui: &mut Ui, session: &Session, curve: &Curve, now: &FlightSample, rect: Rect) {
    let points = points_of(curve, session.scenario(), session.jump());
    let reference = session
        .reference()
        .map(|reference| points_of(curve, &reference.scenario, &reference.jump));
    let mark = (curve.mark)(session);
    let most = points
        .iter()
        .chain(reference.iter().flatten())
        .map(|point| point[1])
        .chain(mark)
        .fold(0.0, f64::max);
    let playhead_s = session.playhead_s().clamp(0.0, session.end_s());
    let (now_s, now) = (now.t_s, (curve.of)(session.scenario(), now));

    ui.painter().rect_filled(rect, 4.0, CARD.get());
    let mut child = ui.new_child(UiBuilder::new().max_rect(rect).id_salt(curve.name));
    bare_plot(curve.name, rect).show(&mut child, |plot| {
        plot.set_plot_bounds(PlotBounds::from_min_max(
            [0.0, 0.0],
            [session.end_s(), most * 1.18],
        ));
        shade(plot, session);
        if let Some(mark) = mark {
            plot.hline(HLine::new("", mark).stroke(Stroke::new(1.0, WEAK_TEXT.get())));
        }
        if let Some(reference) = reference {
            plot.line(
                Line::new("", PlotPoints::from(reference))
                    .color(REFERENCE.get())
                    .style(LineStyle::Dashed { length: 7.0 })
                    .width(2.0),
            );
        }
        plot.line(
            Line::new("", PlotPoints::from(points))
                .color(curve.colour.get())
                .width(2.5),
        );
        plot.vline(VLine::new("", playhead_s).stroke(Stroke::new(2.0, PLAYHEAD.get())));
        plot.points(
            egui_plot::Points::new("", PlotPoints::Owned(vec![PlotPoint::new(now_s, now)]))
                .radius(5.0)
                .color(curve.colour.get()),
        );
    });
}

/// A plot without axes and without interaction.
fn bare_plot(name: &str, rect: Rect) -> Plot<'_> {
    Plot::new(name)
        .width(rect.width())
        .height(rect.height())
        .show_axes(Vec2b::FALSE)
        .show_grid(Vec2b::FALSE)
        .show_background(false)
        .show_x(false)
        .show_y(false)
        .allow_drag(false)
        .allow_zoom(false)
        .allow_scroll(false)
        .allow_boxed_zoom(false)
        .allow_double_click_reset(false)
        .set_margin_fraction(Vec2::ZERO)
        .sense(Sense::hover())
}

/// Shades the spans of the flight behind the curves.
fn shade(plot: &mut PlotUi<'_>, session: &Session) {
    for (from_s, to_s, colour, _) in spans(session) {
        if to_s > from_s {
            plot.span(
                Span::new("", from_s..=to_s)
                    .fill(colour)
                    .border(Stroke::NONE),
            );
        }
    }
}

/// The net torques of the joints over the flight, and their values at the playhead.
pub fn torques(ui: &mut Ui, session: &Session) {
    const CHART: f32 = 120.0;
    const ROW: f32 = 22.0;
    const ACROSS: usize = 2;
    let rows = GROUPS.div_ceil(ACROSS) as f32;
    let size = vec2(ui.available_width(), CHART + rows * ROW);
    let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
    let (rect, names) = rect.split_top_bottom_at_y(rect.top() + CHART);
    let samples = &session.jump().efforts().samples;
    let curves = JointGroup::ALL.map(|group| -> Vec<[f64; 2]> {
        let points = samples.iter();
        points.map(|at| [at.t_s, at.torque_n_m(group)]).collect()
    });
    let most = curves.iter().flatten().map(|at| at[1]).fold(0.0, f64::max);
    let colours = style::torques();
    let playhead_s = session.playhead_s().clamp(0.0, session.end_s());

    ui.painter().rect_filled(rect, 4.0, CARD.get());
    let mut child = ui.new_child(UiBuilder::new().max_rect(rect).id_salt("torques"));
    bare_plot("torques", rect).show(&mut child, |plot| {
        let bounds = [session.end_s(), most * 1.18];
        plot.set_plot_bounds(PlotBounds::from_min_max([0.0, 0.0], bounds));
        shade(plot, session);
        for (points, colour) in curves.into_iter().zip(colours) {
            plot.line(
                Line::new("", PlotPoints::from(points))
                    .color(colour)
                    .width(2.0),
            );
        }
        plot.vline(VLine::new("", playhead_s).stroke(Stroke::new(2.0, PLAYHEAD.get())));
    });
    ui.painter().text(
        rect.left_top() + vec2(GAP, 2.0),
        Align2::LEFT_TOP,
        say!("panel-torques-up-to", torque = NEWTON_METRES.text(most)),
        style::text(13.0),
        WEAK_TEXT.get(),
    );
    let now = session.jump().flight.loads_at(session.now().t_s);
    let width = names.width() / ACROSS as f32;
    for (i, group) in JointGroup::ALL.into_iter().enumerate() {
        let (column, row) = (i % ACROSS, i / ACROSS);
        let at = names.left_top() + vec2(width * column as f32, ROW * (row as f32 + 0.5));
        let swatch = [at + vec2(0.0, 1.0), at + vec2(18.0, 1.0)];
        ui.painter()
            .line_segment(swatch, Stroke::new(4.0, colours[i]));
        let said = say!(
            "panel-torque-now",
            joints = group_text(group),
            torque = NEWTON_METRES.text(now.largest_torque_n_m(group.segments()))
        );
        let size = style::fitting_text(ui.painter(), &said, 14.0, width - 18.0 - 2.0 * GAP);
        ui.painter().text(
            at + vec2(18.0 + GAP, 0.0),
            Align2::LEFT_CENTER,
            said,
            style::text(size),
            TEXT.get(),
        );
    }
}

fn points_of(curve: &Curve, scenario: &Scenario, jump: &Jump) -> Vec<[f64; 2]> {
    let samples = jump.flight.samples.iter();
    samples
        .map(|sample| [sample.t_s, (curve.of)(scenario, sample)])
        .collect()
}

/// The name of a curve and its value at the playhead, of both attempts if there are two.
fn name(ui: &Ui, session: &Session, curve: &Curve, now: &FlightSample, rect: Rect) {
    let now = (curve.of)(session.scenario(), now);
    let painter = ui.painter();
    let across = rect.height() < LOW;
    // The second value stands below the first where there is room, else behind it.
    let below = session.reference().is_some() && !across;
    let middle = rect.left_center() - vec2(0.0, if below { 9.0 } else { 0.0 });
    painter.text(
        middle - vec2(0.0, 2.0),
        Align2::LEFT_BOTTOM,
        text(curve.name),
        style::text(14.0),
        WEAK_TEXT.get(),
    );
    let own = painter.text(
        middle - vec2(0.0, 3.0),
        Align2::LEFT_TOP,
        (curve.text)(session, now),
        style::bold(18.0),
        curve.colour.get(),
    );
    if let Some(reference) = session.reference() {
        let sample = reference.jump.flight.at(session.playhead_s());
        let at = if across {
            pos2(own.right() + GAP + 2.0, own.top() + 4.0)
        } else {
            middle + vec2(0.0, 16.0)
        };
        painter.text(
            at,
            Align2::LEFT_TOP,
            (curve.text)(session, (curve.of)(&reference.scenario, &sample)),
            style::bold(14.0),
            REFERENCE.get(),
        );
    }
}

/// Names of the spans along the foot of the first chart, where they fit.
fn span_names(ui: &Ui, session: &Session, rect: Rect) {
    let x = |t_s: f64| x_of(session, rect, t_s);
    for (from_s, to_s, _, name) in spans(session) {
        let (from, to) = (x(from_s), x(to_s));
        let name = text(name).to_owned();
        let name = ui
            .painter()
            .layout_no_wrap(name, style::text(13.0), WEAK_TEXT.get());
        let size = name.size();
        if to - from > size.x + GAP {
            let at = pos2(0.5 * (from + to - size.x), rect.bottom() - 2.0 - size.y);
            ui.painter().galley(at, name, WEAK_TEXT.get());
        }
    }
}

fn ticks(ui: &Ui, session: &Session, rect: Rect) {
    let end_s = session.end_s();
    let down_s = session.flight().touchdown_s;
    let down = say!("panel-down-at", time = decimal(down_s, 2));
    let down = ui
        .painter()
        .layout_no_wrap(down, style::text(13.0), WEAK_TEXT.get());
    // Ends where the flight ends, as far as there is room.
    let down_x = x_of(session, rect, down_s).max(rect.left() + 76.0 + down.size().x);
    let down_from = down_x - down.size().x;
    // As many as fit without touching each other.
    let most = f64::from(rect.width()) / 56.0;
    let step_s = [0.1, 0.2, 0.5, 1.0]
        .into_iter()
        .find(|step_s| end_s / step_s <= most)
        .unwrap_or(1.0);
    for i in 0..=(end_s / step_s) as u32 {
        let t_s = f64::from(i) * step_s;
        let x = x_of(session, rect, t_s);
        let (align, said) = if i == 0 {
            (Align2::LEFT_BOTTOM, text("panel-take-off").to_owned())
        } else {
            (Align2::CENTER_BOTTOM, format!("{} s", decimal(t_s, 1)))
        };
        let clear = x < down_from - 20.0 || x > down_x + 20.0;
        if i > 0 && (x < rect.left() + 76.0 || x > rect.right() - 16.0 || !clear) {
            continue;
        }
        ui.painter().text(
            pos2(x, rect.bottom()),
            align,
            said,
            style::text(13.0),
            WEAK_TEXT.get(),
        );
    }
    let at = pos2(down_from, rect.bottom() - down.size().y);
    ui.painter().galley(at, down, WEAK_TEXT.get());
    ui.painter().hline(
        rect.x_range(),
        rect.bottom() - TICKS + 1.0,
        Stroke::new(1.0, LINE.get()),
    );
}

/// The slider of the playhead, over the whole of the charts or time line.
fn scrub(ui: &Ui, session: &mut Session, name: &str, rect: Rect, accessible_name: &str) {
    let response = slider(
        ui,
        name,
        rect,
        accessible_name,
        session,
        Session::scrub,
        |session| {
            let most = session.end_s();
            let value = session.playhead_s().clamp(0.0, most);
            Scale {
                value,
                least: 0.0,
                most,
                step: FRAME_S,
                text: format!("{} s, {}", decimal(value, 2), phase(session)),
            }
        },
    );
    if (response.dragged() || response.clicked())
        && let Some(at) = response.interact_pointer_pos()
    {
        let share = f64::from((at.x - rect.left()) / rect.width());
        session.scrub(share * session.end_s());
    }
}
