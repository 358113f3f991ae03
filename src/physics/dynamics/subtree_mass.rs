//! The mass beyond a joint as inverse dynamics see it from the pelvis.

use std::ops::Add;

use crate::dynamics::composite::Composite;
use crate::math::simd::{Real, SymmetricTensor, Vec3};

/// Masses that are carried together, seen from the pelvis's origin, pelvis axes.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct SubtreeMass<T> {
    pub mass_kg: T,
    pub first_kg_m: Vec3<T>,
    pub second_kg_m2: SymmetricTensor<T>,
}

/// A trunk that is straight and still: what is beyond neck, chest and waist, the arms left out, and
/// all of it; and where these joints are.
#[derive(Debug, Clone)]
pub(crate) struct StraightTrunk {
    pub masses: [SubtreeMass<f64>; 4],
    pub joints_m: [Vec3<f64>; 3],
}

impl StraightTrunk {
    /// Of head, upper, middle and lower trunk, each with the place of its joint in its parent.
    pub fn new(members: [(&Composite<f64>, Vec3<f64>); 4]) -> Self {
        let [head, chest, waist, lower] = members;
        let waist_m = waist.1;
        let chest_m = waist_m + chest.1;
        let head_m = chest_m + head.1;
        let head = SubtreeMass::at(head_m, head.0);
        let chest = head + SubtreeMass::at(chest_m, chest.0);
        let waist = chest + SubtreeMass::at(waist_m, waist.0);
        let all = waist + SubtreeMass::at(Vec3::default(), lower.0);
        Self {
            masses: [head, chest, waist, all],
            joints_m: [head_m, chest_m, waist_m],
        }
    }
}

impl<T: Real> SubtreeMass<T> {
    /// Of a segment whose axes are the pelvis's.
    fn at(joint_m: Vec3<T>, own: &Composite<T>) -> Self {
        let first_kg_m = own.first_kg_m + joint_m * own.mass_kg;
        Self {
            mass_kg: own.mass_kg,
            first_kg_m,
            second_kg_m2: own.second_kg_m2.moved(joint_m, own.first_kg_m + first_kg_m),
        }
    }
}

impl<T: Real> Add for SubtreeMass<T> {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            mass_kg: self.mass_kg + other.mass_kg,
            first_kg_m: self.first_kg_m + other.first_kg_m,
            second_kg_m2: self.second_kg_m2 + other.second_kg_m2,
        }
    }
}
