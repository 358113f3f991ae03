//! Missing rotation and how it is called, in words.

use crate::rounding::shown_shortfall_deg;
use crate::unit::{DEGREES, UnitText};
use turns_aloft_scenario::beyond::Respect;
use turns_aloft_scenario::call::{Call, OVER_ROTATED_FROM_DEG, QUARTER_BAND_FROM_DEG};
use turns_aloft_scenario::facing::Facing;
use turns_aloft_scenario::fly::Owed;
use turns_aloft_words::{decimal, say, text};

/// Missing rotation in words: "169° short", "12° too far", "all there".
pub fn shortfall_text(shortfall_deg: f64) -> String {
    match shown_shortfall_deg(shortfall_deg) {
        0 => text("shortfall-none").to_owned(),
        short @ 1.. => say!("shortfall-short", degrees = short),
        too_far => say!("shortfall-too-far", degrees = -too_far),
    }
}

/// What is to be thought of a jump's rotation, from the degrees as shown and the call together, the best
/// first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Standing {
    /// Nothing is missing, and nothing called.
    AllThere,
    /// Some is missing, and the rule lets it pass; or where the rule does not reach, no more than it
    /// would let pass.
    LetPass,
    /// It is called, or over-rotated, or may be.
    Wanting,
    /// However far it turns, nobody like this jumper has been seen to do what it asks.
    Beyond,
}

impl Standing {
    /// Of missing rotation from one end to the other, the same twice where it is one number, and of the
    /// respects in which the jump is beyond what has been seen. All that is said of a jump, its turns, the
    /// changes of it and their colours, goes by this.
    pub fn of(shortfall_deg: [f64; 2], beyond_seen: &[Respect]) -> Self {
        let [least, most] = shortfall_deg;
        if !beyond_seen.is_empty() {
            Self::Beyond
        } else if shortfall_deg.map(Call::of) != [Call::Full; 2] {
            Self::Wanting
        } else if least.max(most) > 0.0 && shown_shortfall_deg(least.max(most)) > 0 {
            Self::LetPass
        } else {
            Self::AllThere
        }
    }
}

/// That a jump is full although something is missing.
fn let_pass_text() -> String {
    say!(
        "call-full-let-pass",
        from = decimal(QUARTER_BAND_FROM_DEG, 0)
    )
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

/// The same in a few words, to stand below the degrees that are missing.
pub fn short_verdict_text(owed: Owed) -> String {
    let is_let_pass = Standing::of([owed.shortfall_deg; 2], &[]) == Standing::LetPass;
    if owed.call == Some(Call::Full) && is_let_pass {
        return say!(
            "call-full-let-pass-in-short",
            from = decimal(QUARTER_BAND_FROM_DEG, 0)
        );
    }
    verdict_text(Some(owed))
}

/// How a jump's rotation is called, or that it is not; nothing is owed by a free one.
pub fn verdict_text(owed: Option<Owed>) -> String {
    let Some(owed) = owed else {
        return text("call-none").to_owned();
    };
    let shortfall_deg = [owed.shortfall_deg; 2];
    match owed.call {
        None => uncalled_text(shortfall_deg).to_owned(),
        Some(call) => calls_text(&[call], shortfall_deg, call_text),
    }
}

/// What a jump may be called, each by these words, with rotation missing from one end to the other.
pub fn calls_text(
    calls: &[Call],
    shortfall_deg: [f64; 2],
    words: impl Fn(Call) -> &'static str,
) -> String {
    if calls == [Call::Full] && Standing::of(shortfall_deg, &[]) == Standing::LetPass {
        return let_pass_text();
    }
    possible_calls(calls, words)
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
    // As the missing rotation is shown, too.
    let degrees = -shown_shortfall_deg(-over_deg);
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
    let [least, most] = [least, most].map(shown_shortfall_deg);
    let [from, to] = [least, most].map(i64::abs);
    if from == to && least == most {
        shortfall_text(shortfall_deg[0])
    } else if most <= 0 {
        say!("shortfall-both-too-far", from = to, to = from)
    } else if least >= 0 {
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
