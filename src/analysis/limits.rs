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

const OWN: &str = "This jumper's own limits, as given.";

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

    /// What is to be said of a lever's value in a jump flown with it, and by which source.
    pub fn judge(&self, place: usize, then: &Scenario, jump: &Jump) -> (Verdict, &'static str) {
        let value = LEVERS[place].value(then);
        if self.0[place].is_some_and(|own| within(own, value)) {
            return (Verdict::WithinReach, OWN);
        }
        let reach = marks(place, then, jump);
        // The marks of the rate are those of the rate flown: kept by heavier hands, it is another.
        let is_rate = LEVERS[place].key == RATE;
        let value = if is_rate {
            jump.readout.takeoff_rate_rad_s
        } else {
            value
        };
        let verdict = match (within(reach.seen, value), self.0[place]) {
            (true, None) => Verdict::WithinReach,
            (true, Some(_)) => Verdict::WithinMeasured,
            (false, _) => Verdict::BeyondMeasured,
        };
        (verdict, reach.source)
    }

    /// The same of all that a proposal changes together, the worst of it. A body that closes more
    /// also turns faster, and that has its own mark.
    pub fn judge_all(
        &self,
        changed: &[usize],
        now: &Jump,
        then: &Scenario,
        jump: &Jump,
    ) -> (Verdict, &'static str) {
        let faster = jump.readout.peak_rate_rad_s > now.readout.peak_rate_rad_s;
        let peak = place(RATE)
            .filter(|rate| faster && !changed.contains(rate))
            .map(|rate| marks(rate, then, jump))
            .filter(|reach| !within(reach.seen, jump.readout.takeoff_rate_rad_s))
            .map(|reach| (Verdict::BeyondMeasured, reach.source));
        changed
            .iter()
            .map(|&i| self.judge(i, then, jump))
            .chain(peak)
            .max_by_key(|(verdict, _)| *verdict)
            .unwrap_or((Verdict::AlreadyReached, REACHED))
    }
}

const RATE: &str = "takeoff_rate_rad_s";

pub const REACHED: &str = "The jump has these turns as it is.";

fn within([least, most]: [f64; 2], value: f64) -> bool {
    (least..=most).contains(&value)
}

/// The marks on a lever in a flown jump.
pub fn marks(place: usize, scenario: &Scenario, jump: &Jump) -> Reach {
    scenario
        .reach(LEVERS[place].row(), jump)
        .expect("every lever has marks")
}
