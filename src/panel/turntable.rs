//! Somebody on a turntable: the rate, what makes it, and what leads and pushes.

mod chart;
mod own_chair;
mod picture;
mod prediction;
mod rate;
mod sensor;
mod setup;
mod transport;
mod typed;

use egui::{Ui, vec2};

use crate::columns::halves;
use crate::command::PageCommand;
use crate::controls::{Button, NumberEdit, Scale, fold};
use crate::layout::Layout;
use crate::part_slider;
use crate::playback;
use crate::style::{BACKGROUND, GAP, WIDE_GAP};
use crate::text::{heading, small};
use turns_aloft_describe::Text;
use turns_aloft_describe::turntable_caution::TurntableCaution;
use turns_aloft_describe::unit::{DEGREES, UnitText};
use turns_aloft_lesson::free::Free;
use turns_aloft_scenario::parameter::Kind;
use turns_aloft_session::Session;
use turns_aloft_session::turntable::TypedNumber;
use turns_aloft_turntable::position::{Limbs, TWIST_RAD};
use turns_aloft_words::{decimal, say, text};

pub use crate::turntable::picture::{AxisOnPicture, show as on_picture};

/// Steps of the sliders by keyboard: of the hands, m, of the legs, % of their way, of the twist, degrees.
const HANDS_STEP_M: f64 = 0.01;
const LEGS_STEP: f64 = 1.0;
const TWIST_STEP_DEG: f64 = 1.0;

/// What stays in sight: the rate, and L = I · ω.
pub fn header(ui: &mut Ui, session: &Session, layout: &Layout) {
    if let Some(on_turntable) = session.turntable() {
        rate::show(ui, session, on_turntable, layout);
    }
}

/// The column; what needs the browser is returned.
pub fn show(
    ui: &mut Ui,
    session: &mut Session,
    numbers: &mut NumberEdit,
    layout: &Layout,
) -> Option<PageCommand> {
    let mut command = None;
    push(ui, session);
    ui.add_space(GAP);
    lead(ui, session);
    rate_to_set(ui, session, numbers);
    ui.add_space(GAP);
    prediction::show(ui, session);
    ui.add_space(GAP);
    if let Some(on_turntable) = session.turntable() {
        rate::energies(ui, on_turntable);
    }
    ui.add_space(GAP);
    if !layout.charts_under_stage() {
        let title = text("turntable-charts");
        fold(ui, "Curves of the run", title, true, |ui| {
            chart::in_column(ui, session);
        });
    }
    fold(
        ui,
        "Who, and on what",
        text("turntable-who-and-what"),
        false,
        |ui| {
            setup::show(ui, session, numbers);
        },
    );
    fold(
        ui,
        "Your own chair",
        text("turntable-own-chair"),
        false,
        |ui| {
            own_chair::show(ui, session, numbers);
        },
    );
    let title = text("turntable-sensor");
    fold(ui, "A sensor on a real chair", title, false, |ui| {
        command = sensor::show(ui, session);
    });
    ui.add_space(GAP);
    let leave = Button::labelled("leave turntable", text("turntable-leave"));
    if leave.show_in_row(ui).clicked() {
        session.leave_turntable();
        return None;
    }
    heading(ui, text("turntable-cautions"));
    for caution in TurntableCaution::ALL {
        small(ui, caution.text());
    }
    command
}

/// What a lesson leaves free of all that.
pub fn free(ui: &mut Ui, session: &mut Session, numbers: &mut NumberEdit) {
    let on = session.turntable();
    let is_led = on.is_some_and(|on| !on.is_played_back());
    if !is_led {
        return;
    }
    if session.is_free(Free::Push) {
        push(ui, session);
        rate_to_set(ui, session, numbers);
        ui.add_space(GAP);
    }
    lead(ui, session);
}

/// Below the picture: pause, again, keep, save, and the curves or a line of time. What needs the browser is
/// returned.
pub fn timeline(ui: &mut Ui, session: &mut Session, layout: &Layout) -> Option<PageCommand> {
    let rect = layout.timeline;
    ui.painter().rect_filled(rect, 0.0, BACKGROUND.get());
    let inside = rect.shrink2(vec2(WIDE_GAP - 2.0, GAP));
    let (row, rest) = inside.split_top_bottom_at_y(inside.top() + playback::HEIGHT);
    let command = transport::show(ui, session, row);
    if layout.charts_under_stage() {
        chart::show(ui, session, rest);
    } else {
        transport::time_line(ui, session, rest);
    }
    command
}

fn push(ui: &mut Ui, session: &mut Session) {
    let [left, right] = halves(ui);
    // Seen from in front, where the hands push: to the right is anticlockwise.
    for (rect, name, label, pushes) in [
        (left, "push left", text("turntable-push-left"), -1.0),
        (right, "push right", text("turntable-push-right"), 1.0),
    ] {
        if Button::labelled(name, label).show(ui, rect).clicked() {
            session.push_turntable(pushes);
        }
    }
}

fn rate_to_set(ui: &mut Ui, session: &mut Session, numbers: &mut NumberEdit) {
    typed::show(
        ui,
        session,
        numbers,
        TypedNumber::RateToSet,
        "value:turntable rate",
    );
    let set = Button::labelled("set rate", text("turntable-set-rate"));
    if set.show_in_row(ui).clicked() {
        session.turn_at_rate_to_set();
    }
}

/// How far hands and legs are out, and how the trunk is twisted.
fn lead(ui: &mut Ui, session: &mut Session) {
    let Some(on_turntable) = session.turntable() else {
        return;
    };
    let (led, reach_m) = (*on_turntable.led(), on_turntable.reach_m());
    let is_free = |limbs| session.is_free(Free::Limbs(limbs));
    let [arms_free, legs_free, trunk_free] = [Limbs::Arms, Limbs::Legs, Limbs::Trunk].map(is_free);
    let legs_move = on_turntable.setup().stand.legs_move() && legs_free;
    let length = session.units().of(Kind::Length);
    let hands = Scale {
        step: length.from_si(HANDS_STEP_M),
        ..Scale::of(&length, reach_m, led.hand_distance_m)
    };
    let hands = Scale {
        text: length.text(led.hand_distance_m),
        ..hands
    };
    if arms_free && let Some(to) = part_slider::show(ui, "hands", text("turntable-hands"), hands) {
        session.lead_turntable(|position| position.hand_distance_m = length.to_si(to));
    }
    if legs_move {
        let percent = 100.0 * led.legs;
        let legs = Scale {
            value: percent,
            least: 0.0,
            most: 100.0,
            step: LEGS_STEP,
            text: say!("turntable-legs-out", percent = decimal(percent, 0)),
        };
        if let Some(to) = part_slider::show(ui, "legs", text("turntable-legs-slider"), legs) {
            session.lead_turntable(|position| position.legs = 0.01 * to);
        }
    }
    let degrees = led.twist_rad.to_degrees();
    let most = TWIST_RAD.to_degrees().floor();
    let twist = Scale {
        value: degrees,
        least: -most,
        most,
        step: TWIST_STEP_DEG,
        text: DEGREES.text(degrees),
    };
    if trunk_free
        && let Some(to) = part_slider::show(ui, "twist", text("turntable-twist-slider"), twist)
    {
        session.lead_turntable(|position| position.twist_rad = to.to_radians());
    }
}
