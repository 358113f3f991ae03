//! Units in which sensors write. A unit is told by the size of the numbers; its name decides where the
//! size leaves a choice.

use std::f64::consts::PI;

use turns_aloft_physics::GRAVITY_M_S2;

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TimeUnit {
    Seconds,
    Milliseconds,
    Microseconds,
    Nanoseconds,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RateUnit {
    RadPerS,
    DegPerS,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AccelerationUnit {
    MetresPerS2,
    /// Of standard gravity.
    G,
    /// Thousandths of it.
    MilliG,
}

/// Least and most time between two readings, s: 5000 to 5 a second. Our choice; the steps of the four
/// units then do not overlap.
const STEP_S: [f64; 2] = [2e-4, 0.2];

/// No sensor of the trade reads more, rad/s: 3437 degrees a second, where its end as a rule is 2000.
const MOST_RAD_S: f64 = 60.0;

/// Twice the largest end of such sensors, degrees a second (4000, from memory).
const MOST_DEG_S: f64 = 8000.0;

/// Between these parts of gravity the middle reading of an accelerometer is in this unit; our choice.
const MIDDLE: [f64; 2] = [0.4, 2.5];

impl TimeUnit {
    pub const ALL: [Self; 4] = [
        Self::Seconds,
        Self::Milliseconds,
        Self::Microseconds,
        Self::Nanoseconds,
    ];

    pub const fn s(self) -> f64 {
        match self {
            Self::Seconds => 1.0,
            Self::Milliseconds => 1e-3,
            Self::Microseconds => 1e-6,
            Self::Nanoseconds => 1e-9,
        }
    }

    /// In which readings follow each other as those of a sensor do.
    pub fn of_step(step: f64) -> Option<Self> {
        Self::ALL
            .into_iter()
            .find(|unit| (STEP_S[0]..STEP_S[1]).contains(&(step * unit.s())))
    }
}

impl RateUnit {
    pub const ALL: [Self; 2] = [Self::RadPerS, Self::DegPerS];

    pub const fn rad_s(self) -> f64 {
        match self {
            Self::RadPerS => 1.0,
            Self::DegPerS => PI / 180.0,
        }
    }

    /// By the largest reading, else by its name, else rad/s: a jump in degrees a second has readings
    /// far above the limit.
    pub fn of(largest: f64, named: Option<Self>) -> Option<Self> {
        if largest > MOST_DEG_S {
            None
        } else if largest > MOST_RAD_S {
            Some(Self::DegPerS)
        } else {
            Some(named.unwrap_or(Self::RadPerS))
        }
    }
}

impl AccelerationUnit {
    pub const ALL: [Self; 3] = [Self::MetresPerS2, Self::G, Self::MilliG];

    pub const fn m_s2(self) -> f64 {
        match self {
            Self::MetresPerS2 => 1.0,
            Self::G => GRAVITY_M_S2,
            Self::MilliG => 1e-3 * GRAVITY_M_S2,
        }
    }

    /// In which a sensor reads about gravity, as it does most of the time on somebody who stands, walks
    /// or glides.
    pub fn of_middle(size: f64) -> Option<Self> {
        let gravities = |unit: Self| size * unit.m_s2() / GRAVITY_M_S2;
        Self::ALL
            .into_iter()
            .find(|&unit| (MIDDLE[0]..MIDDLE[1]).contains(&gravities(unit)))
    }
}
