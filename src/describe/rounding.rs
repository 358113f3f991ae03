//! Rounded numbers that stand together agree: parts add up, a difference is that of the numbers shown, and
//! no rounding takes a number across a limit that is told beside it.
//!
//! Each number is rounded to the nearest first. Where that would contradict what stands beside it:
//! - degrees missing stay on their side of every limit of the rule: 74.7 are 74, since 75 would be called;
//! - turns are those owed only where no degree is missing or too many: 2.998 of 3 are 2.99, never 3.00;
//! - parts of a whole give way where they were rounded most (largest remainder);
//! - a change is the difference of the two values as shown;
//! - a value beyond a limit has as many decimals as it takes to be shown beyond it.

use crate::unit::UnitText;
use turns_aloft_scenario::call::Call;
use turns_aloft_scenario::units::Unit;
use turns_aloft_words::with_decimal_sign;

/// A number as shown with so many decimals, as a whole number of the last of them: 1.53 is 153.
pub fn in_last_decimals(value: f64, decimals: usize) -> i64 {
    let text = format!("{value:.decimals$}").replace('.', "");
    text.parse().unwrap_or_default()
}

/// Such a number as text, with a minus sign where there is less than nothing.
pub fn last_decimals_text(shown: i64, decimals: usize) -> String {
    let sign = if shown < 0 { "−" } else { "" };
    let digits = format!("{:0width$}", shown.unsigned_abs(), width = decimals + 1);
    let (whole, part) = digits.split_at(digits.len() - decimals);
    let point = if decimals > 0 { "." } else { "" };
    with_decimal_sign(format!("{sign}{whole}{point}{part}"))
}

/// Missing rotation as shown, whole degrees; negative where turned further.
pub fn shown_shortfall_deg(shortfall_deg: f64) -> i64 {
    let call = Call::of(shortfall_deg);
    let near = [f64::round, f64::floor, f64::ceil].map(|to_whole| to_whole(shortfall_deg));
    let shown = near.into_iter().find(|&shown| Call::of(shown) == call);
    shown.unwrap_or(near[0]) as i64
}

/// Turns in all as shown beside those owed, where any are, in the last of so many decimals.
pub fn shown_turns(turns: f64, owed: Option<f64>, decimals: usize) -> i64 {
    let nearest = in_last_decimals(turns, decimals);
    let Some(owed) = owed else {
        return nearest;
    };
    let owed_shown = in_last_decimals(owed, decimals);
    match shown_shortfall_deg(360.0 * (owed - turns)) {
        0 => owed_shown,
        1.. => nearest.min(owed_shown - 1),
        _ => nearest.max(owed_shown + 1),
    }
}

/// Whole numbers near the exact ones that add up to `whole`. What the nearest ones are off by goes to those
/// that were rounded most that way, one each; to the first where none `may_move`.
pub fn adding_up(exact: &[f64], whole: i64, may_move: impl Fn(usize, i64) -> bool) -> Vec<i64> {
    let mut shown: Vec<i64> = exact
        .iter()
        .map(|&part| in_last_decimals(part, 0))
        .collect();
    let mut off = whole - shown.iter().sum::<i64>();
    while off != 0 && !shown.is_empty() {
        let way = off.signum();
        let rounded = |i: usize| way as f64 * (exact[i] - shown[i] as f64);
        let most = (0..exact.len())
            .filter(|&i| may_move(i, shown[i]))
            .max_by(|&a, &b| rounded(a).total_cmp(&rounded(b)))
            .unwrap_or_default();
        shown[most] += way;
        off -= way;
    }
    shown
}

/// From one value to another, as shown.
#[derive(Debug, Clone, PartialEq)]
pub struct FromTo {
    /// With as many decimals as both have.
    pub unit: Unit,
    /// The number alone.
    pub from: String,
    /// With its unit.
    pub to: String,
    /// With its sign and unit: what `to` is more than `from`, both as shown.
    pub change: String,
}

/// Two values alike, with as many decimals as it takes to show one that was typed, and to tell them apart.
pub fn from_to(unit: &Unit, [from_si, to_si]: [f64; 2]) -> FromTo {
    let usual = unit.fine_enough_for(&[from_si, to_si]);
    let shown =
        |unit: &Unit| [from_si, to_si].map(|si| in_last_decimals(unit.from_si(si), unit.decimals));
    let tells_apart = |unit: &Unit| {
        let [from, to] = shown(unit);
        from != to || from_si == to_si
    };
    let unit = (usual.decimals..=MOST_DECIMALS)
        .map(|decimals| Unit { decimals, ..usual })
        .find(tells_apart)
        .unwrap_or(usual);
    let [from, to] = shown(&unit);
    let change = to - from;
    let sign = if change < 0 { "−" } else { "+" };
    let size = unit.to_si(change.unsigned_abs() as f64 / 10.0_f64.powi(unit.decimals as i32));
    FromTo {
        unit,
        from: unit.number(from_si),
        to: unit.text(to_si),
        change: format!("{sign}{}", unit.text(size)),
    }
}

/// Decimals that two values are told apart by at most.
const MOST_DECIMALS: usize = 6;

/// A value that is beyond a limit, and the limit, with as many decimals as it takes to show that.
pub fn beyond_and_limit(unit: &Unit, [value_si, limit_si]: [f64; 2]) -> [String; 2] {
    let usual = unit.fine_enough_for(&[limit_si]);
    let is_shown = |unit: &Unit| {
        let [value, limit] =
            [value_si, limit_si].map(|si| in_last_decimals(unit.from_si(si), unit.decimals));
        value > limit
    };
    let unit = (usual.decimals..=MOST_DECIMALS)
        .map(|decimals| Unit { decimals, ..usual })
        .find(is_shown)
        .unwrap_or(usual);
    [value_si, limit_si].map(|si| unit.text(si))
}
