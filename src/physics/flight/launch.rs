//! How the ice is left: what take-off fixes for the whole flight.

use glam::{DQuat, DVec3};

use crate::dynamics::gravity::GRAVITY_M_S2;
use crate::dynamics::mass_properties::MassProperties;
use crate::math::rotation::{about, heading_rad, smallest_rotation};
use crate::motion::plan::Turning;

/// What the take-off fixes about the angular momentum: it is vertical, and its size follows from
/// one of these.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Spin {
    /// Rate of the pelvis about the vertical at take-off, rad/s, in the turning direction.
    Rate(f64),
    /// Angular momentum about the CM, kg m²/s.
    AngularMomentum(f64),
    /// Rotational energy at take-off, J.
    Energy(f64),
}

/// How the ice is left.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Launch {
    pub spin: Spin,
    /// Rise of the CM from take-off to the top, m.
    pub jump_height_m: f64,
    /// Tilt of the body's long axis against h, towards the side the jumper turns to, rad.
    pub lean_rad: f64,
    /// Heading of the pelvis as the ice is left, rad.
    pub heading_rad: f64,
}

impl Spin {
    /// Angular momentum for a body with this inverse inertia about the momentum, 1/(kg m²).
    fn momentum(self, inverse_inertia: f64) -> f64 {
        match self {
            Self::Rate(rate_rad_s) => rate_rad_s / inverse_inertia,
            Self::AngularMomentum(h) => h,
            Self::Energy(energy_j) => (2.0 * energy_j / inverse_inertia).sqrt(),
        }
    }
}

impl Launch {
    /// Attitude at take-off: balanced with the long axis on the vertical, then leaned sideways,
    /// then headed.
    fn orientation(&self, properties: &MassProperties, turning: Turning) -> DQuat {
        let leaned = about(DVec3::X, -turning.sign() * self.lean_rad)
            * smallest_rotation(properties.long_axis, DVec3::Y);
        (about(DVec3::Y, self.heading_rad - heading_rad(leaned)) * leaned).normalize()
    }

    /// The same launch of the same posture with another body: what that body leaves the ice with.
    /// The returned spins keep its angular momentum and its rotational energy.
    pub fn same_momentum_and_energy(
        &self,
        properties: &MassProperties,
        turning: Turning,
    ) -> (Spin, Spin) {
        let inverse_inertia = inverse_inertia(properties, self.orientation(properties, turning));
        let h = self.spin.momentum(inverse_inertia);
        (
            Spin::AngularMomentum(h),
            Spin::Energy(0.5 * h * h * inverse_inertia),
        )
    }

    /// Vertical speed of the CM at take-off, m/s.
    pub fn speed_m_s(&self) -> f64 {
        (2.0 * GRAVITY_M_S2 * self.jump_height_m).sqrt()
    }

    /// Angular momentum about the CM, upwards, for a body that leaves the ice in this posture,
    /// kg m²/s; and its attitude.
    pub fn of(&self, properties: &MassProperties, turning: Turning) -> (f64, DQuat) {
        let orientation = self.orientation(properties, turning);
        let size = self.spin.momentum(inverse_inertia(properties, orientation));
        (turning.sign() * size, orientation)
    }
}

/// Vertical rate that a unit of vertical angular momentum gives to a still posture, 1/(kg m²).
fn inverse_inertia(properties: &MassProperties, orientation: DQuat) -> f64 {
    let up = orientation.conjugate() * DVec3::Y;
    up.dot(properties.rate_from_momentum.inverse_inertia * up)
}
