//! How somebody's own chair slowed down, and the friction that follows from it.

use turns_aloft_scenario::units::RateUnit;
use turns_aloft_turntable::Friction;
use turns_aloft_turntable::calibrate::{
    CalibrationFault, Reading, both, torque_alone, viscous_alone,
};

/// Rates that were read one after the other, and the times between them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slowing {
    /// The third one counts only where both parts of the friction are to be told.
    pub rates_rad_s: [f64; 3],
    /// From each to the next.
    pub times_s: [f64; 2],
    pub by: SlowedBy,
}

/// What the friction is taken to be.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SlowedBy {
    /// The same at every rate.
    Torque,
    /// It grows with the rate.
    Viscous,
    /// Some of both, which a third rate tells.
    Both,
}

impl Default for Slowing {
    fn default() -> Self {
        Self {
            rates_rad_s: [30.0, 15.0, 5.0].map(|rpm| rpm * RateUnit::Rpm.unit().si),
            times_s: [10.0; 2],
            by: SlowedBy::Torque,
        }
    }
}

impl Slowing {
    /// The friction that slows somebody of this moment of inertia down like that.
    pub(crate) fn friction(&self, inertia_kg_m2: f64) -> Result<Friction, CalibrationFault> {
        let [first_s, second_s] = self.times_s;
        let times_s = [0.0, first_s, first_s + second_s];
        let all: [Reading; 3] = std::array::from_fn(|i| Reading {
            t_s: times_s[i],
            rate_rad_s: self.rates_rad_s[i],
        });
        let two = [all[0], all[1]];
        match self.by {
            SlowedBy::Torque => torque_alone(&two, inertia_kg_m2),
            SlowedBy::Viscous => viscous_alone(&two, inertia_kg_m2),
            SlowedBy::Both => both(&all, inertia_kg_m2),
        }
    }
}
