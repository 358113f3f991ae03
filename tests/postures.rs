//! The postures of a jump are ones that a body can take.
//!
//! Segments have a published thickness (`physics/body/thickness.rs` names the sources); two that are not
//! neighbours overlap by no more than 5 mm, which flesh gives way by. Ranges of motion, each the
//! narrowest mean found: knee flexion 138 degrees (Soucie et al. 2011, Haemophilia 17:500, men of 20 to
//! 44, secondary); elbow flexion 143 (Boone & Azen 1979, J Bone Joint Surg Am 61:756, males), shoulder
//! elevation 156 and external rotation 84 (Greene & Wolf), internal rotation 62 (Walker), all four as in
//! a textbook's table of normal ranges; 130 across the body (secondary; studies from 90, of an arm that
//! is straight, to 141); hip flexion 120, extension 9, abduction 39 and plantarflexion 40 (Roaas & Andersson
//! 1982, Acta Orthop Scand 53:205, from memory), hip adduction 28 (Boone & Azen, from memory). An arm
//! that hangs behind the shoulders' line, or an ankle that bends upwards, is not needed.

#[path = "support/barefoot_body.rs"]
mod barefoot_body;
#[path = "support/space.rs"]
mod space;

use std::f64::consts::PI;

use barefoot_body::barefoot_body;
use glam::DVec3;
use proptest::prelude::*;

use turns_aloft::physics::GRAVITY_M_S2;
use turns_aloft::physics::body::{Body, Segment};
use turns_aloft::physics::centroidal::CentroidalState;
use turns_aloft::physics::forward_kinematics::ForwardKinematics;
use turns_aloft::physics::mass_properties::MassProperties;
use turns_aloft::physics::overlap::overlap_m;
use turns_aloft::physics::plan::Plan;
use turns_aloft::physics::posture::{Posture, STILL};
use turns_aloft::physics::rotation::{about, log};
use turns_aloft::physics::segments::SegmentTable;
use turns_aloft::physics::takeoff_landing::{landing_posture, takeoff_posture};
use turns_aloft::physics::thickness::solids;
use turns_aloft::physics::tight_posture::TightPosture;
use turns_aloft::physics::tree::Tree;
use turns_aloft::scenario::Scenario;

/// Slower than any jump here: half a turn a second. The swing of the limbs turns a body that hardly
/// turns by itself, one way or the other.
const SLOWEST_RAD_S: f64 = PI;

/// What flesh gives way by, m.
const GIVES_WAY_M: f64 = 0.005;

/// Joined by a joint; or parts whose flesh is one: the trunk with the head, the thighs with the trunk
/// above the hips.
fn are_neighbours(one: Segment, other: Segment) -> bool {
    use Segment::{Head, LeftThigh, LowerTrunk, MiddleTrunk, RightThigh, UpperTrunk};
    let trunk = |s| matches!(s, LowerTrunk | MiddleTrunk | UpperTrunk | Head);
    let thigh = |s| matches!(s, LeftThigh | RightThigh);
    one.parent() == Some(other)
        || other.parent() == Some(one)
        || trunk(one) && trunk(other)
        || trunk(one) && thigh(other)
        || thigh(one) && trunk(other)
}

/// The deepest overlap in a posture.
fn deepest(body: &Body, posture: &Posture) -> (f64, Segment, Segment) {
    let (kinematics, solids) = (ForwardKinematics::new(body, posture, &STILL), solids(body));
    let mut deepest = (f64::NEG_INFINITY, Segment::Head, Segment::Head);
    for (i, &one) in Segment::ALL.iter().enumerate() {
        for &other in &Segment::ALL[i + 1..] {
            if !are_neighbours(one, other) {
                let overlap_m = overlap_m(&kinematics, &solids, one, other);
                if overlap_m > deepest.0 {
                    deepest = (overlap_m, one, other);
                }
            }
        }
    }
    deepest
}

/// A jumper of a build that jumpers have: mass over stature cubed of 7.8 to 17.6 kg/m³, which is a body
/// mass index of 13 to 30 kg/m² at 1.70 m and 11 to 24 kg/m² at 1.35 m.
fn jumper() -> impl Strategy<Value = Scenario> {
    (space::scenario(), 1.25..1.95, 7.8..17.6).prop_map(|(scenario, stature_m, build)| Scenario {
        stature_m,
        body_mass_kg: build * stature_m * stature_m * stature_m,
        led: None,
        ..scenario
    })
}

/// As flown by a body that is the same on both sides: upright, both arms alike.
fn symmetric(scenario: Scenario) -> Scenario {
    Scenario {
        lean_rad: 0.0,
        arm_asymmetry: 0.0,
        arm_lag_s: 0.0,
        ..scenario
    }
}

