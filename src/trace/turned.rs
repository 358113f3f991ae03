//! How far the trunk turned in a flight, and how well that is known.

use glam::DVec3;

use crate::bridge::Filled;
use crate::flight_window::{FlightWindow, FoundBy};
use crate::heading::{attitudes, mean_axis, turned_about};
use crate::rest::Rest;
use crate::signals::Signals;

/// What the angle is counted about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TurnedAbout {
    /// The vertical, as the accelerometer had it at rest, carried along by the gyroscope.
    Vertical,
    /// The mean axis of the turning. Which end of it is up the accelerometer says.
    MeanAxis,
    /// The same without an accelerometer: which way round it went is not known.
    MeanAxisEitherWay,
}

/// The angle at one time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TurnedAngle {
    pub t_s: f64,
    /// Since the beginning of the flight, anticlockwise seen from above.
    pub turned_rad: f64,
    /// Standard deviation of what drift and noise have added since, where the beginning is known. What all
    /// angles have in common is the scale's.
    pub sigma_rad: f64,
}

/// The turning of a flight.
#[derive(Debug, Clone)]
pub struct Turned {
    /// At every reading, and at both ends.
    pub angles: Vec<TurnedAngle>,
    pub about: TurnedAbout,
    /// Largest rate about that axis, in the direction of the turning.
    pub peak_rate_rad_s: f64,
    /// Standard deviation of the scale that all angles have in common, as a share of them: the sensor's,
    /// and what of its readings was filled in.
    pub scale_sigma: f64,
    /// Rates about it at both ends.
    end_rates_rad_s: [f64; 2],
}

/// Standard deviation of a gyroscope's scale: 0.5 %. Data sheets have 1 % at most for small sensors (from
/// memory); that of BROAD is off by no more than 0.4 % against optical tracking (`tests/trace/broad.rs`).
const SCALE_SIGMA: f64 = 0.005;

/// Standard deviation of the drift where there is no rest to tell it, rad/s: 1 degree a second, as data
/// sheets have it for small sensors (from memory).
const DRIFT_SIGMA_RAD_S: f64 = 0.0175;

/// Less turning than this has no share that says anything, rad.
const LEAST_RAD: f64 = 0.1;

/// Longest time over which the gyroscope carries the vertical along, s; our choice.
const CARRIED_S: f64 = 60.0;

/// Time before and after a flight in which the accelerometer reads the push of the ground, mostly
/// upwards, s; our choice.
const AROUND_S: f64 = 1.0;

/// Readings of a flight and a little around it, drift taken out.
struct Flown {
    t_s: Vec<f64>,
    rate_rad_s: Vec<DVec3>,
    filled_sigma_rad_s: Vec<f64>,
}

impl Flown {
    /// The readings of a flight, and the rates at its two ends from those beside them.
    fn new(
        signals: &Signals,
        range: std::ops::Range<usize>,
        filled: &Filled,
        flight: &FlightWindow,
        drift_rad_s: DVec3,
    ) -> Self {
        let rate_at = |t_s: f64| {
            let t = &signals.t_s[range.clone()];
            let after = t.partition_point(|&at| at <= t_s).clamp(1, t.len() - 1);
            let part = (t_s - t[after - 1]) / (t[after] - t[after - 1]);
            filled.rate_rad_s[after - 1].lerp(filled.rate_rad_s[after], part.clamp(0.0, 1.0))
                - drift_rad_s
        };
        let mut flown = Self {
            t_s: vec![flight.from_s],
            rate_rad_s: vec![rate_at(flight.from_s)],
            filled_sigma_rad_s: vec![0.0],
        };
        for (i, &t_s) in signals.t_s[range.clone()].iter().enumerate() {
            if flight.from_s < t_s && t_s < flight.to_s {
                flown.t_s.push(t_s);
                flown.rate_rad_s.push(filled.rate_rad_s[i] - drift_rad_s);
                flown.filled_sigma_rad_s.push(filled.sigma_rad_s[i]);
            }
        }
        flown.t_s.push(flight.to_s);
        flown.rate_rad_s.push(rate_at(flight.to_s));
        flown.filled_sigma_rad_s.push(0.0);
        flown
    }
}

