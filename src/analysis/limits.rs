//! How far a lever goes: this jumper's limits, what has been seen of people, and beyond.

use serde::Serialize;

use crate::lever::{Lever, PerLever, RefusedLever, Season};
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::parameter::Parameter;
use turns_aloft_scenario::source::Source;

/// What there is to say of a proposed value, the mildest first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// The jump has the turns as it is.
    AlreadyReached,
    /// Within this jumper's own limits; where none are given, within what a season might bring.
    WithinReach,
    /// Farther than that, but people have been seen there.
    WithinMeasured,
    /// Farther than a season, and at the edge of what has been measured: neither seen nor beyond.
    AtEdge,
    /// Farther than a season, and not known for a jumper of this size.
    NotKnown,
    /// Nobody has been seen there, or the jump asks for something else that nobody has been seen to do.
    BeyondMeasured,
    /// No admissible value does it.
    CannotAlone,
    /// It has no part in a jump that was led by hand.
    NoPart,
}

/// A verdict, and the limit it rests on.
#[derive(Debug, Clone, PartialEq)]
pub struct Judgement {
    pub verdict: Verdict,
    /// None where the jump has the turns as it is, where it has no part, and where nothing is known.
    pub limit: Option<Limit>,
    /// Where the limit comes from.
    pub source: Source,
    /// Whether it is known for a jumper of this size what has been seen; if not, the verdict cannot
    /// rest on that.
    pub known_for_size: bool,
}

#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Limit {
    /// The number that is limited: a body that closes more also turns faster.
    #[serde(rename = "key")]
    pub parameter: Parameter,
    /// From there to there, in its own unit.
    pub range: [f64; 2],
    pub of: LimitOf,
}

/// What a limit is the limit of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum LimitOf {
    /// This jumper, as given.
    Jumper,
    /// This jumper, as far as a season's training might go from the jump as it is.
    Season,
    /// All people that have been seen.
    Seen,
    /// What can be set.
    Admissible,
}

impl Judgement {
    pub const ALREADY: Self = Self {
        verdict: Verdict::AlreadyReached,
        limit: None,
        source: Source::LimitAlready,
        known_for_size: true,
    };

    pub const NO_PART: Self = Self {
        verdict: Verdict::NoPart,
        limit: None,
        source: Source::LimitNoPart,
        known_for_size: true,
    };

    pub(crate) fn cannot(lever: Lever) -> Self {
        Self {
            verdict: Verdict::CannotAlone,
            limit: Some(Limit {
                parameter: lever.parameter(),
                range: lever.range(),
                of: LimitOf::Admissible,
            }),
            source: Source::LimitFlown,
            known_for_size: true,
        }
    }
}

/// This jumper's own limits, where they are given, each in its lever's own unit.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Limits(PerLever<Option<[f64; 2]>>);

impl Limits {
    pub fn own(&self, lever: Lever) -> Option<[f64; 2]> {
        self.0[lever]
    }

    /// Sets a lever's own limits, inside its admissible range.
    pub fn set(&mut self, lever: Lever, own: [f64; 2]) -> Result<(), RefusedLever> {
        let [least, most] = lever.range();
        if !(least <= own[0] && own[0] <= own[1] && own[1] <= most) {
            return Err(RefusedLever::Limits { lever, limits: own });
        }
        self.0[lever] = Some(own);
        Ok(())
    }

    /// From where to where this jumper is taken to get: the own limits, or else a season's change
    /// from the jump as it is; none where neither is known.
    pub fn limit_of(&self, lever: Lever, now: &Scenario, season: &Season) -> Option<Limit> {
        let parameter = lever.parameter();
        if let Some(range) = self.0[lever] {
            return Some(Limit {
                parameter,
                range,
                of: LimitOf::Jumper,
            });
        }
        let value = lever.value(now);
        let [least, most] = lever.range();
        season.unit(lever).map(|unit| Limit {
            parameter,
            range: [(value - unit).max(least), (value + unit).min(most)],
            of: LimitOf::Season,
        })
    }
}
