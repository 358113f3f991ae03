//! What the rate was while the gyroscope was at its end: from the accelerometer, which goes on reading
//! w x (w x r), else a curve from one side to the other, of which nobody knows how high it went.

use glam::DVec3;

use crate::lever_arm::{LeverArm, LeverArms, angular_accelerations, of_lever_arm};
use crate::saturation::Ends;
use crate::signals::Signals;

/// Rates of a stretch of readings with those at the end filled in.
#[derive(Debug, Clone)]
pub struct Filled {
    pub rate_rad_s: Vec<DVec3>,
    /// Standard deviation of what was filled in; zero elsewhere. Errors are alike all along.
    pub sigma_rad_s: Vec<f64>,
    /// Readings that were at an end.
    pub at_end: usize,
    /// Those of them that the accelerometer tells.
    pub bridged: usize,
}

/// Nearer to the axis the accelerometer tells too little, m; our choice.
const NEAREST_M: f64 = 0.03;

/// So long before and after the readings at the end the lever arm is taken from, s, and from so many
/// readings at least. Our choice.
const BESIDE_S: f64 = 0.04;
const FEWEST: f64 = 4.0;

/// How far the lever arm moves in a flight as arms and legs come in, m; our estimate.
const MOVES_M: f64 = 0.02;

/// What a curve that was guessed has beyond the end is not known but for its being there; and the end
/// itself is as good as the sensor's scale. Our estimate.
const OF_END: f64 = 0.02;

/// Rounds of taking the angular acceleration from the rates that were filled in.
const ROUNDS: usize = 4;

/// Fills in the readings of a stretch.
pub fn fill(
    signals: &Signals,
    range: std::ops::Range<usize>,
    (rate_ends, acceleration_ends): (&Ends, &Ends),
) -> Filled {
    let t_s = &signals.t_s[range.clone()];
    let read = &signals.rate_rad_s[range.clone()];
    let mut filled = Filled {
        rate_rad_s: read.to_vec(),
        sigma_rad_s: vec![0.0; read.len()],
        at_end: 0,
        bridged: 0,
    };
    let reached: Vec<[bool; 3]> = read.iter().map(|rate| rate_ends.reached(*rate)).collect();
    let is_at_end: Vec<bool> = reached.iter().map(|axes| axes.contains(&true)).collect();
    filled.at_end = is_at_end.iter().filter(|&&is| is).count();
    if filled.at_end == 0 {
        return filled;
    }
    for axis in 0..3 {
        let values: Vec<f64> = read.iter().map(|rate| rate[axis]).collect();
        let guessed = guessed(t_s, &values, |i| reached[i][axis]);
        for (i, value) in guessed
            .into_iter()
            .enumerate()
            .filter(|(i, _)| reached[*i][axis])
        {
            filled.rate_rad_s[i][axis] = value;
            let beyond = value.abs() - values[i].abs();
            filled.sigma_rad_s[i] =
                libm::hypot(filled.sigma_rad_s[i], beyond + OF_END * values[i].abs());
        }
    }
    let ends = (rate_ends, acceleration_ends);
    let Some(arm) = lever_arm_beside(signals, &range, &is_at_end, ends) else {
        return filled;
    };
    let accelerations = &signals.acceleration_m_s2[range];
    let told: Vec<usize> = (0..read.len())
        .filter(|&i| is_at_end[i] && !acceleration_ends.is_reached(accelerations[i]))
        .collect();
    for _ in 0..ROUNDS {
        let changes = angular_accelerations(t_s, &filled.rate_rad_s);
        for &i in &told {
            let from = filled.rate_rad_s[i];
            filled.rate_rad_s[i] = explained(
                from,
                read[i],
                reached[i],
                changes[i],
                accelerations[i],
                arm.r_m,
            );
        }
    }
    for &i in &told {
        // The rate goes with 1 / sqrt r.
        let rate_rad_s = filled.rate_rad_s[i].length();
        filled.sigma_rad_s[i] = 0.5 * MOVES_M / arm.r_m.length() * rate_rad_s;
    }
    filled.bridged = told.len();
    filled
}