/// The same with a motion that fits into the flight: closing over before the opening begins.
fn fitting(scenario: Scenario) -> Scenario {
    let hang_s = (8.0 * scenario.jump_height_m / GRAVITY_M_S2).sqrt();
    Scenario {
        close_delay_s: 0.4 * hang_s * scenario.close_delay_s,
        close_time_s: (0.6 * hang_s * scenario.close_time_s).max(0.05),
        open_lead_s: 0.4 * hang_s * scenario.open_lead_s,
        ..scenario
    }
}

proptest! {
    #![proptest_config(space::cases(1000))]

    /// On the way from open to tight, however far arms and legs go.
    #[test]
    fn no_limbs_pass_through_each_other(scenario in jumper(), part in 0.0..=1.0) {
        let body = Body::new(barefoot_body(scenario.table, scenario.stature_m, scenario.body_mass_kg));
        let plan = Plan::new(symmetric(scenario).plan_spec());
        let spec = &plan.spec;
        let t_s = spec.close_delay_s + part * spec.close_time_s;
        let (posture, _) = plan.at(t_s, f64::INFINITY);
        let (overlap_m, one, other) = deepest(&body, &posture);
        prop_assert!(overlap_m <= GIVES_WAY_M, "{one:?} in {other:?} by {overlap_m} m");
    }

    /// More tuck, of arms or of legs, is never more inertia.
    #[test]
    fn more_tuck_is_less_inertia(scenario in jumper(), more in 0.001..=1.0, legs in any::<bool>()) {
        let scenario = symmetric(scenario);
        let tuck = |s: &Scenario| if legs { s.leg_tuck } else { s.arm_tuck };
        let mut tighter = scenario.clone();
        *if legs { &mut tighter.leg_tuck } else { &mut tighter.arm_tuck } =
            tuck(&scenario) + more * (1.0 - tuck(&scenario));
        let tree = Tree::new(&Body::new(scenario.body_spec()));
        let long = |s: &Scenario| {
            let plan = Plan::new(s.plan_spec());
            let (posture, rates) = plan.at(plan.closed_s(), f64::INFINITY);
            let properties = MassProperties::from(CentroidalState::new(&tree, &posture, &rates));
            properties.long_axis.dot(properties.state.inertia_kg_m2 * properties.long_axis)
        };
        prop_assert!(long(&tighter) <= long(&scenario));
    }

    /// More tuck never costs a symmetric jump turns that has closed before it opens. (Where both run at
    /// once the body is never as tight as it is told to be.)
    #[test]
    fn more_tuck_never_costs_turns(scenario in jumper(), more in 0.001..=1.0, legs in any::<bool>()) {
        let mut scenario = fitting(symmetric(scenario));
        scenario.takeoff_rate_rad_s = scenario.takeoff_rate_rad_s.max(SLOWEST_RAD_S);
        let mut tighter = scenario.clone();
        let tuck = if legs { &mut tighter.leg_tuck } else { &mut tighter.arm_tuck };
        *tuck += more * (1.0 - *tuck);
        let (jump, tight) = (scenario.fly(), tighter.fly());
        prop_assume!(jump.flight.table.plan.closed_s() <= jump.flight.open_s);
        let (less, turns) = (jump.turns, tight.turns);
        prop_assert!(turns >= less - 1e-9, "{less} {turns}");
    }
}

/// Joint angles of a posture, degrees, by the clinical motion; of the right side, the left one mirrored.
struct Angles {
    shoulder_elevation: f64,
    /// Way across the body of a raised arm: 0 to the side, 90 forwards.
    across_body: f64,
    /// Inwards.
    shoulder_rotation: f64,
    elbow_flexion: f64,
    hip_flexion: f64,
    hip_abduction: f64,
    knee_flexion: f64,
    plantarflexion: f64,
}

impl Angles {
    fn of(posture: &Posture) -> [Self; 2] {
        [*posture, posture.mirrored()].map(|posture| {
            let hinge =
                |segment: Segment, axis: DVec3| log(posture[segment]).dot(axis).to_degrees();
            let arm = posture[Segment::RightUpperArm];
            let humerus = arm * DVec3::NEG_Y;
            let elevation = libm::acos(humerus.dot(DVec3::NEG_Y).clamp(-1.0, 1.0));
            let plane = libm::atan2(humerus.x, humerus.z);
            // What is left of the rotation once the arm has been raised without turning about itself.
            let raised =
                about(DVec3::Y, plane) * about(DVec3::X, -elevation) * about(DVec3::Y, -plane);
            let rotation = log(raised.conjugate() * arm).y;
            let thigh = posture[Segment::RightThigh] * DVec3::NEG_Y;
            Self {
                shoulder_elevation: elevation.to_degrees(),
                across_body: plane.to_degrees(),
                shoulder_rotation: rotation.to_degrees(),
                elbow_flexion: hinge(Segment::RightForearm, DVec3::Z),
                hip_flexion: libm::atan2(thigh.x, -thigh.y).to_degrees(),
                hip_abduction: libm::asin(thigh.z).to_degrees(),
                knee_flexion: hinge(Segment::RightShank, DVec3::NEG_Z),
                plantarflexion: hinge(Segment::RightFoot, DVec3::NEG_Z),
            }
        })
    }

