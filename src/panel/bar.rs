//! The top bar: what is open, open and save, units.

use bevy_egui::egui::{
    self, Align2, Popup, PopupCloseBehavior, Rect, Response, Ui, WidgetText, pos2, vec2,
};

use super::choice;
use super::look::{self, APART, ICE, INK, NEAR, SLATE, TOUCH};
use super::transport::{button, labelled};
use super::{spoken, targets};
use crate::scenario::starts;
use crate::scenario::units::{LengthUnit, MassUnit, RateUnit};
use crate::session::Session;

/// What the bar asks the page for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Wish {
    Open,
    Save,
    /// The present jump, with the one beside it, in the page's address, to be handed on.
    Link,
    /// All kept jumps.
    SaveAll,
}

const BUTTON: f32 = 68.0;
const NARROW_BUTTON: f32 = 58.0;

pub fn show(ui: &mut Ui, session: &mut Session, rect: Rect, narrow: bool) -> Option<Wish> {
    ui.painter().rect_filled(rect, 0.0, ICE);
    let inside = rect.shrink2(vec2(APART - 2.0, 0.5 * (rect.height() - TOUCH)));
    let mut left = inside.left();
    if !narrow {
        let name = ui.painter().text(
            pos2(left, inside.center().y),
            Align2::LEFT_CENTER,
            "Turns Aloft",
            look::bold(24.0),
            INK,
        );
        left = name.right() + 1.5 * APART;
    }
    let mut right = inside.right();
    let width = if narrow { NARROW_BUTTON } else { BUTTON };
    let mut from_right = || {
        let own = Rect::from_min_size(pos2(right - width, inside.top()), vec2(width, TOUCH));
        right -= width + NEAR;
        own
    };
    let units = labelled(ui, "Units", "Units", from_right(), false);
    let share = labelled(ui, "Share", "Share", from_right(), false);
    let open = labelled(ui, "Open", "Open", from_right(), false);
    let picked = Rect::from_min_max(
        pos2(left, inside.top()),
        pos2(right.min(left + 320.0), inside.bottom()),
    );
    starting_points(ui, session, picked);
    unit_menu(session, &units);
    let shared = share_menu(&share, session.beside().is_some());
    open.clicked().then_some(Wish::Open).or(shared)
}

/// The ways to hand the jump on.
fn share_menu(response: &Response, two: bool) -> Option<Wish> {
    let link = if two {
        "Copy a link to both"
    } else {
        "Copy a link to it"
    };
    let ways = [
        (Wish::Save, "Save", "Save it as a file"),
        (Wish::Link, "Link", link),
    ];
    let mut wish = None;
    Popup::menu(response).width(240.0).gap(4.0).show(|ui| {
        for (way, name, label) in ways {
            let row = ui.add_sized(vec2(228.0, TOUCH), egui::Button::new(label).frame(false));
            targets::note(name, row.rect);
            if row.clicked() {
                wish = Some(way);
            }
        }
    });
    wish
}

/// The name of what is open, and behind it the list of starting points.
fn starting_points(ui: &Ui, session: &mut Session, rect: Rect) {
    let response = button(ui, "starts", rect, false);
    let said = format!("Starting points. Open: {}", session.scenario().name);
    spoken::button(&response, &said);
    let painter = ui
        .painter()
        .with_clip_rect(Rect::from_min_max(rect.min, rect.max - vec2(28.0, 0.0)));
    let changed = if session.differs_from_base() {
        " (changed)"
    } else {
        ""
    };
    painter.text(
        rect.left_center() + vec2(12.0, 0.0),
        Align2::LEFT_CENTER,
        format!("{}{changed}", session.scenario().name),
        look::bold(17.0),
        INK,
    );
    let tip = rect.right_center() - vec2(16.0, -3.0);
    ui.painter().add(egui::Shape::convex_polygon(
        vec![tip, tip + vec2(-6.0, -8.0), tip + vec2(6.0, -8.0)],
        SLATE,
        egui::Stroke::NONE,
    ));
    Popup::menu(&response).width(300.0).gap(4.0).show(|ui| {
        ui.label(egui::RichText::new("Starting points, all invented").color(SLATE));
        for start in starts::all() {
            let label = WidgetText::from(start.label());
            let row = ui.add_sized(vec2(288.0, TOUCH), egui::Button::new(label).frame(false));
            targets::note(&format!("start:{}", start.name), row.rect);
            if row.clicked() {
                session.open(start.scenario.clone());
            }
        }
    });
}

fn unit_menu(session: &mut Session, response: &Response) {
    Popup::menu(response)
        .width(300.0)
        .gap(4.0)
        .close_behavior(PopupCloseBehavior::CloseOnClickOutside)
        .show(|ui| {
            ui.set_width(300.0);
            let units = &mut session.units;
            ui.label("Turning rate");
            let rates = RateUnit::ALL.map(|unit| (unit, unit.unit().sign()));
            if let Some(rate) = choice::of(ui, "rate unit", units.rate, &rates) {
                units.rate = rate;
            }
            ui.label("Lengths");
            let lengths = LengthUnit::ALL.map(|unit| (unit, unit.unit().sign()));
            if let Some(length) = choice::of(ui, "length unit", units.length, &lengths) {
                units.length = length;
            }
            ui.label("Masses");
            let masses = MassUnit::ALL.map(|unit| (unit, unit.unit().sign()));
            if let Some(mass) = choice::of(ui, "mass unit", units.mass, &masses) {
                units.mass = mass;
            }
        });
}
