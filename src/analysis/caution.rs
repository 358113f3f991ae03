//! What has to stand beside a proposal that can hurt somebody.

use crate::scenario::Scenario;

pub const NO_SAFE_NUMBER: &str =
    "No safe number of jumps is known, and most injuries in singles skating come from overuse.";
pub const ADULTS: &str = "The mass tables describe adults: for a child this is an estimate.";
pub const HANDS: &str = "Hand masses are a physics experiment or a supervised training aid; the sport's rules forbid props in competition.";
/// From the trade: common practice, no source.
pub const LATER: &str = "Opening later leaves less time to get ready for the landing and more turning to stop in it (common practice, no source); the landing load counts the fall alone.";
pub const ASK: &str = "How often, how high and whether with weights is for the coach, the rules of the sport and licensed medical practice to say.";

/// The cautions that a change of the jump calls for: more height, more in the hands, an opening
/// that begins earlier or later. Landing loads are in the readouts.
pub fn of(now: &Scenario, then: &Scenario) -> Vec<&'static str> {
    let loads = then.jump_height_m > now.jump_height_m || then.open_lead_s > now.open_lead_s;
    let hands = then.hand_mass_kg > now.hand_mass_kg;
    let later = then.open_lead_s < now.open_lead_s;
    let mut said = Vec::new();
    if loads || hands {
        said.push(NO_SAFE_NUMBER);
    }
    if hands {
        said.push(HANDS);
    }
    if later {
        said.push(LATER);
    }
    if loads || hands {
        said.push(ADULTS);
    }
    if loads || hands || later {
        said.push(ASK);
    }
    said
}
