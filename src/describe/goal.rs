//! What would win the missing turns, in words.

use crate::rounding::{self, FromTo};
use crate::unit::UnitText;
use crate::{Inline, Label, Text, beyond};
use turns_aloft_analysis::combination::{Change, Combination};
use turns_aloft_analysis::goal::{Proposal, Single};
use turns_aloft_analysis::lever::Lever;
use turns_aloft_analysis::limits::{Judgement, LimitOf, Verdict};
use turns_aloft_physics::order::by_number;
use turns_aloft_scenario::beyond::Respect;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::parameter::{Kind, Parameter};
use turns_aloft_scenario::units::Units;
use turns_aloft_words::{decimal, say, text};

impl Text for Verdict {
    fn text(self) -> &'static str {
        match self {
            Self::AlreadyReached => text("goal-verdict-already"),
            Self::WithinReach => text("goal-verdict-within-reach"),
            Self::WithinMeasured => text("goal-verdict-within-measured"),
            Self::AtEdge => text("goal-verdict-at-edge"),
            Self::NotKnown => text("goal-verdict-not-known"),
            Self::BeyondMeasured => text("goal-verdict-beyond-measured"),
            Self::CannotAlone => text("goal-verdict-cannot-alone"),
            Self::NoPart => text("goal-verdict-no-part"),
        }
    }
}

/// That nothing is known for a jumper of this size, where a verdict is given all the same.
pub fn size_not_known(judgement: &Judgement) -> Option<&'static str> {
    let said = judgement.verdict == Verdict::WithinReach && !judgement.known_for_size;
    said.then(|| text("goal-size-not-known"))
}

/// The verdict, and what has to be said with it.
pub fn judgement(units: &Units, judgement: &Judgement, beyond_seen: &[Respect]) -> String {
    let more = size_not_known(judgement).map(str::to_owned);
    let beyond = beyond::short(beyond_seen, units);
    let said = Some(judgement.verdict.text().to_owned());
    let all = [said, more, beyond].into_iter().flatten();
    all.collect::<Vec<_>>().join("; ")
}

/// "98 to 131 rpm".
pub fn from_to(units: &Units, parameter: Parameter, from: f64, to: f64) -> String {
    let FromTo { from, to, .. } = rounding::from_to(&units.of(parameter.kind()), [from, to]);
    say!("from-to", from = from, to = to)
}

/// "98 to 131 rpm", and what that is more: "+33 rpm".
pub fn from_to_and_change(units: &Units, lever: Lever, values: [f64; 2]) -> [String; 2] {
    let unit = units.of(lever.parameter().kind());
    let FromTo {
        from, to, change, ..
    } = rounding::from_to(&unit, values);
    [say!("from-to", from = from, to = to), change]
}

/// The value that a lever needs, and what it is more than now: "131 rpm (+33 rpm)".
pub fn value_and_change(units: &Units, single: &Single, proposal: &Proposal) -> String {
    let unit = units.of(single.lever.parameter().kind());
    let FromTo { to, change, .. } = rounding::from_to(&unit, [single.now, proposal.value]);
    format!("{to} ({change})")
}

/// How long the jump is in the air, now and then, where that is to be seen: "0.55 to 0.58 s in the air".
pub fn hang_time(now: &Jump, then_s: f64) -> Option<String> {
    let unit = Units::default().of(Kind::Time);
    let now_s = now.readout.hang_time_s;
    let is_seen = unit.number(now_s) != unit.number(then_s);
    is_seen.then(|| {
        say!(
            "goal-hang-time",
            from = unit.number(now_s),
            to = unit.text(then_s)
        )
    })
}

/// A value in the user's units.
pub fn value(units: &Units, lever: Lever, value: f64) -> String {
    units.of(lever.parameter().kind()).text(value)
}

/// What a lever that cannot do it alone can do.
pub fn most(units: &Units, single: &Single) -> String {
    single.proof.as_ref().map_or_else(String::new, |proof| {
        say!(
            "goal-most",
            turns = decimal(proof.most_turns, 2),
            at = value(units, single.lever, proof.most_turns_at)
        )
    })
}

/// The limit that a verdict rests on, and where that comes from.
pub fn basis(units: &Units, single: &Single) -> String {
    let judgement = &single.judgement;
    let Some(limit) = &judgement.limit else {
        return judgement.source.text().to_owned();
    };
    let what = limit.parameter.inline();
    let range = from_to(units, limit.parameter, limit.range[0], limit.range[1]);
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
pub fn landing(now: &Jump, then_bw: [f64; 2]) -> String {
    let [low, high] = now.readout.landing_load_bw;
    say!(
        "goal-landing",
        low = decimal(low, 1),
        high = decimal(high, 1),
        then_low = decimal(then_bw[0], 1),
        then_high = decimal(then_bw[1], 1)
    )
}

/// One line of the joint change.
pub fn part(units: &Units, change: &Change) -> String {
    let [values, by] = from_to_and_change(units, change.lever, [change.now, change.value]);
    format!("{} {values} ({by})", change.lever.parameter().label())
}

/// The levers of a joint change worth telling: what would be shown as no change is left out.
pub fn parts<'a>(units: &Units, combination: &'a Combination) -> Vec<&'a Change> {
    let told = combination
        .changes
        .iter()
        .filter(|change| {
            let unit = units.of(change.lever.parameter().kind());
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
