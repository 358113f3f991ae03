//! What would win the missing turns, in words.

use crate::session::Session;
use turns_aloft_analysis::combination::{Change, Combination};
use turns_aloft_analysis::goal::Single;
use turns_aloft_analysis::lever::Lever;
use turns_aloft_analysis::limits::{Judgement, LimitOf, Verdict};
use turns_aloft_describe::Inline;
use turns_aloft_describe::Label;
use turns_aloft_describe::Text;
use turns_aloft_describe::beyond;
use turns_aloft_describe::unit::UnitText;
use turns_aloft_scenario::beyond::Respect;
use turns_aloft_scenario::order::by_number;
use turns_aloft_scenario::parameter::Parameter;
use turns_aloft_scenario::units::Unit;
use turns_aloft_words::say;
use turns_aloft_words::{Message, decimal, text};

pub const SEASON: Message = Message("goal-season");
pub const LIMITS: Message = Message("goal-limits");

/// Whether a verdict is one that a change can be proposed with.
pub fn can(verdict: Verdict) -> bool {
    verdict != Verdict::CannotAlone
}

/// That nothing is known for a jumper of this size, where a verdict is given all the same.
pub fn size_not_known(judgement: &Judgement) -> Option<&'static str> {
    let said = judgement.verdict == Verdict::WithinReach && !judgement.known_for_size;
    said.then(|| text("goal-size-not-known"))
}

/// The verdict, and what has to be said with it.
pub fn judgement(session: &Session, judgement: &Judgement, beyond_seen: &[Respect]) -> String {
    let more = size_not_known(judgement).map(str::to_owned);
    let beyond = beyond::short(beyond_seen, session.units());
    let said = Some(verdict(judgement.verdict).to_owned());
    let all = [said, more, beyond].into_iter().flatten();
    all.collect::<Vec<_>>().join("; ")
}

pub fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::AlreadyReached => text("goal-verdict-already"),
        Verdict::WithinReach => text("goal-verdict-within-reach"),
        Verdict::WithinMeasured => text("goal-verdict-within-measured"),
        Verdict::AtEdge => text("goal-verdict-at-edge"),
        Verdict::NotKnown => text("goal-verdict-not-known"),
        Verdict::BeyondMeasured => text("goal-verdict-beyond-measured"),
        Verdict::CannotAlone => text("goal-verdict-cannot-alone"),
    }
}

fn unit(session: &Session, parameter: Parameter) -> Unit {
    session.units().of(parameter.kind())
}

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

/// "98 to 131 rpm".
pub fn from_to(session: &Session, parameter: Parameter, from: f64, to: f64) -> String {
    let unit = unit(session, parameter);
    say!("from-to", from = unit.number(from), to = unit.text(to))
}

/// "+33 rpm".
pub fn change(session: &Session, lever: Lever, change: f64) -> String {
    let sign = if change < 0.0 { "−" } else { "+" };
    format!(
        "{sign}{}",
        unit(session, lever.parameter()).text(change.abs())
    )
}

/// A value in the user's units.
pub fn value(session: &Session, lever: Lever, value: f64) -> String {
    unit(session, lever.parameter()).text(value)
}

/// What a lever that cannot do it alone can do.
pub fn most(session: &Session, single: &Single) -> String {
    single.proof.as_ref().map_or_else(String::new, |proof| {
        say!(
            "goal-most",
            turns = decimal(proof.most_turns, 2),
            at = value(session, single.lever, proof.most_turns_at)
        )
    })
}

/// The limit that a verdict rests on, and where that comes from.
pub fn basis(session: &Session, single: &Single) -> String {
    let judgement = &single.judgement;
    let Some(limit) = &judgement.limit else {
        return judgement.source.text().to_owned();
    };
    let what = limit.parameter.inline();
    let range = from_to(session, limit.parameter, limit.range[0], limit.range[1]);
    let source = judgement.source.text();
    match limit.of {
        LimitOf::Jumper | LimitOf::Season => say!(
            "goal-basis-jumper",
            what = what,
            range = range,
            source = source
        ),
        LimitOf::Seen => say!(
            "goal-basis-seen",
            what = what,
            range = range,
            source = source
        ),
        LimitOf::Admissible => say!(
            "goal-basis-admissible",
            what = what,
            range = range,
            source = source
        ),
    }
}

/// The landing load now and then.
pub fn landing(session: &Session, then_bw: [f64; 2]) -> String {
    let [low, high] = session.jump().readout.landing_load_bw;
    say!(
        "goal-landing",
        low = decimal(low, 1),
        high = decimal(high, 1),
        then_low = decimal(then_bw[0], 1),
        then_high = decimal(then_bw[1], 1)
    )
}

/// One line of the joint change.
pub fn part(session: &Session, change: &Change) -> String {
    format!(
        "{} {} ({})",
        change.lever.parameter().label(),
        from_to(session, change.lever.parameter(), change.now, change.value),
        self::change(session, change.lever, change.change)
    )
}

/// The levers of a joint change worth telling: what would be shown as no change is left out.
pub fn parts<'a>(session: &Session, combination: &'a Combination) -> Vec<&'a Change> {
    let told = combination
        .changes
        .iter()
        .filter(|change| {
            let unit = unit(session, change.lever.parameter());
            unit.number(change.now) != unit.number(change.value)
        })
        .collect();
    by_number(told, |change: &&Change| -change.seasons.abs())
}

/// How much it asks for.
pub fn effort(combination: &Combination) -> String {
    let seasons = decimal(combination.effort_seasons, 1);
    match combination.single_effort_seasons {
        Some(single) if single > combination.effort_seasons => say!(
            "goal-effort-less",
            seasons = seasons,
            single = decimal(single, 1)
        ),
        _ => say!("goal-effort", seasons = seasons),
    }
}

/// How far this jumper is taken to get with a lever.
pub fn limit(session: &Session, lever: Lever) -> String {
    session.limit_of(lever).map_or_else(
        || text("goal-limit-unknown").to_owned(),
        |limit| {
            let range = from_to(session, lever.parameter(), limit.range[0], limit.range[1]);
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
    let unit = unit(session, lever.parameter());
    let finer = Unit {
        decimals: unit.decimals + 1,
        ..unit
    };
    session.season_of(lever).map_or_else(
        || text("goal-season-held").to_owned(),
        |change| finer.text(change),
    )
}
