//! The angular momentum as the charts show it: summed from the motion of the parts, and told apart
//! into I · ω and a rest.

use turns_aloft::scenario::{Scenario, starts};
use turns_aloft::session::readings::Equation;

fn start(name: &str) -> Scenario {
    starts::named(name).expect("a start").scenario.clone()
}

/// Nothing outside turns the body in the air, so the sum is the same at every sample: rounding only.
#[test]
fn the_sum_stays_the_same_in_the_air() {
    for name in ["half-a-turn-short", "crooked-takeoff"] {
        let flight = start(name).fly().flight;
        let first = flight.momentum_at(0.0).momentum_kg_m2_s;
        assert!(first > 1.0);
        for sample in &flight.samples {
            let now = flight.momentum_at(sample.t_s).momentum_kg_m2_s;
            assert!((now / first - 1.0).abs() < 1e-9, "{name}: {now}");
        }
    }
}

/// A body that holds its posture upright turns as one: no rest. While the free leg and the arms move
/// against the hips there is one; a leaning body has one, too.
#[test]
fn the_rest_is_that_of_moving_limbs_and_of_leaning() {
    let plain = start("senior-triple");
    let flight = plain.fly().flight;
    let rest = |t_s: f64| {
        let parts = flight.momentum_at(t_s);
        let whole = parts.inertia_kg_m2 * parts.rate_rad_s + parts.rest_kg_m2_s;
        assert!((whole - parts.momentum_kg_m2_s).abs() < 1e-12);
        (parts.rest_kg_m2_s / parts.momentum_kg_m2_s).abs()
    };
    let closing_s = plain.close_delay_s + 0.5 * plain.close_time_s;
    assert!(rest(closing_s) > 1e-3, "{}", rest(closing_s));
    let held_s = plain.close_delay_s + plain.close_time_s + 0.02;
    assert!(rest(held_s) < rest(closing_s), "{}", rest(held_s));
}

/// A clockwise jumper's momentum counts in her own direction.
#[test]
fn a_mirrored_jump_has_the_same_parts() {
    use turns_aloft::physics::plan::Turning;
    let mut jump = start("senior-triple");
    jump.turning = Turning::Anticlockwise;
    let one = jump.fly().flight.momentum_at(0.2);
    jump.turning = Turning::Clockwise;
    let other = jump.fly().flight.momentum_at(0.2);
    assert!((one.momentum_kg_m2_s - other.momentum_kg_m2_s).abs() < 1e-9);
    assert!((one.rest_kg_m2_s - other.rest_kg_m2_s).abs() < 1e-9);
    assert!(other.rate_rad_s > 0.0);
}

/// The number at the beginning of a term.
fn value(term: &str) -> f64 {
    let number = term.split(' ').next().expect("a number");
    number.parse().expect("a number")
}

/// The numbers as they are shown give the momentum as it is shown; where they do not quite, it says so.
#[test]
fn the_numbers_shown_multiply_out() {
    let (mut exact, mut about, mut with_rest) = (0, 0, 0);
    for start in starts::all() {
        let flight = start.scenario.fly().flight;
        for i in 0..=200 {
            let parts = flight.momentum_at(flight.touchdown_s * f64::from(i) / 200.0);
            let shown = Equation::of(&parts);
            let product = value(&shown.inertia) * value(&shown.rate);
            let rest = shown.rest.as_ref().map_or(0.0, |[sign, rest]| {
                with_rest += 1;
                value(rest) * if sign == "+" { 1.0 } else { -1.0 }
            });
            let apart = (value(&shown.momentum) - (product * 10.0).round() / 10.0 - rest).abs();
            if shown.relation == "=" {
                exact += 1;
                assert!(apart < 1e-9, "{shown:?}");
            } else {
                about += 1;
                assert!(apart < 0.1 + 1e-9 && shown.rest.is_none(), "{shown:?}");
                assert!(parts.rest_kg_m2_s.abs() < 0.05, "{shown:?} {parts:?}");
            }
            // A rest that is shown is there, to the last digit or one more.
            assert!(
                (rest - parts.rest_kg_m2_s).abs() < 0.15,
                "{shown:?} {parts:?}"
            );
        }
    }
    assert!(
        exact > 1000 && with_rest > 100 && about > 0,
        "{exact} {about} {with_rest}"
    );
}
