//! The range of the turns in words.

use crate::rounding::{last_decimals_text, shown_turns};
use crate::unit::{TURNS, UnitText};
use turns_aloft_analysis::uncertainty::Range;
use turns_aloft_words::say;

/// Both ends with so many decimals, beside the turns owed.
fn ends(range: &Range, owed: Option<f64>, decimals: usize) -> [String; 2] {
    [range.low, range.high]
        .map(|turns| last_decimals_text(shown_turns(turns, owed, decimals), decimals))
}

/// The turns as a range, beside those owed: "3.42 to 3.71".
pub fn range_text(range: &Range, owed: Option<f64>) -> String {
    let [low, high] = ends(range, owed, 2);
    say!("from-to", from = low, to = high)
}

/// The turns as a range for large figures: "3.4–3.7", with more decimals where one says nothing.
pub fn range_figures(range: &Range, owed: Option<f64>) -> String {
    let [low, high] = ends(range, owed, 1);
    if low != high {
        return format!("{low}–{high}");
    }
    let [low, high] = ends(range, owed, 2);
    if low == high {
        low
    } else {
        format!("{low}–{high}")
    }
}

/// A change of the turns to either side.
pub fn change_text(change: f64) -> String {
    say!("range-change", turns = TURNS.number(change.abs()))
}
