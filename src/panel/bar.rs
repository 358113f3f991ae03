//! The top bar: the menu of jumps, a new jump, undo, keep, open, share and settings.

use egui::{Align2, Color32, Painter, PopupCloseBehavior, Pos2, Rect, Response, Ui, pos2, vec2};

use crate::command::PageCommand;
use crate::controls::{Button, choice, menu};
use crate::layout::Layout;
use crate::style::{self, BACKGROUND, GAP, TEXT, TOUCH_SIZE, WIDE_GAP};
use crate::{jumps_menu, menu_area, share_menu, signs, undo};
use turns_aloft_appearance::{Figure, Theme, choose, chosen as look_chosen};
use turns_aloft_describe::unit::UnitText;
use turns_aloft_scenario::units::{LengthUnit, MassUnit, RateUnit, Units};
use turns_aloft_session::Session;
use turns_aloft_words::{self as words, Language, text};

/// Width of a button with a word on it.
const BUTTON: f32 = 68.0;
/// The units, with the names of their buttons.
const RATES: [(RateUnit, &str); 4] = [
    (RateUnit::Rpm, "rpm"),
    (RateUnit::TurnsPerS, "turns/s"),
    (RateUnit::DegPerS, "deg/s"),
    (RateUnit::RadPerS, "rad/s"),
];
const LENGTHS: [(LengthUnit, &str); 3] = [
    (LengthUnit::Cm, "cm"),
    (LengthUnit::M, "m"),
    (LengthUnit::In, "in"),
];
const MASSES: [(MassUnit, &str); 2] = [(MassUnit::Kg, "kg"), (MassUnit::Lb, "lb")];

pub fn show(
    ui: &mut Ui,
    session: &mut Session,
    layout: &Layout,
    has_share_sheet: bool,
    help: &mut bool,
) -> Option<PageCommand> {
    let rect = layout.bar;
    let in_words = layout.words_in_bar();
    ui.painter().rect_filled(rect, 0.0, BACKGROUND.get());
    let inside = rect.shrink2(vec2(WIDE_GAP - 2.0, 0.5 * (rect.height() - TOUCH_SIZE)));
    let mut left = inside.left();
    if in_words {
        let name = ui.painter().text(
            pos2(left, inside.center().y),
            Align2::LEFT_CENTER,
            "Turns Aloft",
            style::bold(24.0),
            TEXT.get(),
        );
        left = name.right() + 1.5 * WIDE_GAP;
    }
    let mut right = inside.right();
    let mut from_right = |width: f32| {
        let own = Rect::from_min_size(pos2(right - width, inside.top()), vec2(width, TOUCH_SIZE));
        right -= width + GAP;
        own
    };
    let width = if in_words { BUTTON } else { TOUCH_SIZE };
    let settings = from_right(TOUCH_SIZE);
    let share = from_right(width);
    let open = in_words.then(|| from_right(BUTTON));
    let keep = from_right(width);
    let undo = layout.undo_in_bar().then(|| from_right(undo::WIDTH));
    if layout.begin_in_bar() {
        right -= TOUCH_SIZE + GAP;
    }
    let picked = Rect::from_min_max(
        pos2(left, inside.top()),
        pos2(right.min(left + 320.0), inside.bottom()),
    );
    // Shown in reading order, which is the keyboard's, too.
    let of_menu = jumps_menu::show(ui, session, picked, open.is_none());
    if layout.begin_in_bar() {
        let own = Rect::from_min_size(
            picked.right_top() + vec2(GAP, 0.0),
            vec2(TOUCH_SIZE, TOUCH_SIZE),
        );
        let begin = signed("begin", text("panel-begin"), signs::plus);
        if begin.show(ui, own).clicked() {
            session.begin_jump();
        }
    }
    if let Some(undo) = undo {
        undo::row(ui, session, undo.min);
    }
    let button = if in_words {
        Button::labelled("keep", text("panel-keep")).accessible_name(text("panel-keep-it"))
    } else {
        signed("keep", text("panel-keep-it"), signs::bookmark)
    };
    if button.show(ui, keep).clicked() {
        session.keep_jump();
    }
    let open = open.map(|open| Button::labelled("Open", text("panel-open")).show(ui, open));
    let button = if in_words {
        Button::labelled("Share", text("panel-share"))
    } else {
        signed("Share", text("panel-share"), signs::share)
    };
    let share = button.show(ui, share);
    let settings = signed("Units", text("panel-settings"), signs::gear).show(ui, settings);
    settings_menu(session, &settings, help);
    let shared = share_menu::show(&share, session.reference().is_some(), has_share_sheet);
    let opens = open.is_some_and(|open| open.clicked());
    of_menu.or(opens.then_some(PageCommand::Open)).or(shared)
}

