//! What the jump comes to: its turns, and how they are called.

use crate::describe::reading::{Group, Reading, line};
use crate::describe::slow_flight;
use crate::describe::turntable;
use crate::session::Session;
use turns_aloft_describe::beyond;
use turns_aloft_describe::call::{
    call_sign, call_text, calls_text, facing_text, over_rotated_text, shortfall_range_text,
    shortfall_text, uncalled_text, verdict_text,
};
use turns_aloft_describe::number::plain;
use turns_aloft_describe::range::range_text;
use turns_aloft_describe::turns::{hundredths, turns_in_all, turns_text};
use turns_aloft_scenario::call::QUARTER_BAND_FROM_DEG;
use turns_aloft_words::{decimal, say, text};

/// The result in one sentence, to be read out.
pub fn summary(session: &Session) -> String {
    if session.withholds_flight() {
        return text("lesson-withheld").to_owned();
    }
    if let Some(state) = slow_flight::state(session) {
        return state;
    }
    if let Some(on_turntable) = session.turntable() {
        return turntable::summary(session, on_turntable);
    }
    let value = |quantity: &str| {
        lines(session)
            .into_iter()
            .find(|line| line.quantity == quantity)
            .map(|line| line.text)
    };
    let turns = value("turns").unwrap_or_default();
    let [owed, over, facing] = ["turns_owed", "over_rotated_deg", "landing_facing_deg"].map(value);
    let said = if let (Some(owed), Some(over), Some(facing)) = (owed, over, facing) {
        say!(
            "summary-of-over-rotated",
            turns = turns,
            owed = owed,
            over = over,
            facing = facing
        )
    } else {
        of_turns(
            turns,
            [value("turns_owed"), value("shortfall_deg"), value("call")],
        )
    };
    let beyond = beyond::sentence(session.beyond_seen(), session.units());
    [Some(said), beyond]
        .into_iter()
        .flatten()
        .collect::<Vec<_>>()
        .join(" ")
}

/// The turns, and what is owed, missing and called where anything is owed.
fn of_turns(turns: String, against: [Option<String>; 3]) -> String {
    match against.into() {
        (Some(owed), Some(missing), Some(call)) => say!(
            "summary-of-named",
            turns = turns,
            owed = owed,
            missing = missing,
            call = call
        ),
        _ => say!("summary-of-free", turns = turns),
    }
}

/// All lines.
pub(crate) fn lines(session: &Session) -> Vec<Reading> {
    let (jump, scenario) = (session.jump(), session.scenario());
    let range = session.range();
    // In the air and on the ice add up to all, as they stand.
    let (in_all, on_ice) = (turns_in_all(jump), hundredths(scenario.pre_rotation_turns));
    let line = |quantity: &'static str, label: &'static str, text, about: &str| {
        line(Group::Turns, quantity, label, text, about)
    };
    let mut lines = vec![
        line(
            "turns",
            text("reading-turns"),
            range.map_or_else(
                || turns_text(in_all),
                |range| range_text(range, jump.owed.map(|owed| owed.turns)),
            ),
            text("reading-turns-about"),
        ),
        line(
            "air_turns",
            text("reading-air-turns"),
            turns_text(in_all - on_ice),
            text("reading-air-turns-about"),
        ),
        line(
            "pre_rotation_turns",
            text("reading-pre-rotation-turns"),
            turns_text(on_ice),
            text("reading-pre-rotation-turns-about"),
        ),
    ];
    if !session.beyond_seen().is_empty() {
        let beyond = session.beyond_seen();
        lines.push(line(
            "beyond_seen",
            text("reading-beyond-seen"),
            beyond::list(beyond, session.units()),
            &beyond::meaning(beyond, session.units()),
        ));
    }
    let Some(owed) = jump.owed else {
        return lines;
    };
    lines.push(line(
        "turns_owed",
        text("reading-turns-owed"),
        plain(owed.turns),
        text("reading-turns-owed-about"),
    ));
    lines.push(line(
        "shortfall_deg",
        text("reading-shortfall-deg"),
        range
            .and_then(|range| range.shortfall_deg)
            .map_or_else(|| shortfall_text(owed.shortfall_deg), shortfall_range_text),
        text("reading-shortfall-deg-about"),
    ));
    // With a range the call says whether it may be so.
    if let (Some(over_deg), None) = (owed.over_rotated_deg, range) {
        lines.push(line(
            "over_rotated_deg",
            text("reading-over-rotated-deg"),
            over_rotated_text(&owed, over_deg),
            text("reading-over-rotated-deg-about"),
        ));
    }
    lines.push(line(
        "landing_facing_deg",
        text("reading-landing-facing-deg"),
        facing_text(owed.landing_facing_deg),
        text("reading-landing-facing-deg-about"),
    ));
    let about = say!(
        "reading-call-about",
        from = decimal(QUARTER_BAND_FROM_DEG, 0)
    );
    let call = match range.map(|range| (range.calls.as_deref(), range.shortfall_deg)) {
        Some((Some(calls), Some(shortfall_deg))) => {
            let is_one = calls.len() == 1;
            let words = if is_one { call_text } else { call_sign };
            let called = calls_text(calls, shortfall_deg, words);
            if is_one {
                called
            } else {
                say!("call-may-be", calls = called)
            }
        }
        Some((None, Some(shortfall_deg))) => uncalled_text(shortfall_deg).to_owned(),
        _ => verdict_text(Some(owed)),
    };
    lines.push(line("call", text("reading-call"), call, &about));
    lines
}
