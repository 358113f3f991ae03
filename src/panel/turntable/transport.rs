//! Pause and go on, again, keep, save; and a line of time where there is no room for curves.

use egui::{Align2, Rect, Stroke, Ui, pos2, vec2};
use turns_aloft_session::Saved;

use crate::command::PageCommand;
use crate::controls::{Button, Scale, slider};
use crate::playback::{Sign, draw_sign};
use crate::style::{self, CARD, GAP, PLAYHEAD, TOUCH_SIZE, WEAK_TEXT};
use turns_aloft_describe::unit::{SECONDS, UnitText};
use turns_aloft_session::Session;
use turns_aloft_words::text;

/// Widest button with a word.
const BUTTON: f32 = 96.0;

/// By keyboard the time shown goes on or back by this, s.
const TIME_STEP_S: f64 = 0.1;

/// Room for the time, where there is some.
const TIME: f32 = 84.0;

pub fn show(ui: &mut Ui, session: &mut Session, rect: Rect) -> Option<PageCommand> {
    let on_turntable = session.turntable()?;
    let running = on_turntable.is_running();
    let is_kept = on_turntable.kept().is_some();
    let has_run = on_turntable.end_s() > 0.0;
    let shown_s = on_turntable.shown().t_s;
    let most = 0.25 * (rect.width() - 3.0 * GAP);
    let width = most.min(BUTTON);
    let mut x = rect.left();
    let mut next = || {
        let own = Rect::from_min_size(pos2(x, rect.top()), vec2(width, TOUCH_SIZE));
        x += width + GAP;
        own
    };
    let (sign, name) = if running {
        (Sign::Pause, text("panel-pause"))
    } else {
        (Sign::Play, text("panel-play"))
    };
    let play = Button::drawn("turntable play", name, draw_sign(sign)).filled(!running);
    if play.show(ui, next()).clicked() {
        session.play_or_pause_turntable();
    }
    let again = Button::labelled("turntable again", text("turntable-again"));
    if again.enabled(has_run).show(ui, next()).clicked() {
        session.turn_again();
    }
    let about = if is_kept {
        text("turntable-drop-about")
    } else {
        text("turntable-keep-about")
    };
    let keep = Button::labelled("turntable keep", text("turntable-keep"));
    if keep.about(about).toggle(is_kept).show(ui, next()).clicked() {
        session.keep_or_drop_run();
    }
    let save = Button::labelled("turntable csv", text("turntable-save"));
    let save = save.about(text("turntable-save-about")).enabled(has_run);
    let saved = save.show(ui, next()).clicked();
    if rect.right() - x > TIME {
        ui.painter().text(
            pos2(rect.right() - 4.0, rect.top() + 0.5 * TOUCH_SIZE),
            Align2::RIGHT_CENTER,
            SECONDS.text(shown_s),
            style::text(17.0),
            WEAK_TEXT.get(),
        );
    }
    saved.then_some(PageCommand::Save(Saved::RunTable))
}

/// The whole run as a line to go back on.
pub fn time_line(ui: &mut Ui, session: &mut Session, rect: Rect) {
    let Some(end_s) = session.turntable().map(|it| it.end_s()) else {
        return;
    };
    let band = rect.shrink2(vec2(0.0, 10.0));
    ui.painter().rect_filled(band, 4.0, CARD.get());
    wind_back(ui, session, rect, [0.0, end_s]);
    let shown_s = session.turntable().map_or(0.0, |it| it.shown().t_s);
    let part = if end_s > 0.0 { shown_s / end_s } else { 0.0 };
    ui.painter().vline(
        rect.left() + rect.width() * part as f32,
        rect.y_range(),
        Stroke::new(3.0, PLAYHEAD.get()),
    );
}

/// The slider of the time shown over an area that spans these times.
pub fn wind_back(ui: &Ui, session: &mut Session, rect: Rect, [from_s, to_s]: [f64; 2]) {
    let response = slider(
        ui,
        "turntable time",
        rect,
        text("turntable-time-line"),
        session,
        Session::show_turntable_at,
        |session| {
            let on_turntable = session.turntable();
            let [value, most] = on_turntable.map_or([0.0; 2], |it| [it.shown().t_s, it.end_s()]);
            Scale {
                value,
                least: 0.0,
                most,
                step: TIME_STEP_S,
                text: SECONDS.text(value),
            }
        },
    );
    if (response.dragged() || response.clicked())
        && let Some(at) = response.interact_pointer_pos()
    {
        let share = f64::from((at.x - rect.left()) / rect.width());
        session.show_turntable_at(from_s + share * (to_s - from_s));
    }
}
