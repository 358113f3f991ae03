//! A flight led live is the planned flight when the joints get the same targets, and keeps the
//! same laws whatever targets they get.

use glam::{DQuat, DVec3};
use proptest::prelude::*;

use crate::{body_sums, space};
use turns_aloft::physics::body::{Body, Segment};
use turns_aloft::physics::flight::Flight;
use turns_aloft::physics::live_flight::{LiveFlight, TargetError};
use turns_aloft::physics::plan::{Plan, Turning};
use turns_aloft::physics::posture::Posture;
use turns_aloft::physics::rotation::log;
use turns_aloft::physics::takeoff_landing::landing_posture;
use turns_aloft::scenario::{Scenario, starts};

fn live(scenario: &Scenario) -> LiveFlight {
    let (takeoff, _) = Plan::new(scenario.plan_spec()).at(0.0, f64::INFINITY);
    LiveFlight::launched(
        Body::new(scenario.body_spec()),
        &takeoff,
        &scenario.launch(),
        scenario.turning,
    )
}

/// Steps of a screen's frame to a time or to the ice.
fn fly_to(live: &mut LiveFlight, until_s: f64, frame_s: f64) {
    while !live.has_landed() && live.sample().t_s < until_s {
        let left_s = until_s - live.sample().t_s;
        // A time that rounding has missed by its last digits is reached.
        if left_s < 1e-12 {
            return;
        }
        live.step(frame_s.min(left_s));
    }
}

/// The plan of a flight, target by target: close, close the late arm, open.
fn fly_live(planned: &Flight, scenario: &Scenario, frame_s: f64) -> LiveFlight {
    let (plan, spec) = (&planned.table.plan, &planned.table.plan.spec);
    let (tight, _) = plan.at(plan.closed_s(), f64::INFINITY);
    let landing = match scenario.turning {
        Turning::Anticlockwise => landing_posture(),
        Turning::Clockwise => landing_posture().mirrored(),
    };
    let late = |segment: &Segment| plan.close_start_s(*segment) > spec.close_delay_s;
    let mut live = live(scenario);
    let close = |live: &mut LiveFlight, is_late: bool| {
        for segment in Segment::ALL.into_iter().filter(|s| late(s) == is_late) {
            live.aim(segment, tight[segment], spec.close_time_s)
                .expect("a posture of the plan");
        }
    };
    fly_to(&mut live, spec.close_delay_s, frame_s);
    close(&mut live, false);
    fly_to(&mut live, spec.close_delay_s + spec.arm_lag_s, frame_s);
    close(&mut live, true);
    fly_to(&mut live, planned.open_s, frame_s);
    if spec.open_lead_s > 0.0 {
        live.aim_all(&landing, spec.open_time_s)
            .expect("a posture of the plan");
    }
    fly_to(&mut live, planned.touchdown_s + 0.1, frame_s);
    live
}

/// Scenarios whose plan fits: closed before it opens.
fn fitting() -> impl Strategy<Value = Scenario> {
    space::planned().prop_map(|mut scenario| {
        scenario.close_delay_s *= 0.2;
        scenario.arm_lag_s *= 0.2;
        scenario.close_time_s = 0.05 + 0.1 * scenario.close_time_s;
        scenario.open_lead_s *= 0.2;
        scenario.jump_height_m += 0.2;
        scenario
    })
}

fn rotation() -> impl Strategy<Value = DQuat> {
    prop::array::uniform4(-1.0..1.0_f64).prop_filter_map("no direction", |[x, y, z, w]| {
        let q = DQuat::from_xyzw(x, y, z, w);
        (q.length() > 0.1).then(|| q.normalize())
    })
}

