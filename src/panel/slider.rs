//! A number with its slider: value with unit, typed or dragged, put back by a double tap.

use std::borrow::Cow;

use egui::text::{CCursor, CCursorRange};
use egui::text_edit::TextEditState;
use egui::{
    self, Align2, CornerRadius, CursorIcon, Key as Keyboard, Pos2, Rect, Sense, Stroke, StrokeKind,
    TextEdit, Ui, UiBuilder, pos2, vec2,
};

use super::accessibility::{self, Scale};
use super::style::{
    self, APART, FROST, INK, NEAR, ON_TEAL, SEEN, SLATE, SNOW, TEAL, TOUCH, VERMILION,
};
use super::{parts, targets};
use crate::say;
use crate::scenario::marks::Marks;
use crate::scenario::parameter::{Parameter, SliderScale};
use crate::session::Session;
use crate::words;

/// A number being typed.
#[derive(Debug, Clone, Default)]
pub struct Typing {
    parameter: Option<Parameter>,
    text: String,
    /// The field has just opened and still has to take the keyboard.
    fresh: bool,
}

const KNOB: f32 = 13.0;
const TRACK: f32 = 6.0;
const VALUE_WIDTH: f32 = 104.0;

/// One row: label, value and slider. The label tells what the number means.
pub fn number(
    ui: &mut Ui,
    session: &mut Session,
    typing: &mut Typing,
    about: &mut Option<Cow<'static, str>>,
    parameter: Parameter,
    marks: Option<&Marks>,
) {
    let width = ui.available_width();
    let (row, _) = ui.allocate_exact_size(vec2(width, TOUCH + 20.0), Sense::hover());
    let head = Rect::from_min_size(row.min, vec2(width, TOUCH));
    let value_rect = Rect::from_min_max(pos2(head.right() - VALUE_WIDTH, head.top()), head.max);
    let label_rect = Rect::from_min_max(head.min, pos2(value_rect.left() - NEAR, head.bottom()));
    let track_rect = Rect::from_min_max(pos2(row.left(), row.bottom() - TOUCH), row.max);

    track(ui, session, parameter, marks, track_rect);
    label(ui, about, parameter, marks, label_rect);
    value(ui, session, typing, parameter, value_rect);
    if about.as_deref() == Some(parameter.key()) {
        explain(ui, parameter, marks);
    }
}

fn label(
    ui: &Ui,
    about: &mut Option<Cow<'static, str>>,
    parameter: Parameter,
    marks: Option<&Marks>,
    rect: Rect,
) {
    let response = ui
        .interact(
            rect,
            ui.id().with(("about", parameter.key())),
            Sense::click(),
        )
        .on_hover_cursor(CursorIcon::Help);
    let open = about.as_deref() == Some(parameter.key());
    let describe = || {
        let source = marks.map_or("", |marks| marks.source.text());
        format!("{} {source}", parameter.about())
            .trim_end()
            .to_owned()
    };
    accessibility::meaning(
        ui,
        &response,
        open,
        || parameter.label().to_owned(),
        describe,
    );
    let room = rect.width() - 2.0 * parts::MARK - NEAR;
    let size = style::fitting_text(ui, parameter.label(), 17.0, room);
    let name = ui.painter().text(
        rect.left_center() - vec2(0.0, 5.0),
        Align2::LEFT_CENTER,
        parameter.label(),
        style::text(size),
        INK.get(),
    );
    let mark = name.right_center() + vec2(NEAR + parts::MARK, 0.0);
    parts::meaning_mark(ui.painter(), mark, open);
    if response.clicked() {
        *about = (!open).then_some(Cow::Borrowed(parameter.key()));
    }
}

fn explain(ui: &mut Ui, parameter: Parameter, marks: Option<&Marks>) {
    ui.add_space(-2.0);
    ui.label(
        egui::RichText::new(parameter.about())
            .size(14.5)
            .color(SLATE.get()),
    );
    if let Some(marks) = marks {
        ui.label(
            egui::RichText::new(marks.source.text())
                .size(14.5)
                .color(SLATE.get()),
        );
    }
    ui.add_space(NEAR);
}

