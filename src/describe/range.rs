//! The range of the turns in words.

use crate::unit::{TURNS, UnitText};
use turns_aloft_analysis::uncertainty::Range;
use turns_aloft_words::{decimal, say};

/// The turns as a range: "3.42 to 3.71".
pub fn range_text(range: &Range) -> String {
    say!(
        "from-to",
        from = TURNS.number(range.low),
        to = TURNS.number(range.high)
    )
}

/// The turns as a range for large figures: "3.4–3.7", with more decimals where one says nothing.
pub fn range_figures(range: &Range) -> String {
    let of = |decimals: usize| [range.low, range.high].map(|turns| decimal(turns, decimals));
    let [low, high] = of(1);
    if low != high {
        return format!("{low}–{high}");
    }
    let [low, high] = of(2);
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
