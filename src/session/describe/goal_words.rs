//! What is asked for, and of whom, in words.

use crate::session::Session;
use turns_aloft_analysis::lever::Lever;
use turns_aloft_describe::goal::from_to;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_scenario::units::Unit;
use turns_aloft_words::{Message, decimal, say, text};

pub const SEASON: Message = Message("goal-season");
pub const LIMITS: Message = Message("goal-limits");

/// What is asked, and how far away it is.
pub fn question(session: &Session) -> String {
    let (target, turns) = (session.goal_turns(), session.jump().turns);
    if session.has_goal() {
        let over_deg = session.jump().owed.and_then(|owed| owed.over_rotated_deg);
        if let Some(over_deg) = over_deg {
            return say!(
                "goal-has-target-over-rotated",
                turns = decimal(turns, 2),
                target = decimal(target, 2),
                degrees = decimal(over_deg, 0)
            );
        }
        return say!(
            "goal-has-target",
            turns = decimal(turns, 2),
            target = decimal(target, 2)
        );
    }
    say!(
        "goal-question",
        target = decimal(target, 2),
        missing = decimal(target - turns, 2)
    )
}

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