/// The value as a button; touched, it becomes a field to type in.
fn value(
    ui: &mut Ui,
    session: &mut Session,
    typing: &mut Typing,
    parameter: Parameter,
    rect: Rect,
) {
    let unit = session.units.of(parameter.kind());
    // Clear of the knob below it.
    let box_rect = Rect::from_min_max(rect.min, rect.max - vec2(0.0, 10.0));
    targets::note(&format!("value:{}", parameter.key()), rect);
    if typing.parameter != Some(parameter) {
        let response = ui
            .interact(
                rect,
                ui.id().with(("value", parameter.key())),
                Sense::click(),
            )
            .on_hover_cursor(CursorIcon::Text);
        if let Some(text) = accessibility::typed_into(ui, &response) {
            typed(session, parameter, &text);
        }
        let value = unit.text(parameter.get(session.scenario()));
        let said = || say!("panel-typed", what = parameter.label());
        accessibility::number_field(ui, &response, said, &value);
        let stroke = if response.hovered() {
            TEAL.get()
        } else {
            FROST.get()
        };
        ui.painter().rect(
            box_rect,
            CornerRadius::same(8),
            SNOW.get(),
            Stroke::new(1.0, stroke),
            StrokeKind::Inside,
        );
        ui.painter().text(
            box_rect.right_center() - vec2(10.0, 0.0),
            Align2::RIGHT_CENTER,
            value,
            style::bold(17.0),
            INK.get(),
        );
        if response.clicked() {
            *typing = Typing {
                parameter: Some(parameter),
                text: unit.number(parameter.get(session.scenario())),
                fresh: true,
            };
        }
        return;
    }
    let id = ui.id().with(("typed", parameter.key()));
    if std::mem::take(&mut typing.fresh) {
        // All of the old number is marked: the first digit typed replaces it.
        let all = CCursorRange::two(CCursor::new(0), CCursor::new(typing.text.chars().count()));
        let mut state = TextEditState::default();
        state.cursor.set_char_range(Some(all));
        state.store(ui.ctx(), id);
        ui.memory_mut(|memory| memory.request_focus(id));
    }
    // A child of its own: the field must not move the rows below it.
    let field = ui.new_child(UiBuilder::new().max_rect(box_rect)).add_sized(
        box_rect.size(),
        TextEdit::singleline(&mut typing.text)
            .id(id)
            .font(style::bold(17.0))
            .margin(vec2(10.0, 6.0)),
    );
    if field.lost_focus() {
        let given_up = ui.input(|input| input.key_pressed(Keyboard::Escape));
        if !given_up {
            typed(session, parameter, &typing.text);
        }
        *typing = Typing::default();
    }
}

/// Takes a typed number; a unit behind it is passed over.
fn typed(session: &mut Session, parameter: Parameter, text: &str) {
    let unit = session.units.of(parameter.kind());
    let plain = text.trim().trim_end_matches(unit.sign());
    let value = words::number(plain).map_or(f64::NAN, |shown| unit.to_si(shown));
    session.set(parameter, value);
}

/// Position on the track, 0 to 1, of a value. Wide ranges are finer at their lower end.
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

fn track(ui: &Ui, session: &mut Session, parameter: Parameter, marks: Option<&Marks>, rect: Rect) {
    let response = ui
        .interact(
            rect,
            ui.id().with(("track", parameter.key())),
            Sense::click_and_drag(),
        )
        .on_hover_cursor(CursorIcon::ResizeHorizontal);
    targets::note(&format!("slider:{}", parameter.key()), rect);
    let unit = session.units.of(parameter.kind());
    if let Some(shown) = accessibility::set_to(ui, &response) {
        session.set(parameter, unit.to_si(shown));
    }
    let value = parameter.get(session.scenario());
    let scale = Scale::of(&unit, parameter.row().range, value);
    accessibility::slider(ui, &response, parameter.label(), &scale);
    let left = rect.left() + KNOB;
    let span = rect.width() - 2.0 * KNOB;
    let y = rect.bottom() - KNOB - 2.0;
    let x_of = |value: f64| left + span * place(parameter, value).clamp(0.0, 1.0);

    if response.double_clicked() {
        session.reset(parameter);
    } else if (response.dragged() || response.clicked())
        && let Some(at) = response.interact_pointer_pos()
    {
        let goal = value_at(parameter, (at.x - left) / span);
        if goal != parameter.get(session.scenario()) {
            session.set(parameter, goal);
        }
    }

    let bar = |from: f32, to: f32, height: f32| {
        Rect::from_min_max(pos2(from, y - 0.5 * height), pos2(to, y + 0.5 * height))
    };
    let painter = ui.painter();
    let round = CornerRadius::same(3);
    painter.rect_filled(bar(left, left + span, TRACK), round, FROST.get());
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
    let held = response.dragged() || response.hovered();
    painter.circle(
        pos2(x, y),
        KNOB,
        if held { TEAL.get() } else { SNOW.get() },
        Stroke::new(2.5, if held { TEAL.get() } else { INK.get() }),
    );
    painter.circle_filled(
        pos2(x, y),
        3.5,
        if held { ON_TEAL.get() } else { INK.get() },
    );
}

/// Slanting lines: out of reach also without colour.
pub fn hatch(ui: &Ui, rect: Rect) {
    let painter = ui.painter().with_clip_rect(rect);
    let mut x = rect.left() - rect.height();
    while x < rect.right() {
        painter.line_segment(
            [
                Pos2::new(x, rect.bottom()),
                Pos2::new(x + rect.height(), rect.top()),
            ],
            Stroke::new(2.0, VERMILION.get()),
        );
        x += 6.0;
    }
}

/// What the marks on the sliders mean.
pub fn legend(ui: &mut Ui) {
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = NEAR;
        let swatch = |ui: &mut Ui| ui.allocate_exact_size(vec2(26.0, 14.0), Sense::hover()).0;
        let seen = swatch(ui);
        ui.painter().rect_filled(
            Rect::from_center_size(seen.center(), vec2(26.0, TRACK)),
            CornerRadius::same(3),
            SEEN.get(),
        );
        ui.label(
            egui::RichText::new(words::text("panel-seen"))
                .size(14.0)
                .color(SLATE.get()),
        );
        ui.add_space(APART);
        let beyond = swatch(ui);
        hatch(
            ui,
            Rect::from_center_size(beyond.center(), vec2(26.0, 2.0 * TRACK)),
        );
        ui.label(
            egui::RichText::new(words::text("panel-out-of-reach"))
                .size(14.0)
                .color(SLATE.get()),
        );
    });
}
