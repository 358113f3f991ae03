//! Rest: a stretch in which the sensor hardly turns. What the gyroscope reads there is its drift, and
//! what the accelerometer reads points up.

use glam::DVec3;

use crate::fault::TraceFault;
use crate::signals::Signals;

/// A stretch of rest and what it tells.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rest {
    pub from_s: f64,
    pub to_s: f64,
    /// Mean reading of the gyroscope, sensor axes: its drift.
    pub drift_rad_s: DVec3,
    /// Standard error of it, on one axis.
    pub drift_sigma_rad_s: f64,
    /// Scatter of single readings, on one axis.
    pub noise_rad_s: f64,
    /// Mean reading of the accelerometer, sensor axes; zero without one.
    pub acceleration_m_s2: DVec3,
}

/// Shortest rest, s; our choice.
const SHORTEST_S: f64 = 0.5;

/// People who stand sway: drift is told from means over such pieces, s. Our choice.
const PIECE_S: f64 = 0.25;

/// Scatter of the rate at rest at most, rad/s, and of the acceleration, m/s2; our choices, for a
/// person who stands still.
const QUIET_RAD_S: f64 = 0.1;
const QUIET_M_S2: f64 = 0.5;

/// Drift at most, rad/s: 8.6 degrees a second. Our choice, above the drift of poor sensors (from memory).
const MOST_DRIFT_RAD_S: f64 = 0.15;

/// A rest goes on as long as the rate stays this near to that of its quietest part: so many times its
/// scatter, and a little, rad/s. Our choice.
const SCATTERS: f64 = 4.0;
const LITTLE_RAD_S: f64 = 0.01;

/// A rest has at least so many readings.
const FEWEST: usize = 8;

impl Rest {
    /// What this stretch of time tells.
    pub fn over(signals: &Signals, [from_s, to_s]: [f64; 2]) -> Result<Self, TraceFault> {
        let range = signals.range([from_s, to_s]);
        if range.len() < FEWEST {
            return Err(TraceFault::Window { from_s, to_s });
        }
        let rates = &signals.rate_rad_s[range.clone()];
        let (drift_rad_s, noise_rad_s) = mean_and_scatter(rates);
        let piece = ((PIECE_S / signals.step_s) as usize).max(1);
        let means: Vec<DVec3> = rates.chunks_exact(piece).map(mean).collect();
        let alone = noise_rad_s / (rates.len() as f64).sqrt();
        let sway = match means.len() {
            0 | 1 => noise_rad_s,
            pieces => mean_and_scatter(&means).1 / ((pieces - 1) as f64).sqrt(),
        };
        let accelerations = signals.acceleration_m_s2.get(range).unwrap_or_default();
        Ok(Self {
            from_s,
            to_s,
            drift_rad_s,
            drift_sigma_rad_s: alone.max(sway),
            noise_rad_s,
            acceleration_m_s2: mean(accelerations),
        })
    }

    /// All stretches of rest, in their order.
    pub fn find_all(signals: &Signals) -> Vec<Self> {
        let length = ((SHORTEST_S / signals.step_s) as usize).max(FEWEST);
        let moments = Moments::new(&signals.rate_rad_s);
        let forces = Moments::new(&signals.acceleration_m_s2);
        // From, to, and of the quietest part its beginning, drift and scatter.
        let mut found: Vec<([usize; 2], (usize, DVec3, f64))> = Vec::new();
        for from in 0..(signals.t_s.len() + 1).saturating_sub(length) {
            let to = from + length;
            let (drift, noise) = moments.mean_and_scatter(from, to);
            let is_quiet = noise < QUIET_RAD_S
                && drift.length() < MOST_DRIFT_RAD_S
                && (!signals.has_acceleration()
                    || forces.mean_and_scatter(from, to).1 < QUIET_M_S2)
                && signals.t_s[to - 1] - signals.t_s[from] < 2.0 * SHORTEST_S;
            match found.last_mut() {
                Some((all, quietest)) if is_quiet && from < all[1] => {
                    all[1] = to;
                    if noise < quietest.2 {
                        *quietest = (from, drift, noise);
                    }
                }
                _ if is_quiet => found.push(([from, to], (from, drift, noise))),
                _ => {}
            }
        }
        let rests = found.into_iter().map(|(all, (quietest, drift, noise))| {
            let near = |i: &usize| {
                let apart = signals.rate_rad_s[*i] - drift;
                apart.abs().max_element() < SCATTERS * noise + LITTLE_RAD_S
            };
            let from = (all[0]..quietest).rev().take_while(near).last();
            let to = (quietest + length..all[1]).take_while(near).last();
            let from = from.unwrap_or(quietest);
            let to = to.unwrap_or(quietest + length - 1);
            [signals.t_s[from], signals.t_s[to]]
        });
        rests
            .filter_map(|stretch| Self::over(signals, stretch).ok())
            .collect()
    }
}

fn mean(values: &[DVec3]) -> DVec3 {
    values.iter().sum::<DVec3>() / values.len().max(1) as f64
}

/// Mean, and scatter on one axis.
fn mean_and_scatter(values: &[DVec3]) -> (DVec3, f64) {
    let mean = mean(values);
    let squares: f64 = values
        .iter()
        .map(|value| (*value - mean).length_squared())
        .sum();
    (mean, (squares / (3 * values.len().max(1)) as f64).sqrt())
}

/// Sums up to each reading, so that the mean of any stretch is at hand.
struct Moments {
    sums: Vec<(DVec3, f64)>,
}

impl Moments {
    fn new(values: &[DVec3]) -> Self {
        let mut sums = vec![(DVec3::ZERO, 0.0)];
        let mut sum = (DVec3::ZERO, 0.0);
        for value in values {
            sum = (sum.0 + *value, sum.1 + value.length_squared());
            sums.push(sum);
        }
        Self { sums }
    }

    fn mean_and_scatter(&self, from: usize, to: usize) -> (DVec3, f64) {
        let count = (to - from) as f64;
        let mean = (self.sums[to].0 - self.sums[from].0) / count;
        let square = (self.sums[to].1 - self.sums[from].1) / count - mean.length_squared();
        (mean, (square.max(0.0) / 3.0).sqrt())
    }
}
