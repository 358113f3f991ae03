//! Worked examples, by the product's own integration. Statements and data: OpenStax, University Physics
//! Volume 1 (UP), chapter 11, and College Physics 2e (CP), chapter 10, by the numbers of their problems; what
//! is printed there is rounded to three figures, so the values are derived from the data by L = I w and held
//! to 1e-4 of themselves.

use std::f64::consts::TAU;

use turns_aloft::turntable::run::turned_to;
use turns_aloft::turntable::{Friction, Given, OnBearing, Turning};

const SHARE: f64 = 1e-4;

#[track_caller]
pub fn assert_near(found: f64, expected: f64) {
    assert!(
        (found - expected).abs() <= SHARE * expected.abs(),
        "{found} is not within 1e-4 of {expected}"
    );
}

/// Rate (rad/s) and kinetic energy (J) after the inertia has changed within a second; the muscles' work is
/// what the energy has changed by.
fn after(inertia_kg_m2: [f64; 2], rate_rad_s: f64) -> (f64, f64) {
    let [from, to] = inertia_kg_m2;
    let given = Given::inertia(&[(0.0, from), (1.0, to)]).expect("knots in order");
    let start = Turning::at_rate(0.0, &given.at(0.0), rate_rad_s);
    let end = turned_to(start, &given, &Friction::NONE, 1.0);
    let at = given.at(1.0);
    let rate = end.rate_rad_s(&at);
    let gained = at.kinetic_j(rate) - given.at(0.0).kinetic_j(rate_rad_s);
    assert!((end.work_j - gained).abs() <= 1e-9 * gained.abs());
    (rate, at.kinetic_j(rate))
}

fn disc(mass_kg: f64, radius_m: f64) -> f64 {
    0.5 * mass_kg * radius_m * radius_m
}

fn point(mass_kg: f64, at_m: f64) -> f64 {
    mass_kg * at_m * at_m
}

/// UP 52: a mass of 0.05 kg slides from the edge of a disc (2.0 kg, 0.60 m) to its middle.
#[test]
fn a_mass_slides_to_the_middle_of_a_disc() {
    let disc = disc(2.0, 0.6);
    let (rate, _) = after([disc + point(0.05, 0.6), disc], 2.0 * TAU);
    assert_near(rate / TAU, 2.1);
}

/// UP 59: a bug of 0.020 kg crawls from the edge of a disc (0.10 kg, 0.10 m) to the middle, and back.
#[test]
fn a_bug_crawls_in_and_back() {
    let (out, middle) = (disc(0.1, 0.1) + point(0.02, 0.1), disc(0.1, 0.1));
    let (rate_in, energy_in) = after([out, middle], 10.0);
    assert_near(rate_in, 14.0);
    let (rate_out, energy_out) = after([middle, out], rate_in);
    assert_near(rate_out, 10.0);
    assert_near(energy_out, 0.035);
    assert_near(energy_in - energy_out, 0.014);
}

/// UP 60: two beads of 20 g slide out from 10 cm to the ends of a rod (200 g, 1.00 m).
#[test]
fn beads_slide_out_along_a_rod() {
    let rod = 0.2 / 12.0;
    let (rate, _) = after(
        [rod + 2.0 * point(0.02, 0.1), rod + 2.0 * point(0.02, 0.5)],
        10.0,
    );
    assert_near(rate, 6.40);
}

/// UP 62: a child of 22.0 kg, at rest, gets onto the edge of a merry-go-round (120 kg, 1.80 m).
#[test]
fn a_child_gets_onto_a_merry_go_round() {
    let disc = disc(120.0, 1.8);
    let (rate, _) = after([disc, disc + point(22.0, 1.8)], 0.5 * TAU);
    assert_near(rate / TAU, 0.365_854);
}

/// UP 63: of three children on the edge of a merry-go-round (100 kg, 1.60 m) one moves to the middle.
#[test]
fn a_child_moves_to_the_middle() {
    let all = disc(100.0, 1.6)
        + [22.0, 28.0, 33.0]
            .map(|mass| point(mass, 1.6))
            .iter()
            .sum::<f64>();
    let (rate, _) = after([all, all - point(28.0, 1.6)], TAU * 20.0 / 60.0);
    assert_near(rate / TAU * 60.0, 25.333_333);
}

/// UP 64, CP 10.5: a skater of 0.400 kg m² at 6.00 rev/s; slowed to 1.25 rev/s by the arms, or to 3.00 rev/s in
/// 15.0 s by friction.
#[test]
fn a_skater_slows_down_by_the_arms_or_by_friction() {
    let arms_in = Given::inertia(&[(0.0, 0.4)]).expect("a knot");
    let start = Turning::at_rate(0.0, &arms_in.at(0.0), 6.0 * TAU);
    assert_near(start.momentum_kg_m2_s, 15.0796);
    let (rate, _) = after([0.4, 1.92], 6.0 * TAU);
    assert_near(rate / TAU, 1.25);
    let friction = Friction {
        torque_n_m: 0.502_655,
        viscous_n_m_s: 0.0,
    };
    let end = turned_to(start, &arms_in, &friction, 15.0);
    assert_near(end.rate_rad_s(&arms_in.at(15.0)) / TAU, 3.0);
}

/// CP 10.5, worked example: a skater pulls in the arms, 2.34 to 0.363 kg m², from 0.800 rev/s; printed 5.16
/// rev/s, 29.6 and 191 J.
#[test]
fn a_skater_pulls_in_the_arms() {
    let (rate, energy) = after([2.34, 0.363], 0.8 * TAU);
    assert_near(rate / TAU, 5.157_025);
    assert_near(energy, 190.563);
    let (_, before) = after([2.34, 2.34], 0.8 * TAU);
    assert_near(before, 29.5618);
}
