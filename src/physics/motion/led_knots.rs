//! What a hand did, frame by frame, as a few knots.

use crate::motion::led_tucks::{Knot, Limb, shares_at};

/// A stretch of time in which arms and legs are led to the same.
#[derive(Debug, Clone, Copy)]
struct Stretch {
    start_s: f64,
    time_s: f64,
    arms: f64,
    legs: f64,
}

impl Stretch {
    /// Both as one, led to their mean.
    fn with(&self, next: &Self) -> Self {
        let time_s = self.time_s + next.time_s;
        let mean = |one: f64, other: f64| {
            if time_s > 0.0 {
                (one * self.time_s + other * next.time_s) / time_s
            } else {
                other
            }
        };
        Self {
            start_s: self.start_s,
            time_s,
            arms: mean(self.arms, next.arms),
            legs: mean(self.legs, next.legs),
        }
    }

    /// What that loses: by how much the sum of the squares off the means grows (Ward 1963).
    fn lost_with(&self, next: &Self) -> f64 {
        let time_s = self.time_s + next.time_s;
        if time_s == 0.0 {
            return 0.0;
        }
        let (arms, legs) = (next.arms - self.arms, next.legs - self.legs);
        self.time_s * next.time_s / time_s * (arms * arms + legs * legs)
    }
}

/// Knots are kept in hundredths of a millisecond and thousandths of the way.
const PER_S: f64 = 1e5;
const PER_WAY: f64 = 1e3;

/// Up to so many knots that lead like these until `end_s`: neighbours that differ least become one.
pub fn fewer(knots: &[Knot], end_s: f64, most: usize) -> Vec<Knot> {
    let ends_s = knots.iter().skip(1).map(|next| next.time_s).chain([end_s]);
    let mut stretches: Vec<Stretch> = knots
        .iter()
        .zip(ends_s)
        .map(|(knot, end_s)| Stretch {
            start_s: knot.time_s,
            time_s: (end_s - knot.time_s).max(0.0),
            arms: knot.arms,
            legs: knot.legs,
        })
        .collect();
    while stretches.len() > most.max(1) {
        let lost = |i: usize| stretches[i].lost_with(&stretches[i + 1]);
        let least = (0..stretches.len() - 1)
            .reduce(|least, i| if lost(i) < lost(least) { i } else { least });
        let Some(i) = least else { break };
        stretches[i] = stretches[i].with(&stretches[i + 1]);
        stretches.remove(i + 1);
    }
    let mut few: Vec<Knot> = Vec::with_capacity(stretches.len());
    for stretch in stretches {
        let knot = Knot {
            time_s: (stretch.start_s * PER_S).round() / PER_S,
            arms: (stretch.arms * PER_WAY).round() / PER_WAY,
            legs: (stretch.legs * PER_WAY).round() / PER_WAY,
        };
        if few.last().is_some_and(|last| last.time_s >= knot.time_s) {
            few.pop();
        }
        let before = few.last().copied().unwrap_or(Knot::OUT);
        if !knot.leads_like(&before) {
            few.push(knot);
        }
    }
    if few.is_empty() {
        few.push(Knot::OUT);
    }
    few
}

/// How far off the way may be, as a share of all of it, and how often that is looked at, s.
const WAY_OFF: f64 = 0.1;
const LOOK_S: f64 = 0.01;

/// Whether a body goes about the same way with both until `end_s`.
pub fn follow_alike(one: &[Knot], other: &[Knot], end_s: f64, movement_s: f64) -> bool {
    let looks = (end_s / LOOK_S) as usize;
    (1..=looks).all(|i| {
        let t_s = LOOK_S * i as f64;
        Limb::ALL.into_iter().all(|limb| {
            let [[ways, ..], [others, ..]] =
                [one, other].map(|knots| shares_at(knots, limb, t_s, movement_s));
            (0..2).all(|i| (ways[i] - others[i]).abs() < WAY_OFF)
        })
    })
}
