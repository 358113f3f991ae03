//! An input that is a number: its label, which explains it, the value with its unit, which can be typed,
//! and a slider, which a double tap resets.

use std::borrow::Cow;

use egui::{Align2, CornerRadius, Painter, Pos2, Rect, RichText, Sense, Stroke, Ui, pos2, vec2};

use crate::controls::{
    EXPLANATION_MARK_RADIUS, NumberEdit, NumberText, Scale, explained, explanation_area,
    explanation_mark, number_field, slider,
};
use crate::fitted::fitted;
use crate::style::{
    self, ACCENT, CARD, GAP, LINE, ON_ACCENT, SEEN, TEXT, TOUCH_SIZE, WARNING, WEAK_TEXT, WIDE_GAP,
};
use turns_aloft_describe::unit::UnitText;
use turns_aloft_describe::{About, Label, Text};
use turns_aloft_scenario::marks::Marks;
use turns_aloft_scenario::parameter::{Parameter, SliderScale};
use turns_aloft_scenario::units::Unit;
use turns_aloft_session::Session;
use turns_aloft_words::{say, text};

pub const KNOB: f32 = 13.0;
const TRACK: f32 = 6.0;
/// Width of the field with the value.
pub const VALUE_WIDTH: f32 = 104.0;

/// How far above the slider the middle of a line stands that is said beside the number.
const BESIDE: f32 = 3.0;

/// Label and track are drawn this much nearer to each other than the middles of their touch targets.
const NEARER: f32 = 4.0;

/// Shows the row of an input.
pub fn show(
    ui: &mut Ui,
    session: &mut Session,
    edit: &mut NumberEdit,
    about: &mut Option<Cow<'static, str>>,
    parameter: Parameter,
    marks: Option<&Marks>,
) {
    let width = ui.available_width();
    // Label and value have a row of their own above the slider's, so that no touch is meant for two.
    let (row, _) = ui.allocate_exact_size(vec2(width, 2.0 * TOUCH_SIZE), Sense::hover());
    let (head, track_rect) = row.split_top_bottom_at_y(row.top() + TOUCH_SIZE);
    let value_rect = Rect::from_min_max(pos2(head.right() - VALUE_WIDTH, head.top()), head.max);
    let label_rect = Rect::from_min_max(head.min, pos2(value_rect.left() - GAP, head.bottom()));

    label(ui, about, parameter, marks, label_rect);
    value(ui, session, edit, parameter, value_rect);
    track(ui, session, parameter, marks, track_rect);
    if let Some(beside) = session.beside_text(parameter) {
        // Below label and field, and clear of the knob: nothing moves for it.
        let at = head.left_bottom() - vec2(0.0, BESIDE);
        let font = style::text(14.0);
        fitted(
            ui.painter(),
            Align2::LEFT_CENTER,
            &beside,
            font,
            WEAK_TEXT.get(),
            width,
        )
        .draw(ui.painter(), at);
    }
    if about.as_deref() == Some(parameter.key())
        && explained(ui, parameter.key(), row, |ui| explain(ui, parameter, marks))
    {
        *about = None;
    }
}

fn label(
    ui: &Ui,
    about: &mut Option<Cow<'static, str>>,
    parameter: Parameter,
    marks: Option<&Marks>,
    rect: Rect,
) {
    let open = about.as_deref() == Some(parameter.key());
    let describe = || {
        let source = marks.map_or("", |marks| marks.source.text());
        format!("{} {source}", parameter.about())
            .trim_end()
            .to_owned()
    };
    let name = format!("about:{}", parameter.key());
    let what = || parameter.label().to_owned();
    let response = explanation_area(ui, &name, rect, open, what, describe);
    let room = rect.width() - 2.0 * EXPLANATION_MARK_RADIUS - GAP;
    let size = style::fitting_text(ui.painter(), parameter.label(), 17.0, room);
    let written = ui.painter().text(
        rect.left_center() + vec2(0.0, NEARER),
        Align2::LEFT_CENTER,
        parameter.label(),
        style::text(size),
        TEXT.get(),
    );
    let mark = written.right_center() + vec2(GAP + EXPLANATION_MARK_RADIUS, 0.0);
    explanation_mark(ui.painter(), mark, open);
    if response.clicked() {
        *about = (!open).then_some(Cow::Borrowed(parameter.key()));
    }
}

fn explain(ui: &mut Ui, parameter: Parameter, marks: Option<&Marks>) {
    ui.label(
        RichText::new(parameter.about())
            .size(14.5)
            .color(WEAK_TEXT.get()),
    );
    if let Some(marks) = marks {
        ui.label(
            RichText::new(marks.source.text())
                .size(14.5)
                .color(WEAK_TEXT.get()),
        );
    }
}

/// The field of an input's value.
pub fn value(
    ui: &mut Ui,
    session: &mut Session,
    edit: &mut NumberEdit,
    parameter: Parameter,
    rect: Rect,
) {
    let unit = session.units().of(parameter.kind());
    let value = parameter.get(session.scenario());
    let name = format!("value:{}", parameter.key());
    let accessible_name = || say!("panel-typed", what = parameter.label());
    let text = NumberText {
        value: unit.set_text(value),
        number: unit.set_number(value),
        sign: unit.sign(),
    };
    if let Some(typed) = number_field(ui, edit, &name, rect, accessible_name, text) {
        session.set_typed(parameter, &typed);
    }
}

