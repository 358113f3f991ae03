//! The motion plan is smooth whatever its times are.

use proptest::prelude::*;

use crate::space;
use turns_aloft::physics::body::{SEGMENTS, Segment};
use turns_aloft::physics::plan::Plan;
use turns_aloft::physics::rotation::log;
use turns_aloft::physics::takeoff_landing::{landing_posture, takeoff_posture};
use turns_aloft::scenario::Scenario;

/// The largest jump of any joint in the next 2 e, and how far any rate is from the difference
/// quotient, rad and rad/s.
fn roughness(plan: &Plan, t_s: f64, open_s: f64, e: f64) -> (f64, f64) {
    let [before, after] = [t_s - e, t_s + e].map(|t_s| plan.at(t_s, open_s).0);
    let rates = plan.at(t_s, open_s).1;
    let (mut jump, mut off) = (0.0_f64, 0.0_f64);
    for segment in Segment::ALL {
        let turned = log(before[segment].conjugate() * after[segment]);
        jump = jump.max(turned.length());
        // In the segment's own axes, which hardly turn in 2 e.
        off = off.max((turned / (2.0 * e) - rates[segment as usize]).length());
    }
    (jump, off)
}

proptest! {
    #![proptest_config(space::cases(512))]

    /// At any time and at every beginning and end of a blend: no joint moves further in 2 e than
    /// its fastest blend allows, and rates are the derivatives of angles. No joint goes further
    /// than pi in a blend that takes 0.05 s or more, so it turns at less than 2 x 1.875 pi / 0.05
    /// = 236 rad/s with closing and opening at once; the rates change at less than 5.8 pi / 0.05^2
    /// rad/s2 a blend and by their product, below 7e4 rad/s2.
    #[test]
    fn joints_move_smoothly(
        scenario in space::scenario(),
        t_s in 0.0..1.5_f64,
        open_s in 0.0..1.5_f64,
    ) {
        let plan = Plan::new(scenario.plan_spec());
        let close_s = scenario.close_delay_s;
        let late_s = close_s + scenario.arm_lag_s;
        const E: f64 = 1e-7;
        for t_s in [
            t_s,
            close_s,
            late_s,
            close_s + scenario.close_time_s,
            late_s + scenario.close_time_s,
            open_s,
            open_s + scenario.open_time_s,
        ] {
            let (jump, off) = roughness(&plan, t_s, open_s, E);
            prop_assert!(jump < 2.0 * E * 236.0, "{jump:e} rad at {t_s}");
            prop_assert!(off < 7e4 * E, "{off:e} rad/s at {t_s}");
        }
    }

    /// Before anything begins the posture is that of take-off, after everything it is that of
    /// landing, whatever came between. Rounding only.
    #[test]
    fn plans_begin_and_end_in_their_postures(scenario in space::planned(), open_s in 0.0..2.0_f64) {
        let plan = Plan::new(scenario.plan_spec());
        let (start, rates) = plan.at(0.0, f64::INFINITY);
        prop_assert_eq!(rates, [glam::DVec3::ZERO; SEGMENTS]);
        let over_s = open_s + scenario.open_time_s + plan.closed_s();
        let end = plan.at(over_s, open_s).0;
        let mirrored = Plan::new(
            Scenario { turning: turns_aloft::physics::plan::Turning::Anticlockwise, ..scenario.clone() }
                .plan_spec(),
        );
        let unmirrored = mirrored.at(0.0, f64::INFINITY).0;
        let expected = takeoff_posture(
            scenario.takeoff_openness,
            scenario.plan_spec().tight.legs_apart_rad(),
        );
        let landing = landing_posture();
        let landed = mirrored.at(over_s, open_s).0;
        for segment in Segment::ALL {
            prop_assert!(log(unmirrored[segment].conjugate() * expected[segment]).length() < 1e-12);
            prop_assert!(log(landed[segment].conjugate() * landing[segment]).length() < 1e-12);
            if scenario.turning == turns_aloft::physics::plan::Turning::Clockwise {
                let (a, b) = (start.mirrored(), end.mirrored());
                prop_assert!(log(a[segment].conjugate() * expected[segment]).length() < 1e-12);
                prop_assert!(log(b[segment].conjugate() * landing[segment]).length() < 1e-12);
            }
        }
    }
}

/// An opening that would have to begin before take-off begins at take-off, while the closing is
/// still to come: as far as it gets, and never with a jerk. The flight's own attitude rate, which
/// feels every joint, is continuous too.
#[test]
fn open_lead_longer_than_flight_stays_smooth() {
    for (lead_s, open_time_s) in [(0.6, 0.05), (0.6, 0.3), (0.45, 0.8), (0.3, 0.1)] {
        let scenario = Scenario {
            jump_height_m: 0.2,
            close_delay_s: 0.05,
            close_time_s: 0.3,
            arm_lag_s: 0.1,
            open_lead_s: lead_s,
            open_time_s,
            ..turns_aloft::scenario::starts::all()[0].scenario.clone()
        };
        let flight = scenario.fly().flight;
        assert!(flight.open_s < flight.table.plan.closed_s(), "they overlap");
        let steps = 4000;
        let mut last = flight.at(0.0).rate_rad_s();
        for i in 1..=steps {
            let t_s = flight.touchdown_s * f64::from(i) / f64::from(steps);
            let rate = flight.at(t_s).rate_rad_s();
            // A tenth of a millisecond changes it by far less than a jump in a joint's rate would.
            assert!((rate - last).length() < 0.6, "{t_s}: {last} {rate}");
            last = rate;
        }
    }
}
