//! The jump that is flown slowly by hand, as lines of text.

use std::cmp::Ordering;
use std::f64::consts::TAU;

use crate::describe::moment::turns_so_far_text;
use crate::describe::reading::{Group, Reading, line};
use crate::session::Session;
use crate::state::slow_flight::{Landed, SlowFlight};
use turns_aloft_analysis::budget::Cause;
use turns_aloft_analysis::turn_try::TurnTry;
use turns_aloft_describe::Label;
use turns_aloft_describe::beyond;
use turns_aloft_describe::call::verdict_text;
use turns_aloft_describe::rounded_budget::Shown;
use turns_aloft_describe::turn_try::{passed, turns};
use turns_aloft_describe::turns::{signed_text, turns_in_all, turns_text};
use turns_aloft_describe::unit::UnitText;
use turns_aloft_physics::led_flight::LedFlight;
use turns_aloft_scenario::curve::turns_of;
use turns_aloft_words::{decimal, say, text};

/// How it is led, in one sentence.
pub fn how() -> &'static str {
    text("slow-how")
}

/// Where it stands, in one sentence that changes only with what is to be done.
pub fn state(session: &Session) -> Option<String> {
    let slow = session.slow_flight()?;
    Some(match slow.landed() {
        Some(landed) => landed_text(landed),
        None if slow.is_in_air() => text("slow-in-air").to_owned(),
        None => text("slow-ready").to_owned(),
    })
}

fn landed_text(landed: &Landed) -> String {
    let turns = turns_text(turns_in_all(&landed.jump));
    match landed.jump.owed {
        None => say!("slow-landed-free", turns = turns),
        owed => say!("slow-landed", turns = turns, call = verdict_text(owed)),
    }
}

/// All lines, as far as there is anything to say.
pub(crate) fn lines(session: &Session, slow: &SlowFlight) -> Vec<Reading> {
    let mut lines = Vec::new();
    let mut add = |key: &str, label: &'static str, said: String, about: &str| {
        let key = format!("slow:{key}");
        lines.push(line(Group::Answer, key, label, said, about.to_owned()));
    };
    add(
        "state",
        text("slow-line-state"),
        state(session).unwrap_or_default(),
        how(),
    );
    if let Some(led) = slow.led() {
        let turns = turns_of(session.scenario(), led.sample());
        let turns = turns_so_far_text(session.jump(), turns);
        add("turns_now", text("slow-turns-so-far"), turns, "");
        let rate = session.units().rate.unit().text(stepped(led));
        add("rate_now", text("slow-rate"), rate, "");
        let [arms, _] = led.tucks();
        add("in_now", text("slow-in"), percent(arms), "");
        add("lands_in", text("slow-time-left"), lands_in(slow, led), "");
    }
    if let Some(landed) = slow.landed() {
        let turns = turns_text(turns_in_all(&landed.jump));
        add("turns", text("panel-turns-in-all"), turns, "");
        let about = text("slow-budget-about");
        for (key, label, [before, flown]) in rows(landed) {
            let said = say!("slow-both", before = before, flown = flown);
            add(key, label, said, about);
        }
        if let Some(tried) = &landed.tried {
            add("try", text("try-title"), tried_text(session, tried), "");
        }
        if let Some(beyond) = beyond::sentence(&landed.beyond_seen, session.units()) {
            add("beyond_seen", text("slow-line-state"), beyond, "");
        }
    }
    lines
}

/// What came of it as a try, and whether that is better than the jump at hand.
fn tried_text(session: &Session, tried: &TurnTry) -> String {
    let passed = passed(tried, session.units());
    let against = against(session, tried).unwrap_or_default();
    [&turns(tried), &passed, against].join(" ")
}

/// Whether a try is better than the jump at hand is.
pub fn against(session: &Session, tried: &TurnTry) -> Option<&'static str> {
    let before = session.turn_try()?;
    Some(text(match tried.compared(before) {
        Ordering::Greater => "try-better",
        Ordering::Equal => "try-as-good",
        Ordering::Less => "try-worse",
    }))
}

/// The rate in steps, so that what is read out doesn't change all the time, rad/s: tens of revolutions a minute.
fn stepped(led: &LedFlight) -> f64 {
    const STEP_RAD_S: f64 = TAU / 6.0;
    (led.rate_rad_s() / STEP_RAD_S).round() * STEP_RAD_S
}

/// A share as percent.
pub fn percent(share: f64) -> String {
    say!("slow-percent", percent = decimal(100.0 * share, 0))
}

/// Until when the ice is met, in the time that passes for who leads.
pub fn lands_in(slow: &SlowFlight, led: &LedFlight) -> String {
    let left_s = led.landing_in_s() / slow.pace();
    say!("slow-lands-in", time = decimal(left_s, 1))
}

/// Where the turns went, of the jump at hand and of the one flown by hand: a key, what it is, and both.
pub fn rows(landed: &Landed) -> Vec<(&'static str, &'static str, [String; 2])> {
    let [before, flown] = &landed.budgets;
    let both = |of: &dyn Fn(&Shown) -> String| [of(before), of(flown)];
    let ideal = both(&|it| turns_text(it.ideal));
    let mut rows = vec![("ideal_turns", text("why-line-ideal"), ideal)];
    for (i, cause) in Cause::ORDER.into_iter().enumerate() {
        let key = match cause {
            Cause::Closing => "closing_turns",
            Cause::Tightness => "tightness_turns",
            Cause::Opening => "opening_turns",
            Cause::Tilt => "tilt_turns",
        };
        let lost = both(&|it| signed_text(-it.losses[i]));
        rows.push((key, cause.label(), lost));
    }
    let ice = both(&|it| signed_text(it.ice));
    rows.push(("ice_turns", text("panel-turned-before-take-off"), ice));
    let turns = both(&|it| turns_text(it.turns));
    rows.push(("turns_in_all", text("panel-turns-in-all"), turns));
    rows
}