/// A button with a sign on it.
fn signed<'a>(
    name: &'a str,
    accessible_name: &'a str,
    sign: fn(&Painter, Pos2, Color32),
) -> Button<'a> {
    Button::drawn(name, accessible_name, move |painter, rect, colour| {
        sign(painter, rect.center(), colour);
    })
}

fn settings_menu(session: &mut Session, response: &Response, help: &mut bool) {
    menu(response)
        .width(menu_area::WIDTH)
        .gap(4.0)
        .close_behavior(PopupCloseBehavior::CloseOnClickOutside)
        .show(|ui| {
            ui.set_width(menu_area::WIDTH);
            menu_area::as_high_as_fits(ui, response, |ui| {
                let label = text("help-title");
                if Button::labelled("help", label).show_in_row(ui).clicked() {
                    *help = true;
                    ui.close();
                }
                language(ui, session);
                appearance(ui);
                let mut chosen = *session.units();
                units(ui, &mut chosen);
                session.set_units(chosen);
            });
        });
}

fn language(ui: &mut Ui, session: &mut Session) {
    ui.label(text("panel-language"));
    let languages = Language::ALL.map(|it| (it, it.tag(), it.name()));
    if let Some(language) = choice(ui, "language", words::language(), &languages) {
        words::set_language(language);
        session.retranslate();
        // What was drawn before this in the frame is still in the previous language.
        ui.ctx().request_repaint();
    }
}

fn units(ui: &mut Ui, units: &mut Units) {
    ui.label(text("panel-unit-of-rate"));
    let rates = RATES.map(|(unit, name)| (unit, name, unit.unit().sign()));
    if let Some(rate) = choice(ui, "rate unit", units.rate, &rates) {
        units.rate = rate;
    }
    ui.label(text("panel-unit-of-length"));
    let lengths = LENGTHS.map(|(unit, name)| (unit, name, unit.unit().sign()));
    if let Some(length) = choice(ui, "length unit", units.length, &lengths) {
        units.length = length;
    }
    ui.label(text("panel-unit-of-mass"));
    let masses = MASSES.map(|(unit, name)| (unit, name, unit.unit().sign()));
    if let Some(mass) = choice(ui, "mass unit", units.mass, &masses) {
        units.mass = mass;
    }
}

/// Light or dark, the size of the type, and how the jumper is drawn.
fn appearance(ui: &mut Ui) {
    let mut chosen = look_chosen();
    ui.label(text("panel-light"));
    let themes = [
        (None, "device", text("panel-light-device")),
        (Some(Theme::Day), "day", text("panel-light-day")),
        (Some(Theme::Night), "night", text("panel-light-night")),
    ];
    if let Some(theme) = choice(ui, "light", chosen.theme, &themes) {
        chosen.theme = theme;
    }
    ui.label(text("panel-type"));
    let sizes = [
        (false, "usual", text("panel-type-usual")),
        (true, "large", text("panel-type-large")),
    ];
    if let Some(large) = choice(ui, "type", chosen.large, &sizes) {
        chosen.large = large;
    }
    ui.label(text("panel-figure"));
    let figures = [
        (Figure::Body, "body", text("panel-figure-body")),
        (Figure::Sticks, "sticks", text("panel-figure-sticks")),
    ];
    if let Some(figure) = choice(ui, "figure", chosen.figure, &figures) {
        chosen.figure = figure;
    }
    choose(chosen);
}
