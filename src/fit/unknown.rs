//! What is not known of an attempt: each a function of a standard normal variable, so that whatever is
//! drawn is admissible.

use turns_aloft_scenario::parameter::Parameter;

/// One of them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unknown {
    /// When the ice was left.
    Takeoff,
    /// When it was met again.
    Landing,
    /// The jumper's facing at take-off as it was measured; every one is as likely.
    FirstFacing,
    /// By how much more the facings turned than the jumper: the line of sight turns as the jumper
    /// passes, and a sensor has a scale of its own.
    Drift,
    /// How far the body's ratio of inertia is off from the table's.
    InertiaRatio,
    /// How much lower the body was as it landed than the model's.
    LandingOffset,
    /// A number of the scenario that has a prior.
    Number(Parameter),
}

const NUMBERS: usize = {
    let (mut count, mut i) = (0, 0);
    while i < Parameter::COUNT {
        count += Parameter::ALL[i].row().prior.is_some() as usize;
        i += 1;
    }
    count
};

const OTHERS: [Unknown; 6] = [
    Unknown::Takeoff,
    Unknown::Landing,
    Unknown::FirstFacing,
    Unknown::Drift,
    Unknown::InertiaRatio,
    Unknown::LandingOffset,
];

/// How many there are.
pub const COUNT: usize = OTHERS.len() + NUMBERS;

/// A value of each, in standard deviations, in the order of [`Unknown::ALL`].
pub type Point = nalgebra::SVector<f64, COUNT>;

impl Unknown {
    pub const ALL: [Self; COUNT] = {
        let mut all = [Self::Takeoff; COUNT];
        let mut at = 0;
        while at < OTHERS.len() {
            all[at] = OTHERS[at];
            at += 1;
        }
        let mut i = 0;
        while i < Parameter::COUNT {
            if Parameter::ALL[i].row().prior.is_some() {
                all[at] = Self::Number(Parameter::ALL[i]);
                at += 1;
            }
            i += 1;
        }
        all
    };

    /// Its place in [`Self::ALL`].
    pub fn place(self) -> usize {
        let found = Self::ALL.iter().position(|&one| one == self);
        found.expect("a number without a prior is no unknown")
    }
}

/// The share of a standard normal variable's values that are smaller.
pub fn normal_cdf(z: f64) -> f64 {
    0.5 * libm::erfc(-z * std::f64::consts::FRAC_1_SQRT_2)
}
