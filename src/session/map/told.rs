//! The map in lines of text.

use super::{Made, NODES};
use crate::session::Session;
use crate::session::readings::{Group, Reading};

impl Session {
    pub(in crate::session) fn map_readings(&self) -> Vec<Reading> {
        let line = |quantity: String, label: String, text: String, about: &str| Reading {
            quantity: quantity.into(),
            group: Group::Answer,
            label: label.into(),
            text,
            about: about.to_owned(),
        };
        let sides = self.map_sides();
        let names = ["x", "y"].into_iter().zip(["Across", "Upwards"]);
        let mut lines: Vec<_> = names
            .zip(&sides)
            .map(|((name, label), side)| {
                let unit = self.units.of(side.key().kind);
                let [from, to] = [0.0, 1.0].map(|part| side.at(part));
                let text = format!(
                    "{} from {} to {}",
                    side.key().label(),
                    unit.number(from),
                    unit.text(to)
                );
                line(
                    format!("map:{name}"),
                    label.to_owned(),
                    text,
                    side.key().about(),
                )
            })
            .collect();
        lines.push(line(
            "map:here".to_owned(),
            "Turns in all".to_owned(),
            format!("{:.2}", self.jump.turns),
            "Turns of the jump at hand.",
        ));
        let Some(made) = &self.map.made else {
            return lines;
        };
        lines.push(line(
            "map:done".to_owned(),
            "Flown".to_owned(),
            progress(made),
            "The map's nodes, each a flight of its own.",
        ));
        lines.extend(self.needed(made).map(|(level, text)| {
            line(
                format!("map:x_for_{level}"),
                format!("{level} turns, all else as now"),
                text,
                "Where the line of so many turns passes the jump at hand.",
            )
        }));
        lines
    }

    /// For every line of the map that passes the jump on its own height: the turns, and the values
    /// across.
    fn needed(&self, made: &Made) -> impl Iterator<Item = (f64, String)> {
        let [across, _] = self.map_sides();
        let [_, up] = self.map_point();
        let unit = self.units.of(across.key().kind);
        let picture = made.picture.as_ref();
        let mut levels: Vec<f64> = picture
            .into_iter()
            .flat_map(|picture| picture.whole.iter().chain(&picture.owed))
            .map(|line| line.level)
            .collect();
        levels.sort_by(f64::total_cmp);
        levels.dedup();
        levels.into_iter().filter_map(move |level| {
            let values: Vec<String> = picture?
                .crossings(up, level)
                .into_iter()
                .map(|part| unit.text(across.at(part)))
                .collect();
            (!values.is_empty()).then(|| (level, values.join(" and ")))
        })
    }
}

fn progress(made: &Made) -> String {
    if made.map.is_done() {
        format!("{NODES} x {NODES} flown")
    } else {
        format!("{} of {} flown", made.flown, NODES * NODES)
    }
}
