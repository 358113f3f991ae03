//! A jump flown slowly by hand: the pad that leads it, the time left, and what came of it.

mod landed;
mod pad;
mod time_left;

use egui::{Rect, RichText, Sense, Ui, pos2, vec2};

use crate::cautions;
use crate::controls::Button;
use crate::style::{self, GAP, TOUCH_SIZE};
use crate::text::small;
use turns_aloft_session::Session;
use turns_aloft_session::slow_flight::{PACES, how};
use turns_aloft_words::{say, text};

pub use crate::slow_flight::pad::on_picture;
pub use crate::slow_flight::time_left::time_left;

/// Names of the paces, in their order.
const LABELS: [&str; PACES.len()] = ["1/4", "1/8", "1/16"];

/// What stands in the column beside the pad while it is in use, and the least and largest pad.
const BESIDE_PAD: f32 = 90.0;
const PAD: [f32; 2] = [150.0, 420.0];

/// The column, `height` of which is in sight.
pub fn show(ui: &mut Ui, session: &mut Session, height: f32) {
    let Some(slow) = session.slow_flight() else {
        return;
    };
    if slow.landed().is_some() {
        landed::show(ui, session);
    } else {
        lead(ui, session, height);
    }
    leave(ui, session);
    cautions::show(ui);
}

/// The pad, and the button that starts or stops.
fn lead(ui: &mut Ui, session: &mut Session, height: f32) {
    let row = row(ui);
    let pad_height = (height - BESIDE_PAD).clamp(PAD[0], PAD[1]);
    let in_air = session.slow_flight().is_some_and(|it| it.is_in_air());
    if in_air {
        // First for the keyboard: who has just pressed the button that was there goes on at the pad.
        pad::show(ui, session, pad_height);
        let stop = Button::labelled("stop", text("slow-stop"));
        if stop.show(ui, row).clicked() {
            session.fly_again();
        }
    } else {
        let start = Button::labelled("take off", text("slow-take-off"))
            .about(how())
            .filled(true);
        if start.show(ui, row).clicked() {
            session.take_off();
        }
        pad::show(ui, session, pad_height);
    }
    if let Some(tried) = session.turn_try() {
        small(ui, &say!("try-step-by-hand", turns = tried.step));
    }
    ui.label(RichText::new(how()).font(style::bold(17.0)));
    small(ui, text("slow-open-again"));
    if !in_air {
        paces(ui, session);
    }
}

fn paces(ui: &mut Ui, session: &mut Session) {
    ui.add_space(GAP);
    ui.label(text("slow-speed"));
    let row = row(ui);
    let across = (row.width() + GAP) / PACES.len() as f32;
    let present = session.slow_flight().map(|it| it.pace());
    for (i, (pace, label)) in PACES.into_iter().zip(LABELS).enumerate() {
        let left = row.left() + across * i as f32;
        let own = Rect::from_min_size(pos2(left, row.top()), vec2(across - GAP, TOUCH_SIZE));
        let (name, said) = (format!("pace:{label}"), say!("panel-speed", speed = label));
        let button = Button::labelled(&name, label).accessible_name(&said);
        let button = button.chosen(present == Some(pace));
        if button.show(ui, own).clicked() {
            session.set_pace(pace);
        }
    }
}

fn leave(ui: &mut Ui, session: &mut Session) {
    ui.add_space(GAP);
    let label = match session.turn_try() {
        Some(_) => text("try-back"),
        None => text("slow-leave"),
    };
    let leave = Button::labelled("leave slow flight", label);
    if leave.show_in_row(ui).clicked() {
        session.stop_flying_by_hand();
    }
    ui.add_space(GAP);
}

/// A row as high as a button.
fn row(ui: &mut Ui) -> Rect {
    let size = vec2(ui.available_width(), TOUCH_SIZE);
    ui.allocate_exact_size(size, Sense::hover()).0
}
