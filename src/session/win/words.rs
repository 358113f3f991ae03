//! The answer in words.

use super::super::Session;
use crate::analysis::joint::{Change, Joint};
use crate::analysis::lever::LEVERS;
use crate::analysis::limits::{LimitOf, Verdict};
use crate::analysis::wanted::Single;
use crate::scenario::keys::{Key, key};
use crate::scenario::units::Unit;
use crate::words::{Message, text};

pub const SEASON: Message = Message("win-season");
pub const LIMITS: Message = Message("win-limits");

pub fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::AlreadyReached => text("win-verdict-already"),
        Verdict::WithinReach => text("win-verdict-within-reach"),
        Verdict::WithinMeasured => text("win-verdict-within-measured"),
        Verdict::BeyondMeasured => text("win-verdict-beyond-measured"),
        Verdict::CannotAlone => text("win-verdict-cannot-alone"),
    }
}

fn row(name: &str) -> &'static Key {
    key(name).expect("every lever is one of the numbers")
}

fn unit(session: &Session, name: &str) -> Unit {
    session.units.of(row(name).kind)
}

/// What is asked, and how far away it is.
pub fn question(session: &Session) -> String {
    let (target, turns) = (session.target_turns(), session.jump().turns);
    if session.has_target() {
        return format!("This jump has {turns:.2} turns: the {target:.2} asked for are there.");
    }
    let missing = target - turns;
    format!("{target:.2} turns asked for, {missing:.2} more than now. What would win them?")
}

/// "98 to 131 rpm".
pub fn from_to(session: &Session, key: &str, from: f64, to: f64) -> String {
    let unit = unit(session, key);
    format!("{} to {}", unit.number(from), unit.text(to))
}

/// "+33 rpm".
pub fn change(session: &Session, key: &str, change: f64) -> String {
    let sign = if change < 0.0 { "−" } else { "+" };
    format!("{sign}{}", unit(session, key).text(change.abs()))
}

/// A value in the user's units.
pub fn value(session: &Session, key: &str, value: f64) -> String {
    unit(session, key).text(value)
}

/// What a lever that cannot do it alone can do.
pub fn most(session: &Session, single: &Single) -> String {
    single.proof.as_ref().map_or_else(String::new, |proof| {
        format!(
            "{:.2} turns at most, at {}",
            proof.most_turns,
            value(session, single.key, proof.most_turns_at)
        )
    })
}

/// The limit that a verdict rests on, and where that comes from.
pub fn basis(session: &Session, single: &Single) -> String {
    let judgement = &single.judgement;
    let Some(limit) = &judgement.limit else {
        return judgement.source.text().to_owned();
    };
    let of = match limit.of {
        LimitOf::Jumper | LimitOf::Season => "This jumper",
        LimitOf::Seen => "Seen in people",
        LimitOf::Admissible => "Can be set",
    };
    format!(
        "{of}: {} {}. {}",
        row(limit.key).inline(),
        from_to(session, limit.key, limit.range[0], limit.range[1]),
        judgement.source.text()
    )
}

/// The landing load now and then.
pub fn landing(session: &Session, then_bw: [f64; 2]) -> String {
    let [low, high] = session.jump().readout.landing_load_bw;
    format!(
        "Landing load, an estimate: now {low:.1} to {high:.1} times the body's weight, then {:.1} to {:.1}.",
        then_bw[0], then_bw[1]
    )
}

/// One line of the joint change.
pub fn part(session: &Session, change: &Change) -> String {
    format!(
        "{} {} ({})",
        change.label.text(),
        from_to(session, change.key, change.now, change.value),
        self::change(session, change.key, change.change)
    )
}

/// The levers of a joint change worth telling: what would be shown as no change is left out.
pub fn parts<'a>(session: &Session, joint: &'a Joint) -> Vec<&'a Change> {
    let mut told: Vec<&Change> = joint
        .changes
        .iter()
        .filter(|change| {
            let unit = unit(session, change.key);
            unit.number(change.now) != unit.number(change.value)
        })
        .collect();
    told.sort_by(|a, b| b.seasons.abs().total_cmp(&a.seasons.abs()));
    told
}

/// How much it asks for.
pub fn effort(joint: &Joint) -> String {
    let all = format!("Together {:.1} seasons' work", joint.effort_seasons);
    match joint.single_effort_seasons {
        Some(single) if single > joint.effort_seasons => {
            format!("{all}; the easiest lever alone takes {single:.1}.")
        }
        _ => format!("{all}."),
    }
}

/// What more in the hands is taken to leave as it is.
pub fn hands(session: &Session) -> &'static str {
    use crate::scenario::HandsKeep;
    match session.scenario().hands_keep {
        HandsKeep::Rate => "taken that the jumper keeps the take-off rate",
        HandsKeep::AngularMomentum => "taken that the jumper keeps the angular momentum",
        HandsKeep::Energy => "taken that the jumper keeps the rotational energy",
    }
}

/// How far this jumper is taken to get with a lever.
pub fn reach(session: &Session, place: usize) -> String {
    let name = LEVERS[place].key;
    session.reach_of(place).map_or_else(
        || "not known".to_owned(),
        |reach| {
            let range = from_to(session, name, reach.range[0], reach.range[1]);
            if reach.own {
                range
            } else {
                format!("{range} (a season)")
            }
        },
    )
}

/// What a season may bring of a lever, one decimal finer than the number itself.
pub fn season(session: &Session, place: usize) -> String {
    let name = LEVERS[place].key;
    let unit = unit(session, name);
    let finer = Unit {
        decimals: unit.decimals + 1,
        ..unit
    };
    session
        .season_of(place)
        .map_or_else(|| "held".to_owned(), |change| finer.text(change))
}
