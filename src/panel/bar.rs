//! The top bar: the list of starting points, undo, open, share and settings.

use egui::scroll_area::ScrollBarVisibility;
use egui::text::LayoutJob;
use egui::{
    Align2, Painter, PopupCloseBehavior, Pos2, Rect, Response, RichText, ScrollArea, Shape, Stroke,
    Ui, Vec2, pos2, vec2,
};

use crate::command::PageCommand;
use crate::controls::{Button, choice, menu, menu_item, scrolling};
use crate::layout::Layout;
use crate::style::{self, BACKGROUND, CARD, GAP, TEXT, TOUCH_SIZE, WEAK_TEXT, WIDE_GAP};
use crate::{share_menu, undo};
use turns_aloft_appearance::{Theme, choose, chosen as look_chosen};
use turns_aloft_describe::Label;
use turns_aloft_describe::start::shown_name;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_scenario::starts;
use turns_aloft_scenario::units::{LengthUnit, MassUnit, RateUnit, Units};
use turns_aloft_session::Session;
use turns_aloft_words::{self as words, Language, say, text};

/// Width of a button, usual and on a narrow page.
const BUTTON: f32 = 68.0;
const NARROW_BUTTON: f32 = 58.0;
/// Width of a menu.
const MENU: f32 = 300.0;

/// Least font size of a long name; a longer one takes two lines.
const LEAST: f32 = 14.0;

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
    let (rect, narrow) = (layout.bar, layout.narrow);
    ui.painter().rect_filled(rect, 0.0, BACKGROUND.get());
    let inside = rect.shrink2(vec2(WIDE_GAP - 2.0, 0.5 * (rect.height() - TOUCH_SIZE)));
    let mut left = inside.left();
    if !narrow {
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
    let width = if narrow { NARROW_BUTTON } else { BUTTON };
    let mut from_right = || {
        let own = Rect::from_min_size(pos2(right - width, inside.top()), vec2(width, TOUCH_SIZE));
        right -= width + GAP;
        own
    };
    let settings = Button::drawn("Units", text("panel-settings"), |painter, rect, _| {
        gear(painter, rect.center());
    });
    let settings = settings.show(ui, from_right());
    let share = Button::labelled("Share", text("panel-share")).show(ui, from_right());
    let open = Button::labelled("Open", text("panel-open")).show(ui, from_right());
    if layout.undo_in_bar() {
        right -= undo::WIDTH;
        undo::row(ui, session, pos2(right, inside.top()));
        right -= GAP;
    }
    let picked = Rect::from_min_max(
        pos2(left, inside.top()),
        pos2(right.min(left + 320.0), inside.bottom()),
    );
    starting_points(ui, session, picked);
    settings_menu(session, &settings, help);
    let shared = share_menu::show(&share, session.reference().is_some(), has_share_sheet);
    open.clicked().then_some(PageCommand::Open).or(shared)
}

/// The name of the jump on the screen, which opens the list of starting points.
fn starting_points(ui: &Ui, session: &mut Session, rect: Rect) {
    let name = shown_name(&session.scenario().name);
    let accessible_name = say!("panel-starts-open", name = name);
    let response = Button::drawn("starts", &accessible_name, |_, _, _| ()).show(ui, rect);
    let painter = ui
        .painter()
        .with_clip_rect(Rect::from_min_max(rect.min, rect.max - vec2(28.0, 0.0)));
    let shown = if session.differs_from_base() {
        say!("panel-changed", name = name)
    } else {
        name.to_owned()
    };
    let width = rect.width() - 44.0;
    let size = style::fitting(ui.painter(), &shown, 17.0, width).max(LEAST);
    let mut job = LayoutJob::simple(shown, style::bold(size), TEXT.get(), width);
    job.wrap.max_rows = 2;
    let shown = painter.layout_job(job);
    let at = rect.left_center() + vec2(12.0, -0.5 * shown.size().y);
    painter.galley(at, shown, TEXT.get());
    let tip = rect.right_center() - vec2(16.0, -3.0);
    ui.painter().add(Shape::convex_polygon(
        vec![tip, tip + vec2(-6.0, -8.0), tip + vec2(6.0, -8.0)],
        WEAK_TEXT.get(),
        Stroke::NONE,
    ));
    menu(&response).width(MENU).gap(4.0).show(|ui| {
        ui.label(RichText::new(text("panel-starts-invented")).color(WEAK_TEXT.get()));
        as_high_as_fits(ui, &response, |ui| {
            for start in starts::all() {
                let name = format!("start:{}", start.name);
                let row = menu_item(ui, &name, start.label(), MENU - 12.0, false);
                if row.clicked() {
                    session.open(start.scenario.clone());
                }
            }
        });
    });
}

fn settings_menu(session: &mut Session, response: &Response, help: &mut bool) {
    menu(response)
        .width(MENU)
        .gap(4.0)
        .close_behavior(PopupCloseBehavior::CloseOnClickOutside)
        .show(|ui| {
            ui.set_width(MENU);
            as_high_as_fits(ui, response, |ui| {
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

/// Makes a menu scroll if it is longer than the room between its button and the bottom of the
/// screen.
fn as_high_as_fits(ui: &mut Ui, below: &Response, add: impl FnOnce(&mut Ui)) {
    let room = ui.ctx().viewport_rect().bottom() - below.rect.bottom() - 2.0 * WIDE_GAP;
    let area = ScrollArea::vertical()
        .max_height(room)
        // egui's default would make it scroll below a fixed height.
        .min_scrolled_height(room)
        .scroll_bar_visibility(ScrollBarVisibility::AlwaysHidden);
    scrolling(ui, area, add);
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

/// Light or dark, and the size of the type.
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
    choose(chosen);
}

/// Draws a gear as the sign of the settings, recognisable in any language.
fn gear(painter: &Painter, at: Pos2) {
    const TEETH: u32 = 8;
    for tooth in 0..TEETH {
        let direction = Vec2::angled(tooth as f32 / TEETH as f32 * std::f32::consts::TAU);
        painter.line_segment(
            [at + 6.0 * direction, at + 11.0 * direction],
            Stroke::new(4.0, TEXT.get()),
        );
    }
    painter.circle(at, 6.5, CARD.get(), Stroke::new(3.5, TEXT.get()));
}
