//! The levers' steps, and what they give, in words.

use crate::beyond;
use crate::input::step;
use crate::turns::gain_text;
use crate::unit::UnitText;
use turns_aloft_analysis::lever::Lever;
use turns_aloft_analysis::steps::{Flown, Gain};
use turns_aloft_scenario::parameter::{Kind, Step};
use turns_aloft_scenario::units::Units;
use turns_aloft_words::{decimal, say, text};

/// What one step of a lever is, in the user's units.
pub fn step_text(lever: Lever, units: &Units) -> String {
    let parameter = lever.parameter();
    let (kind, size) = match lever.row().step {
        Step::By(by) => (parameter.kind(), by.abs()),
        Step::HandsNearer(by_m) => (Kind::Length, by_m),
    };
    step(parameter, &units.of(kind).text(size))
}

/// What a lever's step gives: "+0.062 turns", "back costs 0.041".
pub fn gained_text(gain: &Gain) -> String {
    match (gain.flown, gain.turns_gained) {
        (Flown::Forward, Some(gained)) => say!("in-turns", turns = gain_text(gained)),
        (Flown::Back, Some(gained)) => {
            let turns = decimal(gained.abs(), 3);
            if gained < 0.0 {
                say!("why-back-wins", turns = turns)
            } else {
                say!("why-back-costs", turns = turns)
            }
        }
        (Flown::NoPart, _) => text("why-no-part").to_owned(),
        _ => text("why-not-possible").to_owned(),
    }
}

/// The same, and that the jump is beyond what has been seen then.
pub fn gained_and_beyond_text(gain: &Gain, units: &Units) -> String {
    let gained = gained_text(gain);
    match beyond::short(&gain.beyond_seen, units) {
        Some(beyond) => say!("why-gain-beyond-seen", gain = gained, beyond = beyond),
        None => gained,
    }
}
