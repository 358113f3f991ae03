//! What a picture shows.

use turns_aloft_analysis::turn_try::TurnTry;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;
use turns_aloft_scenario::units::Units;

/// A jump, and how its numbers are to be written.
#[derive(Debug, Clone, Copy)]
pub struct Picture<'a> {
    pub scenario: &'a Scenario,
    /// The scenario, flown.
    pub jump: &'a Jump,
    pub units: &'a Units,
    /// What comes of the jump as a try at so many turns, where it is one.
    pub tried: Option<&'a TurnTry>,
    /// The page's address without a fragment; without one there is no QR code.
    pub address: Option<&'a str>,
}
