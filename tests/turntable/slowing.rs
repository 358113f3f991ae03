//! The friction of a real chair from the rate that a sensor has of it.

use turns_aloft::turntable::calibrate::Reading;
use turns_aloft::turntable::run::turned_to;
use turns_aloft::turntable::slowing::{friction, longest};
use turns_aloft::turntable::{Friction, Given, OnBearing, Turning};

const INERTIA_KG_M2: f64 = 3.0;
const STEP_S: f64 = 1.0 / 60.0;

/// Somebody sits still, is pushed for a second, and slows down with this friction, swaying a little, until it
/// stops: times and rates.
fn pushed_and_left(left_to: &Friction, sway_rad_s: f64) -> Vec<(f64, f64)> {
    let given = Given::inertia(&[(0.0, INERTIA_KG_M2)]).expect("a knot");
    let mut turning = Turning::at_rate(0.0, &given.at(0.0), 0.0);
    let mut read = Vec::new();
    while turning.t_s < 30.0 {
        if (2.0..3.0).contains(&turning.t_s) {
            turning = turning.pushed(&given.at(turning.t_s), 4.0 * INERTIA_KG_M2 * STEP_S);
        }
        turning = turned_to(turning, &given, left_to, turning.t_s + STEP_S);
        let sway = sway_rad_s * libm::sin(9.0 * turning.t_s);
        let rate = turning.rate_rad_s(&given.at(turning.t_s));
        read.push((turning.t_s, rate + sway));
    }
    read
}

#[test]
fn a_chair_that_is_pushed_and_left_gives_its_friction() {
    for (torque_n_m, viscous_n_m_s) in [(0.6, 0.0), (0.3, 0.1), (0.0, 0.3)] {
        let left_to = Friction {
            torque_n_m,
            viscous_n_m_s,
        };
        for sway_rad_s in [0.0, 0.03] {
            let read = pushed_and_left(&left_to, sway_rad_s);
            let slowing = longest(read.into_iter()).expect("it slows down");
            // After the push, and within three seconds of it.
            assert!((3.0..6.0).contains(&slowing[0].t_s), "{slowing:?}");
            let found = friction(&slowing, INERTIA_KG_M2).expect("a friction");
            // At the middle of the stretch both brake alike.
            let braking = |of: &Friction| of.torque_n_m + slowing[1].rate_rad_s * of.viscous_n_m_s;
            let share = braking(&found) / braking(&left_to);
            assert!((share - 1.0).abs() < 0.05, "{found:?} for {left_to:?}");
            if sway_rad_s == 0.0 {
                assert!((found.torque_n_m - torque_n_m).abs() < 0.02, "{found:?}");
                assert!(
                    (found.viscous_n_m_s - viscous_n_m_s).abs() < 0.02,
                    "{found:?}"
                );
            }
        }
    }
}

/// Nothing that only slows down: at rest, evenly, faster and faster, for too short, and of gaps.
#[test]
fn where_nothing_slows_down_nothing_is_found() {
    let of = |rate: fn(f64) -> f64| {
        let times = (0..600).map(|i| f64::from(i) * STEP_S);
        longest(times.map(|t_s| (t_s, rate(t_s))))
    };
    assert_eq!(of(|_| 0.0), None);
    assert_eq!(of(|_| 3.0), None);
    assert_eq!(of(|t_s| 1.0 + t_s), None);
    assert_eq!(of(|t_s| if t_s < 2.0 { 4.0 - t_s } else { 0.0 }), None);
    assert!(of(|t_s| 4.0 - 0.3 * t_s).is_some());
    let gaps = (0..20).map(|i| (2.0 * f64::from(i), 4.0 - 0.1 * f64::from(i)));
    assert_eq!(longest(gaps), None);
    assert_eq!(longest(std::iter::empty()), None);
}

/// A chair that brakes harder than either kind at one end is taken for the kind that is nearer.
#[test]
fn one_part_is_told_where_the_other_would_be_less_than_none() {
    let readings = |rates: [f64; 3]| {
        let mut t_s = -5.0;
        rates.map(|rate_rad_s| {
            t_s += 5.0;
            Reading { t_s, rate_rad_s }
        })
    };
    let late = friction(&readings([4.0, 3.5, 2.0]), 2.0).expect("a friction");
    assert_eq!(late.viscous_n_m_s, 0.0);
    assert!((late.torque_n_m - 0.4).abs() < 1e-12, "{late:?}");
    let early = friction(&readings([4.0, 1.2, 1.0]), 2.0).expect("a friction");
    assert_eq!(early.torque_n_m, 0.0);
    assert!(
        (early.viscous_n_m_s - 0.2 * libm::log(4.0)).abs() < 1e-12,
        "{early:?}"
    );
}
