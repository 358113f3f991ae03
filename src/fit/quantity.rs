//! What is asked of a fitted jump, and of every equally likely one.

use crate::sample::Sample;
use turns_aloft_analysis::budget::Cause;
use turns_aloft_physics::order::sorted;
use turns_aloft_scenario::parameter::Parameter;

/// A number of a fitted jump.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Quantity {
    /// Of its scenario.
    Input(Parameter),
    /// By which share the body's ratio of inertia is off from the table's.
    InertiaRatio,
    HangTime,
    /// Of the body itself, which may have landed lower or higher than the model's.
    Rise,
    AirTurns,
    /// In the air and on the ice before it.
    Turns,
    PeakRate,
    Lost(Cause),
}

/// How many of the inputs are fitted.
const INPUTS: usize = {
    let (mut count, mut i) = (0, 0);
    while i < Parameter::COUNT {
        count += Parameter::ALL[i].row().prior.is_some() as usize;
        i += 1;
    }
    count
};

impl Quantity {
    /// What is found out of every attempt besides the inputs.
    pub const FOUND: [Self; 10] = [
        Self::AirTurns,
        Self::Turns,
        Self::PeakRate,
        Self::HangTime,
        Self::Rise,
        Self::Lost(Cause::Closing),
        Self::Lost(Cause::Tightness),
        Self::Lost(Cause::Opening),
        Self::Lost(Cause::Tilt),
        Self::InertiaRatio,
    ];

    /// The inputs that are fitted.
    pub fn inputs() -> [Self; INPUTS] {
        let mut fitted = Parameter::ALL
            .into_iter()
            .filter(|parameter| parameter.row().prior.is_some());
        std::array::from_fn(|_| Self::Input(fitted.next().expect("as many as were counted")))
    }

    /// All of them.
    pub fn all() -> impl Iterator<Item = Self> {
        Self::FOUND.into_iter().chain(Self::inputs())
    }

    /// Its published name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Input(parameter) => parameter.key(),
            Self::InertiaRatio => "inertia_ratio_share",
            Self::HangTime => "hang_time_s",
            Self::Rise => "rise_m",
            Self::AirTurns => "air_turns",
            Self::Turns => "turns",
            Self::PeakRate => "peak_rate_rad_s",
            Self::Lost(Cause::Closing) => "lost_by_closing_turns",
            Self::Lost(Cause::Tightness) => "lost_by_tightness_turns",
            Self::Lost(Cause::Opening) => "lost_by_opening_turns",
            Self::Lost(Cause::Tilt) => "lost_by_tilt_turns",
        }
    }

    pub fn of(self, sample: &Sample) -> f64 {
        match self {
            Self::Input(parameter) => parameter.get(&sample.scenario),
            Self::InertiaRatio => sample.inertia_ratio_share,
            Self::HangTime => sample.landing_s - sample.takeoff_s,
            Self::Rise => sample.rise_m,
            Self::AirTurns => sample.air_turns,
            Self::Turns => sample.turns(),
            Self::PeakRate => sample.peak_rate_rad_s,
            Self::Lost(cause) => sample.lost(cause),
        }
    }
}

/// Where 95 % of what is possible lies.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Range {
    pub low: f64,
    pub middle: f64,
    pub high: f64,
}

impl Range {
    /// Of equally likely values, at least one.
    pub fn of(values: Vec<f64>) -> Self {
        let values = sorted(values);
        // Between the values on both sides of a share of them.
        let at = |share: f64| {
            let place = (share * values.len() as f64 - 0.5).clamp(0.0, values.len() as f64 - 1.0);
            let (below, part) = (place as usize, place - libm::floor(place));
            let above = (below + 1).min(values.len() - 1);
            values[below] + part * (values[above] - values[below])
        };
        Self {
            low: at(0.025),
            middle: at(0.5),
            high: at(0.975),
        }
    }

    pub fn half_width(&self) -> f64 {
        0.5 * (self.high - self.low)
    }

    pub fn has(&self, value: f64) -> bool {
        (self.low..=self.high).contains(&value)
    }
}

/// The coefficient of correlation of two; none where one of them does not differ.
pub fn correlation(one: &[f64], other: &[f64]) -> Option<f64> {
    let spread = [one, other].map(|of| covariance(of, of));
    let product = (spread[0] * spread[1]).sqrt();
    (product > f64::MIN_POSITIVE).then(|| covariance(one, other) / product)
}

pub fn covariance(one: &[f64], other: &[f64]) -> f64 {
    let mean = |of: &[f64]| of.iter().sum::<f64>() / of.len() as f64;
    let (a, b) = (mean(one), mean(other));
    let products = one.iter().zip(other).map(|(x, y)| (x - a) * (y - b));
    products.sum::<f64>() / one.len() as f64
}
