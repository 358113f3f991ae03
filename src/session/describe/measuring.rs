//! The attempt that is being measured, as lines of text: what is to be marked, where in the film, and what
//! the marks say so far.

use crate::describe::reading::{Group, Reading, line};
use crate::session::Session;
use crate::state::measuring::mark::Mark;
use turns_aloft_attempt::film::PointOf;
use turns_aloft_describe::Sentence;
use turns_aloft_describe::fit::{
    further_mark, largest_loss, other_answers, other_turning, turns_range,
};
use turns_aloft_fit::quantity::Quantity;
use turns_aloft_words::{decimal, say, text};

/// What a mark is called.
pub fn title(mark: Mark) -> &'static str {
    text(match mark {
        Mark::TakeOff => "measure-take-off",
        Mark::Landing => "measure-landing",
        Mark::Point(PointOf::Head, _) => "measure-head",
        Mark::Point(PointOf::Feet, _) => "measure-feet",
        Mark::Point(PointOf::Hips, _) => "measure-hips",
        Mark::Point(PointOf::Background, _) => "measure-background",
        Mark::Facing(_) => "measure-facing",
        Mark::Posture(_) => "measure-posture",
    })
}

/// How a mark is made.
pub fn about(mark: Mark) -> &'static str {
    text(match mark {
        Mark::TakeOff => "measure-take-off-about",
        Mark::Landing => "measure-landing-about",
        Mark::Point(PointOf::Background, _) => "measure-background-about",
        Mark::Point(..) => "measure-point-about",
        Mark::Facing(_) => "measure-facing-about",
        Mark::Posture(_) => "measure-posture-about",
    })
}

/// The frame of the film in sight; none while no film is open.
pub fn frame(session: &Session) -> Option<String> {
    let measuring = session.measuring()?;
    let film = measuring.film()?;
    Some(say!(
        "measure-frame",
        frame = measuring.frame() + 1,
        of = film.times_s.len(),
        time = decimal(measuring.frame_s()?, 3)
    ))
}

/// All lines, as far as there is anything to say.
pub(crate) fn lines(session: &Session) -> Vec<Reading> {
    let mut lines = Vec::new();
    let mut add = |key: &str, label: &'static str, said: String, about: &str| {
        let key = format!("measuring:{key}");
        lines.push(line(Group::Answer, key, label, said, about.to_owned()));
    };
    if let Some(frame) = frame(session) {
        let asked = session.asked_mark();
        let said = asked.map_or_else(|| text("measure-all-marked"), title);
        let how = asked.map_or_else(|| text("measure-more-marks"), about);
        add("asked", text("measure-line-asked"), said.to_owned(), how);
        add("frame", text("measure-time-line"), frame, "");
        if let Some(Mark::Facing(_)) = asked
            && let Some(measuring) = session.measuring()
        {
            let degrees = decimal(measuring.facing_rad().to_degrees(), 0);
            let said = say!("measure-degrees", degrees = degrees);
            add("facing", text("measure-turn-figure"), said, "");
        }
    }
    if let Some(why) = session.unfit() {
        add("unfit", text("measure-line-answer"), why.sentence(), "");
    }
    if let Some(fit) = session.fit() {
        let turns = turns_range(fit.range(Quantity::AirTurns));
        add("air_turns", text("reading-air-turns"), turns, "");
        let mut said = vec![fit.sentence(), largest_loss(fit)];
        said.extend(other_turning(fit).map(str::to_owned));
        said.extend(other_answers(fit));
        said.extend(further_mark(fit));
        let about = text("fitted-input-about");
        add("answer", text("measure-line-answer"), said.join(" "), about);
    }
    lines
}
