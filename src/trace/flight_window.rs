//! When the flight was. With an accelerometer: the longest stretch that one lever arm explains. Without:
//! the stretch of fast turning around its peak, which is a weaker guess.

use crate::lever_arm::{LeverArm, LeverArms, axis_of};
use crate::saturation::Ends;
use crate::signals::Signals;
use turns_aloft_physics::order::by_number;

/// How a flight was found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FoundBy {
    /// One lever arm explains its readings.
    LeverArm,
    /// From the rate alone.
    RateCurve,
    /// The user set it.
    User,
}

/// A flight in a trace.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlightWindow {
    pub from_s: f64,
    pub to_s: f64,
    /// Standard deviation of either end, s.
    pub end_sigma_s: f64,
    pub found_by: FoundBy,
    /// Where there is an accelerometer.
    pub lever_arm: Option<LeverArm>,
}

/// Shortest and longest flight, s: a small hop, and a high one off a trampoline. Our choice.
const DURATION_S: [f64; 2] = [0.15, 2.5];

/// Turned at least in a flight that is looked for, rad: a quarter turn. Our choice.
const LEAST_TURNED_RAD: f64 = 1.5;

/// Readings along the axis of the turning that may be of a flight at most, m/s2: standing is 9.8. Our
/// choice.
const MAY_FLY_M_S2: f64 = 6.0;

/// Readings in a row that may be more, since single ones are spoilt; our choice.
const SPOILT: usize = 2;

/// How far beyond such a stretch is looked, s.
const MARGIN_S: f64 = 0.03;

/// Left over at most, as a part of what is let pass, over all and at either end of a flight.
const MOST_MISFIT: f64 = 1.0;

/// Readings of a flight that are at no end of either sensor, at least as a part of all; our choice.
const TELLING: f64 = 0.5;

/// The end of a flight that is looked at for itself, s; our choice.
const END_S: f64 = 0.02;

/// Places at which a flight may begin or end, at most, that are tried for a stretch.
const PLACES: usize = 400;

/// Standard deviation of either end, s. Published flight times from accelerometers are 13 ms off at best (60
/// jumps; from memory): 13 ms / sqrt 2.
pub const LEVER_ARM_SIGMA_S: f64 = 0.009;

/// The same from the rate alone, s; our estimate.
const RATE_CURVE_SIGMA_S: f64 = 0.1;

/// The flight lasts as long as the rate is this part of its peak, where nothing else is known. Our
/// estimate: a body leaves the ice and comes down with about twice the inertia of its tightest posture.
const OF_PEAK: f64 = 0.5;

/// Longest turning that may be a flight as far as the rate tells, s; what is longer is a spin. Our choice.
const LONGEST_TURNING_S: f64 = 1.2;

/// Peaks of the rate that are tried.
const PEAKS: usize = 20;

/// How far the sensor turns in a stretch, rad.
fn turned_rad(signals: &Signals, from: usize, to: usize) -> f64 {
    let steps = (from + 1)..to;
    steps
        .map(|i| signals.rate_rad_s[i].length() * (signals.t_s[i] - signals.t_s[i - 1]))
        .sum()
}

/// The lever arm of a given stretch of time, where the accelerometer says enough.
pub fn lever_arm_over(
    signals: &Signals,
    stretch_s: [f64; 2],
    (rate_ends, acceleration_ends): (&Ends, &Ends),
) -> Option<LeverArm> {
    let range = signals.range(stretch_s);
    if !signals.has_acceleration() || range.len() < 5 {
        return None;
    }
    let whole = (range.start, range.end);
    let arms = LeverArms::new(signals, whole, rate_ends, acceleration_ends);
    (arms.count(whole.0, whole.1) >= 5.0).then(|| arms.over(whole.0, whole.1))
}

/// All flights with turning that the accelerometer tells, those with most turning first.
pub fn by_lever_arm(
    signals: &Signals,
    rate_ends: &Ends,
    acceleration_ends: &Ends,
) -> Vec<FlightWindow> {
    if !signals.has_acceleration() {
        return Vec::new();
    }
    let found: Vec<(f64, FlightWindow)> = may_fly(signals, acceleration_ends)
        .into_iter()
        .filter_map(|(first, end)| {
            let arms = LeverArms::new(signals, (first, end), rate_ends, acceleration_ends);
            let (from, to, lever_arm) = longest(signals, &arms, (first, end))?;
            let turned_rad = turned_rad(signals, from, to);
            let window = FlightWindow {
                from_s: signals.t_s[from],
                to_s: signals.t_s[to - 1],
                end_sigma_s: LEVER_ARM_SIGMA_S.max(signals.step_s / libm::sqrt(6.0)),
                found_by: FoundBy::LeverArm,
                lever_arm: Some(lever_arm),
            };
            (turned_rad > LEAST_TURNED_RAD).then_some((turned_rad, window))
        })
        .collect();
    let found = by_number(found, |(turned_rad, _)| -turned_rad);
    found.into_iter().map(|(_, window)| window).collect()
}

