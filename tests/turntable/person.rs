//! A person on the bearing: what turns, summed from the segments; how far the hands reach.

use glam::DVec3;
use proptest::prelude::*;

use turns_aloft::physics::body::Segment;
use turns_aloft::physics::forward_kinematics::ForwardKinematics;
use turns_aloft::physics::overlap::overlap_m;
use turns_aloft::physics::posture::{JointRates, Posture, STILL};
use turns_aloft::physics::thickness::solids;
use turns_aloft::turntable::position::TWIST_RAD;
use turns_aloft::turntable::{Person, Position, Setup, Stand};

pub fn stand() -> impl Strategy<Value = Stand> {
    prop::sample::select(Stand::ALL.to_vec())
}

/// Angular momentum about the axis and kinetic energy of a person with what turns below, part by part: m r x v
/// and the spin of each about its own CM, from forward kinematics, while the frame turns at a rate.
pub fn sums(
    person: &Person,
    (posture, rates): (Posture, JointRates),
    rate_rad_s: f64,
) -> (f64, f64) {
    let kinematics = ForwardKinematics::new(&person.body, &posture, &rates);
    let spin: DVec3 = DVec3::Y * rate_rad_s;
    let bearing = person.setup.bearing_inertia_kg_m2 * rate_rad_s;
    let (mut momentum, mut twice_j) = (bearing, bearing * rate_rad_s);
    for part in &person.body.parts {
        let (in_pelvis, moving) = kinematics.point(part.segment, part.cm_m);
        let place = in_pelvis + DVec3::X * person.setup.hips_forward_m;
        let velocity = moving + spin.cross(place);
        let rotation = kinematics.rotation[part.segment as usize];
        let rate = kinematics.rate_rad_s[part.segment as usize] + spin;
        let turning = rotation * (part.moments_kg_m2 * (rotation.conjugate() * rate));
        momentum += part.mass_kg * place.cross(velocity).y + turning.y;
        twice_j += part.mass_kg * velocity.length_squared() + rate.dot(turning);
    }
    (momentum, 0.5 * twice_j)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    /// Whatever is held and however it moves.
    #[test]
    fn inertia_momentum_and_energy_are_the_sums_over_the_parts(
        stand in stand(),
        hips_forward_m in -0.3..0.3_f64,
        held in [0.0..1.0, 0.0..1.0, -TWIST_RAD..TWIST_RAD],
        change in [-5.0..5.0, -5.0..5.0, -4.0..4.0],
        rate_rad_s in -20.0..20.0_f64,
    ) {
        let person = Person::new(&Setup { hips_forward_m, ..Setup::on(stand) }).expect("in range");
        let at = person.about_axis(&held, &change);
        let moving = (person.posture(&held), person.joint_rates(&change));
        let (momentum, kinetic_j) = sums(&person, moving, rate_rad_s);
        let close = |found: f64, expected: f64| (found - expected).abs() <= 1e-9 * (1.0 + expected.abs());
        prop_assert!(close(at.momentum_kg_m2_s(rate_rad_s), momentum));
        prop_assert!(close(at.kinetic_j(rate_rad_s), kinetic_j));
    }

    /// Every distance that the hands reach is reached, and farther out is more inertia.
    #[test]
    fn the_hands_are_where_they_are_led(
        stand in stand(),
        stature_m in 1.2..2.0_f64,
        build in 11.0..15.0,
        male in any::<bool>(),
        part in 0.0..1.0_f64,
    ) {
        use turns_aloft::physics::segments::SegmentTable;
        let table = if male { SegmentTable::Male } else { SegmentTable::Female };
        let body_mass_kg = build * stature_m.powi(3);
        let person = Person::new(&Setup { table, stature_m, body_mass_kg, ..Setup::on(stand) }).expect("in range");
        let [nearest, farthest] = person.reach_m();
        let hand_distance_m = nearest + part * (farthest - nearest);
        let position = Position { hand_distance_m, legs: 0.0, twist_rad: 0.0 };
        let held = person.coordinates(&position);
        prop_assert!((person.position(&held).hand_distance_m - hand_distance_m).abs() < 1e-12);
        // Where forward kinematics have what either hand holds, twisted or not.
        for hand in [Segment::LeftHand, Segment::RightHand] {
            let posture = person.posture(&[held[0], held[1], part - 0.5]);
            let kinematics = ForwardKinematics::new(&person.body, &posture, &STILL);
            let (grip_m, _) = kinematics.point(hand, person.body.link(hand).end_m);
            let found_m = (grip_m.x * grip_m.x + grip_m.z * grip_m.z).sqrt();
            prop_assert!((found_m - hand_distance_m).abs() < 1e-12);
        }
        let inertia = |arms: f64| person.about_axis(&[arms, 0.0, 0.0], &[0.0; 3]).inertia_kg_m2;
        let further = (held[0] + 0.02).min(1.0);
        prop_assert!(further <= held[0] || inertia(further) > inertia(held[0]));
        // From the fists in front of the chest to the stretched arm, 0.42 to 0.46 of the stature.
        prop_assert!((0.02..0.17).contains(&(nearest / stature_m)), "{}", nearest / stature_m);
        prop_assert!((0.40..0.48).contains(&(farthest / stature_m)), "{}", farthest / stature_m);
    }
}

