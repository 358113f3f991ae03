//! What has to stand beside a proposal that can hurt somebody.

use crate::scenario::Scenario;
use crate::words::Message;

pub const NO_SAFE_NUMBER: Message = Message("caution-no-safe-number");
pub const ADULTS: Message = Message("caution-adults");
pub const HANDS: Message = Message("caution-hands");
/// From the trade: common practice, no source.
pub const LATER: Message = Message("caution-later");
pub const ASK: Message = Message("caution-ask");

/// Those of more in the hands alone.
pub const OF_WEIGHTS: [Message; 4] = [NO_SAFE_NUMBER, HANDS, ADULTS, ASK];

/// The cautions that a change of the jump calls for: more height, more in the hands, an opening
/// that begins earlier or later. Landing loads are in the readouts.
pub fn of(now: &Scenario, then: &Scenario) -> Vec<Message> {
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
