//! The budget as it is shown: two decimals that add up as they stand.

use crate::rounding::adding_up;
use crate::turns::{hundredths, hundredths_of};
use turns_aloft_analysis::budget::{Budget, Cause};

/// Hundredths of a turn. The ideal less the losses and with what was turned on the ice are the
/// turns in all, as shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Shown {
    pub ideal: i64,
    /// In the order of [`Cause::ORDER`]; negative where turns were won.
    pub losses: [i64; 4],
    pub ice: i64,
    pub turns: i64,
}

impl Shown {
    /// Each part is rounded; what the sum then is off by goes to the parts that were rounded most
    /// that way, a hundredth each. What is told elsewhere stays as rounded there: the turns in all,
    /// those on the ice, and the loss that the sentence names. What shows as nothing stays nothing.
    /// `owed` are the turns that the jump's name asks for.
    pub fn new(budget: &Budget, owed: Option<f64>) -> Self {
        let exact: [f64; 5] = std::array::from_fn(|i| match i {
            0 => 100.0 * budget.ideal_turns,
            _ => -100.0 * budget.losses[i - 1],
        });
        let ice = hundredths(budget.pre_rotation_turns);
        let turns = hundredths_of(budget.turns, owed);
        let named = Cause::ORDER
            .iter()
            .position(|&cause| Some(cause) == budget.largest)
            .map(|i| i + 1);
        let shown = adding_up(&exact, turns - ice, |i, shown| {
            i == 0 || (Some(i) != named && shown != 0)
        });
        Self {
            ideal: shown[0],
            losses: std::array::from_fn(|i| -shown[i + 1]),
            ice,
            turns,
        }
    }
}