/// Position of a value on the track, 0 at the least value and 1 at the greatest. With
/// [`SliderScale::FinerBelow`] the lower end is finer.
pub fn place(parameter: Parameter, value: f64) -> f32 {
    let x = (value - parameter.least()) / (parameter.most() - parameter.least());
    (match parameter.row().scale {
        SliderScale::Even => x,
        SliderScale::FinerBelow => x.max(0.0).sqrt(),
    }) as f32
}

fn value_at(parameter: Parameter, place: f32) -> f64 {
    let x = f64::from(place.clamp(0.0, 1.0));
    parameter.least()
        + (parameter.most() - parameter.least())
            * match parameter.row().scale {
                SliderScale::Even => x,
                SliderScale::FinerBelow => x * x,
            }
}

/// The nearest value that the unit shows without more decimals than usual, so that what is shown is what
/// flies; the ends of the range stay as they are.
fn on_step(parameter: Parameter, unit: &Unit, value: f64) -> f64 {
    let per_unit = 10.0_f64.powi(unit.decimals as i32);
    let steps = (unit.from_si(value) * per_unit).round();
    unit.to_si(steps / per_unit)
        .clamp(parameter.least(), parameter.most())
}

fn track(ui: &Ui, session: &mut Session, parameter: Parameter, marks: Option<&Marks>, rect: Rect) {
    let unit = session.units().of(parameter.kind());
    let response = slider(
        ui,
        &format!("slider:{}", parameter.key()),
        rect,
        parameter.label(),
        session,
        |session, shown| session.set(parameter, unit.to_si(shown)),
        |session| {
            let value = parameter.get(session.scenario());
            Scale::of(&unit, parameter.row().range, value)
        },
    );
    let left = rect.left() + KNOB;
    let span = rect.width() - 2.0 * KNOB;
    let y = rect.center().y - NEARER;
    let x_of = |value: f64| left + span * place(parameter, value).clamp(0.0, 1.0);

    if response.double_clicked() {
        session.reset(parameter);
    } else if (response.dragged() || response.clicked())
        && let Some(at) = response.interact_pointer_pos()
    {
        let value = on_step(parameter, &unit, value_at(parameter, (at.x - left) / span));
        if value != parameter.get(session.scenario()) {
            session.set(parameter, value);
        }
    }

    let bar = |from: f32, to: f32, height: f32| {
        Rect::from_min_max(pos2(from, y - 0.5 * height), pos2(to, y + 0.5 * height))
    };
    let painter = ui.painter();
    let round = CornerRadius::same(3);
    painter.rect_filled(bar(left, left + span, TRACK), round, LINE.get());
    if let Some(marks) = marks {
        if let Some([least, most]) = marks.seen {
            painter.rect_filled(bar(x_of(least), x_of(most), TRACK), round, SEEN.get());
        }
        if let Some(beyond) = marks.beyond.filter(|beyond| *beyond < parameter.most()) {
            hatch(ui, bar(x_of(beyond), left + span, 2.0 * TRACK));
        }
        if let Some(below) = marks
            .beyond_below
            .filter(|below| *below > parameter.least())
        {
            hatch(ui, bar(left, x_of(below), 2.0 * TRACK));
        }
    }
    let x = x_of(parameter.get(session.scenario()));
    let active = response.dragged() || response.hovered();
    knob(painter, pos2(x, y), active);
}

/// The knob of a slider; `active` while it is held or pointed at.
pub fn knob(painter: &Painter, at: Pos2, active: bool) {
    let (fill, edge, dot) = if active {
        (ACCENT.get(), ACCENT.get(), ON_ACCENT.get())
    } else {
        (CARD.get(), TEXT.get(), TEXT.get())
    };
    painter.circle(at, KNOB, fill, Stroke::new(2.5, edge));
    painter.circle_filled(at, 3.5, dot);
}

/// Hatches a range that is beyond what has been seen in people, so that it shows without colour as
/// well.
pub fn hatch(ui: &Ui, rect: Rect) {
    let painter = ui.painter().with_clip_rect(rect);
    let mut x = rect.left() - rect.height();
    while x < rect.right() {
        painter.line_segment(
            [
                Pos2::new(x, rect.bottom()),
                Pos2::new(x + rect.height(), rect.top()),
            ],
            Stroke::new(2.0, WARNING.get()),
        );
        x += 6.0;
    }
}

/// The legend of the marks on the sliders.
pub fn legend(ui: &mut Ui) {
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = GAP;
        let swatch = |ui: &mut Ui| ui.allocate_exact_size(vec2(26.0, 14.0), Sense::hover()).0;
        let seen = swatch(ui);
        ui.painter().rect_filled(
            Rect::from_center_size(seen.center(), vec2(26.0, TRACK)),
            CornerRadius::same(3),
            SEEN.get(),
        );
        ui.label(
            RichText::new(text("panel-seen"))
                .size(14.0)
                .color(WEAK_TEXT.get()),
        );
        ui.add_space(WIDE_GAP);
        let beyond = swatch(ui);
        hatch(
            ui,
            Rect::from_center_size(beyond.center(), vec2(26.0, 2.0 * TRACK)),
        );
        ui.label(
            RichText::new(text("panel-out-of-reach"))
                .size(14.0)
                .color(WEAK_TEXT.get()),
        );
    });
}
