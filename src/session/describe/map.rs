//! The map as lines of text.

use crate::answers::map::{Made, NODES};
use crate::describe::reading::{Group, Reading};
use crate::session::Session;
use turns_aloft_describe::number::plain;
use turns_aloft_describe::turns::{turns_in_all, turns_text};
use turns_aloft_describe::unit::UnitText;
use turns_aloft_describe::{About, Label};
use turns_aloft_physics::order::by_number;
use turns_aloft_words::{say, text};

/// All lines, as far as the map has been flown.
pub(crate) fn lines(session: &Session) -> Vec<Reading> {
    let line = |quantity: String, label: String, text: String, about: &str| Reading {
        quantity: quantity.into(),
        group: Group::Answer,
        label: label.into(),
        text,
        about: about.to_owned(),
    };
    let sides = session.map_sides();
    let names = ["x", "y"]
        .into_iter()
        .zip([text("map-line-across"), text("map-line-upwards")]);
    let mut lines: Vec<_> = names
        .zip(&sides)
        .map(|((name, label), side)| {
            let unit = session.units().of(side.parameter().kind());
            let [from, to] = [0.0, 1.0].map(|part| side.at(part));
            let span = say!(
                "map-span",
                what = side.parameter().label(),
                from = unit.number(from),
                to = unit.text(to)
            );
            line(
                format!("map:{name}"),
                label.to_owned(),
                span,
                side.parameter().about(),
            )
        })
        .collect();
    lines.push(line(
        "map:here".to_owned(),
        text("reading-turns").to_owned(),
        turns_text(turns_in_all(session.jump())),
        text("map-line-here-about"),
    ));
    let Some(made) = session.made() else {
        return lines;
    };
    lines.push(line(
        "map:done".to_owned(),
        text("map-line-flown").to_owned(),
        progress(made),
        text("map-line-flown-about"),
    ));
    lines.extend(needed(session, made).map(|(level, values)| {
        line(
            format!("map:x_for_{level}"),
            say!("map-line-needed", turns = plain(level)),
            values,
            text("map-line-needed-about"),
        )
    }));
    lines
}

/// For every line of the map that passes the jump on its own height: the turns, and the values
/// across.
fn needed(session: &Session, made: &Made) -> impl Iterator<Item = (f64, String)> {
    let [across, _] = session.map_sides();
    let [_, up] = session.map_point();
    let unit = session.units().of(across.parameter().kind());
    let picture = made.picture.as_ref();
    let levels = picture
        .into_iter()
        .flat_map(|picture| picture.whole.iter().chain(&picture.owed))
        .map(|line| line.level)
        .collect();
    let mut levels: Vec<f64> = by_number(levels, |level| *level);
    levels.dedup();
    levels.into_iter().filter_map(move |level| {
        let crossings = picture?.crossings(up, level).into_iter();
        let values = crossings.map(|part| unit.text(across.at(part)));
        let all = values.reduce(|one, other| say!("map-and", one = one, other = other))?;
        Some((level, all))
    })
}

fn progress(made: &Made) -> String {
    if made.map.is_done() {
        say!("map-all-flown", nodes = NODES)
    } else {
        say!("map-flown", flown = made.flown, nodes = NODES * NODES)
    }
}
