//! What matters most: the turns that a small, comparable step of each lever gives.

use serde::Serialize;

use crate::caution::{self, Caution};
use crate::lever::Lever;
use turns_aloft_physics::order::by_number;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::beyond::Respect;
use turns_aloft_scenario::fly::Jump;

/// Which step was flown.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Flown {
    /// The step itself.
    Forward,
    /// The step leaves the range: what going the same step back would cost.
    Back,
    /// Neither is possible.
    Unavailable,
    /// It has no part in a jump that was led by hand.
    NoPart,
}

/// What a lever's step gives.
#[derive(Debug, Clone, PartialEq)]
pub struct Gain {
    pub lever: Lever,
    pub flown: Flown,
    /// The step as flown, in the lever's own unit.
    pub change: Option<f64>,
    /// Turns gained by the step; of one flown back, what was lost.
    pub turns_gained: Option<f64>,
    /// Estimate after the step as flown, lowest and highest, in body weights.
    pub landing_load_bw: Option<[f64; 2]>,
    /// In which respects the jump after the step as flown is beyond what has been seen.
    pub beyond_seen: Vec<Respect>,
    pub cautions: Vec<Caution>,
}

/// Every lever's gain, the largest first, what is unavailable last. `now` is the scenario, flown.
pub fn ranked(scenario: &Scenario, now: &Jump) -> Vec<Gain> {
    let gains = Lever::ALL.map(|lever| gain(lever, scenario, now)).into();
    by_number(gains, |gain: &Gain| {
        -gain.turns_gained.unwrap_or(f64::NEG_INFINITY)
    })
}

/// The gain of one lever.
pub fn gain(lever: Lever, scenario: &Scenario, now: &Jump) -> Gain {
    let nothing = Gain {
        lever,
        flown: Flown::Unavailable,
        change: None,
        turns_gained: None,
        landing_load_bw: None,
        beyond_seen: Vec::new(),
        cautions: Vec::new(),
    };
    let (flown, change, sign) = match lever.steps(scenario) {
        [Some(forward), _] => (Flown::Forward, forward, 1.0),
        [None, Some(back)] => (Flown::Back, back, -1.0),
        [None, None] if !scenario.has_part(lever.parameter()) => {
            return Gain {
                flown: Flown::NoPart,
                ..nothing
            };
        }
        [None, None] => return nothing,
    };
    let then = lever.at(scenario, lever.value(scenario) + change);
    let jump = then.fly_after(Some(now));
    let gained = if then.turns_like(scenario) {
        0.0
    } else {
        sign * (jump.turns - now.turns)
    };
    Gain {
        flown,
        change: Some(change),
        turns_gained: Some(gained),
        landing_load_bw: Some(jump.readout.landing_load_bw),
        beyond_seen: then.beyond_seen(&jump),
        cautions: caution::of(scenario, &then),
        ..nothing
    }
}