/// Stretches of readings that may be of a flight, none with a gap in it.
fn may_fly(signals: &Signals, acceleration_ends: &Ends) -> Vec<(usize, usize)> {
    let margin = (MARGIN_S / signals.step_s) as usize + 1;
    let count = signals.t_s.len();
    let flies = |i: usize| {
        let reading = signals.acceleration_m_s2[i];
        if acceleration_ends.is_reached(reading) {
            // On the axes that are left it says too little.
            return axis_of(signals.rate_rad_s[i]).is_some();
        }
        match axis_of(signals.rate_rad_s[i]) {
            Some(axis) => axis.dot(reading).abs() < MAY_FLY_M_S2,
            None => reading.length() < MAY_FLY_M_S2,
        }
    };
    let is_gap = |i: usize| signals.is_gap_after(i);
    let mut stretches: Vec<(usize, usize)> = Vec::new();
    let (mut begun, mut spoilt) = (None, 0);
    // The first reading after the last gap.
    let mut whole_from = 0;
    for i in 0..count {
        if flies(i) {
            begun.get_or_insert(i);
            spoilt = 0;
        } else {
            spoilt += 1;
        }
        let ends = i + 1 == count || is_gap(i);
        if let Some(from) = begun.filter(|_| spoilt > SPOILT || ends) {
            let whole_to = (i + 1..(i + margin).min(count))
                .take_while(|&j| !is_gap(j - 1))
                .last();
            let to = if ends {
                i + 1
            } else {
                whole_to.map_or(i + 1, |j| j + 1)
            };
            stretches.push((from.saturating_sub(margin).max(whole_from), to));
            begun = None;
        }
        if is_gap(i) {
            (whole_from, spoilt) = (i + 1, 0);
        }
    }
    let lasts_s = |&(from, to): &(usize, usize)| signals.t_s[to - 1] - signals.t_s[from];
    stretches.retain(|stretch| lasts_s(stretch) > DURATION_S[0]);
    stretches
}

/// The longest flight of a stretch.
fn longest(
    signals: &Signals,
    arms: &LeverArms,
    (first, end): (usize, usize),
) -> Option<(usize, usize, LeverArm)> {
    let at_end = ((END_S / signals.step_s) as usize).max(2);
    let stride = (end - first) / PLACES + 1;
    let mut best: Option<(usize, usize, LeverArm)> = None;
    for from in (first..end).step_by(stride) {
        for to in (from + 1..=end).rev().step_by(stride) {
            let lasts_s = signals.t_s[to - 1] - signals.t_s[from];
            let is_best =
                best.is_none_or(|(a, b, _)| signals.t_s[b - 1] - signals.t_s[a] < lasts_s);
            if lasts_s < DURATION_S[0] || !is_best || to - from < 2 * at_end {
                break;
            }
            if lasts_s > DURATION_S[1] {
                continue;
            }
            if arms.count(from, to) < TELLING * (to - from) as f64 {
                continue;
            }
            let arm = arms.over(from, to);
            let ends = [(from, from + at_end), (to - at_end, to)];
            if arm.misfit < MOST_MISFIT
                && ends
                    .iter()
                    .all(|&(from, to)| arms.misfit(from, to, arm.r_m) < MOST_MISFIT)
            {
                best = Some((from, to, arm));
                break;
            }
        }
    }
    best
}

/// The flight that the rate alone tells.
pub fn by_rate_curve(signals: &Signals) -> Option<FlightWindow> {
    let sizes: Vec<f64> = signals
        .rate_rad_s
        .iter()
        .map(|rate| rate.length())
        .collect();
    // Single readings may be spoilt: the middle one of three counts.
    let steady: Vec<f64> = (0..sizes.len())
        .map(|i| {
            let mut three = [
                sizes[i.saturating_sub(1)],
                sizes[i],
                sizes[(i + 1).min(sizes.len() - 1)],
            ];
            three.sort_by(f64::total_cmp);
            three[1]
        })
        .collect();
    let mut left: Vec<bool> = vec![true; sizes.len()];
    for _ in 0..PEAKS {
        let peak = (0..sizes.len())
            .filter(|&i| left[i])
            .max_by(|&i, &j| steady[i].total_cmp(&steady[j]))?;
        let least = OF_PEAK * steady[peak];
        let from = (0..peak)
            .rev()
            .take_while(|&i| steady[i] > least)
            .last()
            .unwrap_or(peak);
        let to = (peak..sizes.len())
            .take_while(|&i| steady[i] > least)
            .last()
            .unwrap_or(peak);
        let [from_s, to_s] = [signals.t_s[from], signals.t_s[to]];
        if (DURATION_S[0]..LONGEST_TURNING_S).contains(&(to_s - from_s))
            && turned_rad(signals, from, to + 1) > LEAST_TURNED_RAD
            && signals.gap_in([from_s, to_s]).is_none()
        {
            return Some(FlightWindow {
                from_s,
                to_s,
                end_sigma_s: RATE_CURVE_SIGMA_S,
                found_by: FoundBy::RateCurve,
                lever_arm: None,
            });
        }
        left[from..=to].fill(false);
    }
    None
}
