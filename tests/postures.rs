//! The postures of a jump are ones that a body can take.
//!
//! Segments have a published thickness (`physics/thickness.rs` names the sources); two that are not
//! neighbours overlap by no more than 5 mm, which flesh gives way by. Ranges of motion: Soucie et al.
//! 2011, Haemophilia 17:500 (men of 20 to 44, the least of the adult groups; through secondary notes,
//! plantarflexion and hip extension from memory); shoulder: textbook table of normal ranges (AAOS,
//! Boone & Azen 1979), and 130 degrees across the body (secondary); hip abduction and adduction: AAOS
//! 1965, from memory.

#[path = "support/space.rs"]
mod space;

use std::f64::consts::PI;

use proptest::prelude::*;
use turns_aloft::physics::GRAVITY_M_S2;
use turns_aloft::physics::body::{Body, BodySpec, Footwear, Segment};
use turns_aloft::physics::momentum::MassState;
use turns_aloft::physics::overlap::overlap_m;
use turns_aloft::physics::plan::Plan;
use turns_aloft::physics::posture::{Posture, STILL};
use turns_aloft::physics::segments::SegmentTable;
use turns_aloft::physics::shape::Shape;
use turns_aloft::physics::stance::Stance;
use turns_aloft::physics::takeoff_landing::{landing_posture, takeoff_posture};
use turns_aloft::physics::thickness::solids;
use turns_aloft::physics::tight::Tight;
use turns_aloft::physics::tree::Tree;
use turns_aloft::scenario::Scenario;

/// Slower than any jump here: half a turn a second. The swing of the limbs turns a body that hardly
/// turns by itself, one way or the other.
const SLOWEST_RAD_S: f64 = PI;

/// What flesh gives way by, m.
const GIVES_WAY_M: f64 = 0.005;

fn bare(table: SegmentTable, stature_m: f64, body_mass_kg: f64) -> Body {
    Body::new(BodySpec {
        table,
        stature_m,
        body_mass_kg,
        hand_mass_kg: 0.0,
        boot_mass_kg: 0.0,
        footwear: Footwear::Barefoot,
        core_inertia: 1.0,
    })
}

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
    let (shape, solids) = (Shape::new(body, posture, &STILL), solids(body));
    let mut deepest = (f64::NEG_INFINITY, Segment::Head, Segment::Head);
    for (i, &one) in Segment::ALL.iter().enumerate() {
        for &other in &Segment::ALL[i + 1..] {
            if !are_neighbours(one, other) {
                let overlap_m = overlap_m(&shape, &solids, one, other);
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
        let body = bare(scenario.table, scenario.stature_m, scenario.body_mass_kg);
        let plan = Plan::new(symmetric(scenario).plan_spec());
        let spec = plan.spec;
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
            let stance = Stance::from(MassState::new(&tree, &posture, &rates));
            stance.long_axis.dot(stance.state.inertia_kg_m2 * stance.long_axis)
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

/// The check sees an overlap: the hands' centres at the same place.
#[test]
fn hands_in_one_place_are_seen() {
    let body = bare(SegmentTable::Female, 1.6, 50.0);
    let tight = Tight {
        arm_axial_rad: 1.2,
        ..Tight::of(SegmentTable::Female, 1.6, 50.0)
    };
    assert!(deepest(&body, &tight.posture()).0 > 0.02);
}

/// At take-off, however open, and in the landing posture.
#[test]
fn takeoff_and_landing_are_clear() {
    for table in [SegmentTable::Female, SegmentTable::Male] {
        let body = bare(table, 1.6, 55.0);
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
