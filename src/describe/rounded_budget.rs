//! The budget as it is shown: two decimals that add up as they stand.

use crate::turns::hundredths;
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
    pub fn new(budget: &Budget) -> Self {
        let exact: [f64; 5] = std::array::from_fn(|i| match i {
            0 => budget.ideal_turns,
            _ => -budget.losses[i - 1],
        });
        let mut shown = exact.map(hundredths);
        let ice = hundredths(budget.pre_rotation_turns);
        let turns = hundredths(budget.turns);
        let named = Cause::ORDER
            .iter()
            .position(|&cause| Some(cause) == budget.largest)
            .map(|i| i + 1);
        let mut off = turns - ice - shown.iter().sum::<i64>();
        while off != 0 {
            let way = off.signum();
            let rounded = |i: usize| way as f64 * (100.0 * exact[i] - shown[i] as f64);
            let most = (0..exact.len())
                .filter(|&i| i == 0 || (Some(i) != named && shown[i] != 0))
                .max_by(|&a, &b| rounded(a).total_cmp(&rounded(b)))
                .unwrap_or_default();
            shown[most] += way;
            off -= way;
        }
        Self {
            ideal: shown[0],
            losses: std::array::from_fn(|i| -shown[i + 1]),
            ice,
            turns,
        }
    }
}
