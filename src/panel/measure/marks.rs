//! What has been marked in the film; a touch on a mark makes it anew.

use egui::Ui;

use crate::controls::{Button, choice};
use crate::style::GAP;
use crate::text::{heading, small, warned};
use turns_aloft_describe::Sentence;
use turns_aloft_overlay::RateCheck;
use turns_aloft_session::Session;
use turns_aloft_session::measuring::{Mark, title};
use turns_aloft_words::{decimal, say, text};

/// How many times slower than life a film may play.
const SLOWER: [f64; 4] = [1.0, 2.0, 4.0, 8.0];

pub fn show(ui: &mut Ui, session: &mut Session) {
    slow_motion(ui, session);
    let Some(measuring) = session.measuring() else {
        return;
    };
    let Some(film) = measuring.marks() else {
        return;
    };
    let frame = |t_s: f64| measuring.frame_at(t_s).unwrap_or_default();
    let contacts = [
        (Mark::TakeOff, film.contacts.last_on_ice_s),
        (Mark::Landing, film.contacts.last_in_air_s),
    ];
    let contacts = (contacts.into_iter()).filter_map(|(mark, t_s)| Some((mark, t_s?)));
    let points = (film.points.iter()).map(|it| (Mark::Point(it.of, frame(it.t_s)), it.t_s));
    let facings = (film.facings.iter()).map(|it| (Mark::Facing(frame(it.t_s)), it.t_s));
    let postures = (film.postures.iter()).map(|it| (Mark::Posture(frame(it.t_s)), it.t_s));
    let marks: Vec<(Mark, f64)> = contacts
        .chain(points)
        .chain(facings)
        .chain(postures)
        .collect();
    if marks.is_empty() {
        return;
    }
    heading(ui, text("measure-marked"));
    let mut chosen = None;
    for (i, &(mark, t_s)) in marks.iter().enumerate() {
        let label = say!(
            "measure-marked-at",
            what = title(mark),
            time = decimal(t_s, 3)
        );
        let name = format!("marked {}", i + 1);
        if Button::labelled(&name, &label).show_in_row(ui).clicked() {
            chosen = Some(mark);
        }
        ui.add_space(GAP);
    }
    if let Some(mark) = chosen {
        session.choose_mark(mark);
    }
}

fn slow_motion(ui: &mut Ui, session: &mut Session) {
    let Some(present) = (session.measuring().and_then(|it| it.marks())).map(|it| it.slow_motion)
    else {
        return;
    };
    heading(ui, text("measure-slow-motion"));
    let labels = SLOWER.map(|slower| say!("measure-times-slower", times = decimal(slower, 0)));
    let names = SLOWER.map(|slower| decimal(slower, 0));
    let options: Vec<(f64, &str, &str)> = (0..SLOWER.len())
        .map(|i| (SLOWER[i], names[i].as_str(), labels[i].as_str()))
        .collect();
    if let Some(slow_motion) = choice(ui, "slow motion", present, &options) {
        session.set_slow_motion(slow_motion);
    }
    small(ui, text("measure-slow-motion-about"));
    match session.rate_check() {
        None => {}
        Some(check @ (RateCheck::Right | RateCheck::CannotTell)) => small(ui, &check.sentence()),
        Some(check) => warned(ui, &check.sentence()),
    }
}
