//! Where in a measured rate somebody only slows down, and the friction that follows from it.

use crate::calibrate::{CalibrationFault, Reading, both, torque_alone, viscous_alone};
use crate::friction::Friction;

/// Rates are taken as means over so long, s; our choice: who breathes and sways a little is no push.
const PIECE_S: f64 = 0.5;

/// The shortest stretch, s, and the least that it slows down by, a part of its first rate; our choices.
pub const SHORTEST_S: f64 = 3.0;
const LEAST_SLOWED: f64 = 0.1;

/// Slower than this, rad/s, is as good as stopped; our choice.
const LEAST_RAD_S: f64 = 0.2;

/// What a mean may be above the one before, a part of the fastest: sway. Our choice.
const SWAY: f64 = 0.01;

/// The beginning, the middle and the end of the longest stretch in which a rate, read at rising times, only gets
/// less; none where there is none. Readings come as the time, s, and the rate then, rad/s.
pub fn longest(readings: impl Iterator<Item = (f64, f64)>) -> Option<[Reading; 3]> {
    let means = means(readings);
    let fastest = means
        .iter()
        .fold(0.0, |most, it| f64::max(most, it.rate_rad_s));
    let mut longest: &[Reading] = &[];
    let mut from = 0;
    for to in 1..=means.len() {
        let goes_on = means.get(to).is_some_and(|next| {
            let last = means[to - 1];
            next.t_s - last.t_s < 2.0 * PIECE_S
                && last.rate_rad_s > LEAST_RAD_S
                && next.rate_rad_s > LEAST_RAD_S
                && next.rate_rad_s <= last.rate_rad_s + SWAY * fastest
        });
        if !goes_on {
            // The push may end within the first one.
            let stretch = &means[(from + 1).min(to)..to];
            if span_s(stretch) > span_s(longest) && is_slowed(stretch) {
                longest = stretch;
            }
            from = to;
        }
    }
    let [first, .., last] = *longest else {
        return None;
    };
    (span_s(longest) >= SHORTEST_S).then(|| [first, longest[longest.len() / 2], last])
}

/// The friction that slows this moment of inertia down like that: both parts, or one where the other would be less
/// than none.
pub fn friction(readings: &[Reading; 3], inertia_kg_m2: f64) -> Result<Friction, CalibrationFault> {
    let ends = [readings[0], readings[2]];
    match both(readings, inertia_kg_m2) {
        Err(CalibrationFault::HarderAtEnd) => torque_alone(&ends, inertia_kg_m2),
        Err(CalibrationFault::HarderAtBeginning) => viscous_alone(&ends, inertia_kg_m2),
        found => found,
    }
}

fn span_s(stretch: &[Reading]) -> f64 {
    match stretch {
        [first, .., last] => last.t_s - first.t_s,
        _ => 0.0,
    }
}

fn is_slowed(stretch: &[Reading]) -> bool {
    let [first, .., last] = stretch else {
        return false;
    };
    last.rate_rad_s < (1.0 - LEAST_SLOWED) * first.rate_rad_s
}

/// Of time and rate, piece by piece; pieces without a reading are left out.
fn means(readings: impl Iterator<Item = (f64, f64)>) -> Vec<Reading> {
    let mut means = Vec::new();
    let mut piece: Option<(f64, [f64; 3])> = None;
    let mean = |[count, t_s, rate_rad_s]: [f64; 3]| Reading {
        t_s: t_s / count,
        rate_rad_s: rate_rad_s / count,
    };
    for (t_s, rate_rad_s) in readings {
        match &mut piece {
            Some((from_s, [count, times_s, rates_rad_s])) if t_s < *from_s + PIECE_S => {
                *count += 1.0;
                *times_s += t_s;
                *rates_rad_s += rate_rad_s;
            }
            _ => {
                means.extend(piece.map(|(_, sums)| mean(sums)));
                piece = Some((t_s, [1.0, t_s, rate_rad_s]));
            }
        }
    }
    // The last one may be short.
    means
}
