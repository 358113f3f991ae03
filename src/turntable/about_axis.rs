//! What turns on a bearing, as its axis sees it.

/// At one instant. Everything is about the bearing's axis.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AboutAxis {
    /// Of all that turns, the platform included, kg m².
    pub inertia_kg_m2: f64,
    /// Angular momentum of the moving parts against the turning frame, kg m²/s.
    pub own_momentum_kg_m2_s: f64,
    /// Kinetic energy of the moving parts in the turning frame, J.
    pub own_energy_j: f64,
}

/// Something that turns on a bearing and moves as it does so.
pub trait OnBearing {
    /// At this time, s.
    fn at(&self, t_s: f64) -> AboutAxis;
}

impl AboutAxis {
    /// At what rate it turns with this angular momentum, rad/s.
    pub fn rate_rad_s(&self, momentum_kg_m2_s: f64) -> f64 {
        (momentum_kg_m2_s - self.own_momentum_kg_m2_s) / self.inertia_kg_m2
    }

    /// What angular momentum it has at this rate, kg m²/s.
    pub fn momentum_kg_m2_s(&self, rate_rad_s: f64) -> f64 {
        self.inertia_kg_m2 * rate_rad_s + self.own_momentum_kg_m2_s
    }

    /// Kinetic energy at this rate, J.
    pub fn kinetic_j(&self, rate_rad_s: f64) -> f64 {
        (0.5 * self.inertia_kg_m2 * rate_rad_s + self.own_momentum_kg_m2_s) * rate_rad_s
            + self.own_energy_j
    }
}
