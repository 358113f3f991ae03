//! The levers' steps in words.

use crate::input::step;
use crate::unit::UnitText;
use turns_aloft_analysis::lever::Lever;
use turns_aloft_scenario::parameter::{Kind, Step};
use turns_aloft_scenario::units::Units;

/// What one step of a lever is, in the user's units.
pub fn step_text(lever: Lever, units: &Units) -> String {
    let parameter = lever.parameter();
    let (kind, size) = match lever.row().step {
        Step::By(by) => (parameter.kind(), by.abs()),
        Step::HandsNearer(by_m) => (Kind::Length, by_m),
    };
    step(parameter, &units.of(kind).text(size))
}