/// The lever arm just before the readings at the end and just after them: by then arms and legs are about
/// where they are in between.
fn lever_arm_beside(
    signals: &Signals,
    range: &std::ops::Range<usize>,
    is_at_end: &[bool],
    (rate_ends, acceleration_ends): (&Ends, &Ends),
) -> Option<LeverArm> {
    if !signals.has_acceleration() {
        return None;
    }
    let beside = (BESIDE_S / signals.step_s) as usize + 3;
    let first = is_at_end.iter().position(|&is| is)?;
    let last = is_at_end.iter().rposition(|&is| is)?;
    let from = range.start + first.saturating_sub(beside);
    let to = (range.start + last + beside).min(range.end);
    let arms = LeverArms::new(signals, (from, to), rate_ends, acceleration_ends);
    let arm = arms.over(from, to);
    (arms.count(from, to) >= FEWEST && arm.r_m.length() > NEAREST_M).then_some(arm)
}

/// The rate whose axes at their end best explain the accelerometer's reading: one step of Gauss and Newton
/// for each axis, not below the end.
fn explained(
    mut rate_rad_s: DVec3,
    read_rad_s: DVec3,
    reached: [bool; 3],
    change_rad_s2: DVec3,
    reading_m_s2: DVec3,
    r_m: DVec3,
) -> DVec3 {
    for axis in (0..3).filter(|&axis| reached[axis]) {
        let left = reading_m_s2 - of_lever_arm(rate_rad_s, change_rad_s2) * r_m;
        let own = DVec3::AXES[axis];
        // How the reading changes with the rate about this axis.
        let slope =
            own * rate_rad_s.dot(r_m) + rate_rad_s * r_m[axis] - r_m * (2.0 * rate_rad_s[axis]);
        let square = slope.length_squared();
        if square > 0.0 {
            let sign = read_rad_s[axis].signum();
            let value = rate_rad_s[axis] + slope.dot(left) / square;
            // Never more than twice the end: a step from far away may overshoot.
            let end = read_rad_s[axis].abs();
            rate_rad_s[axis] = sign * (sign * value).clamp(end, 2.0 * end);
        }
    }
    rate_rad_s
}

/// One axis with its readings at the end replaced by cubics that go on from either side with its slope.
fn guessed(t_s: &[f64], values: &[f64], is_at_end: impl Fn(usize) -> bool) -> Vec<f64> {
    let mut guessed = values.to_vec();
    let mut from = 0;
    while from < values.len() {
        if !is_at_end(from) {
            from += 1;
            continue;
        }
        let to = (from..values.len())
            .find(|&i| !is_at_end(i))
            .unwrap_or(values.len());
        if from >= 2 && to + 1 < values.len() {
            let slope = |i: usize| (values[i + 1] - values[i]) / (t_s[i + 1] - t_s[i]);
            let (before, after) = (from - 1, to);
            let span_s = t_s[after] - t_s[before];
            let slopes = [slope(before - 1) * span_s, slope(after) * span_s];
            let (sign, end) = (values[from].signum(), values[from].abs());
            for i in from..to {
                let x = (t_s[i] - t_s[before]) / span_s;
                let value = cubic(x, [values[before], values[after]], slopes);
                guessed[i] = sign * (sign * value).clamp(end, 2.0 * end);
            }
        }
        from = to;
    }
    guessed
}

/// The cubic with these values and slopes at 0 and 1 (Hermite's).
fn cubic(x: f64, [from, to]: [f64; 2], [out, into]: [f64; 2]) -> f64 {
    let y = 1.0 - x;
    y * y * (from * (1.0 + 2.0 * x) + out * x) + x * x * (to * (1.0 + 2.0 * y) - into * y)
}
