//! A part of the body's tree as seen from one point: the sums that inertia and momentum take.
//!
//! Gathered from the limbs' ends towards the pelvis, each joint once (composite rigid bodies:
//! Walker & Orin 1982, J Dyn Syst Meas Control 104:205; Orin & Goswami 2008, Proc. IROS, 653-659).

use std::ops::Add;

use crate::math::simd::{Real, RotationMatrix, SymmetricTensor, Vec3, sum};
use wide::f64x2;

/// Rigid bodies that are carried together. All sums are about the point they are seen from, which
/// is held still. Over `f64x2` the same part of the left and of the right side.
#[derive(Debug, Clone, Copy, Default)]
pub struct Composite<T> {
    pub mass_kg: T,
    /// Mass times position, kg m.
    pub first_kg_m: Vec3<T>,
    /// Moments of inertia, kg m².
    pub second_kg_m2: SymmetricTensor<T>,
    /// Momentum, kg m/s.
    pub linear_kg_m_s: Vec3<T>,
    /// Angular momentum, kg m²/s.
    pub angular_kg_m2_s: Vec3<T>,
    /// Twice the kinetic energy, J.
    pub twice_energy_j: T,
}

/// A joint that is not straight and still: its rotation, segment axes to parent's axes, and its
/// rate in segment axes, rad/s.
pub struct JointRotation<T> {
    pub rotation: RotationMatrix<T>,
    pub rate_rad_s: Vec3<T>,
}

impl<T: Real> Composite<T> {
    /// Seen through the joint that carries all this, from the parent's own point; `joint_m` is
    /// where the parent has the joint. A straight and still joint only moves the point.
    #[inline(always)]
    pub fn through(self, moving: Option<&JointRotation<T>>, joint_m: Vec3<T>) -> Self {
        match moving {
            Some(joint) => self.moved(joint.rate_rad_s).turned(&joint.rotation),
            None => self,
        }
        .seen_from(joint_m)
    }

    /// The whole turns about the point at a rate, on top of what moves within.
    #[inline(always)]
    fn moved(self, rate_rad_s: Vec3<T>) -> Self {
        let spin = self.second_kg_m2.times(rate_rad_s);
        let angular = self.angular_kg_m2_s + spin;
        Self {
            linear_kg_m_s: self.linear_kg_m_s + rate_rad_s.cross(self.first_kg_m),
            twice_energy_j: self.twice_energy_j + rate_rad_s.dot(self.angular_kg_m2_s + angular),
            angular_kg_m2_s: angular,
            ..self
        }
    }

    #[inline(always)]
    fn turned(self, rotation: &RotationMatrix<T>) -> Self {
        Self {
            first_kg_m: rotation.vector(self.first_kg_m),
            second_kg_m2: rotation.tensor(self.second_kg_m2),
            linear_kg_m_s: rotation.vector(self.linear_kg_m_s),
            angular_kg_m2_s: rotation.vector(self.angular_kg_m2_s),
            ..self
        }
    }

    #[inline(always)]
    fn seen_from(self, at_m: Vec3<T>) -> Self {
        let first = self.first_kg_m + at_m * self.mass_kg;
        Self {
            first_kg_m: first,
            second_kg_m2: self.second_kg_m2.moved(at_m, self.first_kg_m + first),
            angular_kg_m2_s: self.angular_kg_m2_s + at_m.cross(self.linear_kg_m_s),
            ..self
        }
    }
}

impl<T: Real> Add for Composite<T> {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            mass_kg: self.mass_kg + other.mass_kg,
            first_kg_m: self.first_kg_m + other.first_kg_m,
            second_kg_m2: self.second_kg_m2 + other.second_kg_m2,
            linear_kg_m_s: self.linear_kg_m_s + other.linear_kg_m_s,
            angular_kg_m2_s: self.angular_kg_m2_s + other.angular_kg_m2_s,
            twice_energy_j: self.twice_energy_j + other.twice_energy_j,
        }
    }
}

impl Composite<f64x2> {
    pub fn pair(left: &Composite<f64>, right: &Composite<f64>) -> Self {
        let vector =
            |of: fn(&Composite<f64>) -> Vec3<f64>| Vec3::pair(of(left).into(), of(right).into());
        Self {
            mass_kg: f64x2::new([left.mass_kg, right.mass_kg]),
            first_kg_m: vector(|side| side.first_kg_m),
            second_kg_m2: SymmetricTensor::pair(left.second_kg_m2, right.second_kg_m2),
            linear_kg_m_s: vector(|side| side.linear_kg_m_s),
            angular_kg_m2_s: vector(|side| side.angular_kg_m2_s),
            twice_energy_j: f64x2::new([left.twice_energy_j, right.twice_energy_j]),
        }
    }

    /// Both sides together.
    pub fn sum(self) -> Composite<f64> {
        Composite {
            mass_kg: sum(self.mass_kg),
            first_kg_m: self.first_kg_m.sum(),
            second_kg_m2: self.second_kg_m2.sum(),
            linear_kg_m_s: self.linear_kg_m_s.sum(),
            angular_kg_m2_s: self.angular_kg_m2_s.sum(),
            twice_energy_j: sum(self.twice_energy_j),
        }
    }
}

impl Composite<f64> {
    /// CM (m), inertia tensor about it (kg m²) and angular momentum about it (kg m²/s).
    #[inline(always)]
    pub fn about_cm(&self) -> (Vec3<f64>, SymmetricTensor<f64>, Vec3<f64>) {
        let cm = self.first_kg_m * (1.0 / self.mass_kg);
        (
            cm,
            self.second_kg_m2.moved(cm, self.first_kg_m * -1.0),
            self.angular_kg_m2_s - cm.cross(self.linear_kg_m_s),
        )
    }
}
