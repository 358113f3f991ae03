//! Play, pause, slow motion, one frame on or back.

use egui::{
    Align2, Color32, CornerRadius, Pos2, Rect, Response, Sense, Shape, Stroke, StrokeKind, Ui,
    Vec2, pos2, vec2,
};

use super::style::{self, FROST, INK, NEAR, ON_TEAL, SLATE, SNOW, TEAL, TOUCH};
use super::{accessibility, targets};
use crate::say;
use crate::session::readings::phase;
use crate::session::{SPEEDS, Session};
use crate::words::{decimal, text};

/// Height of the row.
pub const HEIGHT: f32 = TOUCH + NEAR;

/// Least distance of a button's words from its sides.
const EDGE: f32 = 4.0;

pub fn show(ui: &mut Ui, session: &mut Session, rect: Rect) {
    let mut x = rect.left();
    let mut next = |width: f32| -> Rect {
        let own = Rect::from_min_size(pos2(x, rect.top()), vec2(width, TOUCH));
        x += width + NEAR;
        own
    };

    let play = next(TOUCH + 12.0);
    let name = if session.playback.playing {
        "pause"
    } else {
        "play"
    };
    let response = button(ui, "play", play, session.playback.playing);
    accessibility::button(
        &response,
        if session.playback.playing {
            text("panel-pause")
        } else {
            text("panel-play")
        },
    );
    let ink = if session.playback.playing {
        ON_TEAL.get()
    } else {
        INK.get()
    };
    icon(ui, name, play.center(), ink);
    if response.clicked() {
        session.play_or_pause();
    }
    for (name, said, frames) in [
        ("back", text("panel-picture-back"), -1.0),
        ("on", text("panel-picture-on"), 1.0),
    ] {
        let own = next(TOUCH);
        let response = button(ui, name, own, false);
        accessibility::button(&response, said);
        if response.clicked() {
            session.step(frames);
        }
        icon(ui, name, own.center(), INK.get());
    }
    speeds(ui, session, &mut next, rect.width() < 460.0);
    let repeat = next(TOUCH);
    let response = button(ui, "repeat", repeat, session.playback.repeat);
    accessibility::toggle(&response, text("panel-repeat"), session.playback.repeat);
    if response.clicked() {
        session.playback.repeat = !session.playback.repeat;
    }
    let ink = if session.playback.repeat {
        ON_TEAL.get()
    } else {
        INK.get()
    };
    icon(ui, "repeat", repeat.center(), ink);

    if rect.right() - x > 150.0 {
        let t_s = session.playhead_s().clamp(0.0, session.end_s());
        ui.painter().text(
            pos2(rect.right() - 4.0, rect.top() + 0.5 * TOUCH),
            Align2::RIGHT_CENTER,
            format!("{}  {} s", phase(session), decimal(t_s, 2)),
            style::text(17.0),
            SLATE.get(),
        );
    }
}

/// One button for each speed, or one that goes through them where there is no room.
fn speeds(ui: &Ui, session: &mut Session, next: &mut impl FnMut(f32) -> Rect, narrow: bool) {
    const LABELS: [&str; 4] = ["1", "1/2", "1/4", "1/10"];
    let write = |own: Rect, label: &str, ink: Color32| {
        ui.painter().text(
            own.center(),
            Align2::CENTER_CENTER,
            label,
            style::bold(16.0),
            ink,
        );
    };
    if narrow {
        let present = SPEEDS
            .iter()
            .position(|&speed| speed == session.playback.speed);
        let present = present.unwrap_or_default();
        let own = next(TOUCH + 12.0);
        let response = button(ui, "speed", own, false);
        accessibility::button(&response, &say!("panel-speed", speed = LABELS[present]));
        if response.clicked() {
            session.playback.speed = SPEEDS[(present + 1) % SPEEDS.len()];
        }
        write(own, LABELS[present], INK.get());
        return;
    }
    for (speed, label) in SPEEDS.into_iter().zip(LABELS) {
        let own = next(TOUCH);
        let chosen = session.playback.speed == speed;
        let name = format!("speed {label}");
        let response = button(ui, &name, own, chosen);
        accessibility::toggle(&response, &say!("panel-speed", speed = label), chosen);
        if response.clicked() {
            session.playback.speed = speed;
        }
        write(own, label, if chosen { ON_TEAL.get() } else { INK.get() });
    }
}

/// A button with words on it, as large as it has room for them; filled where it is `chosen`.
pub fn labelled(ui: &Ui, name: &str, label: &str, rect: Rect, chosen: bool) -> Response {
    let response = button(ui, name, rect, chosen);
    if chosen {
        accessibility::toggle(&response, label, true);
    } else {
        accessibility::button(&response, label);
    }
    let ink = if chosen { ON_TEAL.get() } else { INK.get() };
    let size = style::fitting_text(ui, label, 16.0, rect.width() - 2.0 * EDGE);
    ui.painter().text(
        rect.center(),
        Align2::CENTER_CENTER,
        label,
        style::text(size),
        ink,
    );
    response
}

/// A plain button of a given place; what stands in it is drawn, and said, by the caller.
pub fn button(ui: &Ui, name: &str, rect: Rect, chosen: bool) -> Response {
    targets::note(name, rect);
    let response = ui.interact(rect, ui.id().with(name), Sense::click());
    let fill = if chosen { TEAL.get() } else { SNOW.get() };
    let edge = if response.hovered() {
        TEAL.get()
    } else {
        FROST.get()
    };
    ui.painter().rect(
        rect,
        CornerRadius::same(style::ROUND),
        fill,
        Stroke::new(1.0, edge),
        StrokeKind::Inside,
    );
    response
}

/// The signs on the buttons, drawn: a font would have to carry them.
fn icon(ui: &Ui, name: &str, at: Pos2, ink: Color32) {
    let painter = ui.painter();
    let triangle = |tip: Vec2, a: Vec2, b: Vec2| {
        painter.add(Shape::convex_polygon(
            vec![at + tip, at + a, at + b],
            ink,
            Stroke::NONE,
        ));
    };
    let bar = |x: f32, width: f32| {
        painter.rect_filled(
            Rect::from_center_size(at + vec2(x, 0.0), vec2(width, 17.0)),
            1.0,
            ink,
        );
    };
    match name {
        "play" => triangle(vec2(11.0, 0.0), vec2(-7.0, -10.0), vec2(-7.0, 10.0)),
        "pause" => {
            bar(-5.0, 5.0);
            bar(5.0, 5.0);
        }
        "on" => {
            bar(-7.0, 3.0);
            triangle(vec2(9.0, 0.0), vec2(-3.0, -8.0), vec2(-3.0, 8.0));
        }
        "back" => {
            bar(7.0, 3.0);
            triangle(vec2(-9.0, 0.0), vec2(3.0, -8.0), vec2(3.0, 8.0));
        }
        _ => {
            // An arrow that runs round.
            let points: Vec<Pos2> = (3..=30)
                .map(|i| at + 9.0 * Vec2::angled(i as f32 / 32.0 * std::f32::consts::TAU))
                .collect();
            let end = points[points.len() - 1];
            painter.add(Shape::line(points, Stroke::new(2.5, ink)));
            painter.add(Shape::convex_polygon(
                vec![
                    end + vec2(5.5, 3.5),
                    end + vec2(-5.5, 1.5),
                    end + vec2(2.0, -6.0),
                ],
                ink,
                Stroke::NONE,
            ));
        }
    }
}