proptest! {
    #![proptest_config(space::cases(96))]

    /// The same inputs give the same flight, to the accuracy that both are held to: 1e-5 of a turn,
    /// whatever the frames are.
    #[test]
    fn led_by_the_plan_it_is_the_planned_flight(
        scenario in fitting(),
        frame_s in 0.004..0.05_f64,
    ) {
        let planned = scenario.fly().flight;
        prop_assume!(planned.open_s >= planned.table.plan.closed_s());
        let stepped = fly_live(&planned, &scenario, frame_s);
        prop_assert!(stepped.has_landed());
        let (end, expected) = (stepped.sample(), planned.touchdown());
        prop_assert!((end.air_turns() - expected.air_turns()).abs() < 1e-5);
        prop_assert!((end.t_s - expected.t_s).abs() < 1e-5);
        let off = log(end.orientation().conjugate() * expected.orientation()).length();
        prop_assert!(off < 1e-4, "{off:e} rad");
        prop_assert_eq!(stepped.h_kg_m2_s(), planned.h_kg_m2_s);
    }

    /// Targets anywhere at any time: angular momentum, summed from the parts' own motion,
    /// stays, no joint jumps in place or rate, and the flight ends with a foot on the ice.
    #[test]
    fn whatever_targets_the_joints_get(
        scenario in space::scenario(),
        orders in prop::collection::vec((1..16_usize, rotation(), 0.05..0.5_f64, 0.0..0.1_f64), 12),
    ) {
        let mut live = live(&scenario);
        for (segment, target, within_s, pause_s) in orders {
            let segment = Segment::ALL[segment];
            // Part of the way, so that the feet do not at once go through the ice.
            let target = DQuat::IDENTITY.lerp(target, 0.2);
            let before = live.pose();
            live.aim(segment, target, within_s).expect("a rotation and a fair time");
            let after = live.pose();
            for segment in Segment::ALL {
                let jump = before.segment_rate_rad_s(segment) - after.segment_rate_rad_s(segment);
                prop_assert!(jump.length() < 1e-9 * (1.0 + live.sample().own_rate_rad_s.length()));
            }
            live.step(pause_s);
            let (body, pose) = (Body::new(scenario.body_spec()), live.pose());
            let moving = body_sums::cm_velocity(&body, &pose);
            let h: DVec3 = body_sums::angular_momentum(
                &body,
                &pose,
                |i, _| pose.velocity_m_s(body.parts[i].segment, body.parts[i].cm_m) - moving,
                |i| pose.segment_rate_rad_s(body.parts[i].segment),
            );
            let expected = live.h_kg_m2_s();
            prop_assert!((h - expected).length() < 1e-10 * expected.length(), "{h} {expected}");
        }
        live.step(10.0);
        prop_assert!(live.has_landed());
        prop_assert!(live.sample().lowest_m.abs() < 1e-9, "{:e}", live.sample().lowest_m);
        let (landed_s, there) = (live.sample().t_s, live.step(1.0).t_s);
        prop_assert_eq!(landed_s, there);
    }

    /// How a flight is cut into frames does not matter, also while joints are redirected half-way.
    #[test]
    fn frames_do_not_matter(scenario in space::scenario(), frames in 1..30_u32) {
        let fly = |frames: u32| {
            let mut live = live(&scenario);
            let standing = Posture::STANDING;
            live.aim_all(&standing, 0.3).expect("a posture");
            for _ in 0..frames {
                live.step(0.09 / f64::from(frames));
            }
            let arm = DQuat::from_xyzw(0.6, 0.0, 0.0, 0.8);
            live.aim(Segment::LeftUpperArm, arm, 0.2).expect("a rotation");
            for _ in 0..frames {
                live.step(5.0 / f64::from(frames));
            }
            *live.sample()
        };
        let (one, other) = (fly(1), fly(frames));
        prop_assert!((one.air_turns() - other.air_turns()).abs() < 1e-5);
        prop_assert!((one.t_s - other.t_s).abs() < 1e-5);
    }
}

/// What is no rotation or no time is refused and changes nothing.
#[test]
fn refused_targets_change_nothing() {
    let mut live = live(&starts::all()[0].scenario);
    let arm = Segment::LeftUpperArm;
    let bad = DQuat::from_xyzw(f64::NAN, 0.0, 0.0, 1.0);
    assert_eq!(live.aim(arm, bad, 0.2), Err(TargetError::NotARotation));
    let long = DQuat::from_xyzw(1.0, 0.0, 0.0, 1.0);
    assert_eq!(live.aim(arm, long, 0.2), Err(TargetError::NotARotation));
    for within_s in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        assert_eq!(
            live.aim(arm, DQuat::IDENTITY, within_s),
            Err(TargetError::TimeOutOfRange)
        );
    }
    let before = live.pose();
    live.step(-1.0);
    live.step(f64::NAN);
    assert_eq!(live.sample().t_s, 0.0);
    live.step(0.05);
    let after = live.pose();
    assert_eq!(before.segment_rate_rad_s(arm), before.sample.rate_rad_s());
    assert!((after.segment_rate_rad_s(arm) - after.sample.rate_rad_s()).length() < 1e-12);
}
