//! The options of a choice as pictures: a body, an arrow or a number, by what each stands for.

use crate::html::escaped;
use turns_aloft_describe::outcome::option;
use turns_aloft_lesson::{Choice, Flights, Flown, Meaning, Step};
use turns_aloft_picture::moment_svg;
use turns_aloft_scenario::units::Units;
use turns_aloft_words::number;

/// Room for blades below and above the highest head, m.
const ABOVE_M: f64 = 0.3;

/// Each option with its picture and its text below; the right one is marked, where it is told.
pub fn pictured(
    choice: &Choice,
    right: Option<usize>,
    step: &Step,
    flights: &Flights,
    units: &Units,
) -> String {
    let items: String = (0..choice.texts().len())
        .map(|place| {
            let said = option(step, place, flights, units);
            let class = if right == Some(place) {
                " class=\"right\""
            } else {
                ""
            };
            let mark = if right == Some(place) { "✓ " } else { "" };
            let picture = picture(choice, place, flights, &said);
            format!("<li{class}>{picture}{mark}{}</li>", escaped(&said))
        })
        .collect();
    format!("<ul class=\"pictures\">{items}</ul>")
}

fn picture(choice: &Choice, place: usize, flights: &Flights, said: &str) -> String {
    match choice {
        Choice::Best { options, .. } => {
            // All of them as large as each other, so that heights compare.
            let top_m = options
                .iter()
                .filter_map(|(_, it)| match flights.one(*it)? {
                    Flown::Jump { scenario, .. } => {
                        Some(scenario.stature_m + scenario.jump_height_m)
                    }
                    Flown::Run(_) => None,
                });
            let top_m = top_m.fold(0.0, f64::max) + ABOVE_M;
            match options.get(place).and_then(|(_, it)| flights.one(*it)) {
                Some(Flown::Jump { jump, .. }) => moment_svg(jump, top_m, said),
                Some(Flown::Run(_)) | None => String::new(),
            }
        }
        Choice::Change { options, .. } => options
            .get(place)
            .map_or_else(String::new, |(_, meaning)| arrow(*meaning, said)),
        Choice::Nearest { options, .. } => options
            .get(place)
            .map_or_else(String::new, |(_, value)| rings(*value, said)),
        Choice::Open { .. } => String::new(),
    }
}

/// Up, down or level.
fn arrow(meaning: Meaning, said: &str) -> String {
    let path = match meaning {
        Meaning::Rises => "M50 92V12M22 42L50 10L78 42",
        Meaning::Falls => "M50 8V88M22 58L50 90L78 58",
        Meaning::Stays => "M14 38H86M14 62H86",
    };
    drawn(
        said,
        &format!("<path d=\"{path}\" fill=\"none\" stroke=\"#000\" stroke-width=\"9\"/>"),
    )
}

/// As many rings as there are; a number that would be too many is written.
fn rings(value: f64, said: &str) -> String {
    let count = value.round();
    if !(1.0..=5.0).contains(&count) {
        let written = number(&value.to_string()).unwrap_or(value);
        return drawn(
            said,
            &format!(
                "<text x=\"50\" y=\"64\" font-size=\"44\" text-anchor=\"middle\">{written}</text>"
            ),
        );
    }
    let ring = |i: usize| {
        let y = 90.0 - 19.0 * i as f64;
        format!(
            "<ellipse cx=\"50\" cy=\"{y}\" rx=\"34\" ry=\"8\" fill=\"none\" stroke=\"#000\" stroke-width=\"5\"/>"
        )
    };
    drawn(said, &(0..count as usize).map(ring).collect::<String>())
}

fn drawn(said: &str, what: &str) -> String {
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"sign\" viewBox=\"0 0 100 100\" role=\"img\" aria-label=\"{}\">{what}</svg>",
        escaped(said)
    )
}
