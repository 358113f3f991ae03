//! What is to be marked now, and how.

use egui::{RichText, Sense, Ui, vec2};

use crate::command::PageCommand;
use crate::controls::{Button, Scale};
use crate::part_slider;
use crate::style::{self, GAP, TOUCH_SIZE};
use crate::text::{card, small};
use turns_aloft_attempt::film::PointOf;
use turns_aloft_session::Session;
use turns_aloft_session::measuring::{Mark, about, title};
use turns_aloft_words::{decimal, say, text};

/// Room for how a mark is made: three lines.
const ABOUT: f32 = 60.0;

/// In so many steps the cross goes over the picture: a point is not seen more exactly.
const STEPS_OF_CROSS: f64 = 500.0;

/// Asks for the film itself: the first time, or that of marks which are there already.
pub fn for_film(ui: &mut Ui, session: &Session) -> Option<PageCommand> {
    let mut command = None;
    card(ui, |ui| {
        let marks = session.measuring().and_then(|measuring| measuring.marks());
        let asked = match marks {
            Some(film) if !film.file_name.is_empty() => {
                say!("measure-film-again", name = film.file_name.as_str())
            }
            _ => text("measure-film-choose").to_owned(),
        };
        ui.label(RichText::new(asked).font(style::bold(18.0)));
        ui.add_space(GAP);
        let open = Button::labelled("open film", text("measure-open-film")).filled(true);
        if open.show_in_row(ui).clicked() {
            command = Some(PageCommand::OpenFilm);
        }
        ui.add_space(GAP);
        let example = Button::labelled("example film", text("measure-example-film"));
        if example.show_in_row(ui).clicked() {
            command = Some(PageCommand::ExampleFilm);
        }
        small(ui, text("measure-example-film-about"));
    });
    command
}

pub fn show(ui: &mut Ui, session: &mut Session) {
    let Some(mark) = session.asked_mark() else {
        card(ui, |ui| {
            ui.label(RichText::new(text("measure-all-marked")).font(style::bold(18.0)));
            small(ui, text("measure-more-marks"));
            another(ui, session);
            back(ui, session);
        });
        return;
    };
    card(ui, |ui| {
        if let Some([done, all]) = session.marks_done() {
            small(ui, &say!("measure-step", step = done + 1, of = all));
        }
        ui.label(RichText::new(title(mark)).font(style::bold(20.0)));
        // The button below stays where it is from mark to mark, and the title above it in sight.
        let below = ui.cursor().top() + ABOUT;
        small(ui, about(mark));
        ui.add_space((below - ui.cursor().top()).max(0.0));
        let done = match mark {
            Mark::TakeOff | Mark::Landing => text("measure-mark-picture"),
            Mark::Facing(_) | Mark::Posture(_) => text("measure-it-fits"),
            Mark::Point(..) => text("measure-mark-cross"),
        };
        // A touch on the film marks a point, too: that is what is expected of most.
        let is_usual = !matches!(mark, Mark::Point(..));
        let button = Button::labelled("mark", done).filled(is_usual);
        if button.show_in_row(ui).clicked() {
            session.mark_frame();
        }
        ui.add_space(GAP);
        back_and_skip(ui, session);
        match mark {
            Mark::Facing(_) => facing(ui, session),
            Mark::Posture(_) => posture(ui, session),
            Mark::Point(..) => cross(ui, session),
            Mark::TakeOff | Mark::Landing => {}
        }
    });
}

fn facing(ui: &mut Ui, session: &mut Session) {
    let Some(facing_rad) = session.measuring().map(|it| it.facing_rad()) else {
        return;
    };
    let degrees = facing_rad.to_degrees();
    let scale = Scale {
        value: degrees,
        least: -180.0,
        most: 180.0,
        step: 1.0,
        text: say!("measure-degrees", degrees = decimal(degrees, 0)),
    };
    if let Some(to) = part_slider::show(ui, "facing", text("measure-turn-figure"), scale) {
        session.turn_figure(to.to_radians() - facing_rad);
    }
}

/// Moves the cross over the film, without a finger on it.
fn cross(ui: &mut Ui, session: &mut Session) {
    let Some(measuring) = session.measuring() else {
        return;
    };
    let Some(size_px) = measuring.film().map(|film| film.size_px) else {
        return;
    };
    let cross_px = measuring.cross_px();
    let labels = [
        ("cross right", text("measure-cross-right")),
        ("cross down", text("measure-cross-down")),
    ];
    for (i, (name, label)) in labels.into_iter().enumerate() {
        let scale = Scale {
            value: cross_px[i],
            least: 0.0,
            most: size_px[i],
            step: (size_px[i] / STEPS_OF_CROSS).max(1.0),
            text: say!("measure-pixels", pixels = decimal(cross_px[i], 0)),
        };
        if let Some(to_px) = part_slider::show(ui, name, label, scale) {
            let mut cross_px = cross_px;
            cross_px[i] = to_px;
            session.move_cross(cross_px);
        }
    }
}

fn posture(ui: &mut Ui, session: &mut Session) {
    let Some(posture) = session.measuring().map(|it| it.posture()) else {
        return;
    };
    let labels = [
        ("posture arms", text("measure-arms")),
        ("posture legs", text("measure-legs")),
    ];
    for (i, (name, label)) in labels.into_iter().enumerate() {
        let scale = Scale {
            value: 100.0 * posture[i],
            least: 0.0,
            most: 100.0,
            step: 1.0,
            text: format!("{} %", decimal(100.0 * posture[i], 0)),
        };
        if let Some(to) = part_slider::show(ui, name, label, scale) {
            let mut posture = posture;
            posture[i] = 0.01 * to;
            session.set_marked_posture(posture);
        }
    }
}

/// Marks beyond those that are asked for, in the frame in sight.
fn another(ui: &mut Ui, session: &mut Session) {
    let Some(frame) = session.measuring().map(|it| it.frame()) else {
        return;
    };
    let more = [
        ("more facing", text("measure-facing"), Mark::Facing(frame)),
        (
            "more posture",
            text("measure-posture"),
            Mark::Posture(frame),
        ),
        (
            "more hips",
            text("measure-hips"),
            Mark::Point(PointOf::Hips, frame),
        ),
        (
            "more background",
            text("measure-background"),
            Mark::Point(PointOf::Background, frame),
        ),
    ];
    for (name, label, mark) in more {
        if Button::labelled(name, label).show_in_row(ui).clicked() {
            session.choose_mark(mark);
        }
        ui.add_space(GAP);
    }
}

fn back_and_skip(ui: &mut Ui, session: &mut Session) {
    let size = vec2(ui.available_width(), TOUCH_SIZE);
    let (row, _) = ui.allocate_exact_size(size, Sense::hover());
    let (left, right) = row.split_left_right_at_x(row.center().x);
    let back = Button::labelled("mark back", text("measure-take-back"));
    let back = back.enabled(session.measuring().is_some_and(|it| it.has_past()));
    if back
        .show(ui, left.with_max_x(left.right() - 0.5 * GAP))
        .clicked()
    {
        session.take_mark_back();
    }
    let skip = Button::labelled("skip mark", text("measure-skip"));
    if skip
        .show(ui, right.with_min_x(right.left() + 0.5 * GAP))
        .clicked()
    {
        session.skip_mark();
    }
}

fn back(ui: &mut Ui, session: &mut Session) {
    let back = Button::labelled("mark back", text("measure-take-back"));
    if back.show_in_row(ui).clicked() {
        session.take_mark_back();
    }
}