    /// The motion that leaves its published range, if one does. Each range is the narrowest mean of the
    /// studies named above.
    fn out_of_range(&self) -> Option<(&'static str, f64)> {
        [
            ("shoulder elevation", self.shoulder_elevation, -1.0, 156.0),
            ("across the body", self.across_body, -30.0, 130.0),
            ("shoulder rotation", self.shoulder_rotation, -84.0, 62.0),
            ("elbow flexion", self.elbow_flexion, -1.0, 143.0),
            ("hip flexion", self.hip_flexion, -9.0, 120.0),
            ("hip abduction", self.hip_abduction, -28.0, 39.0),
            ("knee flexion", self.knee_flexion, -1.0, 138.0),
            ("plantarflexion", self.plantarflexion, -12.0, 40.0),
        ]
        .into_iter()
        .find(|&(_, angle, least, most)| !(least..=most).contains(&angle))
        .map(|(motion, angle, ..)| (motion, angle))
    }
}

proptest! {
    #![proptest_config(space::cases(1000))]

    /// At any instant of any plan, closing or opening, in time or not.
    #[test]
    fn joints_stay_inside_their_ranges_of_motion(scenario in jumper(), t_s in 0.0..2.0, open_s in 0.0..2.0) {
        let plan = Plan::new(scenario.plan_spec());
        let open_s = plan.closed_s() + open_s;
        let (posture, _) = plan.at(t_s, open_s);
        for angles in Angles::of(&posture) {
            prop_assert_eq!(angles.out_of_range(), None);
        }
    }
}

/// The check sees an angle: an elbow that bends backwards, and the angles that a posture is made of.
#[test]
fn angles_are_those_of_the_posture() {
    let tight = TightPosture::of(SegmentTable::Male, 1.75, 68.0);
    let [right, _] = Angles::of(&tight.posture());
    let arm = tight.arm();
    let leg = tight.legs()[1];
    for (found, expected_rad) in [
        (right.shoulder_elevation, arm.elevation_rad),
        (right.across_body, arm.plane_rad),
        (right.shoulder_rotation, arm.axial_rad),
        (right.elbow_flexion, arm.elbow_flexion_rad),
        (right.hip_flexion, leg.hip_flexion_rad),
        (right.hip_abduction, leg.hip_abduction_rad),
        (right.knee_flexion, leg.knee_flexion_rad),
        (right.plantarflexion, leg.plantarflexion_rad),
    ] {
        assert!((found - expected_rad.to_degrees()).abs() < 1e-9, "{found}");
    }
    let mut broken = Posture::STANDING;
    broken[Segment::LeftForearm] = about(DVec3::Z, -0.3);
    let [_, left] = Angles::of(&broken);
    assert_eq!(
        left.out_of_range().map(|(motion, _)| motion),
        Some("elbow flexion")
    );
}

/// The check sees an overlap: the hands' centres at the same place.
#[test]
fn hands_in_one_place_are_seen() {
    let body = Body::new(barefoot_body(SegmentTable::Female, 1.6, 50.0));
    let tight = TightPosture {
        arm_axial_rad: 1.2,
        ..TightPosture::of(SegmentTable::Female, 1.6, 50.0)
    };
    assert!(deepest(&body, &tight.posture()).0 > 0.02);
}

/// At take-off, however open, and in the landing posture.
#[test]
fn takeoff_and_landing_are_clear() {
    for table in [SegmentTable::Female, SegmentTable::Male] {
        let body = Body::new(barefoot_body(table, 1.6, 55.0));
        for openness in [0.0, 0.25, 0.5, 0.75, 1.0] {
            let (overlap_m, one, other) = deepest(&body, &takeoff_posture(openness, 0.0));
            assert!(
                overlap_m <= GIVES_WAY_M,
                "{one:?} in {other:?}, {overlap_m}"
            );
        }
        let (overlap_m, one, other) = deepest(&body, &landing_posture());
        assert!(
            overlap_m <= GIVES_WAY_M,
            "{one:?} in {other:?}, {overlap_m}"
        );
    }
}
