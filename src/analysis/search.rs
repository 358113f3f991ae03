//! Roots and peaks of a curve of which every point is a flight.

use std::cell::RefCell;

use roots::{SimpleConvergency, find_root_brent};

/// Where a root is called found, in the curve's value and in its argument.
const TOLERANCE: f64 = 1e-8;
const TRIES: usize = 60;

/// Narrowings of a golden section: to a thousandth of the width it starts with.
const NARROWINGS: usize = 15;

/// The golden section's share, (sqrt 5 - 1) / 2.
const GOLDEN: f64 = 0.618_033_988_749_894_8;

/// Where a mark on a slider is good enough: in seconds or parts of a tuck, and in parts of the strength.
const ROUGH: f64 = 2e-3;
const ROUGH_TRIES: usize = 12;

/// A root between two ends of opposite sign, whose values are known, to what can be seen on a slider:
/// the false position, with the end that stays counted half (the Illinois method, Dowell & Jarratt
/// 1971).
pub fn roughly(
    (mut a, mut at_a): (f64, f64),
    (mut b, mut at_b): (f64, f64),
    curve: impl Fn(f64) -> f64,
) -> Option<f64> {
    for _ in 0..ROUGH_TRIES {
        let x = (a * at_b - b * at_a) / (at_b - at_a);
        let y = curve(x);
        if !y.is_finite() {
            return None;
        }
        if y.abs() < ROUGH || (b - a).abs() < ROUGH {
            return Some(x);
        }
        if (y < 0.0) == (at_b < 0.0) {
            at_a *= 0.5;
        } else {
            (a, at_a) = (b, at_b);
        }
        (b, at_b) = (x, y);
    }
    Some(b)
}

/// The point nearest to a root between two ends of opposite sign, and the value there: at a step
/// in the curve, which has no root, it is not small.
pub fn crossing(from: f64, to: f64, curve: impl Fn(f64) -> f64) -> Option<(f64, f64)> {
    // The method asks for its ends again and again.
    let known: RefCell<Vec<(f64, f64)>> = RefCell::default();
    let remembered = |x: f64| {
        let found = known
            .borrow()
            .iter()
            .rev()
            .find(|&&(at, _)| at == x)
            .copied();
        found.map_or_else(
            || {
                let y = curve(x);
                known.borrow_mut().push((x, y));
                y
            },
            |(_, y)| y,
        )
    };
    let mut convergency = SimpleConvergency {
        eps: TOLERANCE,
        max_iter: TRIES,
    };
    // What it returns need not be the best of the points it asked for.
    let _ = find_root_brent(from, to, remembered, &mut convergency);
    known
        .into_inner()
        .into_iter()
        .min_by(|a, b| a.1.abs().total_cmp(&b.1.abs()))
}

/// The highest point found between two ends around a peak.
pub fn peak(from: f64, to: f64, curve: impl Fn(f64) -> f64) -> (f64, f64) {
    let (mut low, mut high) = (from, to);
    let inner = |low: f64, high: f64, share: f64| {
        let x = low + share * (high - low);
        (x, curve(x))
    };
    let mut left = inner(low, high, 1.0 - GOLDEN);
    let mut right = inner(low, high, GOLDEN);
    for _ in 0..NARROWINGS {
        if left.1 >= right.1 {
            (high, right) = (right.0, left);
            left = inner(low, high, 1.0 - GOLDEN);
        } else {
            (low, left) = (left.0, right);
            right = inner(low, high, GOLDEN);
        }
    }
    if left.1 >= right.1 { left } else { right }
}
