//! The turn map: the picture of turns over two levers, the jump on it, and what its marks mean.

mod levers;
mod marks;
mod picture;
mod point;
mod shades;
mod ticks;

use egui::{Rect, RichText, Sense, Ui, pos2, vec2};

use super::style::{APART, NEAR, SLATE, TOUCH};
use crate::say;
use crate::session::Session;
use crate::words::decimal;

/// Least height of the picture over its width.
const FLATTEST: f32 = 0.56;

/// Height of the numbers under the picture.
const TICKS: f32 = 20.0;

pub fn show(ui: &mut Ui, session: &mut Session) {
    let width = ui.available_width();
    let sides = session.map_sides();
    let units = sides
        .each_ref()
        .map(|side| session.units.of(side.parameter().kind()));
    let gutter = ticks::gutter(ui, &sides[1], &units[1]);

    let (head, _) = ui.allocate_exact_size(vec2(width, TOUCH), Sense::hover());
    let picture_width = width - gutter;
    // All of it in sight at once where it can be.
    let room = ui.clip_rect().height() - 2.0 * (TOUCH + NEAR) - TICKS;
    let height = room.clamp(FLATTEST * picture_width, picture_width);
    let (row, _) = ui.allocate_exact_size(vec2(width, height + TICKS), Sense::hover());
    let rect = Rect::from_min_size(
        pos2(row.left() + gutter, row.top()),
        vec2(picture_width, height),
    );
    let (foot, _) = ui.allocate_exact_size(vec2(width, TOUCH), Sense::hover());

    ticks::draw(ui, &sides, &units, rect);
    let numbers = picture::draw(ui, session, rect);
    point::show(ui, session, rect, &numbers);
    let upwards = levers::choice(ui, session, 1, head);
    let across = levers::choice(ui, session, 0, foot);
    ui.add_space(NEAR);
    marks::legend(ui, session);
    cautions(ui, session);
    // Only now, so that all of a frame shows the same two levers.
    if let Some((side, lever)) = upwards.or(across) {
        session.choose_map_lever(side, lever);
    }
}

fn cautions(ui: &mut Ui, session: &Session) {
    let said = session.map_cautions();
    if said.is_empty() {
        return;
    }
    let [low, high] = session.jump().readout.landing_load_bw;
    let load = say!(
        "panel-landing-load",
        low = decimal(low, 1),
        high = decimal(high, 1)
    );
    ui.add_space(APART);
    ui.label(
        RichText::new(format!("{load} {}", said.join(" ")))
            .size(14.5)
            .color(SLATE.get()),
    );
}
