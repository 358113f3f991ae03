//! One change against a loss, flown: what it would have been worth.
//!
//! Unlike the budget's own flights this is the whole jump as it would be, ice included: who opens
//! later or tucks tighter also lands at another moment.

use serde::Serialize;

use turns_aloft_physics::order::by_number;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::parameter::{Cause, Parameter, Remedy, RemedyChange};

/// An input as it is, as it might have been, and what that is worth.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct OneChange {
    #[serde(rename = "key")]
    pub parameter: Parameter,
    pub from: f64,
    pub to: f64,
    /// Change of the turns in all.
    pub turns_change: f64,
}

/// Smaller changes (s, rad, share) are not told of: the sentence would name the same number twice.
const LEAST_CHANGE: f64 = 0.005;

impl OneChange {
    /// Of the single changes that go against a cause the one that wins most turns, or loses fewest;
    /// none where every input is already at its best.
    pub fn best(scenario: &Scenario, jump: &Jump, cause: Cause) -> Option<Self> {
        let remedies = Parameter::ALL
            .into_iter()
            .filter_map(|parameter| Some((parameter, parameter.row().remedy?)))
            .filter(|(parameter, remedy)| remedy.cause == cause && scenario.has_part(*parameter))
            .collect();
        by_number(remedies, |(_, remedy): &(_, Remedy)| f64::from(remedy.rank))
            .into_iter()
            .filter_map(|(parameter, remedy)| {
                let to = match remedy.change {
                    RemedyChange::By(by) => parameter.get(scenario) + by,
                    RemedyChange::To(to) => to,
                };
                Self::flown(scenario, jump, parameter, to)
            })
            .max_by(|one, other| one.turns_change.total_cmp(&other.turns_change))
    }

    /// One input changed as far as its range allows, the rest as it is; none where that is nothing.
    fn flown(scenario: &Scenario, jump: &Jump, parameter: Parameter, to: f64) -> Option<Self> {
        let from = parameter.get(scenario);
        let mut changed = scenario.clone();
        let to = parameter.hold(&mut changed, to).unwrap_or(to);
        if (to - from).abs() < LEAST_CHANGE {
            return None;
        }
        Some(Self {
            parameter,
            from,
            to,
            turns_change: changed.fly_after(Some(jump)).turns - jump.turns,
        })
    }
}