/// Hips of somebody who stands are a leg above the ground (0.46 to 0.53 of the stature, Drillis & Contini 1966
/// have 0.530 with the foot), of somebody who sits half a thigh above the seat.
#[test]
fn the_hips_are_above_what_carries_them() {
    for stand in Stand::ALL {
        let setup = Setup::on(stand);
        let person = Person::new(&setup).expect("in range");
        let share = person.hips_above_support_m() / setup.stature_m;
        let expected = match stand {
            Stand::Platform => 0.46..0.54,
            // Blades and a pointed foot below.
            Stand::Ice => 0.50..0.62,
            Stand::PlatformSitting | Stand::Chair => 0.03..0.07,
        };
        assert!(expected.contains(&share), "{stand:?}: {share}");
    }
}

/// The arms pass clear of trunk, head, legs and each other all the way, but for flesh that gives way.
#[test]
fn the_arms_pass_clear_on_their_way() {
    const GIVES_WAY_M: f64 = 0.005;
    let arm = [
        Segment::RightUpperArm,
        Segment::RightForearm,
        Segment::RightHand,
    ];
    let others = [
        Segment::LowerTrunk,
        Segment::MiddleTrunk,
        Segment::UpperTrunk,
        Segment::Head,
        Segment::LeftForearm,
        Segment::LeftHand,
        Segment::LeftThigh,
        Segment::RightThigh,
        Segment::LeftShank,
        Segment::RightShank,
    ];
    let mut deepest = (f64::NEG_INFINITY, String::new());
    for stand in Stand::ALL {
        let person = Person::new(&Setup::on(stand)).expect("in range");
        let solids = solids(&person.body);
        for i in 0..=20 {
            for legs in [0.0, 0.5, 1.0] {
                let arms = f64::from(i) / 20.0;
                let posture = person.posture(&[arms, legs, 0.0]);
                let kinematics = ForwardKinematics::new(&person.body, &posture, &STILL);
                for one in arm {
                    for other in others {
                        // The upper arm begins in the chest.
                        if (one, other) == (Segment::RightUpperArm, Segment::UpperTrunk) {
                            continue;
                        }
                        let overlap = overlap_m(&kinematics, &solids, one, other);
                        if overlap > deepest.0 {
                            deepest = (
                                overlap,
                                format!("{stand:?} arms {arms} legs {legs}: {one:?} in {other:?}"),
                            );
                        }
                    }
                }
            }
        }
    }
    assert!(deepest.0 < GIVES_WAY_M, "{deepest:?}");
}

/// A twist with the arms out and back with the arms in turns a person on a bearing without friction the other
/// way, from rest to rest.
#[test]
fn twisting_with_the_arms_out_turns_somebody_at_rest() {
    use turns_aloft::turntable::{Friction, Turntable};
    let setup = Setup {
        friction: Friction::NONE,
        ..Setup::on(Stand::Platform)
    };
    let position = |hand_distance_m, twist_rad| Position {
        hand_distance_m,
        legs: 0.0,
        twist_rad,
    };
    let mut turntable = Turntable::new(&setup, &position(1.0, 0.0)).expect("in range");
    for (hands_m, twist_rad) in [(1.0, 0.7), (0.0, 0.7), (0.0, 0.0)] {
        turntable.lead(&position(hands_m, twist_rad));
        for _ in 0..120 {
            turntable.step(1.0 / 60.0);
            assert!(turntable.readout().momentum_kg_m2_s.abs() < 1e-12);
        }
    }
    let end = turntable.readout();
    assert!(end.turned_rad < -0.15, "{end:?}");
    assert!(turntable.is_still());
}