impl Turned {
    /// `range` are the readings that were filled, the flight's and at least one to either side of it.
    pub fn of(
        signals: &Signals,
        (range, filled): (std::ops::Range<usize>, &Filled),
        flight: &FlightWindow,
        rest: Option<&Rest>,
    ) -> Option<Self> {
        let drift_rad_s = rest.map_or(DVec3::ZERO, |rest| rest.drift_rad_s);
        let flown = Flown::new(signals, range, filled, flight, drift_rad_s);
        let attitudes = attitudes(&flown.t_s, &flown.rate_rad_s);
        let carried = rest.and_then(|rest| carried_up(signals, rest, flight));
        let (axis, own, about) = match carried {
            Some((up, own)) => (up, own, TurnedAbout::Vertical),
            None => {
                let axis = mean_axis(&flown.rate_rad_s, &attitudes)?;
                match pushed_up(signals, flight, drift_rad_s) {
                    Some(up) => {
                        let axis = if axis.dot(up) < 0.0 { -axis } else { axis };
                        (axis, axis, TurnedAbout::MeanAxis)
                    }
                    None => (axis, axis, TurnedAbout::MeanAxisEitherWay),
                }
            }
        };
        let turned_rad = turned_about(axis, own, &attitudes);
        let about_axis = flown.rate_rad_s.iter().zip(&attitudes);
        let rates: Vec<f64> = about_axis
            .map(|(rate, attitude)| axis.dot(*attitude * *rate))
            .collect();
        let sign = turned_rad.last()?.signum();
        let peak_rate_rad_s = rates
            .iter()
            .fold(0.0, |peak, rate| f64::max(sign * rate, peak));
        let noise_rad_s = rest.map_or(0.0, |rest| rest.noise_rad_s);
        let drift_sigma_rad_s = rest.map_or(DRIFT_SIGMA_RAD_S, |rest| rest.drift_sigma_rad_s);
        let angles = (0..flown.t_s.len()).map(|i| {
            let since_s = flown.t_s[i] - flight.from_s;
            let noise_rad = noise_rad_s * libm::sqrt(since_s * signals.step_s);
            TurnedAngle {
                t_s: flown.t_s[i],
                turned_rad: turned_rad[i],
                sigma_rad: libm::hypot(drift_sigma_rad_s * since_s, noise_rad),
            }
        });
        // Errors of what was filled in are alike all along, so they add up.
        let steps = flown.t_s.windows(2).zip(&flown.filled_sigma_rad_s[1..]);
        let filled_rad: f64 = steps.map(|(pair, sigma)| (pair[1] - pair[0]) * sigma).sum();
        let whole_rad = turned_rad.last()?.abs().max(LEAST_RAD);
        Some(Self {
            angles: angles.collect(),
            about,
            peak_rate_rad_s,
            scale_sigma: libm::hypot(SCALE_SIGMA, filled_rad / whole_rad),
            end_rates_rad_s: [rates[0], rates[rates.len() - 1]],
        })
    }

    /// Standard deviation of the whole angle, that of the flight's ends included.
    pub fn sigma_rad(&self, flight: &FlightWindow) -> f64 {
        // A guess from the rate may be off by so much that the rate at the true end is quite another.
        let rates = match flight.found_by {
            FoundBy::RateCurve => [self.peak_rate_rad_s; 2],
            FoundBy::LeverArm | FoundBy::User => self.end_rates_rad_s,
        };
        let [begins, ends] = rates.map(|rate| rate * flight.end_sigma_s);
        let last = self.angles[self.angles.len() - 1];
        let parts = [
            last.sigma_rad,
            self.scale_sigma * last.turned_rad,
            begins,
            ends,
        ];
        libm::sqrt(parts.iter().map(|part| part * part).sum())
    }
}

/// The vertical in the axes in which the sensor is as the flight begins, and in its own axes at rest.
fn carried_up(signals: &Signals, rest: &Rest, flight: &FlightWindow) -> Option<(DVec3, DVec3)> {
    let own = rest.acceleration_m_s2.try_normalize()?;
    // A rest may be before the flight or after it.
    let is_before = rest.to_s <= flight.from_s;
    let way_s = if is_before {
        [rest.to_s, flight.from_s]
    } else {
        [flight.from_s, rest.from_s]
    };
    if !(0.0..CARRIED_S).contains(&(way_s[1] - way_s[0])) || signals.gap_in(way_s).is_some() {
        return None;
    }
    let range = signals.range(way_s);
    let rates: Vec<DVec3> = signals.rate_rad_s[range.clone()]
        .iter()
        .map(|rate| *rate - rest.drift_rad_s)
        .collect();
    let last = *attitudes(&signals.t_s[range], &rates).last()?;
    let up = if is_before {
        last.conjugate() * own
    } else {
        last * own
    };
    Some((up, own))
}

/// The mean push of the ground just before and after a flight, in the axes of its beginning.
fn pushed_up(signals: &Signals, flight: &FlightWindow, drift_rad_s: DVec3) -> Option<DVec3> {
    let around_s = [flight.from_s - AROUND_S, flight.to_s + AROUND_S];
    if !signals.has_acceleration() || signals.gap_in(around_s).is_some() {
        return None;
    }
    let range = signals.range(around_s);
    let t_s = &signals.t_s[range.clone()];
    let rates: Vec<DVec3> = signals.rate_rad_s[range.clone()]
        .iter()
        .map(|rate| *rate - drift_rad_s)
        .collect();
    let attitudes = attitudes(t_s, &rates);
    let begins = t_s
        .partition_point(|&t_s| t_s < flight.from_s)
        .min(t_s.len() - 1);
    let mut sum = DVec3::ZERO;
    for (i, attitude) in attitudes.iter().enumerate() {
        if !(flight.from_s..flight.to_s).contains(&t_s[i]) {
            sum += *attitude * signals.acceleration_m_s2[range.start + i];
        }
    }
    (attitudes[begins].conjugate() * sum).try_normalize()
}
