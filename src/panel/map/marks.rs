//! What the map's colours, lines and slants mean.

use bevy_egui::egui::{Rect, RichText, Sense, Stroke, Ui, vec2};

use super::picture::{OUTLINE, OWED, WHOLE};
use super::shades;
use crate::panel::look::{NEAR, SEEN, SLATE, SNOW};
use crate::session::Session;

const SWATCH: bevy_egui::egui::Vec2 = vec2(30.0, 14.0);

const SHADES: usize = 4;

pub fn legend(ui: &mut Ui, session: &Session) {
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing = vec2(NEAR, 2.0);
        entry(ui, "a quarter turn each", |ui, rect| {
            let width = rect.width() / SHADES as f32;
            for i in 0..SHADES {
                let left = rect.left_top() + vec2(width * i as f32, 0.0);
                let own = Rect::from_min_size(left, vec2(width, rect.height()));
                ui.painter().rect_filled(own, 0.0, shades::shade(i, SHADES));
            }
        });
        entry(ui, "whole turns", |ui, rect| line(ui, rect, WHOLE));
        if let Some(owed) = session.jump().owed {
            entry(ui, &format!("{} turns owed", owed.turns), |ui, rect| {
                line(ui, rect, Stroke::new(OWED.width + 3.0, SNOW));
                line(ui, rect, OWED);
            });
        }
        entry(ui, "edge of what is seen in people", |ui, rect| {
            line(ui, rect, Stroke::new(OUTLINE.width + 3.0, SEEN));
            line(ui, rect, OUTLINE);
        });
        entry(ui, "not seen in people", |ui, rect| {
            ui.painter()
                .rect_filled(rect, 0.0, shades::shade(SHADES / 2, SHADES));
            shades::hatched(ui, rect);
        });
    });
}

/// A sign and what it means, kept together.
fn entry(ui: &mut Ui, text: &str, draw: impl FnOnce(&Ui, Rect)) {
    let galley = RichText::new(text).size(14.0).color(SLATE);
    ui.scope(|ui| {
        ui.horizontal(|ui| {
            let (rect, _) = ui.allocate_exact_size(SWATCH, Sense::hover());
            draw(ui, rect);
            ui.label(galley);
        });
    });
    ui.add_space(NEAR);
}

fn line(ui: &Ui, rect: Rect, stroke: Stroke) {
    ui.painter().hline(rect.x_range(), rect.center().y, stroke);
}
