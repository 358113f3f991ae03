//! How far a lever goes: this jumper's limits, what has been seen of people, and beyond.

use serde::Serialize;

use crate::goal::Goal;
use crate::lever::{Lever, PerLever, RefusedLever, Season};
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::marks::Marks;
use turns_aloft_scenario::parameter::{Evidence, Movement, Parameter};
use turns_aloft_scenario::seen::Stand;
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
}

/// A verdict, and the limit it rests on.
#[derive(Debug, Clone, PartialEq)]
pub struct Judgement {
    pub verdict: Verdict,
    /// None where the jump has the turns as it is, and where nothing is known.
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

const OWN: Source = Source::LimitOwn;

const SEASON: Source = Source::LimitSeason;
const SEASON_NOT_KNOWN: Source = Source::LimitSeasonNotKnown;

impl Judgement {
    pub const ALREADY: Self = Self {
        verdict: Verdict::AlreadyReached,
        limit: None,
        source: Source::LimitAlready,
        known_for_size: true,
    };

    pub(super) fn cannot(lever: Lever) -> Self {
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

    /// What is to be said of a lever's value in a jump flown with it.
    pub(super) fn judge(
        &self,
        lever: Lever,
        goal: &Goal<'_>,
        then: &Scenario,
        jump: &Jump,
    ) -> Judgement {
        let value = lever.value(then);
        let marks = marks(lever, then, jump);
        let evidence = lever.parameter().row().evidence;
        // The marks of the rate are those of the rate flown: kept by heavier hands, it is another.
        let flown = if evidence == Evidence::PeakRate {
            jump.readout.takeoff_rate_rad_s
        } else {
            value
        };
        let (mut stand, mut source) = (marks.stand(flown), marks.source);
        if let Evidence::Strength {
            movement: Movement::Closing,
            ..
        } = evidence
        {
            // How fast and how tight ends where the joints' strength does.
            let asked = then.torque(Movement::Closing, jump);
            if asked.stand > stand {
                (stand, source) = (asked.stand, asked.source);
            }
        }
        let known_for_size = stand != Stand::NotKnown;
        let in_reach = self
            .limit_of(lever, goal.scenario, goal.season)
            .filter(|limit| within(limit.range, value));
        match in_reach {
            Some(limit) if limit.of == LimitOf::Jumper => Judgement {
                verdict: Verdict::WithinReach,
                limit: Some(limit),
                source: OWN,
                known_for_size,
            },
            Some(limit) if stand != Stand::Beyond => Judgement {
                verdict: Verdict::WithinReach,
                limit: Some(limit),
                source: if known_for_size {
                    SEASON
                } else {
                    SEASON_NOT_KNOWN
                },
                known_for_size,
            },
            _ => Judgement {
                verdict: match stand {
                    Stand::Seen => Verdict::WithinMeasured,
                    Stand::AtEdge => Verdict::AtEdge,
                    Stand::NotKnown => Verdict::NotKnown,
                    Stand::Beyond => Verdict::BeyondMeasured,
                },
                limit: seen_limit(lever, &marks, stand)
                    .filter(|limit| limit.range != lever.range()),
                source,
                known_for_size,
            },
        }
    }

    /// The same of all that a proposal changes together, the worst of it. A jump that is beyond what
    /// has been seen, in whatever respect, is within nobody's reach.
    pub(super) fn judge_all(
        &self,
        changed: &[Lever],
        goal: &Goal<'_>,
        then: &Scenario,
        jump: &Jump,
    ) -> Judgement {
        let all = (!changed.is_empty()).then(|| beyond(goal, then, jump));
        let worst = all
            .flatten()
            .into_iter()
            .chain(
                changed
                    .iter()
                    .map(|&lever| self.judge(lever, goal, then, jump)),
            )
            .reduce(|worst, next| {
                if next.verdict > worst.verdict {
                    next
                } else {
                    worst
                }
            })
            .unwrap_or(Judgement::ALREADY);
        if worst.verdict == Verdict::WithinMeasured {
            // The lever's value has been seen; what comes of it may have been hardly.
            return at_edge(goal, then, jump).unwrap_or(worst);
        }
        worst
    }
}

/// What is to be said of a jump that a change brings to the edge of what has been measured, or farther
/// along it; none where it does not.
fn at_edge(goal: &Goal<'_>, then: &Scenario, jump: &Jump) -> Option<Judgement> {
    let before = goal.scenario.at_edge_of_measured(goal.now);
    let at_edge = then.at_edge_of_measured(jump).into_iter();
    let mut worse = at_edge.filter(|one| one.is_worse_than(&before));
    worse.next().map(|respect| Judgement {
        verdict: Verdict::AtEdge,
        limit: None,
        source: respect.source,
        known_for_size: true,
    })
}

/// What is to be said of a jump that is beyond what has been seen; none where it is not. First what the
/// change has made so, or worse.
fn beyond(goal: &Goal<'_>, then: &Scenario, jump: &Jump) -> Option<Judgement> {
    let before = goal.scenario.beyond_seen(goal.now);
    let beyond = then.beyond_seen(jump);
    let worse = beyond.iter().find(|one| one.is_worse_than(&before));
    let respect = worse.or_else(|| beyond.first())?;
    let lever = respect.of.parameter().and_then(Lever::of);
    let limit = lever.and_then(|lever| seen_limit(lever, &marks(lever, then, jump), Stand::Beyond));
    Some(Judgement {
        verdict: Verdict::BeyondMeasured,
        limit,
        source: respect.source,
        known_for_size: true,
    })
}

/// What has been seen of a lever, as a limit.
fn seen_limit(lever: Lever, marks: &Marks, stand: Stand) -> Option<Limit> {
    let parameter = lever.parameter();
    let range = match (marks.seen, marks.beyond, stand) {
        (Some(seen), _, _) => seen,
        (None, Some(beyond), Stand::Beyond) => [parameter.least(), beyond],
        _ => return None,
    };
    Some(Limit {
        parameter,
        range,
        of: LimitOf::Seen,
    })
}

fn within([least, most]: [f64; 2], value: f64) -> bool {
    (least..=most).contains(&value)
}

/// The marks on a lever in a flown jump.
pub fn marks(lever: Lever, scenario: &Scenario, jump: &Jump) -> Marks {
    scenario
        .marks(lever.parameter(), jump)
        .expect("every lever has marks")
}
