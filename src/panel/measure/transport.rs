//! Going through a film: one frame or ten on or back, play, and a time line.

use egui::{Align2, CornerRadius, Rect, Stroke, Ui, pos2, vec2};

use crate::controls::{Button, Scale, slider};
use crate::number::knob;
use crate::playback::{Sign, draw_sign, speeds};
use crate::style::{self, ACCENT, GAP, LINE, TEXT, TOUCH_SIZE, WEAK_TEXT};
use turns_aloft_session::Session;
use turns_aloft_session::measuring::frame;
use turns_aloft_words::{decimal, say, text};

/// In less width there are no large steps; from this on there is a button for each speed.
const NARROW: f32 = 350.0;
const WIDE: f32 = 640.0;

/// Frames of a large step.
const LARGE_STEP: isize = 10;

pub fn show(ui: &mut Ui, session: &mut Session, rect: Rect) {
    let Some(last) = (session.measuring().and_then(|it| it.film())).map(|it| it.times_s.len() - 1)
    else {
        return;
    };
    let mut x = rect.left();
    let mut next = |width: f32| -> Rect {
        let own = Rect::from_min_size(pos2(x, rect.top()), vec2(width, TOUCH_SIZE));
        x += width + GAP;
        own
    };
    let playing = session.is_film_playing();
    let (sign, name) = if playing {
        (Sign::Pause, text("panel-pause"))
    } else {
        (Sign::Play, text("panel-play"))
    };
    let play = Button::drawn("film play", name, draw_sign(sign)).filled(playing);
    if play.show(ui, next(TOUCH_SIZE)).clicked() {
        session.play_or_pause_film();
    }
    let steps = [
        ("film back 10", text("measure-ten-back"), -LARGE_STEP),
        ("film back", text("panel-picture-back"), -1),
        ("film on", text("panel-picture-on"), 1),
        ("film on 10", text("measure-ten-on"), LARGE_STEP),
    ];
    // The time line takes larger steps, too.
    let narrow = rect.width() < NARROW;
    for (name, accessible_name, by) in steps {
        if narrow && by.abs() == LARGE_STEP {
            continue;
        }
        let button = if by.abs() == LARGE_STEP {
            let label = if by < 0 { "−10" } else { "+10" };
            Button::labelled(name, label).accessible_name(accessible_name)
        } else {
            let sign = if by < 0 { Sign::Back } else { Sign::On };
            Button::drawn(name, accessible_name, draw_sign(sign))
        };
        if button.show(ui, next(TOUCH_SIZE)).clicked() {
            session.step_frames(by);
        }
    }
    speeds(ui, session, &mut next, rect.width() < WIDE);
    let closer = session.measuring().map_or(1.0, |it| it.closer());
    let label = say!("measure-times-larger", times = decimal(closer, 0));
    let look = Button::labelled("look closer", &label)
        .accessible_name(text("measure-look-closer"))
        .filled(closer > 1.0);
    if look.show(ui, next(TOUCH_SIZE)).clicked() {
        session.look_closer();
    }
    let Some(where_it_is) = frame(session) else {
        return;
    };
    if rect.right() - x > 130.0 {
        let at = pos2(rect.right(), rect.top() + 0.5 * TOUCH_SIZE);
        let (size, colour) = (style::text(15.0), WEAK_TEXT.get());
        ui.painter()
            .text(at, Align2::RIGHT_CENTER, &where_it_is, size, colour);
    }
    let line = Rect::from_min_max(pos2(rect.left(), rect.top() + TOUCH_SIZE), rect.max);
    time_line(ui, session, line, last, where_it_is);
}

/// All frames, with what is marked.
fn time_line(ui: &Ui, session: &mut Session, rect: Rect, last: usize, text_of: String) {
    const EDGE: f32 = 14.0;
    let rect = Rect::from_min_size(rect.min, vec2(rect.width(), TOUCH_SIZE));
    let response = slider(
        ui,
        "film time",
        rect,
        text("measure-time-line"),
        session,
        |session, frame| session.show_frame(frame.max(0.0) as usize),
        |session| Scale {
            value: session.measuring().map_or(0, |it| it.frame()) as f64,
            least: 0.0,
            most: last as f64,
            step: 1.0,
            text: text_of,
        },
    );
    let (left, span) = (rect.left() + EDGE, rect.width() - 2.0 * EDGE);
    let x_of = |frame: usize| left + span * frame as f32 / last.max(1) as f32;
    if (response.dragged() || response.clicked())
        && let Some(at) = response.interact_pointer_pos()
    {
        let share = ((at.x - left) / span).clamp(0.0, 1.0);
        session.show_frame((share * last as f32).round() as usize);
    }
    let Some(measuring) = session.measuring() else {
        return;
    };
    let y = rect.center().y;
    let painter = ui.painter();
    let track = Rect::from_min_max(pos2(left, y - 3.0), pos2(left + span, y + 3.0));
    painter.rect_filled(track, CornerRadius::same(3), LINE.get());
    if let Some(film) = measuring.marks() {
        let x_at = |t_s: Option<f64>| measuring.frame_at(t_s?).map(x_of);
        let contacts = [film.contacts.first_in_air_s, film.contacts.last_in_air_s].map(x_at);
        if let [Some(from), Some(to)] = contacts {
            let flight = Rect::from_min_max(pos2(from, y - 3.0), pos2(to, y + 3.0));
            painter.rect_filled(flight, CornerRadius::same(3), ACCENT.get());
        }
        let facings = film.facings.iter().map(|it| it.t_s);
        for x in facings.filter_map(|t_s| x_at(Some(t_s))) {
            let ends = [pos2(x, y - 9.0), pos2(x, y + 9.0)];
            painter.line_segment(ends, Stroke::new(2.0, TEXT.get()));
        }
    }
    let active = response.dragged() || response.hovered();
    knob(painter, pos2(x_of(measuring.frame()), y), active);
}
