//! What is asked for, and of whom, in words.

use crate::session::Session;
use crate::state::goal_settings::GoalTurns;
use turns_aloft_analysis::lever::Lever;
use turns_aloft_describe::beyond;
use turns_aloft_describe::goal::from_to;
use turns_aloft_describe::rounding::{
    in_last_decimals, last_decimals_text, shown_shortfall_deg, shown_turns,
};
use turns_aloft_describe::turns::{hundredths, turns_in_all, turns_text};
use turns_aloft_describe::unit::UnitText;
use turns_aloft_scenario::call::{Call, QUARTER_BAND_FROM_DEG};
use turns_aloft_scenario::units::Unit;
use turns_aloft_words::{Message, decimal, say, text};

pub const SEASON: Message = Message("goal-season");
pub const LIMITS: Message = Message("goal-limits");

/// What is asked, and how far away it is.
pub fn question(session: &Session) -> String {
    let jump = session.jump();
    let target = session.goal_turns();
    let owed = jump.owed.map(|owed| owed.turns);
    if session.has_goal() {
        // Who has them is shown to have them.
        let shown = turns_in_all(jump).max(hundredths(target));
        let over_deg = jump.owed.and_then(|owed| owed.over_rotated_deg);
        if let Some(over_deg) = over_deg {
            return and_beyond(
                session,
                say!(
                    "goal-has-target-over-rotated",
                    turns = turns_text(shown),
                    target = decimal(target, 2),
                    degrees = -shown_shortfall_deg(-over_deg)
                ),
            );
        }
        return and_beyond(
            session,
            say!(
                "goal-has-target",
                turns = turns_text(shown),
                target = decimal(target, 2)
            ),
        );
    }
    // With as many decimals as it takes to show that something is missing.
    let missing = |decimals: usize| {
        let now = shown_turns(jump.turns, owed, decimals);
        (in_last_decimals(target, decimals) - now, decimals)
    };
    let (missing, decimals) = (2..MOST_DECIMALS)
        .map(missing)
        .find(|&(missing, _)| missing > 0)
        .unwrap_or_else(|| missing(MOST_DECIMALS));
    let question = say!(
        "goal-question",
        target = decimal(target, decimals),
        missing = last_decimals_text(missing, decimals)
    );
    let is_full = jump.owed.and_then(|owed| owed.call) == Some(Call::Full);
    if is_full && session.target() == GoalTurns::Full {
        // Or it would be a riddle what there is to win.
        let from = decimal(QUARTER_BAND_FROM_DEG, 0);
        return say!("goal-and-let-pass", question = question, from = from);
    }
    question
}

/// What is said of a jump that has its turns, and in what it is beyond what has been seen.
fn and_beyond(session: &Session, said: String) -> String {
    match beyond::sentence(session.beyond_seen(), session.units()) {
        Some(beyond) => say!("goal-and-beyond", said = said, beyond = beyond),
        None => said,
    }
}

/// Decimals of the turns missing at most: those that a jump may miss and still have the wanted turns.
const MOST_DECIMALS: usize = 4;

/// How far this jumper is taken to get with a lever.
pub fn limit(session: &Session, lever: Lever) -> String {
    session.limit_of(lever).map_or_else(
        || text("goal-limit-unknown").to_owned(),
        |limit| {
            let range = from_to(
                session.units(),
                lever.parameter(),
                limit.range[0],
                limit.range[1],
            );
            if limit.own {
                range
            } else {
                say!("goal-limit-season", range = range)
            }
        },
    )
}

/// What a season may bring of a lever, one decimal finer than the number itself.
pub fn season(session: &Session, lever: Lever) -> String {
    let unit = session.units().of(lever.parameter().kind());
    let finer = Unit {
        decimals: unit.decimals + 1,
        ..unit
    };
    session.season_of(lever).map_or_else(
        || text("goal-season-held").to_owned(),
        |change| finer.text(change),
    )
}
