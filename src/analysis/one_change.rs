//! One change against a loss, flown: what it would have been worth.
//!
//! Unlike the budget's own flights this is the whole jump as it would be, ice included: who opens
//! later or tucks tighter also lands at another moment.

use serde::Serialize;

use super::budget::Cause;
use crate::say;
use crate::scenario::Scenario;
use crate::scenario::fly::Jump;
use crate::scenario::keys;
use crate::words::{decimal, text};

/// An input as it is, as it might have been, and what that is worth.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct OneChange {
    /// Its key in the scenario file, SI units in the name.
    pub key: &'static str,
    pub from: f64,
    pub to: f64,
    /// Change of the turns in all.
    pub turns_change: f64,
}

/// Steps that are easily told and that training might bring, our choice: three pictures of a
/// 60-a-second video, and a tenth of the way in.
const TIME_STEP_S: f64 = 0.05;
const TUCK_STEP: f64 = 0.1;

/// Smaller changes (s, rad, share) are not told of: the sentence would name the same number twice.
const LEAST_CHANGE: f64 = 0.005;

impl OneChange {
    /// Of the single changes that go against a cause the one that wins most turns, or loses fewest;
    /// none where every input is already at its best.
    pub fn best(scenario: &Scenario, jump: &Jump, cause: Cause) -> Option<Self> {
        let s = scenario;
        let candidates = match cause {
            Cause::Closing => vec![
                ("close_time_s", s.close_time_s - TIME_STEP_S),
                ("close_delay_s", s.close_delay_s - TIME_STEP_S),
                ("arm_lag_s", s.arm_lag_s - TIME_STEP_S),
            ],
            Cause::Tightness => vec![
                ("arm_tuck", s.arm_tuck + TUCK_STEP),
                ("leg_tuck", s.leg_tuck + TUCK_STEP),
            ],
            Cause::Opening => vec![("open_lead_s", s.open_lead_s - TIME_STEP_S)],
            Cause::Tilt => vec![("lean_rad", 0.0), ("arm_asymmetry", 0.0)],
        };
        candidates
            .into_iter()
            .filter_map(|(key, to)| Self::flown(scenario, jump, key, to))
            .max_by(|one, other| one.turns_change.total_cmp(&other.turns_change))
    }

    /// One input changed as far as its range allows, the rest as it is; none where that is nothing.
    fn flown(scenario: &Scenario, jump: &Jump, key: &str, to: f64) -> Option<Self> {
        let key = keys::key(key)?;
        let from = (key.get)(scenario);
        let mut changed = scenario.clone();
        let to = key.hold(&mut changed, to).unwrap_or(to);
        if (to - from).abs() < LEAST_CHANGE {
            return None;
        }
        Some(Self {
            key: key.key,
            from,
            to,
            turns_change: changed.fly_after(Some(jump)).turns - jump.turns,
        })
    }

    /// How it was, and what the change would have done to the whole jump; stands behind a colon.
    pub fn sentence(&self) -> String {
        let [from, to] = match self.key {
            "arm_tuck" | "leg_tuck" | "arm_asymmetry" => {
                [self.from, self.to].map(|share| decimal(100.0 * share, 0))
            }
            "lean_rad" => [self.from, self.to].map(|lean| decimal(lean.abs().to_degrees(), 1)),
            _ => [self.from, self.to].map(|time_s| decimal(time_s, 2)),
        };
        let turns = more_or_fewer(self.turns_change);
        match self.key {
            "close_time_s" => say!("why-close-time", from = from, to = to, turns = turns),
            "close_delay_s" => say!("why-close-delay", from = from, to = to, turns = turns),
            "arm_lag_s" => say!("why-arm-lag", from = from, to = to, turns = turns),
            "arm_tuck" => say!("why-arm-tuck", from = from, to = to, turns = turns),
            "leg_tuck" => say!("why-leg-tuck", from = from, to = to, turns = turns),
            "open_lead_s" => say!("why-open-lead", from = from, to = to, turns = turns),
            "lean_rad" => say!("why-lean", from = from, turns = turns),
            _ => say!("why-arm-asymmetry", from = from, turns = turns),
        }
    }
}

fn more_or_fewer(turns_change: f64) -> String {
    let turns = decimal(turns_change.abs(), 2);
    if turns == decimal(0.0, 2) {
        text("why-as-many-turns").to_owned()
    } else if turns_change > 0.0 {
        say!("why-turns-more", turns = turns)
    } else {
        say!("why-turns-fewer", turns = turns)
    }
}
