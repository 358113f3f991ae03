//! Missing rotation and how it is called, in words.

use crate::unit::{DEGREES, UnitText};
use turns_aloft_scenario::call::{Call, OVER_ROTATED_FROM_DEG};
use turns_aloft_scenario::facing::Facing;
use turns_aloft_scenario::fly::Owed;
use turns_aloft_words::{say, text};

/// Missing rotation in words: "169° short", "12° too far".
pub fn shortfall_text(shortfall_deg: f64) -> String {
    let degrees = DEGREES.number(shortfall_deg.abs());
    if shortfall_deg >= 0.0 {
        say!("shortfall-short", degrees = degrees)
    } else {
        say!("shortfall-too-far", degrees = degrees)
    }
}

/// The call in words.
pub fn call_text(call: Call) -> &'static str {
    match call {
        Call::OverRotated => text("call-over-rotated"),
        Call::Full => text("call-full"),
        Call::Quarter => text("call-quarter"),
        Call::Under => text("call-under"),
        Call::Downgraded => text("call-downgraded"),
    }
}

/// What is said in place of a call where the rule does not reach, for missing rotation from one end
/// to the other.
pub fn uncalled_text(shortfall_deg: [f64; 2]) -> &'static str {
    match shortfall_deg.map(|deg| deg < -OVER_ROTATED_FROM_DEG) {
        [true, true] => text("call-none-over-rotated"),
        [false, false] => text("call-none"),
        _ => text("call-none-may-be-over-rotated"),
    }
}

/// How a jump's rotation is called, or that it is not; nothing is owed by a free one.
pub fn verdict_text(owed: Option<Owed>) -> &'static str {
    match owed {
        None => text("call-none"),
        Some(owed) => owed
            .call
            .map_or_else(|| uncalled_text([owed.shortfall_deg; 2]), call_text),
    }
}

/// The same in a few letters, to stand behind the turns: the sign of the call; none for a full one.
pub fn mark(owed: Option<Owed>) -> &'static str {
    match owed {
        Some(owed) if owed.over_rotated_deg.is_some() => text("call-over-rotated-in-short"),
        Some(owed) => owed.call.map_or("", Call::sign),
        None => "",
    }
}

/// How far beyond the turns owed: "120°", "364°, a whole turn more".
pub fn over_rotated_text(owed: &Owed, over_deg: f64) -> String {
    let degrees = DEGREES.number(over_deg);
    match (
        Facing::of(owed.landing_facing_deg),
        (over_deg / 360.0).round() as u32,
    ) {
        (Facing::AsOwed, turns) if turns > 0 => {
            say!("over-rotated-whole-turns", degrees = degrees, turns = turns)
        }
        _ => say!("over-rotated", degrees = degrees),
    }
}

/// Which way the landing faces: "the right way, 4°".
pub fn facing_text(past_deg: f64) -> String {
    let degrees = DEGREES.number(past_deg);
    match Facing::of(past_deg) {
        Facing::AsOwed => say!("facing-as-owed", degrees = degrees),
        Facing::Sideways => say!("facing-sideways", degrees = degrees),
        Facing::Opposite => say!("facing-opposite", degrees = degrees),
    }
}

/// Missing rotation from one end to the other: "41° to 148° short", "12° too far to 30° short".
pub fn shortfall_range_text(shortfall_deg: [f64; 2]) -> String {
    let [least, most] = shortfall_deg;
    let [from, to] = [least, most].map(|degrees| DEGREES.number(degrees.abs()));
    if most < 0.0 {
        say!("shortfall-both-too-far", from = to, to = from)
    } else if least >= 0.0 {
        say!("shortfall-both-short", from = from, to = to)
    } else {
        say!("shortfall-either", from = from, to = to)
    }
}

/// What the call may be, each by these words: "< or <<".
pub fn possible_calls(calls: &[Call], words: impl Fn(Call) -> &'static str) -> String {
    let mut words: Vec<&str> = calls.iter().map(|&call| words(call)).collect();
    let last = words.pop().unwrap_or_default();
    if words.is_empty() {
        last.to_owned()
    } else {
        say!("either-or", first = words.join(", "), last = last)
    }
}

/// The call in one or two characters, or in a word where it has no sign.
pub fn call_sign(call: Call) -> &'static str {
    match call {
        Call::OverRotated => text("call-over-rotated"),
        Call::Full => text("call-full-in-short"),
        other => other.sign(),
    }
}
