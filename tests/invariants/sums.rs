//! Inertia and momentum of a posture are the sums over the body's parts.
//!
//! The product sums over sixteen links by its own kinematics; here every part, boots and hand
//! masses included, is carried outwards joint by joint in matrices.

use glam::{DMat3, DQuat, DVec3};
use proptest::prelude::*;

use crate::space;
use turns_aloft::physics::body::{Body, SEGMENTS, Segment};
use turns_aloft::physics::centroidal::CentroidalState;
use turns_aloft::physics::mass_properties::MassProperties;
use turns_aloft::physics::posture::{JointRates, Posture};
use turns_aloft::physics::tree::Tree;

/// Any posture at all: every joint anywhere on the rotation group.
fn posture() -> impl Strategy<Value = Posture> {
    prop::collection::vec(prop::array::uniform4(-1.0..1.0_f64), SEGMENTS).prop_map(|joints| {
        let mut posture = Posture::STANDING;
        for segment in Segment::ALL.into_iter().skip(1) {
            let [x, y, z, w] = joints[segment as usize];
            posture[segment] = DQuat::from_xyzw(x, y, z, w + 2.0_f64.copysign(w)).normalize();
        }
        posture
    })
}

fn rates() -> impl Strategy<Value = JointRates> {
    prop::collection::vec(prop::array::uniform3(-20.0..20.0_f64), SEGMENTS).prop_map(|rates| {
        let mut joints = [DVec3::ZERO; SEGMENTS];
        for segment in Segment::ALL.into_iter().skip(1) {
            joints[segment as usize] = DVec3::from_array(rates[segment as usize]);
        }
        joints
    })
}

/// One segment in the pelvis's frame.
#[derive(Clone, Copy)]
struct Placed {
    turn: DMat3,
    joint: DVec3,
    velocity: DVec3,
    rate: DVec3,
}

fn place(body: &Body, posture: &Posture, rates: &JointRates) -> Vec<Placed> {
    let mut placed: Vec<Placed> = Vec::new();
    for segment in Segment::ALL {
        placed.push(match segment.parent() {
            None => Placed {
                turn: DMat3::IDENTITY,
                joint: DVec3::ZERO,
                velocity: DVec3::ZERO,
                rate: DVec3::ZERO,
            },
            Some(parent) => {
                let parent = placed[parent as usize];
                let arm = parent.turn * body.link(segment).joint_m;
                let turn = parent.turn * DMat3::from_quat(posture[segment]);
                Placed {
                    turn,
                    joint: parent.joint + arm,
                    velocity: parent.velocity + parent.rate.cross(arm),
                    rate: parent.rate + turn * rates[segment as usize],
                }
            }
        });
    }
    placed
}

fn outer(mass: f64, r: DVec3) -> DMat3 {
    let square = DMat3::from_cols(r * r.x, r * r.y, r * r.z);
    (DMat3::from_diagonal(DVec3::splat(r.length_squared())) - square) * mass
}

proptest! {
    #![proptest_config(space::cases(256))]

    /// Relative to the sizes of the sums, 1e-12: rounding only.
    #[test]
    fn a_posture_is_the_sum_of_its_parts(
        scenario in space::scenario(),
        posture in posture(),
        rates in rates(),
    ) {
        let body = Body::new(scenario.body_spec());
        let placed = place(&body, &posture, &rates);
        let mass: f64 = body.parts.iter().map(|part| part.mass_kg).sum();
        let of = |part: &turns_aloft::physics::body::Part| {
            let s = placed[part.segment as usize];
            let arm = s.turn * part.cm_m;
            (s, s.joint + arm, s.velocity + s.rate.cross(arm))
        };
        let mean = |value: &dyn Fn(&turns_aloft::physics::body::Part) -> DVec3| {
            body.parts.iter().map(|part| value(part) * part.mass_kg).sum::<DVec3>() / mass
        };
        let cm = mean(&|part| of(part).1);
        let cm_velocity = mean(&|part| of(part).2);
        let (mut inertia, mut momentum, mut energy) = (DMat3::ZERO, DVec3::ZERO, 0.0);
        let mut sizes = 0.0;
        for part in &body.parts {
            let (s, at, velocity) = of(part);
            let (r, v) = (at - cm, velocity - cm_velocity);
            let own = s.turn * DMat3::from_diagonal(part.moments_kg_m2) * s.turn.transpose();
            inertia += own + outer(part.mass_kg, r);
            momentum += own * s.rate + r.cross(v) * part.mass_kg;
            energy += 0.5 * (s.rate.dot(own * s.rate) + part.mass_kg * v.length_squared());
            sizes += (own * s.rate).length() + (r.length() * v.length()) * part.mass_kg;
        }
        let state = CentroidalState::new(&Tree::new(&body), &posture, &rates);
        let size = inertia.x_axis.x + inertia.y_axis.y + inertia.z_axis.z;
        let off = state.inertia_kg_m2 - inertia;
        prop_assert!(off.abs_diff_eq(DMat3::ZERO, 1e-12 * size), "{off}");
        let off = (state.joint_momentum_kg_m2_s - momentum).length();
        prop_assert!(off <= 1e-12 * sizes, "{off:e} of {sizes}");
        prop_assert!((state.joint_energy_j - energy).abs() <= 1e-12 * energy);
        prop_assert!((state.cm_m - cm).length() <= 1e-13);
        prop_assert!((state.cm_velocity_m_s - cm_velocity).length() <= 1e-11);
        prop_assert!((body.mass_kg - mass).abs() <= 1e-13 * mass);
        let properties = MassProperties::from(state);
        let turned = state.inertia_kg_m2 * properties.rate_from_momentum.inverse_inertia;
        prop_assert!(turned.abs_diff_eq(DMat3::IDENTITY, 1e-10));
        // The axis that everything tilts against is a principal one, and the least.
        let axis = properties.long_axis;
        let least = axis.dot(state.inertia_kg_m2 * axis);
        prop_assert!((axis.length() - 1.0).abs() < 1e-12);
        for other in [DVec3::X, DVec3::Y, DVec3::Z] {
            prop_assert!(least <= other.dot(state.inertia_kg_m2 * other) * (1.0 + 1e-9));
        }
    }
}
