//! The turn map: the turns over two inputs, the present jump on it, and a legend.

mod axis_choice;
mod legend;
mod picture;
mod point;
mod shading;
mod ticks;

use egui::{Rect, RichText, Sense, Ui, pos2, vec2};

use crate::command::PageCommand;
use crate::controls::Button;
use crate::style::{GAP, TOUCH_SIZE, WEAK_TEXT, WIDE_GAP};
use turns_aloft_session::{Saved, Session};
use turns_aloft_words::{decimal, say, text};

/// Least ratio of height to width.
const LEAST_ASPECT: f32 = 0.56;

/// Returns what needs the browser.
pub fn show(ui: &mut Ui, session: &mut Session) -> Option<PageCommand> {
    let width = ui.available_width();
    let sides = session.map_sides();
    let units = sides
        .each_ref()
        .map(|side| session.units().of(side.parameter().kind()));
    let gutter = ticks::gutter(ui, &sides[1], &units[1]);

    let (head, _) = ui.allocate_exact_size(vec2(width, TOUCH_SIZE), Sense::hover());
    let picture_width = width - gutter;
    // So high that the whole map is visible without scrolling, if possible.
    let room = ui.clip_rect().height() - 2.0 * (TOUCH_SIZE + GAP) - ticks::HEIGHT;
    let height = room.clamp(LEAST_ASPECT * picture_width, picture_width);
    let (row, _) = ui.allocate_exact_size(vec2(width, height + ticks::HEIGHT), Sense::hover());
    let rect = Rect::from_min_size(
        pos2(row.left() + gutter, row.top()),
        vec2(picture_width, height),
    );
    let (foot, _) = ui.allocate_exact_size(vec2(width, TOUCH_SIZE), Sense::hover());

    ticks::draw(ui, &sides, &units, rect);
    let (numbers, below) = picture::draw(ui, session, rect);
    point::show(ui, session, rect, &numbers, below);
    let upwards = axis_choice::show(ui, session, 1, head);
    let across = axis_choice::show(ui, session, 0, foot);
    ui.add_space(GAP);
    legend::show(ui, session);
    ui.add_space(GAP);
    let save = Button::labelled("map table", text("panel-map-save"));
    let saved = save.show_in_row(ui).clicked();
    cautions(ui, session);
    // Applied last, so that the whole frame shows the same two levers.
    if let Some((side, lever)) = upwards.or(across) {
        session.choose_map_lever(side, lever);
    }
    saved.then_some(PageCommand::Save(Saved::MapTable))
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
    ui.add_space(WIDE_GAP);
    ui.label(
        RichText::new(format!("{load} {}", said.join(" ")))
            .size(14.5)
            .color(WEAK_TEXT.get()),
    );
}
