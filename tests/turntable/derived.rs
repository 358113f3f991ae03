//! Values derived by hand from L = I w + l and L' = -(c sign w + b w), each held to 1e-4 of itself.

use std::f64::consts::{PI, TAU};

use turns_aloft::turntable::given::Knot;
use turns_aloft::turntable::run::turned_to;
use turns_aloft::turntable::{Friction, Given, OnBearing, Turning};

use crate::textbook::assert_near;

/// A student on a stool pulls two weights in and lets them out again, in half a second each time.
fn in_and_out() -> Given {
    let over_time = [(0.0, 9.0), (1.0, 9.0), (1.5, 3.54), (4.0, 3.54), (4.5, 9.0)];
    Given::inertia(&over_time).expect("knots in order")
}

fn torque(torque_n_m: f64) -> Friction {
    Friction {
        torque_n_m,
        viscous_n_m_s: 0.0,
    }
}

#[test]
fn in_and_out_against_a_torque() {
    let given = in_and_out();
    let start = Turning::at_rate(0.0, &given.at(0.0), 0.75);
    assert_near(start.momentum_kg_m2_s, 6.75);
    let end = turned_to(start, &given, &torque(0.5), 6.0);
    assert_near(end.momentum_kg_m2_s, 3.75);
    assert_near(end.rate_rad_s(&given.at(6.0)), 0.4167);
    // The integral of (6.75 - t / 2) / I over the blends, by quadrature.
    assert_near(
        end.turned_rad / TAU,
        turned_by_quadrature(|t_s| 6.75 - 0.5 * t_s) / TAU,
    );
    assert!((end.turned_rad / TAU - 0.982).abs() < 5e-4);
}

#[test]
fn in_and_out_against_a_part_that_grows_with_the_rate() {
    let given = in_and_out();
    let start = Turning::at_rate(0.0, &given.at(0.0), 0.75);
    let friction = Friction {
        torque_n_m: 0.0,
        viscous_n_m_s: 0.05,
    };
    let end = turned_to(start, &given, &friction, 6.0);
    assert_near(end.rate_rad_s(&given.at(6.0)), 0.7076);
    assert_near(end.turned_rad / TAU, 1.2145);
    // What it has lost is what friction took for each radian.
    assert_near(6.75 - end.momentum_kg_m2_s, 0.05 * end.turned_rad);
}

/// By the trapezoidal rule in steps of 10 µs, with the blend written out here.
fn turned_by_quadrature(momentum: impl Fn(f64) -> f64) -> f64 {
    let blend = |x: f64| x.powi(3) * (10.0 - 15.0 * x + 6.0 * x * x);
    let inertia = |t_s: f64| {
        let part =
            blend((2.0 * (t_s - 1.0)).clamp(0.0, 1.0)) - blend((2.0 * (t_s - 4.0)).clamp(0.0, 1.0));
        9.0 - 5.46 * part
    };
    let rate = |i: u32| {
        let t_s = f64::from(i) * 1e-5;
        momentum(t_s) / inertia(t_s)
    };
    let steps = 600_000;
    let inside: f64 = (1..steps).map(rate).sum();
    (inside + 0.5 * (rate(0) + rate(steps))) * 1e-5
}

/// 3.54 kg m² at 1.907 rad/s against 0.1 N m: it stops after I w / c.
#[test]
fn it_stops_and_stays() {
    let given = Given::inertia(&[(0.0, 3.54)]).expect("a knot");
    let start = Turning::at_rate(0.0, &given.at(0.0), 1.907);
    let before = turned_to(start, &given, &torque(0.1), 67.5);
    assert_near(
        before.rate_rad_s(&given.at(67.5)),
        (3.54 * 1.907 - 6.75) / 3.54,
    );
    let stopped = turned_to(before, &given, &torque(0.1), 67.51);
    assert!(stopped.is_held());
    // Where it stops: w² I / (2 c) further.
    assert_near(stopped.turned_rad, 1.907 * 1.907 * 3.54 / 0.2);
    assert_near(stopped.heat_j, 0.5 * 3.54 * 1.907 * 1.907);
    let later = turned_to(stopped, &given, &torque(0.1), 100.0);
    assert_eq!(later.turned_rad.to_bits(), stopped.turned_rad.to_bits());
    assert_eq!(later.rate_rad_s(&given.at(100.0)), 0.0);
}

/// Arms of 1.3 kg m² are swung a quarter turn, pulled in to 0.15 kg m² and swung back; the body, 0.6 kg m², has
/// turned by pi/2 (1.3 / 1.9 - 0.15 / 0.75), the other way.
#[test]
fn swinging_the_arms_turns_a_body_at_rest() {
    let knot = |t_s, inertia_kg_m2, swung_rad| Knot {
        t_s,
        inertia_kg_m2,
        swung_rad,
    };
    let quarter = 0.5 * PI;
    let knots = vec![
        knot(0.0, 1.3, 0.0),
        knot(0.6, 1.3, quarter),
        knot(1.0, 0.15, quarter),
        knot(1.6, 0.15, 0.0),
    ];
    let given = Given::new(0.6, knots).expect("knots in order");
    let mut turning = Turning::at_rate(0.0, &given.at(0.0), 0.0);
    for i in 1..=16 {
        turning = turned_to(turning, &given, &Friction::NONE, 0.1 * f64::from(i));
        assert!(turning.momentum_kg_m2_s.abs() < 1e-12);
    }
    assert_near(turning.turned_rad.to_degrees(), -43.5789);
    assert!(turning.rate_rad_s(&given.at(1.6)).abs() < 1e-12);
    assert!(turning.work_j.abs() < 1e-9, "{}", turning.work_j);
}

/// Held by friction while it can take up what the swing gives off, at most I l' with l' = 5.77 / T² of the angle.
#[test]
fn friction_holds_a_body_at_rest_against_a_gentle_swing() {
    let swing_s = 2.0;
    let knots = [(0.0, 0.0), (swing_s, 0.5)].map(|(t_s, swung_rad)| Knot {
        t_s,
        inertia_kg_m2: 1.3,
        swung_rad,
    });
    let given = Given::new(0.6, knots.to_vec()).expect("knots in order");
    // The peak of the second derivative of the minimum-jerk blend: 10 / sqrt 3.
    let hardest_n_m = 1.3 * 0.5 * 10.0 / 3.0_f64.sqrt() / (swing_s * swing_s);
    let turned = |friction: Friction| {
        let start = Turning::at_rate(0.0, &given.at(0.0), 0.0);
        turned_to(start, &given, &friction, swing_s + 1.0)
    };
    let held = turned(torque(1.01 * hardest_n_m));
    assert!(held.is_held() && held.turned_rad == 0.0);
    let torn_off = turned(torque(0.9 * hardest_n_m));
    assert!(
        torn_off.is_held() && torn_off.turned_rad < -1e-4,
        "{torn_off:?}"
    );
    // All of the work has become heat.
    assert!(
        (torn_off.work_j - torn_off.heat_j).abs() < 1e-6,
        "{torn_off:?}"
    );
}
