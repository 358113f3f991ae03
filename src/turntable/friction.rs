//! The friction of a bearing.

/// What slows the turning down: a torque that is the same at every rate, and one that grows with the rate.
///
/// At rest the first holds against as much as it gives when turning: static and kinetic friction are
/// taken as equal.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Friction {
    /// N m.
    pub torque_n_m: f64,
    /// For each rad/s, N m s.
    pub viscous_n_m_s: f64,
}

impl Friction {
    pub const NONE: Self = Self {
        torque_n_m: 0.0,
        viscous_n_m_s: 0.0,
    };

    /// What it takes from a turning body, W.
    pub fn power_w(&self, rate_rad_s: f64) -> f64 {
        let rate = rate_rad_s.abs();
        rate * (self.torque_n_m + self.viscous_n_m_s * rate)
    }
}
