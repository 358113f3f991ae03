//! The legend of the map.

use egui::{Rect, RichText, Sense, Stroke, Ui, Vec2, pos2, vec2};

use crate::map::picture::{self, outline, whole};
use crate::map::shading;
use crate::style::{self, CARD, GAP, SEEN, WEAK_TEXT};
use crate::text::small;
use turns_aloft_describe::beyond;
use turns_aloft_describe::turns::owed_text;
use turns_aloft_scenario::beyond::Respect;
use turns_aloft_session::Session;
use turns_aloft_words::{say, text};

const SWATCH: Vec2 = vec2(30.0, 14.0);

const ROW: f32 = 20.0;

const SHADES: usize = 4;

pub fn show(ui: &mut Ui, session: &Session) {
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing = vec2(GAP, 2.0);
        // Nothing here is touched.
        ui.spacing_mut().interact_size.y = ROW;
        entry(ui, text("panel-map-quarter"), |ui, rect| {
            let width = rect.width() / SHADES as f32;
            for i in 0..SHADES {
                let left = rect.left_top() + vec2(width * i as f32, 0.0);
                let own = Rect::from_min_size(left, vec2(width, rect.height()));
                ui.painter()
                    .rect_filled(own, 0.0, shading::shade(i, SHADES));
            }
        });
        entry(ui, text("panel-map-whole"), |ui, rect| {
            line(ui, rect, whole())
        });
        if let Some(owed) = session.jump().owed {
            let turns = owed_text(owed.turns);
            entry(ui, &say!("panel-map-owed", turns = turns), |ui, rect| {
                line(
                    ui,
                    rect,
                    Stroke::new(picture::owed().width + 3.0, CARD.get()),
                );
                line(ui, rect, picture::owed());
            });
        }
        entry(ui, text("panel-map-edge"), |ui, rect| {
            line(ui, rect, Stroke::new(outline().width + 3.0, SEEN.get()));
            line(ui, rect, outline());
        });
        entry(ui, text("panel-map-not-seen"), |ui, rect| {
            ui.painter()
                .rect_filled(rect, 0.0, shading::shade(SHADES / 2, SHADES));
            shading::hatched(ui, rect);
        });
    });
    if !session.map_marks_known() {
        small(ui, text("panel-map-not-known"));
    }
    let of_joints = |respect: &&Respect| respect.joint.is_some();
    let also: Vec<Respect> = session
        .beyond_seen()
        .iter()
        .filter(of_joints)
        .copied()
        .collect();
    if !also.is_empty() {
        let what = beyond::list(&also, session.units());
        small(ui, &say!("panel-map-also-beyond", what = what));
    }
    ui.label(
        RichText::new(text("panel-map-use"))
            .size(14.5)
            .color(WEAK_TEXT.get()),
    );
}

/// A swatch and its text.
fn entry(ui: &mut Ui, said: &str, draw: impl FnOnce(&Ui, Rect)) {
    let galley = ui
        .painter()
        .layout_no_wrap(said.to_owned(), style::text(14.0), WEAK_TEXT.get());
    let width = SWATCH.x + GAP + galley.size().x + GAP;
    let (rect, _) = ui.allocate_exact_size(vec2(width, ROW), Sense::hover());
    let middle = rect.left_center() + vec2(0.5 * SWATCH.x, 0.0);
    draw(ui, Rect::from_center_size(middle, SWATCH));
    let left = rect.left() + SWATCH.x + GAP;
    let at = pos2(left, rect.center().y - 0.5 * galley.size().y);
    ui.painter().galley(at, galley, WEAK_TEXT.get());
}

fn line(ui: &Ui, rect: Rect, stroke: Stroke) {
    ui.painter().hline(rect.x_range(), rect.center().y, stroke);
}
