//! What has to stand beside a proposal that can hurt somebody.

use turns_aloft_scenario::Scenario;

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Caution {
    NoSafeNumber,
    /// The mass tables describe adults.
    Adults,
    /// Hand masses are an experiment.
    Hands,
    /// From the trade: common practice, no source.
    Later,
    /// Whom to ask.
    Ask,
}

/// Those of more in the hands alone.
pub const OF_WEIGHTS: [Caution; 4] = [
    Caution::NoSafeNumber,
    Caution::Hands,
    Caution::Adults,
    Caution::Ask,
];

/// The cautions that a change of the jump calls for: more height, more in the hands, an opening
/// that begins earlier or later. Landing loads are in the readouts.
pub fn of(now: &Scenario, then: &Scenario) -> Vec<Caution> {
    let loads = then.jump_height_m > now.jump_height_m || then.open_lead_s > now.open_lead_s;
    let hands = then.hand_mass_kg > now.hand_mass_kg;
    let later = then.open_lead_s < now.open_lead_s;
    let mut cautions = Vec::new();
    if loads || hands {
        cautions.push(Caution::NoSafeNumber);
    }
    if hands {
        cautions.push(Caution::Hands);
    }
    if later {
        cautions.push(Caution::Later);
    }
    if loads || hands {
        cautions.push(Caution::Adults);
    }
    if loads || hands || later {
        cautions.push(Caution::Ask);
    }
    cautions
}
