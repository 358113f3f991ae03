//! A try at so many turns, in words.

use crate::Inline;
use crate::beyond;
use crate::rounding::{beyond_and_limit, shown_shortfall_deg};
use crate::turns::{hundredths_of, owed_text, turns_text};
use crate::unit::UnitText;
use turns_aloft_analysis::turn_try::{Held, HeldOf, TurnTry};
use turns_aloft_scenario::call::Call;
use turns_aloft_scenario::units::{Unit, Units};
use turns_aloft_words::{Message, decimal, say, text};

/// Who knows what about five turns.
pub const KNOWN: [Message; 2] = [Message("five-turns-listed"), Message("five-turns-peak")];

/// Whether all turns are there, and what is missing if not.
pub fn turns(tried: &TurnTry) -> String {
    let owed = owed_text(tried.turns_owed);
    let turned = turns_text(hundredths_of(tried.turns, Some(tried.turns_owed)));
    let degrees = shown_shortfall_deg(tried.shortfall_deg);
    match Call::of(tried.shortfall_deg) {
        _ if tried.is_full() => say!("try-full", owed = owed, turns = turned),
        Call::Full => say!(
            "try-facing",
            owed = owed,
            turns = turned,
            degrees = decimal(tried.landing_facing_deg.abs(), 0)
        ),
        Call::OverRotated => say!("try-over", owed = owed, turns = turned, degrees = -degrees),
        Call::Quarter | Call::Under | Call::Downgraded => {
            say!("try-short", owed = owed, turns = turned, degrees = degrees)
        }
    }
}

/// Which limits were passed.
pub fn passed(tried: &TurnTry, units: &Units) -> String {
    if tried.passed.is_empty() {
        return text("try-none-passed").to_owned();
    }
    let all: Vec<String> = tried.passed.iter().map(|held| limit(held, units)).collect();
    say!(
        "try-passed",
        count = tried.passed.len(),
        what = all.join("; ")
    )
}

/// What can be said neither way; none where all can.
pub fn unknown(tried: &TurnTry, units: &Units) -> Option<String> {
    let all: Vec<String> = (tried.unknown.iter())
        .map(|held| name_and_value(held, &value(held, units)))
        .collect();
    (!all.is_empty()).then(|| say!("try-unknown", what = all.join("; ")))
}

/// "peak rate 494 rpm, seen up to 440 rpm".
pub fn limit(held: &Held, units: &Units) -> String {
    let unit = unit(held, units);
    match (held.seen_up_to, held.seen_from) {
        (Some(up_to), _) if held.value > up_to => {
            let [value, up_to] = beyond_and_limit(&unit, [held.value, up_to]);
            let what = name_and_value(held, &value);
            say!("try-limit-most", what = what, limit = up_to)
        }
        (_, Some(from)) if held.value < from => {
            let what = name_and_value(held, &value(held, units));
            say!("try-limit-least", what = what, limit = unit.text(from))
        }
        _ => name_and_value(held, &value(held, units)),
    }
}

fn unit(held: &Held, units: &Units) -> Unit {
    match held.of {
        HeldOf::Respect(of) => beyond::unit_of(of, units),
        HeldOf::Number(parameter) => units.of(parameter.kind()),
    }
}

fn value(held: &Held, units: &Units) -> String {
    unit(held, units).text(held.value)
}

fn name_and_value(held: &Held, value: &str) -> String {
    let what = match held.of {
        HeldOf::Respect(of) => beyond::name_of(of, held.joint),
        HeldOf::Number(parameter) => parameter.inline().to_owned(),
    };
    say!("respect-value", what = what, value = value)
}
