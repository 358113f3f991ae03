//! What is drawn over the time of a flight.

use crate::Scenario;
use crate::fly::Jump;
use turns_aloft_physics::efforts::JointGroup;
use turns_aloft_physics::flight::FlightSample;

/// A curve over the flight.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Curve {
    Rate,
    Inertia,
    Momentum,
    Energy,
    Turns,
    Height,
    Torque,
}

impl Curve {
    /// In the order in which they are offered and drawn.
    pub const ALL: [Self; 7] = [
        Self::Rate,
        Self::Inertia,
        Self::Momentum,
        Self::Energy,
        Self::Turns,
        Self::Height,
        Self::Torque,
    ];

    /// Tells it from the others, whatever is spoken.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Rate => "rate",
            Self::Inertia => "inertia",
            Self::Momentum => "momentum",
            Self::Energy => "energy",
            Self::Turns => "turns",
            Self::Height => "height",
            Self::Torque => "torque",
        }
    }

    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|curve| curve.name() == name)
    }

    /// The value at a time, in SI, held at the flight's ends.
    pub fn value(self, scenario: &Scenario, jump: &Jump, t_s: f64) -> f64 {
        let flight = &jump.flight;
        match self {
            Self::Rate => scenario.turning.sign() * flight.at(t_s).spin_rad_s,
            Self::Inertia => flight.at(t_s).inertia_kg_m2,
            Self::Momentum => flight.momentum_at(t_s).momentum_kg_m2_s,
            Self::Energy => flight.at(t_s).energy_j,
            Self::Turns => turns_of(scenario, &flight.at(t_s)),
            Self::Height => flight.at(t_s).cm_height_m,
            Self::Torque => {
                let loads = flight.loads_at(t_s);
                largest(|group| loads.largest_torque_n_m(group.segments()))
            }
        }
    }

    /// Time and value, in SI, over the flight.
    pub fn points(self, scenario: &Scenario, jump: &Jump) -> Vec<[f64; 2]> {
        if self == Self::Torque {
            let samples = jump.efforts().samples.iter();
            return samples
                .map(|at| [at.t_s, largest(|group| at.torque_n_m(group))])
                .collect();
        }
        let samples = jump.flight.samples.iter();
        samples
            .map(|sample| {
                let value = match self {
                    Self::Rate => scenario.turning.sign() * sample.spin_rad_s,
                    Self::Inertia => sample.inertia_kg_m2,
                    Self::Energy => sample.energy_j,
                    Self::Turns => turns_of(scenario, sample),
                    Self::Height => sample.cm_height_m,
                    Self::Momentum | Self::Torque => self.value(scenario, jump, sample.t_s),
                };
                [sample.t_s, value]
            })
            .collect()
    }
}

/// Turns up to a moment, the part turned on the ice included.
pub fn turns_of(scenario: &Scenario, sample: &FlightSample) -> f64 {
    sample.air_turns() + scenario.pre_rotation_turns
}

fn largest(of: impl Fn(JointGroup) -> f64) -> f64 {
    JointGroup::ALL.into_iter().map(of).fold(0.0, f64::max)
}
