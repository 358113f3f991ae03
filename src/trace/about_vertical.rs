//! The rate of somebody who turns upright on the spot, from a gyroscope held to the body, reading by reading.

use glam::DVec3;

use turns_aloft_physics::GRAVITY_M_S2;

use crate::signals::Signals;

/// Readings as they come.
#[derive(Debug, Clone, Default)]
pub struct AboutVertical {
    t_s: Vec<f64>,
    rate_rad_s: Vec<DVec3>,
    /// Sum of the accelerations: each counts the less the faster it turns, because turning draws outwards.
    up: DVec3,
    /// Sum of their weights.
    weight: f64,
    /// Sum of the rates.
    turned: DVec3,
    /// By how much the rates are along the accelerations, in either order of their axes: descriptions of the W3C's
    /// `rotationRate` disagree whether alpha is about x or about z, and so do browsers. The order counts by which
    /// more of the turning is about the vertical; the right one has all of it.
    along: [f64; 2],
}

/// What the rate is counted about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CountedAbout {
    /// The vertical, as the accelerometer has it.
    Vertical,
    /// Whatever axis it turns about.
    AnyAxis,
}

/// Turning as fast as this, rad/s, an acceleration counts half; our choice.
const HALF_WEIGHT_RAD_S: f64 = 1.0;

/// A mean acceleration of less than this part of gravity is none of gravity; our choice.
const LEAST_GRAVITY: f64 = 0.5;

impl AboutVertical {
    /// Of a file.
    pub fn of(signals: &Signals) -> Self {
        let mut all = Self::default();
        for (i, (&t_s, &rate_rad_s)) in signals.t_s.iter().zip(&signals.rate_rad_s).enumerate() {
            all.push(t_s, rate_rad_s, signals.acceleration_m_s2.get(i).copied());
        }
        all
    }

    /// The next reading; one that is not later, or no number, is left out.
    pub fn push(&mut self, t_s: f64, rate_rad_s: DVec3, acceleration_m_s2: Option<DVec3>) {
        let is_later = self.t_s.last().is_none_or(|last_s| t_s > *last_s);
        if !is_later || !t_s.is_finite() || !rate_rad_s.is_finite() {
            return;
        }
        self.t_s.push(t_s);
        self.rate_rad_s.push(rate_rad_s);
        self.turned += rate_rad_s;
        if let Some(acceleration) = acceleration_m_s2.filter(|it| it.is_finite()) {
            let part = rate_rad_s.length() / HALF_WEIGHT_RAD_S;
            let weight = 1.0 / (1.0 + part.powi(4));
            self.up += weight * acceleration;
            self.weight += weight;
            for (along, rate) in self.along.iter_mut().zip(orders(rate_rad_s)) {
                *along += rate.dot(acceleration).abs();
            }
        }
    }

    pub fn t_s(&self) -> &[f64] {
        &self.t_s
    }

    pub fn counted_about(&self) -> CountedAbout {
        if self.up.length() > LEAST_GRAVITY * GRAVITY_M_S2 * self.weight {
            CountedAbout::Vertical
        } else {
            CountedAbout::AnyAxis
        }
    }

    /// At every reading, positive the way it turned on the whole: which way round that is, browsers do not agree.
    pub fn rates_rad_s(&self) -> impl Fn(usize) -> f64 + '_ {
        let axis = match self.counted_about() {
            CountedAbout::Vertical => self.up.try_normalize(),
            CountedAbout::AnyAxis => None,
        };
        let order = usize::from(self.along[1] > self.along[0]);
        let axis = axis.map(|up| up * orders(self.turned)[order].dot(up).signum());
        move |i| {
            let rate = self.rate_rad_s[i];
            axis.map_or_else(|| rate.length(), |axis| orders(rate)[order].dot(axis))
        }
    }
}

/// A rate whose three numbers are about x, y and z, or about z, x and y.
const fn orders(rate: DVec3) -> [DVec3; 2] {
    [rate, DVec3::new(rate.y, rate.z, rate.x)]
}
