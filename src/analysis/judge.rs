//! What is to be said of a change: whether it is within the limits, and what has been seen of people.

use crate::lever::{Lever, Season};
use crate::limits::{Judgement, Limit, LimitOf, Limits, Verdict};
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::marks::Marks;
use turns_aloft_scenario::parameter::{Evidence, Movement};
use turns_aloft_scenario::seen::Stand;
use turns_aloft_scenario::source::Source;

const OWN: Source = Source::LimitOwn;
const SEASON: Source = Source::LimitSeason;
const SEASON_NOT_KNOWN: Source = Source::LimitSeasonNotKnown;

/// The jump as it is, and the limits that changes of it are held against.
#[derive(Debug, Clone, Copy)]
pub struct Judge<'a> {
    pub scenario: &'a Scenario,
    /// The scenario, flown.
    pub now: &'a Jump,
    pub limits: &'a Limits,
    pub season: &'a Season,
}

impl Judge<'_> {
    /// What is to be said of a lever's value in a jump flown with it.
    pub fn judge(&self, lever: Lever, then: &Scenario, jump: &Jump) -> Judgement {
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
            .limits
            .limit_of(lever, self.scenario, self.season)
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
    pub fn judge_all(&self, changed: &[Lever], then: &Scenario, jump: &Jump) -> Judgement {
        let all = (!changed.is_empty()).then(|| self.beyond(then, jump));
        let worst = all
            .flatten()
            .into_iter()
            .chain(changed.iter().map(|&lever| self.judge(lever, then, jump)))
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
            return self.at_edge(then, jump).unwrap_or(worst);
        }
        worst
    }

    /// What is to be said of a jump that a change brings to the edge of what has been measured, or farther
    /// along it; none where it does not.
    fn at_edge(&self, then: &Scenario, jump: &Jump) -> Option<Judgement> {
        let before = self.scenario.at_edge_of_measured(self.now);
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
    fn beyond(&self, then: &Scenario, jump: &Jump) -> Option<Judgement> {
        let before = self.scenario.beyond_seen(self.now);
        let beyond = then.beyond_seen(jump);
        let worse = beyond.iter().find(|one| one.is_worse_than(&before));
        let respect = worse.or_else(|| beyond.first())?;
        let lever = respect.of.parameter().and_then(Lever::of);
        let limit =
            lever.and_then(|lever| seen_limit(lever, &marks(lever, then, jump), Stand::Beyond));
        Some(Judgement {
            verdict: Verdict::BeyondMeasured,
            limit,
            source: respect.source,
            known_for_size: true,
        })
    }
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
