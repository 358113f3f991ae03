//! How far a lever goes: this jumper's limits, what has been seen of people, and beyond.

use serde::Serialize;

use super::lever::{COUNT, LEVERS, place, unknown};
use crate::scenario::Scenario;
use crate::scenario::fly::Jump;
use crate::scenario::reach::Reach;

/// What there is to say of a proposed value, the mildest first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// The jump has the turns as it is.
    AlreadyReached,
    /// Within this jumper's own limits; where none are given, those of what has been seen.
    WithinReach,
    /// Outside this jumper's own limits, but people have been seen there.
    WithinMeasured,
    /// Nobody has been seen there.
    BeyondMeasured,
    /// No admissible value does it.
    CannotAlone,
}

/// A verdict, and the limit it rests on.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Judgement {
    pub verdict: Verdict,
    /// None where the jump has the turns as it is.
    pub limit: Option<Limit>,
    /// Where the limit comes from.
    pub source: &'static str,
}

#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Limit {
    /// The number that is limited: a body that closes more also turns faster.
    pub key: &'static str,
    /// From there to there, in the key's own unit.
    pub range: [f64; 2],
    /// Given for this jumper; otherwise what has been seen of people at all.
    pub own: bool,
}

const OWN: &str = "This jumper's own limits, as given.";

impl Judgement {
    pub const ALREADY: Self = Self {
        verdict: Verdict::AlreadyReached,
        limit: None,
        source: "The jump has these turns as it is.",
    };

    pub(super) fn cannot(place: usize) -> Self {
        let row = LEVERS[place].row();
        Self {
            verdict: Verdict::CannotAlone,
            limit: Some(Limit {
                key: row.key,
                range: [row.least, row.most],
                own: false,
            }),
            source: "Flown over the whole range that can be set; the most turns in it are given.",
        }
    }
}

/// This jumper's own limits, where they are given, each in its key's own unit.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Limits([Option<[f64; 2]>; COUNT]);

impl Limits {
    pub fn own(&self, place: usize) -> Option<[f64; 2]> {
        self.0[place]
    }

    /// Sets a lever's own limits, inside its admissible range.
    pub fn set(&mut self, key: &str, own: [f64; 2]) -> Result<(), String> {
        let i = place(key).ok_or_else(|| unknown(key))?;
        let row = LEVERS[i].row();
        let [least, most] = own;
        if !(row.least <= least && least <= most && most <= row.most) {
            return Err(format!(
                "limits of {key} = {least}:{most} are out of range: the lower, then the higher, from {} to {}{}",
                row.least,
                row.most,
                row.kind.si()
            ));
        }
        self.0[i] = Some(own);
        Ok(())
    }

    /// What is to be said of a lever's value in a jump flown with it.
    pub fn judge(&self, place: usize, then: &Scenario, jump: &Jump) -> Judgement {
        let key = LEVERS[place].key;
        let value = LEVERS[place].value(then);
        let own = self.0[place];
        if let Some(range) = own.filter(|&range| within(range, value)) {
            return Judgement {
                verdict: Verdict::WithinReach,
                limit: Some(Limit {
                    key,
                    range,
                    own: true,
                }),
                source: OWN,
            };
        }
        let reach = marks(place, then, jump);
        // The marks of the rate are those of the rate flown: kept by heavier hands, it is another.
        let value = if key == RATE {
            jump.readout.takeoff_rate_rad_s
        } else {
            value
        };
        let verdict = match (within(reach.seen, value), own) {
            (true, None) => Verdict::WithinReach,
            (true, Some(_)) => Verdict::WithinMeasured,
            (false, _) => Verdict::BeyondMeasured,
        };
        Judgement {
            verdict,
            limit: Some(Limit {
                key,
                range: reach.seen,
                own: false,
            }),
            source: reach.source,
        }
    }

    /// The same of all that a proposal changes together, the worst of it. Where the body turns faster
    /// at its peak than before, that has its mark too: the one of the take-off rate.
    pub fn judge_all(
        &self,
        changed: &[usize],
        now: &Jump,
        then: &Scenario,
        jump: &Jump,
    ) -> Judgement {
        let faster = jump.readout.peak_rate_rad_s > now.readout.peak_rate_rad_s;
        let peak = place(RATE)
            .filter(|rate| faster && !changed.contains(rate))
            .map(|rate| Self::default().judge(rate, then, jump))
            .filter(|judged| judged.verdict == Verdict::BeyondMeasured);
        changed
            .iter()
            .map(|&i| self.judge(i, then, jump))
            .chain(peak)
            .reduce(|worst, next| {
                if next.verdict > worst.verdict {
                    next
                } else {
                    worst
                }
            })
            .unwrap_or(Judgement::ALREADY)
    }
}

pub(super) const RATE: &str = "takeoff_rate_rad_s";

fn within([least, most]: [f64; 2], value: f64) -> bool {
    (least..=most).contains(&value)
}

/// The marks on a lever in a flown jump.
pub fn marks(place: usize, scenario: &Scenario, jump: &Jump) -> Reach {
    scenario
        .reach(LEVERS[place].row(), jump)
        .expect("every lever has marks")
}
