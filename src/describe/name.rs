//! What a jump is called: its name, or what it is and what was changed of it.

use std::borrow::Cow;

use crate::Inline;
use crate::comparison::{led, word};
use crate::jump::notation;
use crate::start::shown_name;
use crate::unit::UnitText;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::collection::LONGEST_NAME;
use turns_aloft_scenario::input::Input;
use turns_aloft_scenario::units::Units;
use turns_aloft_words::say;

/// Changes that a name tells of at most; the others are counted.
const MOST_TOLD: usize = 2;

/// The name of a jump as it is shown; one that nobody has named is called by what it is.
pub fn name_of(scenario: &Scenario) -> Cow<'_, str> {
    if scenario.name.is_empty() {
        let jump = notation(scenario.jump, scenario.jump_turns);
        say!("name-unnamed", jump = jump).into()
    } else {
        shown_name(&scenario.name).into()
    }
}

/// What differs in a jump from another, as it is in that jump: "arm tuck 70 %, jump height 30 cm".
/// Of more than `most` differences the others are counted.
pub fn differences(from: &Scenario, to: &Scenario, units: &Units, most: usize) -> String {
    let inputs: Vec<Input> = Input::differing(from, to).collect();
    let value = |input: &Input| match *input {
        Input::Number(parameter) => units.of(parameter.kind()).text(parameter.get(to)),
        Input::Choice(choice) => word(choice, to).into_owned(),
        Input::Led => led(to).to_owned(),
    };
    let told: Vec<String> = (inputs.iter().take(most))
        .map(|input| {
            say!(
                "name-difference",
                what = input.inline(),
                value = value(input)
            )
        })
        .collect();
    let told = told.join(", ");
    match inputs.len().saturating_sub(most) {
        0 => told,
        more if told.is_empty() => say!("name-differences", count = more),
        more => say!("name-and-differences", told = told, count = more),
    }
}

/// What a jump is to be called where it is written down: its own name; where it only has that of what it
/// was begun from, that with what was changed.
pub fn telling_name(base: &Scenario, scenario: &Scenario, units: &Units) -> String {
    let name = name_of(scenario);
    let is_own = scenario.name != base.name || scenario.name.is_empty();
    if is_own || Input::differing(base, scenario).next().is_none() {
        return name.into_owned();
    }
    let fits = |name: &String| name.chars().count() <= LONGEST_NAME;
    (0..=MOST_TOLD)
        .rev()
        .map(|most| format!("{name}, {}", differences(base, scenario, units, most)))
        .find(fits)
        .unwrap_or_else(|| name.into_owned())
}
