//! Playback: play and pause, one frame on or back, speed, repeat.

use egui::{Align2, Color32, Painter, Pos2, Rect, Shape, Stroke, Ui, Vec2, pos2, vec2};

use crate::controls::Button;
use crate::style::{self, GAP, TOUCH_SIZE, WEAK_TEXT};
use turns_aloft_session::readings::phase;
use turns_aloft_session::{SPEEDS, Session};
use turns_aloft_words::{decimal, say, text};

/// Height of the row.
pub const HEIGHT: f32 = TOUCH_SIZE + GAP;

pub fn show(ui: &mut Ui, session: &mut Session, rect: Rect) {
    let mut x = rect.left();
    let mut next = |width: f32| -> Rect {
        let own = Rect::from_min_size(pos2(x, rect.top()), vec2(width, TOUCH_SIZE));
        x += width + GAP;
        own
    };

    let playing = session.playback.playing;
    let (sign, accessible_name) = if playing {
        (Sign::Pause, text("panel-pause"))
    } else {
        (Sign::Play, text("panel-play"))
    };
    let play = Button::drawn("play", accessible_name, draw_sign(sign)).filled(playing);
    if play.show(ui, next(TOUCH_SIZE + 12.0)).clicked() {
        session.play_or_pause();
    }
    for (name, accessible_name, sign, frames) in [
        ("back", text("panel-picture-back"), Sign::Back, -1.0),
        ("on", text("panel-picture-on"), Sign::On, 1.0),
    ] {
        let button = Button::drawn(name, accessible_name, draw_sign(sign));
        if button.show(ui, next(TOUCH_SIZE)).clicked() {
            session.step(frames);
        }
    }
    speeds(ui, session, &mut next, rect.width() < 460.0);
    let repeat = Button::drawn("repeat", text("panel-repeat"), draw_sign(Sign::Repeat))
        .toggle(session.playback.repeat);
    if repeat.show(ui, next(TOUCH_SIZE)).clicked() {
        session.playback.repeat = !session.playback.repeat;
    }

    if rect.right() - x > 150.0 {
        let t_s = session.playhead_s().clamp(0.0, session.end_s());
        ui.painter().text(
            pos2(rect.right() - 4.0, rect.top() + 0.5 * TOUCH_SIZE),
            Align2::RIGHT_CENTER,
            format!("{}  {} s", phase(session), decimal(t_s, 2)),
            style::text(17.0),
            WEAK_TEXT.get(),
        );
    }
}

/// A button for each speed; where it is narrow one button that cycles through them.
pub fn speeds(ui: &Ui, session: &mut Session, next: &mut impl FnMut(f32) -> Rect, narrow: bool) {
    const LABELS: [&str; 4] = ["1", "1/2", "1/4", "1/10"];
    let button = |ui: &Ui, name: &str, label: &str, chosen: Option<bool>, own: Rect| {
        let accessible_name = say!("panel-speed", speed = label);
        let button = Button::drawn(name, &accessible_name, |painter, rect, colour| {
            let font = style::bold(16.0);
            painter.text(rect.center(), Align2::CENTER_CENTER, label, font, colour);
        });
        let button = match chosen {
            Some(chosen) => button.toggle(chosen),
            None => button,
        };
        button.show(ui, own).clicked()
    };
    let present = session.playback.speed;
    if narrow {
        let place = SPEEDS.iter().position(|&speed| speed == present);
        let place = place.unwrap_or_default();
        if button(ui, "speed", LABELS[place], None, next(TOUCH_SIZE + 12.0)) {
            session.playback.speed = SPEEDS[(place + 1) % SPEEDS.len()];
        }
        return;
    }
    for (speed, label) in SPEEDS.into_iter().zip(LABELS) {
        let name = format!("speed {label}");
        if button(ui, &name, label, Some(speed == present), next(TOUCH_SIZE)) {
            session.playback.speed = speed;
        }
    }
}

/// The signs on the buttons, drawn because the font has none of them.
#[derive(Debug, Clone, Copy)]
pub enum Sign {
    Play,
    Pause,
    On,
    Back,
    Repeat,
}

pub fn draw_sign(sign: Sign) -> impl FnOnce(&Painter, Rect, Color32) {
    move |painter, rect, colour| draw(painter, sign, rect.center(), colour)
}

fn draw(painter: &Painter, sign: Sign, at: Pos2, colour: Color32) {
    let triangle = |tip: Vec2, a: Vec2, b: Vec2| {
        painter.add(Shape::convex_polygon(
            vec![at + tip, at + a, at + b],
            colour,
            Stroke::NONE,
        ));
    };
    let bar = |x: f32, width: f32| {
        painter.rect_filled(
            Rect::from_center_size(at + vec2(x, 0.0), vec2(width, 17.0)),
            1.0,
            colour,
        );
    };
    match sign {
        Sign::Play => triangle(vec2(11.0, 0.0), vec2(-7.0, -10.0), vec2(-7.0, 10.0)),
        Sign::Pause => {
            bar(-5.0, 5.0);
            bar(5.0, 5.0);
        }
        Sign::On => {
            bar(-7.0, 3.0);
            triangle(vec2(9.0, 0.0), vec2(-3.0, -8.0), vec2(-3.0, 8.0));
        }
        Sign::Back => {
            bar(7.0, 3.0);
            triangle(vec2(-9.0, 0.0), vec2(3.0, -8.0), vec2(3.0, 8.0));
        }
        Sign::Repeat => {
            // A circular arrow.
            let points: Vec<Pos2> = (3..=30)
                .map(|i| at + 9.0 * Vec2::angled(i as f32 / 32.0 * std::f32::consts::TAU))
                .collect();
            let end = points[points.len() - 1];
            painter.add(Shape::line(points, Stroke::new(2.5, colour)));
            painter.add(Shape::convex_polygon(
                vec![
                    end + vec2(5.5, 3.5),
                    end + vec2(-5.5, 1.5),
                    end + vec2(2.0, -6.0),
                ],
                colour,
                Stroke::NONE,
            ));
        }
    }
}
