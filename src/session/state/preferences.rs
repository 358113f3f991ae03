//! How somebody likes the page, whatever the jump.

use crate::state::curves::ShownCurves;
use turns_aloft_scenario::units::Units;

#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(crate) struct Preferences {
    pub units: Units,
    pub curves: ShownCurves,
    /// What a newcomer is told has been put away.
    pub greeted: bool,
    /// The attempt to compare with stands beside the jumper, not in the same place.
    pub side_by_side: bool,
    /// Nothing is to move unasked. The system's own setting, so no visit keeps it.
    pub still: bool,
}
